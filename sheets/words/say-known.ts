/** A value of the house in words, and who stands behind it; what is not known says so. */
import type { Known } from '#house';
import { groundsWords } from './say-set.ts';

export const NOT_KNOWN = 'not known';

/** `not known (not surveyed)`, or the value with its grounds: `8093 lbf (house rule: plan)`. */
export const withGrounds = <T>(known: Known<T>, say: (value: T) => string): string => {
  if (known.known) return `${say(known.value)} (${groundsWords(known.provenance)})`;
  return known.why === undefined ? NOT_KNOWN : `${NOT_KNOWN} (${known.why})`;
};
