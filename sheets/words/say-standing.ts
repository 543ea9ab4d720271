/** How a set stands in the middle of an order: balance, plates, what holds it, who keeps away. */
import type { House } from '#house';
import { unreachable } from '#outcome';
import { GRAVITY } from '#quantities';
import type { OrderState } from '#rules';
import type { OrderPhysics, Restraint, Standing, WorkZone } from '#state';
import { filled } from './fill-words.ts';
import { sayMeasure } from './say-measure.ts';
import { height, loadMass } from './say-set.ts';

/** What words about an order need besides the order. */
export type OrderWords = {
  readonly house: House;
  readonly physics: OrderPhysics;
  /** The name of an item, by its id. */
  readonly nameOf: (item: string) => string;
  /** Whether every mass was tried at its worst; else nothing is said of a doubt. */
  readonly isDoubtTried: boolean;
  /** Whether the worst single fault was tried after each step; only then may a crew pause. */
  readonly areFaultsTried?: boolean;
};

export const sayForce = (forceN: number, house: House, round: 'up' | 'down'): string =>
  sayMeasure({ value: forceN, kind: 'force' }, house, { round });

export const sayImbalance = (imbalanceN: number, house: House): string =>
  sayMeasure({ value: imbalanceN, kind: 'imbalance' }, house);

/** Newtons apart by less than this are one imbalance and no contact. */
const SAME_N = 1e-6;

/** A piece at rest lets the set choose in a range: nothing pulls past its ends. */
export const isInContact = ({ imbalance }: OrderState): boolean =>
  imbalance.highN - imbalance.lowN > SAME_N;

/** `41 lb arbor heavy, give or take 13 lb`; in contact, both ends of the range. */
export const balanceWords = (
  state: OrderState,
  { house, isDoubtTried }: Pick<OrderWords, 'house' | 'isDoubtTried'>,
): string => {
  const { lowN, highN, doubtN } = state.imbalance;
  const doubt = isDoubtTried ? `, give or take ${loadMass(doubtN / GRAVITY, house)}` : '';
  if (!isInContact(state)) return `${sayImbalance(highN, house)}${doubt}`;
  const ends = `${sayImbalance(lowN, house)} and ${sayImbalance(highN, house)}`;
  return `between ${ends}${doubt}, as the piece rests`;
};

const brickName = (kind: string, { brickKinds }: Pick<House, 'brickKinds'>): string =>
  brickKinds.find(({ id }) => id === kind)?.name ?? kind;

/** `2 full`. */
export const bricksWords = (
  count: number,
  kind: string,
  house: Pick<House, 'brickKinds'>,
): string => `${count} ${brickName(kind, house)}`;

/** Kinds that a loader can take for this one, by name. */
export const looksLikeWords = (kind: string, house: House): readonly string[] =>
  (house.brickKinds.find(({ id }) => id === kind)?.looksLike ?? []).map((id) =>
    brickName(id, house),
  );

/** `10 plates: 3 old cast, pipe weight; 6 full, 1 half`, from the bottom up. */
export const platesWords = ({ stack }: Pick<Standing, 'stack'>, house: House): string => {
  const bricks = stack.filter(({ tag, count }) => tag !== 'spreader' && count > 0);
  const total = bricks.reduce((sum, { count }) => sum + count, 0);
  if (total === 0) return filled('no plate on the arbor', house);
  const listed = (tag: 'pipe' | 'show'): string =>
    bricks
      .filter((run) => run.tag === tag)
      .map(({ count, kind }) => bricksWords(count, kind, house))
      .join(', ');
  const pipe = listed('pipe');
  const groups = [
    ...(pipe === '' ? [] : [filled('{pipe} of pipe weight', house, { pipe })]),
    ...(listed('show') === '' ? [] : [listed('show')]),
  ];
  const sentence = total === 1 ? '1 plate on the arbor: {groups}' : '{total} plates: {groups}';
  return filled(sentence, house, { total: `${total}`, groups: groups.join('; ') });
};

/** `against going out: the rope lock` of the judge, or a balance or a rest, as a sentence. */
const heldSentence = (heldBy: string): string =>
  heldBy.startsWith('against ') ? `Held ${heldBy.replaceAll(': ', ' by ')}.` : `Held by ${heldBy}.`;

/** What the judge found to hold it, and whether that leans on the lock past its planning limit. */
export const heldWords = ({ heldBy, limit, standing }: OrderState, house: House): string => {
  const held = filled(heldSentence(heldBy), house);
  if (limit !== 'nominal') return held;
  const isClosed = standing.closed.some(({ zone }) => zone === 'run');
  const path = isClosed ? 'nobody in its path.' : 'close the run before anything is done.';
  return `${held} ${filled(`Past the planning limit of the lock: ${path}`, house)}`;
};

const RESTRAINT_NAMES: Readonly<Record<Restraint['kind'], string>> = {
  bullLine: 'bull line',
  arborSling: 'sling on the arbor',
  stands: 'stands under the batten',
  winch: 'winch on the hand line',
  choke: 'choke on the hand line',
  deadHangSteel: 'steel to hang the set on',
  pinnedPiece: 'pin that ties the piece down',
};

export const restraintName = ({ kind }: Pick<Restraint, 'kind'>, house: House): string =>
  filled(RESTRAINT_NAMES[kind], house);

const WAYS = {
  in: 'against coming in',
  out: 'against going out',
  both: 'both ways',
} as const satisfies Record<Restraint['resists'], string>;

/** `bull line against going out, rated 55 lbf or more, 25'-3" to 25'-8"`. */
export const restraintWords = (restraint: Restraint, house: House): string => {
  const { resists, rating, from, to } = restraint;
  const rated =
    rating === null ? 'rating not given' : `rated ${sayForce(rating, house, 'up')} or more`;
  const span =
    from === null || to === null
      ? 'heights not given'
      : `from ${height(from, house)} to ${height(to, house)}`;
  return `${restraintName(restraint, house)} ${WAYS[resists]}, ${rated}, ${span}`;
};

export const galleryName = (id: string, { physics }: Pick<OrderWords, 'physics'>): string =>
  physics.galleries.find((each) => each.id === id)?.name ?? id;

export const zoneName = (zone: WorkZone, words: OrderWords): string => {
  switch (zone.zone) {
    case 'run':
      return `the run of set ${words.physics.set}`;
    case 'drop':
      return `the drop zone of the ${galleryName(zone.gallery, words)}`;
    default:
      return unreachable(zone);
  }
};

/** `its run`, `drop zone of the Mid loading gallery`: where the set is named round it. */
export const zoneShort = (zone: WorkZone, words: OrderWords): string =>
  zone.zone === 'run' ? 'its run' : zoneName(zone, words).replace(/^the /, '');
