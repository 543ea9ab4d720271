/** Small sets for the tests: the balance of `#balance`, and an arbor that loaders can reach. */
import {
  assumedFriction,
  type BalanceItem,
  type BalanceSet,
  balanceCurve,
  contactHeight,
  contactInterval,
  fullMass,
  imbalanceUncertainty,
} from '#balance';
import { FOOT, GRAVITY, POUND, POUND_FORCE } from '#quantities';
import type { OrderBrick, OrderGallery, OrderPhysics, Standing } from '#state';

export type ExampleSet = {
  readonly purchase: 1 | 2;
  readonly lowStopM: number;
  readonly highStopM: number;
  readonly workingM: number;
  /** Batten side over arbor side of the bare set on its low stop, kg at the batten. */
  readonly bareKg: number;
  readonly linesKgPerM: number;
  readonly lockLimitN: number;
  readonly bricks: readonly (Omit<OrderBrick, 'atBattenN'> & { readonly doubtKg: number })[];
  readonly galleries: readonly OrderGallery[];
  readonly panAtLowM: number;
  readonly rodM: number;
  readonly arbor: { readonly carriageKg: number; readonly limitKg: number | null };
  readonly items: Readonly<Record<string, BalanceItem>>;
};

/** The set in numbers of the demo's plan: six lines, bare, with a mid and an upper gallery. */
export const SIX_LINE_SET: ExampleSet = {
  purchase: 1,
  lowStopM: 3 * FOOT,
  highStopM: 61 * FOOT,
  workingM: 4 * FOOT,
  bareKg: 48.59 * POUND,
  linesKgPerM: (0.66 * POUND) / FOOT,
  lockLimitN: 50 * POUND_FORCE,
  bricks: [
    { id: 'F', massKg: 25 * POUND, thicknessM: 0.1 * FOOT, looksLike: [], doubtKg: 0.5 * POUND },
    { id: 'H', massKg: 12.5 * POUND, thicknessM: 0.05 * FOOT, looksLike: [], doubtKg: 0.3 * POUND },
  ],
  galleries: [
    {
      id: 'upper',
      name: 'Upper',
      floorM: 58 * FOOT,
      reachFromM: 58.25 * FOOT,
      reachToM: 63.5 * FOOT,
      stock: { F: 100, H: 40 },
    },
    {
      id: 'mid',
      name: 'Mid',
      floorM: 38 * FOOT,
      reachFromM: 38.25 * FOOT,
      reachToM: 43.5 * FOOT,
      stock: { F: 100, H: 40 },
    },
  ],
  panAtLowM: 60.0625 * FOOT,
  rodM: 60 * 0.0254,
  arbor: { carriageKg: 95 * POUND, limitKg: null },
  items: {},
};

export const examplePhysics = (set: ExampleSet): OrderPhysics => {
  const brickOf = (kind: string) => set.bricks.find(({ id }) => id === kind);
  const thicknessOf = (stack: Standing['stack']): number =>
    stack.reduce((sum, { kind, count }) => sum + count * (brickOf(kind)?.thicknessM ?? 0), 0);
  return {
    set: 'example',
    purchase: set.purchase,
    lowStop: { heightM: set.lowStopM, ratedN: 1400 * POUND_FORCE },
    highStop: { heightM: set.highStopM, ratedN: 1400 * POUND_FORCE },
    workingM: set.workingM,
    lockLimitN: set.lockLimitN,
    handsBriefN: 160 * POUND_FORCE,
    handsSteadyN: 100 * POUND_FORCE,
    galleries: set.galleries,
    bricks: set.bricks.map(({ doubtKg: _, ...brick }) => ({
      ...brick,
      atBattenN: (GRAVITY * brick.massKg) / set.purchase,
    })),
    rodM: set.rodM,
    arborMassLimitKg: set.arbor.limitKg,
    arborKg: (stack) => {
      const sum = (of: 'massKg' | 'doubtKg'): number =>
        stack.reduce((all, { kind, count }) => all + count * (brickOf(kind)?.[of] ?? 0), 0);
      return { massKg: set.arbor.carriageKg + sum('massKg'), doubtKg: sum('doubtKg') };
    },
    at: (standing) => imbalanceOf(set, standing),
    curve: (standing) =>
      balanceCurve(loaded(set, standing)).nodes.map((node) => ({
        heightM: node.height,
        belowN: node.below,
        aboveN: node.above,
        contact: { lowN: node.contact.low, highN: node.contact.high },
        doubtN: node.uncertainty,
      })),
    topOfStackM: ({ height, stack }) =>
      set.panAtLowM - (height - set.lowStopM) / set.purchase + thicknessOf(stack),
    frictionN: (phases) => {
      const hangingKg = 80 + hanging(set, phases).reduce((sum, item) => sum + fullMass(item), 0);
      return assumedFriction({ share: 0.05, constantN: 4 * POUND_FORCE, hangingKg }).force;
    },
    itemMostN: (id) => GRAVITY * massOf(set.items[id], 1),
    itemLeastN: (id) => GRAVITY * massOf(set.items[id], -1),
    contactM: (id) => {
      const item = set.items[id];
      return item === undefined ? null : contactHeight(item);
    },
  };
};

const massOf = (item: BalanceItem | undefined, sign: 1 | -1): number =>
  item === undefined ? 0 : fullMass(item) + sign * (item.uncertainty ?? 0);

const hanging = (set: ExampleSet, phases: Standing['items']): readonly BalanceItem[] =>
  Object.entries(phases).flatMap(([id, phase]) => {
    const item = set.items[id];
    return item !== undefined && phase === 'flying' ? [item] : [];
  });

/** All of the bare set stands on one side as the mass that it is out of balance by. */
const loaded = (
  set: ExampleSet,
  { stack, items }: Pick<Standing, 'stack' | 'items'>,
): BalanceSet => {
  let [bricks, brickUncertainty] = [0, 0];
  for (const { kind, count } of stack) {
    const brick = set.bricks.find(({ id }) => id === kind);
    bricks += count * (brick?.massKg ?? 0);
    brickUncertainty += count * (brick?.doubtKg ?? 0);
  }
  return {
    purchase: set.purchase,
    lines: 1,
    lineMassPerLength: set.linesKgPerM,
    // The wire above the batten and below the arbor weigh alike with the batten in.
    batten: set.bareKg,
    carriage: 0,
    bricks,
    brickUncertainty,
    lowStop: set.lowStopM,
    highStop: set.highStopM,
    arborTopAtLow: set.lowStopM,
    wireEndAbove: 0,
    items: hanging(set, items),
  };
};

const imbalanceOf = (set: ExampleSet, standing: Standing): ReturnType<OrderPhysics['at']> => {
  const balance = loaded(set, standing);
  const { low, high } = contactInterval(balance, standing.height);
  let [restingN, doubtN] = [0, imbalanceUncertainty(balance, standing.height) as number];
  for (const [id, phase] of Object.entries(standing.items)) {
    const item = set.items[id];
    if (item === undefined || phase !== 'attachedResting') continue;
    const share = item.kind === 'tipping' ? item.centre : 1;
    restingN += GRAVITY * share * fullMass(item);
    doubtN += GRAVITY * share * (item.uncertainty ?? 0);
  }
  return { lowN: low, highN: high + restingN, doubtN };
};
