/** A set without its show bricks, and what may be put on: the input of `mixForSet`. */
import type { BrickStock, SpreaderPlates } from './problem.ts';

/** N at the batten, without show bricks; positive is batten heavy. */
export type Baseline = { readonly minN: number; readonly maxN: number };

/** What holds the set at one height, and U there without show bricks. */
export type MixHold = {
  readonly heightM: number;
  readonly baselineN: number;
  /** N that may be held against coming in (batten heavy) and against going out (arbor heavy). */
  readonly inN: number;
  readonly outN: number;
};

export type MixTask = {
  readonly purchase: 1 | 2;
  /** Extremes of U over the free range; before and after each release in view, one each. */
  readonly variants: readonly Baseline[];
  /** The kinds that the house allows as show bricks. */
  readonly kinds: readonly BrickStock[];
  /** kg, carriage and pipe weight. Spreader plates are counted here, none of them in it. */
  readonly baseMass: number;
  /** m of pipe weight on the rod. */
  readonly baseThickness: number;
  /** m of usable rod. */
  readonly stackHeight: number;
  /** Mass 0 where the carriage's mass has the plates already. */
  readonly spreader?: SpreaderPlates;
  /** kg, the arbor's rating for all that is on it, itself included. */
  readonly massLimit?: number;
  readonly holds?: readonly MixHold[];
};
