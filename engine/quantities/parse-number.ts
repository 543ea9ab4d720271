/**
 * Reads the number at the head of a text: `24`, `7.48`, `7,48`, `.110`, `3/8`, `6 1/2`, `6-1/2`.
 * A text that can be read as two numbers is not read at all.
 */
import type { Result } from '#outcome';
import { fail, ok } from '#outcome';
import type { RefusalName } from './refusal-codes.ts';

export type NumberAtHead = {
  readonly value: number;
  /** Written with digits only, so that a smaller unit may follow. */
  readonly isWhole: boolean;
  readonly rest: string;
};

const NUMERAL = /^(?:\d[\d.,]*|[.,]\d+)/;
const FRACTION = /^(\d+) ?\/ ?(\d+)(?![\d.,])/;
const MIXED = /^(\d+)(?: |-)(\d+) ?\/ ?(\d+)(?![\d.,])/;

export const readNumber = (text: string): Result<NumberAtHead, RefusalName> => {
  const mixed = MIXED.exec(text);
  if (mixed) return readFraction(mixed[1], mixed[2], mixed[3], text.slice(mixed[0].length));
  const fraction = FRACTION.exec(text);
  if (fraction) return readFraction('0', fraction[1], fraction[2], text.slice(fraction[0].length));
  const numeral = NUMERAL.exec(text)?.[0];
  if (numeral === undefined) return fail('noNumber');
  const value = readNumeral(numeral);
  if (!value.ok) return value;
  const rest = text.slice(numeral.length);
  return ok({ value: value.value, isWhole: /^\d+$/.test(numeral), rest });
};

const readFraction = (
  whole = '',
  upper = '',
  lower = '',
  rest: string,
): Result<NumberAtHead, RefusalName> => {
  if (Number(lower) === 0) return fail('zeroDenominator');
  if (Number(upper) >= Number(lower)) return fail('fractionTooLarge');
  return ok({ value: Number(whole) + Number(upper) / Number(lower), isWhole: false, rest });
};

/**
 * A point is always a decimal point, as this program prints it. A comma is a decimal comma unless
 * the same text is also a well-formed number of thousands: `1,234` is refused, `0,475` is not.
 */
const readNumeral = (numeral: string): Result<number, RefusalName> => {
  if (/^[1-9]\d{0,2},\d{3}$/.test(numeral)) return fail('ambiguousComma');
  if (/^\d*[.,]?\d+$/.test(numeral)) return ok(Number(numeral.replace(',', '.')));
  return fail(/[.,]$/.test(numeral) ? 'noNumber' : 'groupedNumber');
};
