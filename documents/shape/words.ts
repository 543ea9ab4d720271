/** Words and plain numbers: text, ids, choices, days, moments, counts, yes and no. */
import { describe } from '../json.ts';
import { nearestName } from '../nearest-name.ts';
import type { Place, Shape } from './shape.ts';

const NAME_MAX = 120;
const REMARK_MAX = 2000;

/** Control, surrogate, private and invisible marks, and those that turn the writing round. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/u;

/** Takes a text; null and other types are refused with words that say what is read here. */
export const readText = (value: unknown, place: Place, accepted: string): string | undefined => {
  if (typeof value === 'string') return value;
  place.faults.refuse(value === null ? 'nullWritten' : 'wrongType', place.path, {
    found: describe(value),
    accepted,
  });
  return undefined;
};

const text = (max: number): Shape<string> => ({
  schema: { type: 'string', minLength: 1, maxLength: max, pattern: '\\S' },
  standIn: '',
  read: (value, place) => {
    const words = readText(value, place, `a text of at most ${max} characters`);
    if (words === undefined) return '';
    const refuse = (name: 'textBlank' | 'textTooLong' | 'textHidden', accepted: string): void =>
      place.faults.refuse(name, place.path, { found: describe(words), accepted });
    if (words.trim() === '') refuse('textBlank', 'some words, or the field left out');
    if (words.length > max) refuse('textTooLong', `at most ${max} characters`);
    if (HIDDEN.test(words)) refuse('textHidden', 'letters, digits and signs that print, one line');
    return words;
  },
});

/** Fits a heading, a table, a card. */
export const name: Shape<string> = text(NAME_MAX);
export const remark: Shape<string> = text(REMARK_MAX);

const ID = '^[A-Za-z0-9][A-Za-z0-9._-]{0,31}$';
const isId = new RegExp(ID);

export const id: Shape<string> = {
  schema: { type: 'string', pattern: ID, examples: ['D1', 'upper', 'tower-flat'] },
  standIn: '',
  read: (value, place) => {
    const accepted = '1 to 32 of A-Z a-z 0-9 . _ -, the first a letter or a digit';
    const words = readText(value, place, `an id: ${accepted}`);
    if (words === undefined || isId.test(words)) return words ?? '';
    place.faults.refuse('badId', place.path, { found: describe(words), accepted });
    return '';
  },
};

export const choice = <const T extends string>(choices: readonly [T, ...T[]]): Shape<T> => ({
  schema: { enum: choices },
  standIn: choices[0],
  read: (value, place) => {
    const taken = choices.find((one) => one === value);
    if (taken !== undefined) return taken;
    const list = `one of ${choices.join(', ')}`;
    const words = readText(value, place, list);
    if (words === undefined) return choices[0];
    const near = nearestName(words, choices);
    place.faults.refuse('badChoice', place.path, {
      found: describe(words),
      accepted: near === undefined ? list : `${list}; perhaps ${near}`,
    });
    return choices[0];
  },
});

export const flag: Shape<boolean> = {
  schema: { type: 'boolean' },
  standIn: false,
  read: (value, place) => {
    if (typeof value === 'boolean') return value;
    place.faults.refuse(value === null ? 'nullWritten' : 'wrongType', place.path, {
      found: describe(value),
      accepted: 'true or false',
    });
    return false;
  },
};

const DAY = '^\\d{4}-\\d{2}-\\d{2}$';
const MOMENT = '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2}(\\.\\d{1,3})?)?(Z|[+-]\\d{2}:\\d{2})$';

/** Whether the calendar has the day; a program that takes 30 February moves it to March. */
const isDay = (words: string): boolean => {
  const at = new Date(`${words}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(words);
};

export const day: Shape<string> = {
  schema: { type: 'string', format: 'date', pattern: DAY, examples: ['2026-05-04'] },
  standIn: '',
  read: (value, place) => {
    const accepted = 'a day of the calendar as year-month-day, 2026-05-04';
    const words = readText(value, place, accepted);
    if (words === undefined || (new RegExp(DAY).test(words) && isDay(words))) return words ?? '';
    place.faults.refuse('badDate', place.path, { found: describe(words), accepted });
    return '';
  },
};

export const moment: Shape<string> = {
  schema: { type: 'string', pattern: MOMENT, examples: ['2026-11-25T14:31:00Z'] },
  standIn: '',
  read: (value, place) => {
    const accepted = 'a day and time with its zone, 2026-11-25T14:31:00Z or …T15:31:00+01:00';
    const words = readText(value, place, accepted);
    if (words === undefined) return '';
    const isMoment =
      new RegExp(MOMENT).test(words) &&
      isDay(words.slice(0, 10)) &&
      !Number.isNaN(new Date(words).getTime());
    if (isMoment) return words;
    place.faults.refuse('badMoment', place.path, { found: describe(words), accepted });
    return '';
  },
};

/** Reads a plain JSON number, as counts and shares of one are written. */
export const readNumber = (value: unknown, place: Place, accepted: string): number | undefined => {
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  place.faults.refuse(value === null ? 'nullWritten' : 'wrongType', place.path, {
    found: describe(value),
    accepted,
  });
  return undefined;
};

/** How many: a whole number from `min` to `max`. */
export const count = ({
  min,
  max,
}: {
  readonly min: number;
  readonly max: number;
}): Shape<number> => ({
  schema: { type: 'integer', minimum: min, maximum: max },
  standIn: min,
  read: (value, place) => {
    const accepted = `a whole number from ${min} to ${max}`;
    const many = readNumber(value, place, accepted);
    if (many === undefined) return min;
    const found = describe(many);
    const refuse = (why: 'negative' | 'notWhole' | 'zero' | 'tooFew' | 'countTooLarge'): void =>
      place.faults.refuse(why, place.path, { found, accepted });
    if (many < 0) refuse('negative');
    else if (!Number.isInteger(many)) refuse('notWhole');
    else if (many < min) refuse(many === 0 ? 'zero' : 'tooFew');
    else if (many > max) refuse('countTooLarge');
    return many;
  },
});
