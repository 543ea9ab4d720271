/** Random numbers from a seed, the same on every machine: for cases that run anywhere. */
export type Draw = {
  /** A whole number from `from` to `to`, both included. */
  readonly whole: (from: number, to: number) => number;
  readonly between: (from: number, to: number) => number;
  /** The same, but one time in sixteen an end itself, where faults like to live. */
  readonly toEnds: (from: number, to: number) => number;
  readonly chance: (share: number) => boolean;
  readonly oneOf: <T>(choices: readonly [T, ...T[]]) => T;
  /** As many of one make as a whole number drawn from two says. */
  readonly several: <T>(from: number, to: number, make: Make<T>) => readonly T[];
};

/** Makes one thing out of the next random numbers. */
export type Make<T> = (draw: Draw) => T;

/** So many of one make from a seed, each time the same. */
export const drawn = <T>(
  make: Make<T>,
  { seed, count }: { readonly seed: number; readonly count: number },
): readonly T[] => {
  const draw = drawFrom(seed);
  return Array.from({ length: count }, () => make(draw));
};

/**
 * A 32-bit generator by multiplying and mixing. Good enough to spread cases, and nothing else.
 *
 * Source  common practice: a Weyl sequence with a finalising mix (mulberry32), from memory
 */
export const drawFrom = (seed: number): Draw => {
  let state = seed >>> 0;
  const unit = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (from: number, to: number): number => from + Math.floor(unit() * (to - from + 1));
  const draw: Draw = {
    whole,
    between: (from, to) => from + unit() * (to - from),
    toEnds: (from, to) => {
      const end = whole(0, 31);
      if (end > 1) return from + unit() * (to - from);
      return end === 0 ? from : to;
    },
    chance: (share) => unit() < share,
    oneOf: (choices) => choices[whole(0, choices.length - 1)] ?? choices[0],
    several: (from, to, make) => Array.from({ length: whole(from, to) }, () => make(draw)),
  };
  return draw;
};
