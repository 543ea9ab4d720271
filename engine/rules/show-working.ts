import { type Measure, type MeasureKind, measure, type Term, type Working } from '#findings';
import type { Known } from '#house';
import { sourceOf } from './known-values.ts';

/** A symbol with its number. */
export const term = (
  symbol: string,
  meaning: string,
  value: number,
  kind: MeasureKind,
  source?: string,
): Term => ({
  symbol,
  meaning,
  value: measure(value, kind),
  ...(source === undefined ? {} : { source }),
});

/** A symbol whose number comes from a document, with who says so. */
export const knownTerm = (
  symbol: string,
  meaning: string,
  value: Known<number>,
  kind: MeasureKind,
): Term =>
  value.known
    ? term(symbol, meaning, value.value, kind, sourceOf(value))
    : { symbol, meaning, value: null };

/** A document's value as a fact of a finding; a word where nobody knows it. */
export const fact = (value: Known<number>, kind: MeasureKind): Measure | string =>
  value.known ? measure(value.value, kind) : 'not known';

/** How a number came about, and the limit that it was held against. */
export const workedOut = (
  title: string,
  formula: string,
  terms: readonly Term[],
  result: Term,
  given: {
    readonly source: string;
    readonly limit?: { readonly value: Measure; readonly source: string };
    readonly omits?: string;
  },
): Working => ({
  title,
  formula,
  terms,
  result,
  limit: given.limit ?? null,
  source: given.source,
  ...(given.omits === undefined ? {} : { omits: given.omits }),
});
