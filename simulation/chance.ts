/**
 * Chance from a seed, so that what went wrong can be run again. The mixing of a counter is from
 * memory (a 32-bit SplitMix); its quality is enough to draw weather.
 */
export type Chance = {
  /** From 0 to below 1. */
  readonly next: () => number;
  /** A whole number from 0 to below `count`. */
  readonly below: (count: number) => number;
  readonly isIn: (share: number) => boolean;
  /** Between two values. */
  readonly between: (low: number, high: number) => number;
  readonly oneOf: <T>(list: readonly T[]) => T;
};

export const chanceFrom = (seed: number): Chance => {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed ^= mixed >>> 15;
    mixed = Math.imul(mixed, 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
  const below = (count: number): number => Math.floor(next() * count);
  return {
    next,
    below,
    isIn: (share) => next() < share,
    between: (low, high) => low + next() * (high - low),
    oneOf: (list) => {
      const found = list[below(list.length)];
      if (found === undefined) throw new Error('a choice from an empty list');
      return found;
    },
  };
};
