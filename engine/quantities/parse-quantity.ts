/** Reads what a person typed into the base unit of its dimension, or says why not. */
import type { Result } from '#outcome';
import { fail, ok } from '#outcome';
import type { DecimalMark, Dimension } from './dimensions.ts';
import { readTerms, type Term } from './parse-terms.ts';
import { hasForeignDigit, plainText } from './plain-text.ts';
import { printsThousandths } from './print-forms.ts';
import type { RefusalName } from './refusal-codes.ts';
import type { QuantityRefusal } from './refuse.ts';
import { refuse, refuseUnit } from './refuse.ts';
import { findRunningUnit, findUnit } from './units.ts';

export type { QuantityRefusal } from './refuse.ts';

export type ParseOptions = {
  /** Takes a leading minus or plus. Without it a signed text is refused. */
  readonly signed?: boolean;
  /** Of the language that is typed in; a point unless told. */
  readonly decimalMark?: DecimalMark;
};

const LENGTH_MAX = 60;
/** Well above steel's modulus in Pa (2·10¹¹), the largest number that a user has cause to type. */
const SI_MAX = 1e12;

type Answer = Result<number, QuantityRefusal>;

/**
 * The value of `text` as a number in the SI unit of `dimension` (a ratio as a fraction of one, an
 * angle in radians). Never guesses: a missing unit, a unit of another dimension, a comma that can
 * be read two ways and a cloth weight without its basis are refused, each with its own code.
 */
export const parseQuantity = (
  dimension: Dimension,
  text: string,
  options: ParseOptions = {},
): Answer => {
  if (text.length > LENGTH_MAX) return fail(refuse('tooLong', dimension, text));
  const plain = plainText(text);
  if (plain === '') return fail(refuse('empty', dimension, text));
  if (hasForeignDigit(plain)) return fail(refuse('foreignDigit', dimension, text));
  const signs = /^[+-][+ -]*/.exec(plain)?.[0] ?? '';
  const signCount = signs.replace(/ /g, '').length;
  if (signCount > 1) return fail(refuse('signMisplaced', dimension, text));
  if (signCount === 1 && !options.signed) return fail(refuse('signNotTaken', dimension, text));
  const mark = options.decimalMark ?? '.';
  const size = parseSize(dimension, plain.slice(signs.length), { text, mark });
  if (!size.ok) return size;
  if (size.value > SI_MAX) return fail(refuse('tooLarge', dimension, text));
  return ok(signs.startsWith('-') && size.value !== 0 ? -size.value : size.value);
};

/** `text` is what was typed, for the refusal. */
type TypedText = { readonly text: string; readonly mark: DecimalMark };

/**
 * `1,250 kg` is a kilogram and a quarter to one hand and a tonne and a quarter to another, and
 * both hang in theatres: refused in every language. Only where a comma is the decimal mark, and
 * this program itself prints thousandths of that unit, does `7,480 m` read as it was printed.
 */
const isReadTwoWays = (dimension: Dimension, { isDoubtful, unit }: Term): boolean =>
  isDoubtful && !printsThousandths(dimension, findUnit(dimension, unit)?.label);

/** The size without its sign. */
const parseSize = (dimension: Dimension, unsigned: string, typed: TypedText): Answer => {
  const { text, mark } = typed;
  if (dimension === 'count') return parseCount(unsigned, text);
  if (unsigned.includes('@')) return parseRunningCloth(dimension, unsigned, typed);
  const terms = readTerms(unsigned, mark);
  if (!terms.ok) return fail(refuse(faultFor(dimension, terms.error), dimension, text));
  let si = 0;
  for (const term of terms.value) {
    const unit = findUnit(dimension, term.unit);
    if (!unit) return fail(refuseUnit(dimension, term.unit, text));
    if (isReadTwoWays(dimension, term)) return fail(refuse('ambiguousComma', dimension, text));
    si += term.value * unit.si;
  }
  return ok(si);
};

/** A ratio without its sign has its own refusal, since no unit in the usual sense is missing. */
const faultFor = (dimension: Dimension, fault: RefusalName): RefusalName =>
  dimension === 'ratio' && fault === 'noUnit' ? 'bareRatio' : fault;

const parseCount = (unsigned: string, text: string): Answer =>
  /^\d+$/.test(unsigned) ? ok(Number(unsigned)) : fail(refuse('notACount', 'count', text));

/**
 * Cloth sold by the running length becomes a mass per area by its width.
 *
 *     σ = q / b
 *
 *     q  kg/m   runningKgPerM  what a running metre weighs
 *     b  m      widthM         width of the cloth on the bolt
 *     σ  kg/m²  returned
 *
 * Source  definition of the two weights; worked in VAL-QTY-03
 * Holds   b > 0
 * Omits   nothing; selvedges count in the width as they do in the weight
 * Check   25 oz per running yard at 54 in is 0.565 kg/m² (VAL-QTY-03)
 */
const parseRunningCloth = (dimension: Dimension, unsigned: string, typed: TypedText): Answer => {
  const { text, mark } = typed;
  const [running = '', width = '', ...more] = unsigned.split('@').map((part) => part.trim());
  if (dimension !== 'massPerArea' || more.length > 0) {
    return fail(refuse('clothWidth', dimension, text));
  }
  const terms = readTerms(running, mark);
  if (!terms.ok) return fail(refuse(terms.error, dimension, text));
  const [term] = terms.value;
  const unit = term && terms.value.length === 1 ? findRunningUnit(term.unit) : undefined;
  const widthM = parseSize('length', width, typed);
  if (!term || term.isDoubtful || !unit || !widthM.ok || widthM.value === 0) {
    return fail(refuse('clothWidth', dimension, text));
  }
  const runningKgPerM = term.value * unit.si;
  return ok(runningKgPerM / widthM.value);
};
