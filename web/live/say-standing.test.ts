import { describe, expect, it } from 'vitest';
import { ENGLISH } from '#texts';
import { sayStanding } from './say-standing.ts';

const at = (hours: number, minutes: number, seconds: number, day = 28): number =>
  new Date(2026, 10, day, hours, minutes, seconds).getTime();
const NOW = at(15, 0, 0);

describe('where a device stands, in words', () => {
  it.each([
    ['live', at(14, 2, 11), 'live since 14:02:11'],
    ['catchingUp', at(14, 2, 11), 'catching up'],
    ['catchingUp', null, 'catching up'],
    ['stale', at(9, 5, 7), 'stale since 09:05:07'],
    ['stale', null, 'stale: not the record that this device knows'],
    ['offline', at(14, 2, 11), 'offline since 14:02:11'],
    ['offline', at(14, 2, 11, 27), 'offline since 27 Nov 2026, 14:02'],
    ['offline', null, 'offline'],
  ] as const)('%s %s: %s', (is, sinceServerMs, words) => {
    expect(sayStanding({ is, sinceServerMs }, NOW, ENGLISH)).toBe(words);
  });
});
