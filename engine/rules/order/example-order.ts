/**
 * A plain set in round numbers for the tests of the judge. No calculator is opened: U is 40 N on
 * the low stop and falls by 10 N for each metre out, a full brick is 100 N and a half one 50 N,
 * the lock holds 200 N, and so its planning limit is 100 N.
 */
import { assert } from '#outcome';
import { metres, newtons } from '#quantities';
import type {
  ItemPhase,
  OrderNode,
  OrderPhysics,
  Restraint,
  Standing,
  Step,
  WorkZone,
} from '#state';
import { unsaid } from '../example-assessment.ts';
import type { OrderRuleCode } from './rule-codes.ts';
import type { Breach, OrderOptions, OrderVerdict } from './verdict.ts';
import { verifyOrder } from './verify-order.ts';

type Piece = {
  readonly weightN: number;
  readonly doubtN?: number;
  /** Below this height all of it stands on the deck. */
  readonly contactM?: number;
};

type Plant = {
  readonly pieces?: Readonly<Record<string, Piece>>;
  readonly brickDoubtN?: number;
  readonly slopeN?: number;
  readonly more?: Partial<OrderPhysics>;
};

const LOW_M = 1;
const HIGH_M = 19;
const THICK_M = 0.03;

const PIECES: Readonly<Record<string, Piece>> = {
  lamp: { weightN: 100, doubtN: 2 },
  frame: { weightN: 300, doubtN: 6 },
  motor: { weightN: 600, doubtN: 12 },
  tower: { weightN: 500, doubtN: 10, contactM: 6 },
};

const BRICK_N: Readonly<Record<string, number>> = { B: 100, C: 50 };

type Laden = Pick<Standing, 'stack' | 'items'>;
type Side = 'below' | 'above';

const platesOf = ({ stack }: Pick<Standing, 'stack'>): Standing['stack'] =>
  stack.filter(({ tag }) => tag !== 'spreader');

const plateCount = (laden: Pick<Standing, 'stack'>): number =>
  platesOf(laden).reduce((sum, { count }) => sum + count, 0);

/** A carriage of 40 kg, and each plate by its kind; a plate may be off by 0.2 kg. */
const arborKgOf = (stack: Standing['stack']): number =>
  platesOf({ stack }).reduce(
    (sum, { kind, count }) => sum + (count * (BRICK_N[kind] ?? 0)) / 10,
    40,
  );

const showN = (laden: Laden): number =>
  platesOf(laden)
    .filter(({ tag }) => tag === 'show')
    .reduce((sum, { kind, count }) => sum + count * (BRICK_N[kind] ?? 0), 0);

const onBattenN = ({ contactM = 0, weightN }: Piece, heightM: number, side: Side): number =>
  (heightM === contactM ? side === 'above' : heightM > contactM) ? weightN : 0;

/** The numbers of one plant: what hangs, what rests, and what all of it may be off by. */
const balanceOf = ({ pieces = PIECES, brickDoubtN = 0, slopeN = 10 }: Plant) => {
  const inPhase = ({ items }: Laden, ...phases: readonly ItemPhase[]): readonly Piece[] =>
    Object.entries(items).flatMap(([id, phase]) => {
      const piece = pieces[id];
      return piece !== undefined && phases.includes(phase) ? [piece] : [];
    });
  const sum = (all: readonly Piece[], of: (piece: Piece) => number): number =>
    all.reduce((total, piece) => total + of(piece), 0);
  return {
    hanging: (laden: Laden) => inPhase(laden, 'flying'),
    atN: (laden: Laden, heightM: number, side: Side): number =>
      sum(inPhase(laden, 'flying'), (piece) => onBattenN(piece, heightM, side)) +
      40 -
      slopeN * (heightM - LOW_M) -
      showN(laden),
    restN: (laden: Laden): number =>
      sum(inPhase(laden, 'attachedResting'), ({ weightN }) => weightN),
    doubtN: (laden: Laden): number =>
      sum(inPhase(laden, 'flying', 'attachedResting'), ({ doubtN = 0 }) => doubtN) +
      brickDoubtN * plateCount(laden),
  };
};

const GALLERIES: OrderPhysics['galleries'] = [
  {
    id: 'upper',
    name: 'Upper gallery',
    floorM: 15,
    reachFromM: 15,
    reachToM: 20.2,
    stock: { B: 20, C: 4 },
  },
  {
    id: 'mid',
    name: 'Mid gallery',
    floorM: 10,
    reachFromM: 10,
    reachToM: 12,
    stock: { B: 5, C: 0 },
  },
];

const NUMBERS = {
  set: '7',
  purchase: 1,
  lowStop: { heightM: LOW_M, ratedN: 6000 },
  highStop: { heightM: HIGH_M, ratedN: 6000 },
  workingM: 1.2,
  lockLimitN: 200,
  handsBriefN: 700,
  handsSteadyN: 400,
  galleries: GALLERIES,
  bricks: [
    { id: 'B', massKg: 10, thicknessM: THICK_M, looksLike: [], atBattenN: 100 },
    { id: 'C', massKg: 5, thicknessM: THICK_M, looksLike: [], atBattenN: 50 },
  ],
  rodM: 0.5,
  arborMassLimitKg: null,
} as const;

