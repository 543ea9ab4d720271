/**
 * Figures of a form as the language of the reader writes them. A document keeps the point, so what
 * is typed is read before it is written, and refused where the language reads it two ways.
 */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { type DecimalMark, decimalMarkOf, type UnitSystem } from '#quantities';
import type { Voice } from '#texts';
import { readTyped, shownText } from '../grid/typed-marks.ts';
import { exampleOf, type SourcedOf } from './form.ts';
import type { SourcedText } from './sourced-text.ts';

type Read<T> = Result<T, Refusal>;

/** Two ways to read one figure; any other fault of a plain number is the document's to find. */
const TWO_WAYS = 'QTY-011';

/** A plain number is read as the share that it would be, which has the same marks. */
const readNumber = (typed: string, mark: DecimalMark): Result<string, Omit<Refusal, 'path'>> => {
  const read = readTyped('ratio', `${typed} %`, mark);
  if (read.ok) return ok(read.value.slice(0, -2));
  return read.error.code === TWO_WAYS ? fail({ ...read.error, found: `"${typed}"` }) : ok(typed);
};

/** One figure, with the place that a refusal of it names. */
export const readFigure = (
  of: SourcedOf,
  typed: string,
  mark: DecimalMark,
  path: string,
): Read<string> => {
  if (of === 'flag' || of === 'count' || mark === '.' || typed.trim() === '') return ok(typed);
  const read = of === 'number' ? readNumber(typed.trim(), mark) : readTyped(of, typed, mark);
  return read.ok ? read : fail({ ...read.error, path });
};

export const readFigures = (
  of: SourcedOf,
  typed: readonly string[],
  mark: DecimalMark,
  path: string,
): Read<readonly string[]> => {
  const texts: string[] = [];
  for (const each of typed) {
    const read = readFigure(of, each, mark, path);
    if (!read.ok) return read;
    texts.push(read.value);
  }
  return ok(texts);
};

const shareOr = (of: SourcedOf, text: string): SourcedOf => (text.includes('%') ? 'ratio' : of);

/** Value and tolerance of a row. */
export const readSourced = (
  text: SourcedText,
  of: SourcedOf,
  mark: DecimalMark,
  path: string,
): Read<SourcedText> => {
  const value = readFigure(of, text.value, mark, path);
  if (!value.ok) return value;
  const tolerance = readFigure(shareOr(of, text.tolerance), text.tolerance, mark, path);
  return tolerance.ok ? ok({ ...text, value: value.value, tolerance: tolerance.value }) : tolerance;
};

export const shownSourced = (text: SourcedText, mark: DecimalMark): SourcedText => ({
  ...text,
  value: shownText(text.value, mark),
  tolerance: shownText(text.tolerance, mark),
});

/** How a measure may be typed in this house and language. */
export const exampleIn = (of: SourcedOf, house: { readonly units: UnitSystem } & Voice): string =>
  shownText(exampleOf(of, house.units), decimalMarkOf(house));
