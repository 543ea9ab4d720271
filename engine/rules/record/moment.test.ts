import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { momentMs } from './moment.ts';

describe('a moment in text', () => {
  it('reads moments of a published calendar', () => {
    // RFC 3339 section 5.8 gives these as examples; the numbers are those of POSIX time.
    expect(momentMs('1985-04-12T23:20:50.52Z')).toBeCloseTo(482_196_050_520, 6);
    expect(momentMs('1996-12-19T16:39:57-08:00')).toBe(851_042_397_000);
    expect(momentMs('1937-01-01T12:00:27.87+00:20')).toBeCloseTo(-1_041_337_172_130, 6);
    expect(momentMs('1970-01-01T00:00Z')).toBe(0);
  });

  it('agrees with the platform’s own calendar (seed 1582)', () => {
    const from = new Date('1900-01-01T00:00:00Z');
    const to = new Date('2400-12-31T23:59:59Z');
    fc.assert(
      fc.property(fc.date({ min: from, max: to, noInvalidDate: true }), (date) => {
        expect(momentMs(date.toISOString())).toBeCloseTo(date.getTime(), 3);
      }),
      { seed: 1582, numRuns: 300 },
    );
  });

  it.each([
    '2026-11-25T14:31:00',
    '2026-11-25',
    '2026-02-29T00:00:00Z',
    '2100-02-29T00:00:00Z',
    '2026-13-01T00:00:00Z',
    '2026-04-31T00:00:00Z',
    '2026-11-00T00:00:00Z',
    '2026-11-25T24:00:00Z',
    '2026-11-25T14:60:00Z',
    '2026-11-25T14:31:60Z',
    '2026-11-25T14:31:00+24:00',
    'yesterday',
  ])('does not read %s', (text) => {
    expect(momentMs(text)).toBeNull();
  });

  it('knows the leap day of a century that is divisible by 400', () => {
    expect(momentMs('2000-02-29T00:00:00Z')).toBe(951_782_400_000);
  });
});
