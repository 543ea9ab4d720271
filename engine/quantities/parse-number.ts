/**
 * Reads the number at the head of a text: `24`, `7.48`, `7,48`, `.110`, `3/8`, `6 1/2`, `6-1/2`.
 * A text that can be read as two numbers is not read at all.
 */
import type { Result } from '#outcome';
import { fail, ok } from '#outcome';
import type { DecimalMark } from './dimensions.ts';
import type { RefusalName } from './refusal-codes.ts';

export type NumberAtHead = {
  readonly value: number;
  /** Written with digits only, so that a smaller unit may follow. */
  readonly isWhole: boolean;
  /** Three digits after the decimal mark that elsewhere mark thousands: its unit decides. */
  readonly isDoubtful: boolean;
  readonly rest: string;
};

const NUMERAL = /^(?:\d[\d.,]*|[.,]\d+)/;
const FRACTION = /^(\d+) ?\/ ?(\d+)(?![\d.,])/;
const MIXED = /^(\d+)(?: |-)(\d+) ?\/ ?(\d+)(?![\d.,])/;

export const readNumber = (text: string, mark: DecimalMark): Result<NumberAtHead, RefusalName> => {
  const mixed = MIXED.exec(text);
  if (mixed) return readFraction(mixed[1], mixed[2], mixed[3], text.slice(mixed[0].length));
  const fraction = FRACTION.exec(text);
  if (fraction) return readFraction('0', fraction[1], fraction[2], text.slice(fraction[0].length));
  const numeral = NUMERAL.exec(text)?.[0];
  if (numeral === undefined) return fail('noNumber');
  const value = readNumeral(numeral, mark);
  if (!value.ok) return value;
  const rest = text.slice(numeral.length);
  const isWhole = /^\d+$/.test(numeral);
  return ok({ value: value.value, isWhole, isDoubtful: LIKE_THOUSANDS[','].test(numeral), rest });
};

const readFraction = (
  whole = '',
  upper = '',
  lower = '',
  rest: string,
): Result<NumberAtHead, RefusalName> => {
  if (Number(lower) === 0) return fail('zeroDenominator');
  if (Number(upper) >= Number(lower)) return fail('fractionTooLarge');
  return ok({
    value: Number(whole) + Number(upper) / Number(lower),
    isWhole: false,
    isDoubtful: false,
    rest,
  });
};

/** Well-formed thousands, by the mark between their groups. */
const LIKE_THOUSANDS = { ',': /^[1-9]\d{0,2},\d{3}$/, '.': /^[1-9]\d{0,2}\.\d{3}$/ } as const;

/**
 * The mark of the language is always the decimal mark, as this program prints it. The other one is
 * taken for it too, unless the same text is also a well-formed number of thousands: where a point
 * is the mark `1,234` is refused and `0,475` is not; where a comma is, `1.234` is refused.
 */
const readNumeral = (numeral: string, mark: DecimalMark): Result<number, RefusalName> => {
  if (mark === '.' && LIKE_THOUSANDS[','].test(numeral)) return fail('ambiguousComma');
  if (mark === ',' && LIKE_THOUSANDS['.'].test(numeral)) return fail('ambiguousPoint');
  if (/^\d*[.,]?\d+$/.test(numeral)) return ok(Number(numeral.replace(',', '.')));
  return fail(/[.,]$/.test(numeral) ? 'noNumber' : 'groupedNumber');
};
