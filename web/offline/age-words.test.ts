import { describe, expect, it } from 'vitest';
import { ENGLISH } from '#texts';
import { sayAge, sayAsOf } from './age-words.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

describe('the age of a copy', () => {
  it.each([
    [0, 'less than a minute ago'],
    [MINUTE, 'less than a minute ago'],
    // Rounded up: 61 s is said as 2 min, for it is older than one.
    [MINUTE + 1000, '2 min ago'],
    [58 * MINUTE, '58 min ago'],
    [60 * MINUTE - 1, '1 h 0 min ago'],
    [3 * HOUR + 10 * MINUTE, '3 h 10 min ago'],
    [2 * DAY - MINUTE, '47 h 59 min ago'],
    [2 * DAY, '2 days 0 h ago'],
    [2 * DAY + 1, '2 days 1 h ago'],
    [9 * DAY + 23 * HOUR + MINUTE, '10 days 0 h ago'],
  ])('%d ms are %s', (ageMs, words) => {
    expect(sayAge(ageMs, ENGLISH)).toBe(words);
  });

  it('is not made up where the clock of the device went back', () => {
    expect(sayAge(-1, ENGLISH)).toContain('not known');
    expect(sayAge(Number.NaN, ENGLISH)).toContain('not known');
  });

  it('says when by the clock of the server and how long ago by that of the device', () => {
    // A device an hour ahead of its server: noon there is 13:00 here, and 20 min have gone by.
    const noon = new Date(2026, 10, 27, 12, 0).getTime();
    const read = { serverMs: noon, deviceMs: noon + HOUR };
    expect(sayAsOf(read, noon + HOUR + 20 * MINUTE, ENGLISH)).toBe(
      'as of 27 Nov 2026, 12:00, 20 min ago',
    );
  });
});
