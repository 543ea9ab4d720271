import { describe, expect, it } from 'vitest';
import type { OrderNode } from '#state';
import { calmSpans, mostFree } from './calm.ts';

const node = (heightM: number, belowN: number, aboveN = belowN): OrderNode => ({
  heightM,
  belowN,
  aboveN,
  contact: { lowN: Math.min(belowN, aboveN), highN: Math.max(belowN, aboveN) },
  doubtN: 0,
});

/** Batten heavy by 100 N over ten metres: m·g·h, with nothing else in it. */
const HEAVY = [node(0, 100), node(10, 100)];

/** From 60 N batten heavy to 40 N arbor heavy, nothing at 6 m. */
const TURNING = [node(0, 60), node(10, -40)];

/** What calm is rounded by, J. */
const MICRO = 1e-6;

describe('what could be set free', () => {
  it('is force times height where the force is one', () => {
    expect(mostFree(HEAVY)).toBeCloseTo(1000, 9);
    expect(calmSpans(HEAVY, 250)).toEqual([{ lo: 0, hi: expect.closeTo(2.5, 6) }]);
    expect(calmSpans(HEAVY, 0)).toEqual([{ lo: 0, hi: expect.closeTo(0, 6) }]);
  });

  it('is a triangle where the force turns: least at both ends, most between them', () => {
    // F = 60 h − 5 h²: 0 at the deck, 180 J at 6 m, 100 J at 10 m.
    expect(mostFree(TURNING)).toBeCloseTo(180, 9);
    const [low, high] = calmSpans(TURNING, 100);
    // 60 h − 5 h² = 100 at h = 2 and h = 10.
    expect(low).toEqual({ lo: 0, hi: expect.closeTo(2, 6) });
    expect(high).toEqual({ lo: expect.closeTo(10, 6), hi: 10 });
  });

  it('does not jump where a piece leaves the deck, as the force does', () => {
    const lifted = [node(0, -50), node(4, -50, 50), node(8, 50)];
    // F falls by 200 J to the contact and rises again.
    expect(mostFree(lifted)).toBeCloseTo(200, 9);
    expect(calmSpans(lifted, 0)).toEqual([{ lo: expect.closeTo(4, 6), hi: expect.closeTo(4, 6) }]);
    expect(calmSpans(lifted, 50)).toEqual([{ lo: expect.closeTo(3, 6), hi: expect.closeTo(5, 6) }]);
  });

  it('is nothing, everywhere, where nothing is out of balance', () => {
    const level = [node(0, 0), node(4, 0), node(10, 0)];
    expect(mostFree(level)).toBe(0);
    expect(calmSpans(level, 0)).toEqual([{ lo: 0, hi: 10 }]);
  });

  it('is rounded by a millionth of a joule, for the better', () => {
    // F = h / 1000: 5.001 thousandths of a joule at 5.001 m, and 5 are asked for; and 0.001 more.
    const slight = [node(0, 0.001), node(10, 0.001)];
    expect(calmSpans(slight, 0.005)).toEqual([{ lo: 0, hi: expect.closeTo(5.001, 9) }]);
    // F rises by just that much, and stays.
    const step = [node(0, MICRO), node(1, MICRO, 0), node(2, 0)];
    expect(calmSpans(step, 0)).toEqual([{ lo: 0, hi: 2 }]);
  });

  it('may touch the limit at one height only', () => {
    // F, in millionths: 0, 1 at 1 m, −1 at 2 m; the limit of −1 and rounding is 0.
    const ends = [node(0, MICRO), node(1, MICRO, -2 * MICRO), node(2, -2 * MICRO)];
    expect(calmSpans(ends, 0)).toEqual([
      { lo: 0, hi: 0 },
      { lo: expect.closeTo(1.5, 9), hi: 2 },
    ]);
    // A valley of −1 at 1 m just touches it beside one of −2 at 3 m, which is 2x² − 4x = −1 wide.
    const valleys = [
      node(0, -2 * MICRO),
      node(2, 2 * MICRO, -4 * MICRO),
      node(4, 4 * MICRO, 4 * MICRO),
    ];
    expect(calmSpans(valleys, 0)).toEqual([
      { lo: 1, hi: 1 },
      { lo: expect.closeTo(3 - Math.SQRT1_2, 9), hi: expect.closeTo(3 + Math.SQRT1_2, 9) },
    ]);
  });

  it('finds the far end of a valley or a hill that begins on the limit itself', () => {
    // F = x² − 2x, in millionths: 0 at 0 and 2 m, least −1 at 1 m.
    expect(calmSpans([node(0, -2 * MICRO), node(3, 4 * MICRO)], 0)).toEqual([
      { lo: 0, hi: expect.closeTo(2, 9) },
    ]);
    // F = x − x²: 0 at 0 and 1 m, −2 at 2 m, and 1 more than that is asked for.
    expect(calmSpans([node(0, MICRO), node(2, -3 * MICRO)], MICRO)).toEqual([
      { lo: 0, hi: 0 },
      { lo: expect.closeTo(1, 9), hi: 2 },
    ]);
  });

  it('is everything there is at a single height', () => {
    expect(mostFree([node(3, 500)])).toBe(0);
    expect(calmSpans([node(3, 500)], 0)).toEqual([{ lo: 3, hi: 3 }]);
    expect(calmSpans([], 0)).toEqual([]);
  });
});
