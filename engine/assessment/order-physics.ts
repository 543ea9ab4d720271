/** The physics of one set for an order of work, from the same balance that every sheet uses. */
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
import { blocked, type Reckoned } from '#findings';
import { type House, type LineSet, nextPlateHeight, panHeight } from '#house';
import { GRAVITY } from '#quantities';
import type { HouseState, OrderBrick, OrderGallery, OrderPhysics, Standing } from '#state';
import { carriedItem } from '#takeoff';
import { gather, spreadersFor, uncertaintyOf } from './plant.ts';
import type { SetAssessment } from './types.ts';

type Known = {
  readonly set: BalanceSet;
  readonly items: ReadonlyMap<string, BalanceItem>;
  readonly bricks: readonly (OrderBrick & { readonly doubtKg: number })[];
  readonly house: House;
};

/**
 * Everything that a search for an order, or a judge of one, asks of a set; blocked where a value is
 * not known. It computes no order and judges none.
 *
 * Source  the balance of the set (`#balance`), heights of the arbor (`#house`); the-job.md 4.3
 * Omits   friction in the imbalance itself: it hides some and makes none
 */
export const orderPhysicsOf = (
  { lineSet, takeoffs, bare }: SetAssessment,
  house: House,
  state: HouseState | null,
): Reckoned<OrderPhysics> => {
  if (!bare.known) return bare;
  const { arbor } = lineSet;
  if (arbor === null) return blocked(['arbor']);
  const got = gather();
  const set = bare.value.set;
  const { rules } = house;
  const items = itemsOf(takeoffs, got);
  const panAtLowM = got.number(arbor.panAtLow, 'height of the arbor with the batten in');
  const panThicknessM = got.number(arbor.panThickness, 'thickness of the pan');
  const friction = {
    share: got.number(rules.frictionShare, 'share of friction'),
    constantN: got.number(rules.frictionConstant, 'constant of friction'),
  };
  const bricks = bricksOf(house, set.purchase, got);
  const numbers = {
    ...numbersOf(lineSet, house, set, got),
    rodM: got.number(arbor.usableRod, 'usable rod'),
    galleries: galleriesOf(house, state, got),
  };
  const the: Known = { set, items, bricks, house };
  return got.give(
    (): OrderPhysics => ({
      ...numbers,
      set: lineSet.id,
      purchase: set.purchase,
      bricks: bricks.map(({ doubtKg: _, ...brick }) => brick),
      arborMassLimitKg: arbor.massLimit.known ? arbor.massLimit.value : null,
      at: (standing) => standingImbalance(the, standing),
      curve: (standing) => curveOf(the, standing),
      topOfStackM: ({ height, stack }) => {
        const panM = panHeight({
          panAtLowM,
          battenM: height,
          lowStopM: set.lowStop,
          purchase: set.purchase,
        });
        return nextPlateHeight(panM, panThicknessM, stackThickness(the, stack));
      },
      frictionN: (phases) => {
        const hung = hangingItems(the, phases);
        const hangingKg = set.batten + hung.reduce((sum, item) => sum + fullMass(item), 0);
        return assumedFriction({ ...friction, hangingKg }).force;
      },
      itemMostN: (id) => weightOf(items.get(id), 1),
      itemLeastN: (id) => weightOf(items.get(id), -1),
      contactM: (id) => {
        const item = items.get(id);
        return item === undefined ? null : contactHeight(item);
      },
    }),
  );
};

/** Stops, working height, lock and hands. */
const numbersOf = (
  lineSet: LineSet,
  { rules }: House,
  set: BalanceSet,
  got: ReturnType<typeof gather>,
): Pick<
  OrderPhysics,
  'lowStop' | 'highStop' | 'workingM' | 'lockLimitN' | 'handsBriefN' | 'handsSteadyN'
> => {
  const people = got.number(rules.peoplePerHandLine, 'people on a hand line');
  return {
    lowStop: {
      heightM: set.lowStop,
      ratedN: got.number(lineSet.lowStop.rated, 'rating of the low stop'),
    },
    highStop: {
      heightM: set.highStop,
      ratedN: got.number(lineSet.highStop.rated, 'rating of the high stop'),
    },
    workingM: got.number(lineSet.workingHeight, 'working height'),
    lockLimitN: got.number(rules.lockLimit, 'limit of the lock'),
    handsBriefN: people * got.number(rules.pullBrief, 'brief pull of one person'),
    handsSteadyN: people * got.number(rules.pullSteady, 'steady pull of one person'),
  };
};

const itemsOf = (
  takeoffs: SetAssessment['takeoffs'],
  got: ReturnType<typeof gather>,
): ReadonlyMap<string, BalanceItem> => {
  const items = new Map<string, BalanceItem>();
  for (const takeoff of takeoffs) {
    const carried = carriedItem(takeoff.item, takeoff);
    if (carried.known) items.set(takeoff.item.id, carried.value);
    else for (const need of carried.needs) got.need(`${takeoff.item.name}: ${need}`);
  }
  return items;
};

