/** The physics of one set for an order of work, from numbers of which every one is known. */
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
import { nextPlateHeight, panHeight, spreaderCount, stackHeight } from '#house';
import { GRAVITY } from '#quantities';
import type { OrderBrick, OrderGallery, OrderPhysics, Standing } from '#state';

/** One set with all that may come onto it, as plain SI numbers. */
export type OrderPlant = Pick<
  OrderPhysics,
  'set' | 'lowStop' | 'highStop' | 'workingM' | 'lockLimitN' | 'handsBriefN' | 'handsSteadyN'
> & {
  /** Without items, and without bricks: those of a standing count. */
  readonly balance: BalanceSet;
  /** By id. */
  readonly items: ReadonlyMap<string, BalanceItem>;
  readonly bricks: readonly (Omit<OrderBrick, 'atBattenN'> & { readonly doubtKg: number })[];
  /** `massKg` is zero where the carriage has it in its mass. */
  readonly spreader: {
    readonly massKg: number;
    readonly thicknessM: number;
    readonly everyM: number;
    readonly rule: 'floor' | 'ceil';
  } | null;
  readonly panAtLowM: number;
  readonly panThicknessM: number;
  readonly rodM: number;
  readonly arborMassLimitKg: number | null;
  /** Friction until a pull test exists: a share of what hangs, and a constant. */
  readonly friction: { readonly share: number; readonly constantN: number };
  readonly galleries: readonly OrderGallery[];
};

/**
 * Everything that a search for an order, or a judge of one, asks of a set. It computes no order
 * and judges none.
 *
 * Source  the balance of the set (`#balance`), heights of the arbor (`#house`); the-job.md 4.3
 * Omits   friction in the imbalance itself: it hides some and makes none
 */
export const physicsOfPlant = (plant: OrderPlant): OrderPhysics => {
  const { balance, items, bricks } = plant;
  const { purchase } = balance;
  return {
    set: plant.set,
    purchase,
    lowStop: plant.lowStop,
    highStop: plant.highStop,
    workingM: plant.workingM,
    lockLimitN: plant.lockLimitN,
    handsBriefN: plant.handsBriefN,
    handsSteadyN: plant.handsSteadyN,
    galleries: plant.galleries,
    bricks: bricks.map(({ doubtKg: _, ...brick }) => {
      return { ...brick, atBattenN: (GRAVITY * brick.massKg) / purchase };
    }),
    rodM: plant.rodM,
    arborMassLimitKg: plant.arborMassLimitKg,
    arborKg: (stack) => {
      const { massKg, doubtKg } = platesOf(plant, stack);
      const { carriage, carriageUncertainty = 0 } = balance;
      return { massKg: carriage + massKg, doubtKg: carriageUncertainty + doubtKg };
    },
    at: (standing) => standingImbalance(plant, standing),
    curve: (standing) => curveOf(plant, standing),
    topOfStackM: (standing) => topOfStack(plant, standing),
    frictionN: (phases) => {
      const hung = hangingItems(plant, phases);
      const hangingKg = balance.batten + hung.reduce((sum, item) => sum + fullMass(item), 0);
      return assumedFriction({ ...plant.friction, hangingKg }).force;
    },
    itemMostN: (id) => weightOf(items.get(id), 1),
    itemLeastN: (id) => weightOf(items.get(id), -1),
    contactM: (id) => {
      const item = items.get(id);
      return item === undefined ? null : contactHeight(item);
    },
  };
};

const topOfStack = (
  plant: OrderPlant,
  { height, stack }: Pick<Standing, 'height' | 'stack'>,
): number => {
  const { balance, panAtLowM, panThicknessM } = plant;
  const { lowStop: lowStopM, purchase } = balance;
  const panM = panHeight({ panAtLowM, battenM: height, lowStopM, purchase });
  return nextPlateHeight(panM, panThicknessM, platesOf(plant, stack).heightM);
};

/** Heaviest and lightest that an item may be, with its tolerance and what is in its hem. */
const weightOf = (item: BalanceItem | undefined, sign: 1 | -1): number => {
  if (item === undefined) return 0;
  const hem = item.kind === 'cloth' ? item.hem + sign * (item.hemUncertainty ?? 0) : 0;
  return GRAVITY * Math.max(0, fullMass(item) + sign * (item.uncertainty ?? 0) + hem);
};

/** Bricks of a stack, with the spreader plates that go with them. */
const platesOf = (
  { bricks, spreader }: OrderPlant,
  stack: Standing['stack'],
): { readonly massKg: number; readonly doubtKg: number; readonly heightM: number } => {
  let [massKg, doubtKg, thicknessM] = [0, 0, 0];
  for (const { kind, count, tag } of stack) {
    const brick = bricks.find(({ id }) => id === kind);
    if (brick === undefined || tag === 'spreader') continue;
    massKg += count * brick.massKg;
    doubtKg += count * brick.doubtKg;
    thicknessM += count * brick.thicknessM;
  }
  const plates = spreader === null ? 0 : spreaderCount(thicknessM, spreader.everyM, spreader.rule);
  return {
    massKg: massKg + plates * (spreader?.massKg ?? 0),
    doubtKg,
    heightM: stackHeight({ brickThicknessM: thicknessM, spreader }),
  };
};

const hangingItems = ({ items }: OrderPlant, phases: Standing['items']): readonly BalanceItem[] =>
  Object.entries(phases).flatMap(([id, phase]) => {
    const item = items.get(id);
    return item !== undefined && phase === 'flying' ? [item] : [];
  });

/** The set with these plates and the items that hang; spreaders as the house counts them. */
const loadedSet = (
  plant: OrderPlant,
  { stack, items }: Pick<Standing, 'stack' | 'items'>,
): BalanceSet => {
  const { massKg, doubtKg } = platesOf(plant, stack);
  return {
    ...plant.balance,
    bricks: massKg,
    brickUncertainty: doubtKg,
    items: hangingItems(plant, items),
  };
};

/** Share of its weight that a piece at rest may hang on its picks: a tilting one, its head's. */
const restingShare = (item: BalanceItem): number => (item.kind === 'tipping' ? item.centre : 1);

const standingImbalance = (
  plant: OrderPlant,
  standing: Standing,
): ReturnType<OrderPhysics['at']> => {
  const set = loadedSet(plant, standing);
  const { low, high } = contactInterval(set, standing.height);
  let [restingN, doubtN] = [0, imbalanceUncertainty(set, standing.height) as number];
  for (const [id, phase] of Object.entries(standing.items)) {
    const item = plant.items.get(id);
    if (item === undefined || phase !== 'attachedResting') continue;
    restingN += GRAVITY * restingShare(item) * fullMass(item);
    doubtN += GRAVITY * restingShare(item) * (item.uncertainty ?? 0);
  }
  return { lowN: low, highN: high + restingN, doubtN };
};

const curveOf = (
  plant: OrderPlant,
  standing: Pick<Standing, 'stack' | 'items'>,
): ReturnType<OrderPhysics['curve']> =>
  balanceCurve(loadedSet(plant, standing)).nodes.map((node) => ({
    heightM: node.height,
    belowN: node.below,
    aboveN: node.above,
    contact: { lowN: node.contact.low, highN: node.contact.high },
    doubtN: node.uncertainty,
  }));
