/** Line sets that stand one behind the other at an even pitch, as a house document holds them. */
import type { Refusal, Result } from '#outcome';
import { fail, ok, refusal } from '#outcome';
import { FOOT, INCH, parseQuantity, type UnitSystem } from '#quantities';
import type { JsonObject } from './json.ts';
import { describe } from './json.ts';
import { REFUSALS } from './refusal-codes.ts';

export type RowOfSets = {
  /** Number of the first and of the last: `1` and `27`, `D1` and `D4`. */
  readonly from: string;
  readonly to: string;
  /** Place of the first upstage of the plaster line, and how much further upstage each next is. */
  readonly first: string;
  readonly pitch: string;
  readonly units: UnitSystem;
};

/** More than any house has; a slip such as 1 to 1000 is told and not done. */
const ROW_MOST = 200;

type Numbered = { readonly before: string; readonly number: number; readonly digits: number };

const numbered = (id: string): Numbered | null => {
  const [, before, digits] = /^([A-Za-z._-]*)(\d{1,4})$/.exec(id.trim()) ?? [];
  if (before === undefined || digits === undefined) return null;
  return { before, number: Number(digits), digits: digits.length };
};

const NUMBERS = 'two numbers in order, "1" and "27" or "D1" and "D4"';

const idsOf = ({ from, to }: RowOfSets): Result<readonly string[], Refusal> => {
  const [first, last] = [numbered(from), numbered(to)];
  const badId = (path: string, found: string) =>
    fail(refusal(REFUSALS.badId.code, path, { found: describe(found), accepted: NUMBERS }));
  if (first === null) return badId('from', from);
  if (last === null || last.before !== first.before) return badId('to', to);
  const count = last.number - first.number + 1;
  if (count < 1 || count > ROW_MOST) {
    const { code } = count < 1 ? REFUSALS.tooFew : REFUSALS.tooMany;
    const found = `${count} sets from ${from} to ${to}`;
    return fail(refusal(code, 'to', { found, accepted: `1 to ${ROW_MOST} sets` }));
  }
  return ok(
    Array.from({ length: count }, (_, index) => {
      const digits = String(first.number + index).padStart(first.digits, '0');
      return `${first.before}${digits}`;
    }),
  );
};

/** A ten-thousandth of an inch or of a metre: far finer than a tape, so that pitches add up. */
const DECIMALS = 4;

const placeText = (placeM: number, { first, units }: RowOfSets): string => {
  if (units === 'metric') return `${shortest(placeM)} m`;
  // A house that measures in feet alone reads feet again.
  const isFeet = /ft|'/.test(first) && !/in|"/.test(first);
  return isFeet ? `${shortest(placeM / FOOT)} ft` : `${shortest(placeM / INCH)} in`;
};

const shortest = (value: number): string => String(Number(value.toFixed(DECIMALS)));

/**
 * Id and place of each set of the row: the first at `first`, each next a pitch further upstage.
 *
 *     y_i = first + i · pitch
 *
 * Refused are numbers that are no row, and measures that do not read. Whether the ids are free and
 * the places lie in the house is asked when the house is read.
 */
export const setsInRow = (row: RowOfSets): Result<readonly JsonObject[], readonly Refusal[]> => {
  const ids = idsOf(row);
  const first = parseQuantity('length', row.first, { signed: true });
  const pitch = parseQuantity('length', row.pitch, { signed: true });
  const refusals = [
    ...(ids.ok ? [] : [ids.error]),
    ...(first.ok ? [] : [{ ...first.error, path: 'first' }]),
    ...(pitch.ok ? [] : [{ ...pitch.error, path: 'pitch' }]),
  ];
  if (!ids.ok || !first.ok || !pitch.ok) return fail(refusals);
  return ok(
    ids.value.map((id, index) => ({ id, y: placeText(first.value + index * pitch.value, row) })),
  );
};
