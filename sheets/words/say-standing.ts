/** How a set stands in the middle of an order: balance, plates, what holds it, who keeps away. */

import type { House } from '#house';
import { unreachable } from '#outcome';
import { GRAVITY } from '#quantities';
import type { OrderState } from '#rules';
import type { OrderPhysics, Restraint, Standing, WorkZone } from '#state';
import { message, phrase, phraseCount } from '#texts';
import { HOLDS } from './engine-words.ts';
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
  const doubt = isDoubtTried
    ? phrase(house, ', give or take {doubtN}', { doubtN: loadMass(doubtN / GRAVITY, house) })
    : '';
  if (!isInContact(state)) return `${sayImbalance(highN, house)}${doubt}`;
  const ends = phrase(house, '{imbalance} and {imbalance2}', {
    imbalance: sayImbalance(lowN, house),
    imbalance2: sayImbalance(highN, house),
  });
  return phrase(house, 'between {ends}{doubt}, as the piece rests', { ends, doubt });
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
  return phraseCount(house, total, ['1 plate on the arbor: {groups}', '{count} plates: {groups}'], {
    groups: groups.join('; '),
  });
};

/** `against going out: the rope lock` of the judge, or a balance or a rest, as a sentence. */
const heldSentence = (heldBy: string, house: House): string => {
  if (!heldBy.startsWith('against '))
    return phrase(house, 'Held by {hold}.', { hold: turned(heldBy, house) });
  const ways = heldBy.split('; ').map((each) => {
    const [way = '', hold = ''] = each.split(': ');
    return way.endsWith(' in')
      ? phrase(house, 'against going in by {hold}', { hold: turned(hold, house) })
      : phrase(house, 'against going out by {hold}', { hold: turned(hold, house) });
  });
  return phrase(house, 'Held {ways}.', { ways: ways.join('; ') });
};

const turned = (hold: string, house: House): string =>
  HOLDS.has(hold) ? phrase(house, hold) : filled(hold, house);

/** What the judge found to hold it, and whether that leans on the lock past its planning limit. */
export const heldWords = ({ heldBy, limit, standing }: OrderState, house: House): string => {
  const held = heldSentence(heldBy, house);
  if (limit !== 'nominal') return held;
  const isClosed = standing.closed.some(({ zone }) => zone === 'run');
  const path = isClosed
    ? phrase(house, 'nobody in its path.')
    : phrase(house, 'close the run before anything is done.');
  return `${held} ${phrase(house, 'Past the planning limit of the lock: {path}', { path })}`;
};

const RESTRAINT_NAMES: Readonly<Record<Restraint['kind'], string>> = {
  bullLine: message('bull line'),
  arborSling: message('sling on the arbor'),
  stands: message('stands under the batten'),
  winch: message('winch on the hand line'),
  choke: message('choke on the hand line'),
  deadHangSteel: message('steel to hang the set on'),
  pinnedPiece: message('pin that ties the piece down'),
};

export const restraintName = ({ kind }: Pick<Restraint, 'kind'>, house: House): string =>
  filled(RESTRAINT_NAMES[kind], house);

const WAYS = {
  in: message('against coming in'),
  out: message('against going out'),
  both: message('both ways'),
} as const satisfies Record<Restraint['resists'], string>;

/** `bull line against going out, rated 55 lbf or more, 25'-3" to 25'-8"`. */
export const restraintWords = (restraint: Restraint, house: House): string => {
  const { resists, rating, from, to } = restraint;
  const rated =
    rating === null
      ? phrase(house, 'rating not given')
      : phrase(house, 'rated {rating} or more', { rating: sayForce(rating, house, 'up') });
  const span =
    from === null || to === null
      ? phrase(house, 'heights not given')
      : phrase(house, 'from {from} to {to}', { from: height(from, house), to: height(to, house) });
  return `${restraintName(restraint, house)} ${phrase(house, WAYS[resists])}, ${rated}, ${span}`;
};

/** What the names of galleries and zones need. */
export type PlaceWords = {
  readonly house: House;
  readonly physics: Pick<OrderPhysics, 'set'> & {
    readonly galleries: readonly Pick<OrderPhysics['galleries'][number], 'id' | 'name'>[];
  };
};

export const galleryName = (id: string, { physics }: Pick<PlaceWords, 'physics'>): string =>
  physics.galleries.find((each) => each.id === id)?.name ?? id;

export const zoneName = (zone: WorkZone, words: PlaceWords): string => {
  switch (zone.zone) {
    case 'run':
      return phrase(words.house, 'the run of set {set}', { set: words.physics.set });
    case 'drop':
      return phrase(words.house, 'the drop zone of the {galleryName}', {
        galleryName: galleryName(zone.gallery, words),
      });
    default:
      return unreachable(zone);
  }
};

/** `its run`, `drop zone of the Mid loading gallery`: where the set is named round it. */
export const zoneShort = (zone: WorkZone, words: PlaceWords): string =>
  zone.zone === 'run' ? phrase(words.house, 'its run') : zoneName(zone, words).replace(/^the /, '');