export const plantOf = (plant: Plant = {}): OrderPhysics => {
  const { pieces = PIECES, more = {} } = plant;
  const { hanging, atN, restN, doubtN } = balanceOf(plant);
  const nodeAt = (laden: Laden, heightM: number): OrderNode => {
    const [belowN, aboveN] = [atN(laden, heightM, 'below'), atN(laden, heightM, 'above')];
    const contact = { lowN: Math.min(belowN, aboveN), highN: Math.max(belowN, aboveN) };
    return { heightM, belowN, aboveN, contact, doubtN: doubtN(laden) };
  };
  return {
    ...NUMBERS,
    at: (standing) => ({
      lowN: atN(standing, standing.height, 'below'),
      highN: atN(standing, standing.height, 'above') + restN(standing),
      doubtN: doubtN(standing),
    }),
    curve: (laden) => {
      const contacts = hanging(laden).flatMap(({ contactM }) => contactM ?? []);
      return [LOW_M, ...new Set(contacts), HIGH_M].map((heightM) => nodeAt(laden, heightM));
    },
    arborKg: (stack) => ({ massKg: arborKgOf(stack), doubtKg: 0.2 * plateCount({ stack }) }),
    topOfStackM: ({ height, stack }) => 19.5 - (height - LOW_M) + THICK_M * plateCount({ stack }),
    frictionN: () => 50,
    itemMostN: (id) => (pieces[id]?.weightN ?? 0) + (pieces[id]?.doubtN ?? 0),
    itemLeastN: (id) => (pieces[id]?.weightN ?? 0) - (pieces[id]?.doubtN ?? 0),
    contactM: (id) => pieces[id]?.contactM ?? null,
    ...more,
  };
};

/** Bare on the low stop, 40 N batten heavy, with one brick of pipe weight. */
export const BARE: Standing = {
  height: metres(LOW_M),
  stack: [{ kind: 'B', count: 1, tag: 'pipe' }],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
};

export const RUN: WorkZone = { zone: 'run' };
export const DROPS: readonly WorkZone[] = [{ zone: 'drop', gallery: 'upper' }];

/** Somewhere on the travel, with show bricks on top of the pipe weight. */
export const standingAt = (
  heightM: number,
  bricks: number,
  changes: Partial<Standing> = {},
): Standing => ({
  ...BARE,
  height: metres(heightM),
  stack: [
    ...BARE.stack,
    ...(bricks === 0 ? [] : [{ kind: 'B', count: bricks, tag: 'show' } as const]),
  ],
  closed: DROPS,
  ...changes,
});

export const bullLine = (changes: Partial<Restraint> = {}): Restraint => ({
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(1000),
  from: metres(1),
  to: metres(19),
  owner: 'deck lead',
  tag: '4',
  ...changes,
});

export const add = (count: number, kind = 'B', gallery = 'upper'): Step => ({
  act: 'add',
  kind,
  count,
  gallery,
});

export const remove = (count: number, kind = 'B', gallery = 'upper'): Step => ({
  act: 'remove',
  kind,
  count,
  gallery,
});

export const fly = (toM: number): Step => ({ act: 'fly', to: metres(toM) });
export const attach = (item: string): Step => ({ act: 'attach', item, as: 'flying' });
export const release = (item: string): Step => ({ act: 'release', item });
export const ease = (pullN: number, lifted: boolean): Step => ({
  act: 'ease',
  pull: newtons(pullN),
  lifted,
});

/** The frame hangs, and every zone is closed. */
export const hungAt = (
  heightM: number,
  bricks: number,
  changes: Partial<Standing> = {},
): Standing =>
  standingAt(heightM, bricks, {
    items: { frame: 'flying' },
    closed: [RUN, ...DROPS],
    ...changes,
  });

/** Single faults are tried: people may be in the path. */
export const CHECK = { faults: 'check' } as const;

/** Hands off the set, and then hands on it: what was so at the start is nobody's step. */
export const PASSED: readonly Step[] = [{ act: 'reopen', zone: { zone: 'drop', gallery: 'mid' } }];
export const HANDS: readonly Step[] = [{ act: 'rig', restraint: bullLine({ from: metres(18.9) }) }];

export type Trial = {
  readonly plant?: Plant;
  readonly start?: Standing;
  readonly steps?: readonly Step[];
  readonly options?: Partial<OrderOptions>;
};

/** At the nominal limit and as listed, unless a test is about the other. */
export const tried = ({ plant, start = BARE, steps = [], options }: Trial): OrderVerdict =>
  verifyOrder(plantOf(plant), start, steps, { doubt: 'none', faults: 'skip', ...options });

const breachesOf = (trial: Trial): readonly Breach[] => {
  const { broken, alsoBroken, cautions } = tried(trial);
  return [...(broken === null ? [] : [broken]), ...alsoBroken, ...cautions];
};

/** Every rule that a trial breaks, cautions last, each in the order in which it breaks them. */
export const rulesOf = (trial: Trial): readonly string[] =>
  breachesOf(trial).map(({ rule }) => rule);

/** The first breach of one rule, whose sentence can be said with what it carries. */
export const breachOf = (rule: OrderRuleCode, trial: Trial): Breach => {
  const breach = breachesOf(trial).find((each) => each.rule === rule);
  assert(breach !== undefined, `${rule} is broken; found ${rulesOf(trial).join(', ')}`);
  const lacks = unsaid(breach.finding);
  assert(lacks.length === 0, `${rule} can be said; it lacks ${lacks.join(', ')}`);
  return breach;
};
