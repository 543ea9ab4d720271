/**
 * Splits an unsigned text into numbers with their units: one as a rule, more where a smaller unit
 * follows a larger one, as in `24'-6 1/2"`, `12 lb 8 oz` or `1 h 30 min`.
 */
import type { Result } from '#outcome';
import { fail, ok } from '#outcome';
import type { DecimalMark } from './dimensions.ts';
import { readNumber } from './parse-number.ts';
import type { RefusalName } from './refusal-codes.ts';
import type { Unit } from './units.ts';
import { dimensionOf, findUnit, nextSmaller } from './units.ts';

export type Term = {
  readonly value: number;
  readonly isWhole: boolean;
  readonly isDoubtful: boolean;
  readonly unit: string;
};

/** Hours, minutes and seconds are the longest chain there is. */
const TERMS_MAX = 3;

export const readTerms = (
  text: string,
  mark: DecimalMark,
): Result<readonly Term[], RefusalName> => {
  const terms: Term[] = [];
  let left = text;
  while (left !== '' && terms.length < TERMS_MAX) {
    const number = readNumber(left, mark);
    if (!number.ok) return number;
    const cut = cutUnit(number.value.rest.trim());
    if (!cut.ok) return cut;
    const { value, isWhole, isDoubtful } = number.value;
    terms.push({ value, isWhole, isDoubtful, unit: cut.value.unit });
    left = cut.value.rest;
  }
  if (terms.length === 0) return fail('noNumber');
  if (left !== '') return fail('partsDoNotGo');
  const fault = faultOfParts(terms);
  return fault ? fail(fault) : ok(terms);
};

type UnitAtHead = { readonly unit: string; readonly rest: string };

/** A known unit may hold a number (`lb/100 ft`), so the whole text is tried before its head. */
const cutUnit = (text: string): Result<UnitAtHead, RefusalName> => {
  if (text === '') return fail('noUnit');
  if (/^[\d.,]/.test(text)) return fail('groupedNumber');
  if (/^[+-]/.test(text)) return fail('signMisplaced');
  const whole = { unit: text, rest: '' };
  if (dimensionOf(text)) return ok(whole);
  const head = /^[^\d.,]*/.exec(text)?.[0] ?? '';
  const join = /[ +-]*$/.exec(head)?.[0] ?? '';
  const unit = head.slice(0, head.length - join.length);
  const rest = text.slice(head.length);
  const isPower = join === '' && /^[234]$/.test(rest);
  if (rest === '' || isPower || !dimensionOf(unit)) return ok(whole);
  return isJoin(unit, join.trim()) ? ok({ unit, rest }) : fail('signMisplaced');
};

/** Between feet and inches the trade writes a dash; anywhere else a dash would be a sign. */
const isJoin = (unit: string, join: string): boolean =>
  join === '' || (join === '-' && findUnit('length', unit)?.label === 'ft');

const faultOfParts = (terms: readonly Term[]): RefusalName | undefined => {
  for (const [index, part] of terms.entries()) {
    const larger = terms[index - 1];
    const known = unitOfAnyKind(part.unit);
    if (!larger || !known) continue;
    const smaller = nextSmaller(unitOfAnyKind(larger.unit));
    if (smaller?.label !== known.label) return 'partsDoNotGo';
    if (!larger.isWhole) return 'partNotWhole';
    if (part.value >= smaller.count) return 'partTooLarge';
  }
  return undefined;
};

const unitOfAnyKind = (written: string): Unit | undefined => {
  const dimension = dimensionOf(written);
  return dimension && findUnit(dimension, written);
};
