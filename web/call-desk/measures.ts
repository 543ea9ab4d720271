/** A measure typed at the rail, in the units and marks of who types it, and in SI from here on. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { type DecimalMark, type Dimension, parseQuantity } from '#quantities';

/** `path` is what the field is called, for the words of a refusal. */
export const readMeasure = (
  dimension: Dimension,
  typed: string,
  { mark, path }: { readonly mark: DecimalMark; readonly path: string },
): Result<number, Refusal> => {
  const read = parseQuantity(dimension, typed, { signed: true, decimalMark: mark });
  return read.ok ? ok(read.value) : fail({ ...read.error, path });
};

/** Not given is null, which is a value; what is not understood is refused. */
export const readOrNull = (
  dimension: Dimension,
  typed: string,
  named: { readonly mark: DecimalMark; readonly path: string },
): Result<number | null, Refusal> =>
  typed.trim() === '' ? ok(null) : readMeasure(dimension, typed, named);
