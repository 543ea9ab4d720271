/** Rounds to a step and writes the digits. No locale, so that every machine prints alike. */
import { assert } from '#outcome';

/** Between a number and its unit, and inside `6 1/2`, so that no line break parts them. */
export const NO_BREAK_SPACE = '\u00A0';
/** A true minus, which nobody takes for the dash of feet and inches. */
export const MINUS = '\u2212';

/**
 * `nearest` halves go away from zero. `up` goes away from zero: a load never prints smaller than
 * it is. `down` goes toward minus infinity: a margin never prints larger than it is, and one that
 * is short by any amount prints as short.
 */
export type Rounding = 'nearest' | 'up' | 'down';

/**
 * A value this near to a whole step lies on it. 35 lb in kilograms, divided again by the pound,
 * gives 35.000000000000007; it prints as 35 lb and not as 36 lb.
 */
const ON_STEP = 1e-9;
/** Above this a double no longer tells whole numbers apart. */
const STEPS_MAX = Number.MAX_SAFE_INTEGER;

/** The whole number of steps nearest, above or below. Never −0. */
export const wholeSteps = (steps: number, round: Rounding): number => {
  assert(Math.abs(steps) < STEPS_MAX, `${steps} is too large to print`);
  const size = Math.abs(steps);
  const nearest = Math.floor(size + 0.5);
  const isOnStep = Math.abs(size - nearest) <= ON_STEP * Math.max(1, size);
  const whole = isOnStep ? nearest : wholeSize(size, steps < 0, round);
  return steps < 0 && whole !== 0 ? -whole : whole;
};

const wholeSize = (size: number, isNegative: boolean, round: Rounding): number => {
  if (round === 'nearest') return Math.floor(size + 0.5);
  const isOutward = round === 'up' || isNegative;
  return isOutward ? Math.ceil(size) : Math.floor(size);
};

/** 7480 thousandths are 7.480. */
export const decimalText = (steps: number, decimals: number): string =>
  signed(steps, (Math.abs(steps) / 10 ** decimals).toFixed(decimals));

/** 13 halves are 6 1/2; the fraction is in lowest terms. `parts` is a power of two. */
export const fractionText = (steps: number, parts: number): string => {
  const size = Math.abs(steps);
  const whole = Math.floor(size / parts);
  const fraction = lowestTerms(size % parts, parts);
  if (fraction === '') return signed(steps, `${whole}`);
  return signed(steps, whole === 0 ? fraction : `${whole}${NO_BREAK_SPACE}${fraction}`);
};

const lowestTerms = (upper: number, lower: number): string => {
  if (upper === 0) return '';
  return upper % 2 === 0 ? lowestTerms(upper / 2, lower / 2) : `${upper}/${lower}`;
};

const signed = (steps: number, size: string): string => (steps < 0 ? `${MINUS}${size}` : size);
