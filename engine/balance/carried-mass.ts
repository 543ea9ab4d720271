import { unreachable } from '#outcome';
import type { BalanceItem } from './item.ts';

/**
 * What an item hangs on its batten at one height. `massKg` is what it settles to with the picks
 * as they come; at a height where the piece just leaves the deck it is the value above. Where the
 * piece rests on the deck with taut picks the load may be anything from `lowKg` to `highKg`: the
 * deck and the batten share it, and which share each has is the system's choice.
 */
export type CarriedMass = {
  readonly massKg: number;
  readonly lowKg: number;
  readonly highKg: number;
};

const exactly = (massKg: number): CarriedMass => ({ massKg, lowKg: massKg, highKg: massKg });

/**
 * Heights closer than this are one height. A trim typed in feet and a contact height added up
 * from two lengths differ by rounding in the last binary place; nobody sets a batten to a
 * micrometre.
 */
export const SAME_HEIGHT_M = 1e-6;

export const isSameHeight = (oneM: number, otherM: number): boolean =>
  Math.abs(oneM - otherM) <= SAME_HEIGHT_M;

const clampShare = (share: number): number => Math.min(1, Math.max(0, share));

/** Where the lowest point of the piece meets the deck; null where it never does. */
export const contactHeight = (item: BalanceItem): number | null => {
  switch (item.kind) {
    case 'clear':
      return item.drop === undefined || item.pick === undefined ? null : item.drop + item.pick;
    case 'cloth':
      return item.tie + item.drop;
    case 'tipping':
    case 'standing':
      return item.pick + item.drop;
    case 'loom':
    case 'deckLoom':
      return null;
    default:
      return unreachable(item);
  }
};

/**
 * Mass that an item hangs on the batten.
 *
 *     clear     m; below its contact height anything from 0 to m
 *     cloth     m · clamp((h − s) / D, 0, 1)  +  hem · [h ≥ s + D]
 *     tipping   0 below s (picks slack);  c · m while it tilts;  m from s + D up
 *     standing  0 below s + D;  m from there up
 *     loom      w · (h − y) with y = (z_c + h − Λ) / 2;  w · h while the loop lies on the deck;
 *               0 where it hangs from its fixed end alone, w · Λ where it is taut below the batten
 *     deckLoom  w · min(h, Λ)
 *
 * Source  statics of each piece, the-job.md C16 to C21; a tilting piece carries c · m at its head
 *         at every angle, by moments about its foot (both arms shorten alike)
 * Holds   all lengths and masses >= 0, D > 0 of a cloth or a tilting piece, 0 <= c <= 1, h >= 0
 * Omits   friction of a foot on the deck and stiffness of cloth and cable, which spread a change
 *         over some height either way; a centre that lies off the line from foot to picks, which
 *         makes the load vary with the angle either way; a gap across between the ends of a loom,
 *         under a thousandth of its mass, which the higher end carries more (VAL-BAL-07)
 * Check   VAL-BAL-03 to VAL-BAL-08
 */
export const carriedMass = (item: BalanceItem, battenM: number): CarriedMass => {
  const contactM = contactHeight(item);
  switch (item.kind) {
    case 'clear':
      return clearMass(item, battenM, contactM);
    case 'cloth':
      return clothMass(item, battenM);
    case 'tipping':
      return tippingMass(item, battenM);
    case 'standing':
      return standingMass(item, battenM);
    case 'loom':
      return exactly(loomMass(item, battenM));
    case 'deckLoom':
      return exactly(item.massPerLength * Math.min(Math.max(battenM, 0), item.length));
    default:
      return unreachable(item);
  }
};

const clearMass = (
  item: BalanceItem & { kind: 'clear' },
  battenM: number,
  contactM: number | null,
): CarriedMass => {
  if (contactM === null) return exactly(item.mass);
  if (isSameHeight(battenM, contactM)) return { massKg: item.mass, lowKg: 0, highKg: item.mass };
  if (battenM > contactM) return exactly(item.mass);
  // Picks slack: the whole piece lies on the deck.
  if (battenM < (item.pick ?? 0) - SAME_HEIGHT_M) return exactly(0);
  return { massKg: 0, lowKg: 0, highKg: item.mass };
};

