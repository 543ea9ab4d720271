/**
 * A plain house with one set, in round SI numbers, for the tests of the rules. Nothing on it
 * breaks a rule; each test changes what it is about.
 */
import {
  type Arbor,
  type Basis,
  type BattenPipe,
  type Block,
  type BrickKind,
  type House,
  type Known,
  known,
  type Lift,
  type LineSet,
  unknownValue,
} from '#house';
import {
  cubicMetres,
  kilograms,
  kilogramsPerMetre,
  metres,
  metresToTheFourth,
  newtons,
  newtonsPerMetre,
  pascals,
  radians,
} from '#quantities';
import type { Hang, Item, Show, Trim } from '#show';
import { type HouseState, type SetState, unknownSetState } from '#state';

/** A value of the house, by its rule unless it says otherwise. */
export const given = <T>(value: T, tolerance?: number, basis: Basis = 'houseRule'): Known<T> =>
  known(value, { basis, source: 'example' }, tolerance);

export const weighed = <T>(value: T, tolerance: number): Known<T> =>
  given(value, tolerance, 'weighed');

export const nobodyKnows = unknownValue('nobody looked');

export const exampleArbor: Arbor = {
  carriageMass: weighed(kilograms(40), 1),
  pipeWeight: [{ kind: 'B', count: 1 }],
  length: given(metres(2)),
  usableRod: given(metres(1.6)),
  panAtLow: given(metres(18.3)),
  panThickness: given(metres(0.1)),
  attachAbovePan: given(metres(2)),
  massLimit: given(kilograms(500)),
  topClearance: given(metres(0.15)),
  bottomClearance: given(metres(0.15)),
};

/** 48.3 mm by 4 mm steel tube, rounded. */
export const examplePipe: BattenPipe = {
  secondMoment: given(metresToTheFourth(1.4e-7)),
  sectionModulus: given(cubicMetres(5.7e-6)),
  plasticModulus: given(cubicMetres(7.9e-6)),
  elasticModulus: given(pascals(2.1e11)),
  yieldStrength: given(pascals(2.35e8)),
  wall: 'nominal',
};

const exampleBlock: Block = {
  sheaveDiameter: given(metres(0.2)),
  rated: given(newtons(6000)),
  bearing: 'rolling',
  fleetAngle: given(radians(0.02)),
};

export const exampleLift: Lift = {
  cable: {
    diameter: given(metres(0.006)),
    breakingStrength: given(newtons(32_000)),
    axialStiffness: given(newtons(1.2e6)),
    termination: 'mechanicalSplice',
  },
  loftBlock: exampleBlock,
  headBlock: {
    ...exampleBlock,
    sheaveDiameter: given(metres(0.3)),
    rated: given(newtons(30_000)),
  },
  muleBlocks: [],
  lineTrims: [0, 0, 0, 0, 0].map(metres),
  handLineMass: given(kilograms(9)),
};

export const exampleSet: LineSet = {
  id: '7',
  typeId: 'A',
  suspension: 'singlePurchase',
  y: given(metres(2)),
  lineXs: [-4, -2, 0, 2, 4].map(metres),
  lineMassPerLength: given(kilogramsPerMetre(0.16)),
  lineLimit: given(newtons(4000)),
  wireEndAbove: given(metres(0.6)),
  batten: {
    left: given(metres(-5)),
    right: given(metres(5)),
    mass: weighed(kilograms(50), 1),
    massPerLength: given(kilogramsPerMetre(4)),
    fittingsPerLine: given(kilograms(2)),
    pipe: examplePipe,
    splices: [],
  },
  lift: exampleLift,
  liveLimit: given(kilograms(400)),
  pointLimit: given(kilograms(150)),
  perLengthLimit: given(kilogramsPerMetre(40)),
  lowStop: { height: given(metres(1)), rated: given(newtons(6000)) },
  highStop: { height: given(metres(19)), rated: given(newtons(6000)) },
  workingHeight: given(metres(1.2)),
  arbor: exampleArbor,
  handLinePerBatten: given(1),
  lock: { grip: nobodyKnows, failed: given(false) },
  railId: 'deck',
};

/** The same set on double purchase. */
export const doubleSet: LineSet = { ...exampleSet, suspension: 'doublePurchase', typeId: 'D' };

export const motorSet: LineSet = {
  ...exampleSet,
  suspension: 'motor',
  typeId: 'M',
  arbor: null,
};

export const brickB: BrickKind = {
  id: 'B',
  name: 'big',
  mass: weighed(kilograms(10), 0.2),
  thickness: given(metres(0.03)),
  floorLength: given(metres(0.15)),
  serves: { pipeWeight: true, show: true },
  looksLike: [],
  owned: given(100),
};

