/** A value of the house in words, and who stands behind it; what is not known says so. */
import type { House, Known } from '#house';
import { phrase } from '#texts';
import { groundsWords } from './say-set.ts';

export const notKnown = (house: House): string => phrase(house, 'not known');

/** `not known (not surveyed)`, or the value with its grounds: `8093 lbf (house rule: plan)`. */
export const withGrounds = <T>(
  known: Known<T>,
  house: House,
  say: (value: T) => string,
): string => {
  if (known.known) return `${say(known.value)} (${groundsWords(known.provenance, house)})`;
  return known.why === undefined ? notKnown(house) : `${notKnown(house)} (${known.why})`;
};
