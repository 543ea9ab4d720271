import { describe, expect, it } from 'vitest';
import { studentWithin } from './student.ts';

describe('the t distribution', () => {
  /**
   * Upper 2.5 % and 0.5 % points, as the tables at the end of any book on statistics have them
   * (from memory), to the three decimals that they print.
   */
  it.each([
    [1, 12.706, 63.657],
    [2, 4.303, 9.925],
    [3, 3.182, 5.841],
    [4, 2.776, 4.604],
    [5, 2.571, 4.032],
    [10, 2.228, 3.169],
    [11, 2.201, 3.106],
    [20, 2.086, 2.845],
    [23, 2.069, 2.807],
    [30, 2.042, 2.75],
    [60, 2.0, 2.66],
    [120, 1.98, 2.617],
  ])('with %d degrees of freedom holds 95 %% within %d and 99 %% within %d', (freedom, t, far) => {
    expect(studentWithin(0.95, freedom)).toBeCloseTo(t, 3);
    expect(studentWithin(0.99, freedom)).toBeCloseTo(far, 3);
  });

  it('comes to the normal distribution, 1.959964, as the degrees of freedom grow', () => {
    expect(studentWithin(0.95, 499)).toBeCloseTo(1.9647, 4);
    expect(studentWithin(0.95, 200_000)).toBeCloseTo(1.95998, 4);
  });

  it('with one and two degrees has closed forms: tan(π·p/2), and √(2·p²/(1 − p²))', () => {
    for (const share of [0.1, 0.5, 0.9, 0.95, 0.999]) {
      expect(studentWithin(share, 1)).toBeCloseTo(Math.tan((Math.PI * share) / 2), 9);
      expect(studentWithin(share, 2)).toBeCloseTo(
        Math.sqrt((2 * share ** 2) / (1 - share ** 2)),
        9,
      );
    }
  });
});
