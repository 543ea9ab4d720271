/** What the pulls on the stop can weigh: items that hang there with all of their weight. */
import { GRAVITY, newtons } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import type { NoDrill } from './types.ts';

/** Forces nearer than this are one force: the weight of a speck of dust. */
const SAME_N = 1e-6;

export type Weighed = {
  readonly items: readonly string[];
  readonly listedKg: number;
  /** Half width of what they may be off by together, kg. */
  readonly doubtKg: number;
  /** Half width of what hangs in part may come to, beyond what of it hangs on the stop, N. */
  readonly laterN: number;
};

export const hangingAll = (start: Standing, items: readonly string[]): Standing => ({
  ...start,
  items: { ...start.items, ...Object.fromEntries(items.map((id) => [id, 'flying' as const])) },
});

/** Items that go on, with those that hang already. */
export const hungItems = ({ items }: Standing): readonly string[] =>
  Object.keys(items).filter((id) => items[id] === 'flying');

export const weighedItems = (physics: OrderPhysics, hung: Standing): Weighed | NoDrill => {
  const parts = hungItems(hung).map((id) => partOf(physics, hung, id));
  const shared = parts.find(({ isShared }) => isShared);
  if (shared !== undefined) return { why: 'inContact', item: shared.id };
  const full = parts.filter(({ isFull }) => isFull);
  const partly = parts.filter(({ isFull }) => !isFull);
  const inPartN = partly.reduce((sum, { doubtN }) => sum + doubtN, 0);
  if (inPartN > physics.lockLimitN) {
    const items = partly.map(({ id }) => id);
    return { why: 'hangsInPart', items, doubtN: newtons(inPartN) };
  }
  if (full.length === 0) return { why: 'nothingToWeigh' };
  return {
    items: full.map(({ id }) => id),
    listedKg: full.reduce((sum, { weightN }) => sum + weightN, 0) / GRAVITY,
    doubtKg: full.reduce((sum, { doubtN }) => sum + doubtN, 0) / GRAVITY,
    laterN: partly.reduce((sum, { doubtN, hereN }) => sum + doubtN - hereN, 0),
  };
};

const partOf = (physics: OrderPhysics, hung: Standing, id: string) => {
  const [mostN, leastN] = [physics.itemMostN(id), physics.itemLeastN(id)];
  const [weightN, doubtN] = [(mostN + leastN) / 2, (mostN - leastN) / 2];
  const all = physics.at(hung);
  const rest = physics.at({ ...hung, items: { ...hung.items, [id]: 'away' } });
  return {
    id,
    weightN,
    doubtN,
    hereN: all.doubtN - rest.doubtN,
    isFull: Math.abs(all.highN - rest.highN - weightN) <= SAME_N,
    isShared: all.highN - all.lowN - (rest.highN - rest.lowN) > SAME_N,
  };
};

/**
 * Friction at most: the house's rule for what hangs as listed, and as much more as the items may
 * be heavier than that.
 *
 *     f_most = f + (f − f_bare) · (W_most / W − 1)
 *
 * Source  the house's rule is a share of what hangs and a constant, so it is a straight line in W
 * Omits   what the batten itself may be heavier by: a hundredth of a few pounds (less)
 */
export const frictionMostN = (physics: OrderPhysics, hung: Standing): number => {
  const ids = hungItems(hung);
  const mostN = ids.reduce((sum, id) => sum + physics.itemMostN(id), 0);
  const listedN = ids.reduce(
    (sum, id) => sum + (physics.itemMostN(id) + physics.itemLeastN(id)) / 2,
    0,
  );
  const frictionN = physics.frictionN(hung.items);
  if (listedN <= 0) return frictionN;
  return frictionN + (frictionN - physics.frictionN({})) * (mostN / listedN - 1);
};