const bricksOf = (
  { brickKinds, rules }: House,
  purchase: 1 | 2,
  got: ReturnType<typeof gather>,
): Known['bricks'] =>
  brickKinds.map((kind) => {
    const massKg = got.number(kind.mass, `mass of brick ${kind.id}`);
    const thicknessM = got.number(kind.thickness, `thickness of brick ${kind.id}`);
    const doubtKg = uncertaintyOf(kind.mass, rules);
    if (doubtKg === null) got.need(`tolerance of brick ${kind.id}`);
    const atBattenN = (GRAVITY * massKg) / purchase;
    return { id: kind.id, massKg, thicknessM, atBattenN, doubtKg: doubtKg ?? 0 };
  });

const galleriesOf = (
  { galleries }: House,
  state: HouseState | null,
  got: ReturnType<typeof gather>,
): readonly OrderGallery[] =>
  galleries.map((gallery) => {
    const floorM = got.number(gallery.floor, `floor of the ${gallery.name}`);
    return {
      id: gallery.id,
      name: gallery.name,
      floorM,
      reachFromM: floorM + got.number(gallery.reachLow, `lowest reach at the ${gallery.name}`),
      reachToM: floorM + got.number(gallery.reachHigh, `highest reach at the ${gallery.name}`),
      stock: state?.galleries[gallery.id]?.stock ?? {},
    };
  });

/** Heaviest and lightest that an item may be, with its tolerance and what is in its hem. */
const weightOf = (item: BalanceItem | undefined, sign: 1 | -1): number => {
  if (item === undefined) return 0;
  const hem = item.kind === 'cloth' ? item.hem + sign * (item.hemUncertainty ?? 0) : 0;
  return GRAVITY * Math.max(0, fullMass(item) + sign * (item.uncertainty ?? 0) + hem);
};

const stackThickness = ({ bricks, house }: Known, stack: Standing['stack']): number => {
  const brickThicknessM = stack
    .filter(({ tag }) => tag !== 'spreader')
    .reduce((sum, run) => sum + run.count * (brickOf(bricks, run.kind)?.thicknessM ?? 0), 0);
  const plates = spreadersFor(house, brickThicknessM);
  return plates.known ? plates.value.height : brickThicknessM;
};

const brickOf = (bricks: Known['bricks'], kind: string): Known['bricks'][number] | undefined =>
  bricks.find(({ id }) => id === kind);

const hangingItems = ({ items }: Known, phases: Standing['items']): readonly BalanceItem[] =>
  Object.entries(phases).flatMap(([id, phase]) => {
    const item = items.get(id);
    return item !== undefined && phase === 'flying' ? [item] : [];
  });

/** The set with these plates and the items that hang; spreaders as the house counts them. */
const loadedSet = (the: Known, { stack, items }: Pick<Standing, 'stack' | 'items'>): BalanceSet => {
  let [massKg, doubtKg, thicknessM] = [0, 0, 0];
  for (const { kind, count, tag } of stack) {
    const brick = brickOf(the.bricks, kind);
    if (brick === undefined || tag === 'spreader') continue;
    massKg += count * brick.massKg;
    doubtKg += count * brick.doubtKg;
    thicknessM += count * brick.thicknessM;
  }
  const plates = spreadersFor(the.house, thicknessM);
  return {
    ...the.set,
    bricks: massKg + (plates.known ? plates.value.massKg : 0),
    brickUncertainty: doubtKg,
    items: hangingItems(the, items),
  };
};

/** Share of its weight that a piece at rest may hang on its picks: a tilting one, its head's. */
const restingShare = (item: BalanceItem): number => (item.kind === 'tipping' ? item.centre : 1);

const standingImbalance = (the: Known, standing: Standing): ReturnType<OrderPhysics['at']> => {
  const set = loadedSet(the, standing);
  const { low, high } = contactInterval(set, standing.height);
  let [restingN, doubtN] = [0, imbalanceUncertainty(set, standing.height) as number];
  for (const [id, phase] of Object.entries(standing.items)) {
    const item = the.items.get(id);
    if (item === undefined || phase !== 'attachedResting') continue;
    restingN += GRAVITY * restingShare(item) * fullMass(item);
    doubtN += GRAVITY * restingShare(item) * (item.uncertainty ?? 0);
  }
  return { lowN: low, highN: high + restingN, doubtN };
};

const curveOf = (
  the: Known,
  standing: Pick<Standing, 'stack' | 'items'>,
): ReturnType<OrderPhysics['curve']> =>
  balanceCurve(loadedSet(the, standing)).nodes.map((node) => ({
    heightM: node.height,
    belowN: node.below,
    aboveN: node.above,
    contact: { lowN: node.contact.low, highN: node.contact.high },
    doubtN: node.uncertainty,
  }));
