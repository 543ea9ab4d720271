import { POUND } from '#quantities';

/**
 * Numbers nearer than this share of their size (of one, where they are smaller) are one number:
 * both were typed in feet or pounds and then added up, and differ in the last binary places only.
 * Nothing is rounded before it is compared, and a limit that is exactly met is not passed.
 */
const SAME_SHARE = 1e-9;

const slackOf = (one: number, other: number): number =>
  SAME_SHARE * Math.max(1, Math.abs(one), Math.abs(other));

export const isAbove = (value: number, limit: number): boolean =>
  value - limit > slackOf(value, limit);

export const isBelow = (value: number, limit: number): boolean => isAbove(limit, value);

/** Heights closer than a micrometre are one height; nobody sets a batten to a micrometre. */
const SAME_HEIGHT_M = 1e-6;

export const isSameHeight = (oneM: number, otherM: number): boolean =>
  Math.abs(oneM - otherM) <= SAME_HEIGHT_M;

export const isPastEitherWay = (imbalanceN: number, limitN: number): boolean =>
  isAbove(Math.abs(imbalanceN), limitN);

/** From this share of a limit on, a person looks. Common practice, no source; the size is ours. */
export const NEAR_LOAD = 0.9;
export const NEAR_ROD = 0.95;

/** How many pounds a kilogram is: the factor between the two ways to type one mass. */
export const POUNDS_PER_KILOGRAM = 1 / POUND;