export const brickC: BrickKind = {
  ...brickB,
  id: 'C',
  name: 'small',
  mass: weighed(kilograms(5), 0.1),
  thickness: given(metres(0.015)),
  owned: given(20),
};

export const exampleHouse: House = {
  id: 'example',
  name: 'Example',
  demo: true,
  units: 'metric',
  words: 'UK',
  stage: {
    openingWidth: given(metres(10)),
    openingHeight: given(metres(7)),
    backWall: given(metres(12)),
    gridHeight: given(metres(21)),
    loftBlockHeight: given(metres(20.4)),
    headBlockHeight: given(metres(20.5)),
    operatingSide: 'stageRight',
    operatingX: given(metres(-8)),
  },
  rules: {
    lockLimit: given(newtons(200)),
    lockTestEverySeconds: nobodyKnows,
    handLineLimit: given(newtons(3000)),
    pullBrief: given(newtons(350)),
    pullSteady: given(newtons(220)),
    peoplePerHandLine: given(2),
    frictionShare: given(0.05),
    frictionConstant: given(newtons(18)),
    clipsForbidden: given(true),
    lineDesignFactor: given(8),
    sheaveRatio: given(30),
    fleetAngleLimit: given(radians(0.026)),
    movingShare: given(0.25),
    sagLimit: given(0.005),
    staleAfterSeconds: given(14_400),
    toleranceByBasis: { weighed: 0.02 },
  },
  brickKinds: [brickB, brickC],
  spreader: {
    mass: given(kilograms(1)),
    thickness: given(metres(0.006)),
    every: given(metres(0.6)),
    inCarriage: true,
  },
  galleries: [
    {
      id: 'upper',
      name: 'upper gallery',
      floor: given(metres(17.5)),
      reachLow: given(metres(0.1)),
      reachHigh: given(metres(1.7)),
      length: given(metres(20)),
      width: given(metres(1)),
      floorLimit: given(pascals(7000)),
      lineLoadLimit: given(newtonsPerMetre(7000)),
      coursesAllowed: given(8),
      peopleAndTools: given(kilograms(400)),
    },
  ],
  rails: [{ id: 'deck', name: 'deck rail', floor: given(metres(0)) }],
  bays: [],
  loftWells: [],
  eyes: [],
  keepOuts: [],
  openings: [],
  equipment: [],
  lineSets: [exampleSet],
  remarks: [],
};

export const playingTrim: Trim = {
  name: 'playing',
  height: given(metres(10)),
  reference: 'batten',
};

/** Truss parts of 100 kg that never touch the deck. */
export const exampleItem: Item = {
  id: 'frame',
  name: 'Frame',
  kind: 'clear',
  takeoff: { by: 'mass', mass: weighed(kilograms(100), 2), hem: null },
  drop: given(metres(0)),
  pick: given(metres(0)),
  centre: nobodyKnows,
  placement: null,
  releases: [],
  carriesPerson: false,
};

/** 20 m of cable of 2 kg/m, its far end fixed at 10 m. */
export const exampleLoom: Item = {
  ...exampleItem,
  id: 'loom',
  name: 'Loom',
  kind: 'loom',
  takeoff: {
    by: 'loom',
    massPerLength: given(kilogramsPerMetre(2)),
    length: given(metres(20)),
    fixedAt: given(metres(10)),
  },
};

export const exampleHang: Hang = {
  set: '7',
  name: 'Frame',
  family: 'hard',
  halfDepth: given(metres(0.1)),
  trims: [playingTrim],
  items: [exampleItem],
  bricks: { counts: { B: 10 }, reason: 'as weighed' },
  deadHungAt: null,
  coupledWith: [],
};

export const showOf = (hangs: readonly Hang[]): Show => ({
  id: 'show',
  name: 'Show',
  houseId: 'example',
  demo: true,
  hangs,
  cues: [],
  keptEmpty: {},
  remarks: [],
});

/** The example set as somebody counted it: in its trim, locked, loaded as planned. */
export const exampleRecord: SetState = {
  ...unknownSetState,
  height: { low: metres(10), high: metres(10) },
  lock: 'closed',
  ring: 'on',
  collar: 'secured',
  stack: [
    { kind: 'B', count: 1, tag: 'pipe' },
    { kind: 'B', count: 10, tag: 'show' },
  ],
  items: [{ item: 'frame', phase: 'flying' }],
  restraints: [],
  service: 'in',
  knowledge: { basis: 'counted', at: '2026-11-25T12:00:00Z', by: 'loader', second: null },
};

export const stateOf = (sets: Readonly<Record<string, SetState>>): HouseState => ({
  houseId: 'example',
  demo: true,
  at: '2026-11-25T12:00:00Z',
  by: 'head flyperson',
  sets,
  galleries: {},
  remarks: [],
});
