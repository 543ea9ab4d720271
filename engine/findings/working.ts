import type { Measure } from './measure.ts';

/** One symbol of a formula: what it means, its value, and who says so. */
export type Term = {
  readonly symbol: string;
  readonly meaning: string;
  /** Null where the value is unknown; the result is then unknown too. */
  readonly value: Measure | null;
  readonly source?: string;
};

/**
 * How a result came about: the formula in symbols, each symbol with its number, the result, and
 * the limit it is held against. The page prints the formula twice: as symbols and as numbers.
 */
export type Working = {
  readonly title: string;
  /** Symbols separated from operators by spaces, so that numbers can be put in their place. */
  readonly formula: string;
  readonly terms: readonly Term[];
  readonly result: Term;
  readonly limit: { readonly value: Measure; readonly source: string } | null;
  /** Where the formula comes from. */
  readonly source: string;
  /** What the model leaves out, and which way that errs. */
  readonly omits?: string;
};
