/**
 * A document is written with a point before its decimals, whoever types: so it means the same in
 * every language. A person whose language has a comma types and reads a comma.
 */
import type { Result } from '#outcome';
import { type DecimalMark, type Dimension, parseQuantity, type QuantityRefusal } from '#quantities';

/** A written measure as a person of that language reads it. */
export const shownText = (text: string, mark: DecimalMark): string =>
  mark === '.' ? text : text.replace(/(\d)\.(\d)/g, '$1,$2');

/** What goes into the document; refused where the language reads it two ways. */
export const readTyped = (
  dimension: Dimension,
  typed: string,
  mark: DecimalMark,
): Result<string, QuantityRefusal> => {
  if (mark === '.' || typed.trim() === '') return { ok: true, value: typed };
  const read = parseQuantity(dimension, typed, { signed: true, decimalMark: mark });
  return read.ok ? { ok: true, value: typed.replaceAll(',', '.') } : read;
};
