/** How old a copy is, in words that a person reads at a glance. */
import { sayMoment } from '#sheets';
import { phrase, type Voice } from '#texts';
import type { Moment } from '../keeping/copies.ts';

const MINUTE_MS = 60_000;
const HOUR_MIN = 60;
const DAY_MIN = 24 * HOUR_MIN;

/** From the second day on days and hours are enough. */
const LONG_MIN = 2 * DAY_MIN;

const two = (number: number): string => String(number).padStart(2, '0');

/** By the clock on the wall where this device is, without a zone. */
const onTheWall = (ms: number): string => {
  const date = new Date(ms);
  const day = [date.getFullYear(), two(date.getMonth() + 1), two(date.getDate())].join('-');
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}`;
};

/**
 * `3 h 10 min ago`, rounded up: what is shown is never older than is said. Both moments are by the
 * clock of this device; where that was put back in between, the age is not known.
 */
export const sayAge = (ageMs: number, voice: Voice): string => {
  if (!Number.isFinite(ageMs) || ageMs < 0) {
    return phrase(voice, 'how long ago is not known, for the clock of this device was put back');
  }
  const all = Math.ceil(ageMs / MINUTE_MS);
  if (all <= 1) return phrase(voice, 'less than a minute ago');
  if (all < HOUR_MIN) return phrase(voice, '{minutes} min ago', { minutes: all });
  if (all < LONG_MIN) {
    const hours = Math.floor(all / HOUR_MIN);
    return phrase(voice, '{hours} h {minutes} min ago', { hours, minutes: all % HOUR_MIN });
  }
  const ofHours = Math.ceil(all / HOUR_MIN);
  return phrase(voice, '{days} days {hours} h ago', {
    days: Math.floor(ofHours / 24),
    hours: ofHours % 24,
  });
};

/** `as of 27 Nov 2026, 14:02, 3 h 10 min ago`: the server's time and the device's age. */
export const sayAsOf = (read: Moment, nowMs: number, voice: Voice): string =>
  phrase(voice, 'as of {moment}, {age}', {
    moment: sayMoment(onTheWall(read.serverMs), voice),
    age: sayAge(nowMs - read.deviceMs, voice),
  });
