/** A date and time as a person reads it, taken from the text as it stands. */

import { ENGLISH, type Voice } from '#texts';

const MONTHS = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
] as const;

const ISO = /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?(Z)?)?/;

type DateParts = { readonly day: string; readonly month: string; readonly year: string };

const dateOf = (tongue: Voice['tongue'], { day, month, year }: DateParts): string =>
  (tongue?.date ?? '{day} {month} {year}')
    .replace('{day}', day)
    .replace('{month}', month)
    .replace('{year}', year);

/**
 * `25 Nov 2026, 14:31`; a time that was written for Greenwich says UTC, so that nobody takes it for
 * the clock on the wall. A text that is no ISO date is given back as it is.
 */
export const sayMoment = (iso: string, voice: Voice = ENGLISH): string => {
  const [, year, month, day, time, zulu] = ISO.exec(iso) ?? [];
  const { tongue } = voice;
  const name = (tongue?.months ?? MONTHS)[Number(month) - 1];
  if (year === undefined || day === undefined || name === undefined) return iso;
  const date = dateOf(tongue, { day: `${Number(day)}`, month: name, year });
  if (time === undefined) return date;
  return `${date}, ${time}${zulu === undefined ? '' : ' UTC'}`;
};

export const isMoment = (text: string): boolean => ISO.test(text);
