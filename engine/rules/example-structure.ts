/**
 * What a calculator would say of the example set on its lines, written by hand: five lines of
 * 1000 N each in the trim, far from every limit. A test changes what it is about.
 */
import type {
  BayTotal,
  FloorTotal,
  HouseTotals,
  LineState,
  PlacedLoad,
  SetStructure,
  StructureState,
} from '#assessment';
import { reckoned } from '#findings';
import { kilograms, metres, newtons, newtonsPerMetre, pascals, radians } from '#quantities';
import type { Solution } from './batten/solved-states.ts';

export const EXAMPLE_XS = [-4, -2, 0, 2, 4] as const;

/** What a line that turns by 90 degrees puts on its block. */
export const squareTurn = (tensionN: number) => ({
  resultant: newtons(tensionN * Math.SQRT2),
  horizontal: newtons(tensionN),
  vertical: newtons(tensionN),
  turn: radians(Math.PI / 2),
});

/** A line of 20 N of its own, with 50 N of tolerance, on a sheave that turns it by 90 degrees. */
export const lineAt = (xM: number, tensionN: number, toleranceN: number | null = 50): LineState => {
  const topN = tensionN + 20;
  return {
    x: metres(xM),
    tension: newtons(tensionN),
    slack: tensionN === 0,
    uncertainty: toleranceN === null ? null : newtons(toleranceN),
    top: reckoned(newtons(topN)),
    stretch: metres(0.01),
    strength: reckoned({
      breaking: newtons(60_000),
      termination: { value: 0.95, source: 'example' },
      bending: { value: 0.94, source: 'example' },
      factor: 53_580 / topN,
    }),
    loftBlock: reckoned(squareTurn(topN)),
    perTrim: newtonsPerMetre(1500),
  };
};

const nothing = { x: 0, value: 0 };

/** Bends by 100 N·m of the 1000 N·m that it may, and sags by 1 mm on 2 m. */
export const exampleSolution: Solution = {
  tensions: [],
  slack: [],
  supports: [],
  picks: [],
  moment: { max: { x: 1, value: 100 }, min: nothing },
  shear: { max: nothing, min: nothing },
  deflection: { max: nothing, min: nothing, atLines: [] },
  sag: { x: 1, value: 0.001, span: 2 },
  stress: null,
  allowable: { method: 'plastic', moment: 1000, factor: 1.67 },
  utilisation: { value: 0.1, x: 1, allowed: 1000, atSplice: false },
  rigid: () => null,
  sensitivity: () => [],
  at: (x) => ({ x, shear: 0, moment: 0, slope: 0, deflection: 0 }),
  influence: () => [],
};

export const fittings: readonly PlacedLoad[] = EXAMPLE_XS.map((x, index) => ({
  of: `fittings at line ${index + 1}`,
  load: { x, mass: 2 },
  uncertaintyKg: 0,
}));

/** A state whose beam and loads are as given; tensions are those of the lines from stage right. */
export const hangingState = ({
  tensions = [1000, 1000, 1000, 1000, 1000],
  solution = {},
  ...changes
}: Partial<StructureState> & {
  readonly tensions?: readonly number[];
  readonly solution?: Partial<Solution>;
} = {}): StructureState => ({
  name: 'playing',
  kind: 'hung',
  height: metres(10),
  loads: fittings,
  mass: kilograms(150),
  beam: { ...exampleSolution, ...solution },
  lines: tensions.map((tensionN, index) => lineAt(EXAMPLE_XS[index] ?? 0, tensionN)),
  ...changes,
});

export const bareState = hangingState({
  name: 'bare',
  kind: 'bare',
  height: metres(1),
  tensions: [100, 100, 100, 100, 100],
});

export const structureOf = (
  states: readonly StructureState[] = [hangingState()],
  changes: Partial<SetStructure> = {},
): SetStructure => ({
  pipe: { massPerLength: 4, secondMoment: 1.4e-7, elasticModulus: 2.1e11 },
  wall: 'nominal',
  left: metres(-5),
  right: metres(5),
  lines: EXAMPLE_XS.map((x) => ({ x, stiffness: 60_000, trim: 0 })),
  splices: [],
  trimsMeasured: true,
  splicesKnown: true,
  freeLengths: EXAMPLE_XS.map((x) => metres(25 + x)),
  hungNeeds: [],
  states: [bareState, ...states],
  headBlock: reckoned(squareTurn(5000)),
  headBlockIn: () => reckoned(squareTurn(5000)),
  restrained: reckoned({ arborSide: newtons(1600), battenSide: newtons(1500) }),
  rework: (state) => state,
  ...changes,
});

/** A structure as a scene of a set takes it. */
export const structured = (
  states?: readonly StructureState[],
  changes?: Partial<SetStructure>,
) => ({ set: { structure: reckoned(structureOf(states, changes)) } });

export const noTotals: HouseTotals = { bays: [], wells: [], floors: [], linesOnNoWell: [] };

/** The total of two sets, the second three times as much as the first. */
export const totalOf = (valueN: number) =>
  reckoned({
    id: 'A',
    sets: [
      { set: '7', value: newtons(valueN / 4) },
      { set: '8', value: newtons((3 * valueN) / 4) },
    ],
    value: newtons(valueN),
    dynamic: newtons(0),
  });

export const bayOf = (
  when: BayTotal['when'],
  verticalN: number,
  horizontalN: number,
  { movingN = verticalN, wireN = 0 }: { readonly movingN?: number; readonly wireN?: number } = {},
): BayTotal => ({
  bay: 'A',
  when,
  vertical: totalOf(verticalN),
  horizontal: totalOf(horizontalN),
  wire: reckoned(newtons(wireN)),
  moving: reckoned({
    set: '8',
    vertical: newtons(movingN),
    horizontal: newtons(horizontalN),
  }),
});

export const floorOf = (changes: Partial<FloorTotal> = {}): FloorTotal => ({
  gallery: 'upper',
  when: 'recorded',
  bricks: reckoned(kilograms(1000)),
  pressure: reckoned(pascals(700)),
  courses: reckoned(2),
  lineLoad: reckoned(newtonsPerMetre(700)),
  ...changes,
});
