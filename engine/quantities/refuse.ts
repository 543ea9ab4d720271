/** Puts a refusal into words: what was found, and what would be taken instead. */
import type { Dimension } from './dimensions.ts';
import { DIMENSION_WORDS } from './dimensions.ts';
import type { RefusalName } from './refusal-codes.ts';
import { REFUSALS } from './refusal-codes.ts';
import { dimensionOf, findRunningUnit, unitsOf } from './units.ts';

/** A refusal without a path: the caller knows which field the text came from. */
export type QuantityRefusal = {
  readonly code: string;
  readonly found: string;
  readonly accepted: string;
};

const CLOTH =
  'oz/yd² or g/m², or a weight per running yard with the width: 25 oz/lin yd @ 54 in; ' +
  'per yd² and per running yard differ by a factor of 1.5 at a width of 54 in';

/** What to write instead, where naming the units is not enough. */
const ADVICE: Readonly<Partial<Record<RefusalName, string>>> = {
  tooLong: 'at most 60 characters',
  foreignDigit: 'the digits 0 to 9',
  signNotTaken: 'a measure without plus or minus',
  signMisplaced: 'one sign, before the whole measure',
  ambiguousComma: '1234 for the thousands or 1.234 for the decimals',
  ambiguousPoint: '1234 for the thousands or 1,234 for the decimals',
  groupedNumber: '1234.5 or 1234,5, without marks or gaps between thousands',
  fractionTooLarge: 'a fraction under one, as in 6 1/2',
  zeroDenominator: 'a fraction whose lower figure is not zero',
  partTooLarge: 'fewer than 12 in after ft, 16 oz after lb, 60 min after h, 60 s after min',
  partNotWhole: 'a whole number before the smaller unit, as in 24 ft 6 in',
  partsDoNotGo: 'one unit, or ft with in, lb with oz, h with min, min with s',
  clothBasisMissing: CLOTH,
  clothWidth: CLOTH,
  bareRatio: '5 %',
  notACount: 'a whole number without a unit',
  tooLarge: 'at most 10¹² in the base unit',
};

const article = (words: string): string => (/^[aeiou]/.test(words) ? `an ${words}` : `a ${words}`);

const withUnit = (dimension: Dimension): string =>
  `${article(DIMENSION_WORDS[dimension])} in ${unitsOf(dimension).join(', ')}`;

const quoted = (text: string): string => {
  const trimmed = text.trim();
  if (trimmed === '') return 'nothing';
  return trimmed.length > 60 ? `${trimmed.slice(0, 60)}…` : trimmed;
};

export const refuse = (name: RefusalName, dimension: Dimension, text: string): QuantityRefusal => ({
  code: REFUSALS[name].code,
  found: quoted(text),
  accepted: ADVICE[name] ?? (dimension === 'count' ? '12' : withUnit(dimension)),
});

/** Refuses a unit that does not measure what was asked for. */
export const refuseUnit = (
  dimension: Dimension,
  written: string,
  text: string,
): QuantityRefusal => {
  const actual = dimensionOf(written);
  if (dimension === 'massPerArea') {
    if (findRunningUnit(written)) return refuse('clothWidth', dimension, text);
    if (actual === 'mass' || actual === 'massPerLength') {
      return refuse('clothBasisMissing', dimension, text);
    }
  }
  if (!actual) return refuse('unknownUnit', dimension, text);
  const name = MASS_OF_FORCE[dimension] === actual ? 'massForForce' : 'otherDimension';
  const found = `${quoted(text)} (${written} measures ${article(DIMENSION_WORDS[actual])})`;
  return { code: REFUSALS[name].code, found, accepted: withUnit(dimension) };
};

/** The slip of writing pounds where pounds-force are meant, for each measure made of a force. */
const MASS_OF_FORCE: Readonly<Partial<Record<Dimension, Dimension>>> = {
  force: 'mass',
  forcePerLength: 'massPerLength',
  pressure: 'massPerArea',
};
