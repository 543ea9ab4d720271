import { describe, expect, it } from 'vitest';
import { crossing } from './crossing.ts';
import { factorise, solveWith } from './linear.ts';

describe('a square system', () => {
  it('is solved with rows exchanged where the first pivot is nothing', () => {
    // 2y = 4 and 3x + y = 5: x = 1, y = 2.
    const factors = factorise([0, 2, 3, 1], 2);
    expect(factors === null ? null : solveWith(factors, [4, 5])).toEqual([1, 2]);
  });

  it('of Hilbert has inverse entries that are whole numbers', () => {
    // The inverse of the Hilbert matrix of order 4 begins 16, −120, 240, −140 (Hilbert 1894).
    const rows = Array.from({ length: 16 }, (_, i) => 1 / (Math.floor(i / 4) + (i % 4) + 1));
    const factors = factorise(rows, 4);
    const column = factors === null ? [] : solveWith(factors, [1, 0, 0, 0]);
    for (const [index, whole] of [16, -120, 240, -140].entries()) {
      expect(column[index]).toBeCloseTo(whole, 8);
    }
  });

  it('that says the same twice has no answer', () => {
    expect(factorise([1, 2, 2, 4], 2)).toBeNull();
  });
});

describe('a crossing', () => {
  it('is found to the last place, from either side', () => {
    const span = { from: 0, to: 2 };
    const up = crossing(
      (x) => x * x - 2,
      (x) => 2 * x,
      span,
    );
    const down = crossing(
      (x) => 2 - x * x,
      (x) => -2 * x,
      span,
    );
    expect(up).toBeCloseTo(Math.SQRT2, 15);
    expect(down).toBeCloseTo(Math.SQRT2, 15);
  });

  it('at an end is that end', () => {
    expect(
      crossing(
        (x) => x,
        () => 1,
        { from: 0, to: 1 },
      ),
    ).toBe(0);
    expect(
      crossing(
        (x) => x - 1,
        () => 1,
        { from: 0, to: 1 },
      ),
    ).toBeCloseTo(1, 15);
  });

  it('is found where Newton alone would run away, and where the slope is nothing', () => {
    // Newton on the cube root leaps twice as far to the other side each time.
    const root = crossing(Math.cbrt, (x) => 1 / (3 * Math.cbrt(x) ** 2), { from: -1, to: 2 });
    expect(Math.abs(root)).toBeLessThan(1e-15);
    const flat = crossing(
      (x) => (x - 0.3) ** 3,
      (x) => 3 * (x - 0.3) ** 2,
      { from: 0, to: 1 },
    );
    expect(flat).toBeCloseTo(0.3, 5);
  });
});