const clothMass = (item: BalanceItem & { kind: 'cloth' }, battenM: number): CarriedMass => {
  const clothKg = item.mass * clampShare((battenM - item.tie) / item.drop);
  const contactM = item.tie + item.drop;
  const massKg = clothKg + item.hem;
  if (isSameHeight(battenM, contactM)) return { massKg, lowKg: clothKg, highKg: massKg };
  return exactly(battenM < contactM ? clothKg : massKg);
};

const tippingMass = (item: BalanceItem & { kind: 'tipping' }, battenM: number): CarriedMass => {
  const contactM = item.pick + item.drop;
  const tiltedKg = item.centre * item.mass;
  if (isSameHeight(battenM, contactM)) {
    return { massKg: item.mass, lowKg: tiltedKg, highKg: item.mass };
  }
  if (isSameHeight(battenM, item.pick)) return { massKg: tiltedKg, lowKg: 0, highKg: tiltedKg };
  if (battenM < item.pick) return exactly(0);
  return exactly(battenM > contactM ? item.mass : tiltedKg);
};

const standingMass = (item: BalanceItem & { kind: 'standing' }, battenM: number): CarriedMass => {
  const contactM = item.pick + item.drop;
  if (isSameHeight(battenM, contactM)) return { massKg: item.mass, lowKg: 0, highKg: item.mass };
  return exactly(battenM < contactM ? 0 : item.mass);
};

/** Low point of the loop, m above the deck; negative where part of it lies on the deck. */
export const loopLowPoint = (
  { fixedAt, length }: { readonly fixedAt: number; readonly length: number },
  battenM: number,
): number => (fixedAt + battenM - length) / 2;

const loomMass = (item: BalanceItem & { kind: 'loom' }, battenM: number): number => {
  const lowPointM = Math.min(loopLowPoint(item, battenM), battenM, item.fixedAt);
  const hangingM = lowPointM >= 0 ? battenM - lowPointM : Math.max(battenM, 0);
  // A batten higher than the loom is long has torn it off; it never weighs more than all of it.
  return item.massPerLength * Math.min(hangingM, item.length);
};

/** Whether a loom is too short to reach from its fixed point to the batten at a height. */
export const loomTooShort = (item: BalanceItem, battenM: number): boolean => {
  switch (item.kind) {
    case 'loom':
      return Math.abs(battenM - item.fixedAt) > item.length;
    case 'deckLoom':
      return battenM > item.length;
    case 'clear':
    case 'cloth':
    case 'tipping':
    case 'standing':
      return false;
    default:
      return unreachable(item);
  }
};

/** Batten heights at which the carried mass jumps or changes its slope. */
export const breakHeights = (item: BalanceItem): readonly number[] => {
  switch (item.kind) {
    case 'clear':
      return item.drop === undefined || item.pick === undefined
        ? []
        : [item.pick, item.pick + item.drop];
    case 'cloth':
      return [item.tie, item.tie + item.drop];
    case 'tipping':
      return [item.pick, item.pick + item.drop];
    case 'standing':
      return [item.pick + item.drop];
    case 'loom':
      // The loop leaves the deck; and the cable comes taut above or below its fixed point.
      return [
        item.length - item.fixedAt,
        item.fixedAt - item.length,
        item.fixedAt + item.length,
      ].filter((heightM) => heightM > 0);
    case 'deckLoom':
      return [item.length];
    default:
      return unreachable(item);
  }
};

/** The item's whole mass, kg: what its uncertainty is a share of. */
export const fullMass = (item: BalanceItem): number => {
  switch (item.kind) {
    case 'clear':
    case 'cloth':
    case 'tipping':
    case 'standing':
      return item.mass;
    case 'loom':
    case 'deckLoom':
      return item.massPerLength * item.length;
    default:
      return unreachable(item);
  }
};
