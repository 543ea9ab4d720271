import { describe, expect, it } from 'vitest';
import { sumOfProducts } from './sum-of-products.ts';

const factor = (key: string, value: number, tolerance: number | null) => ({
  key,
  value,
  tolerance,
});

describe('a sum of products', () => {
  it('of nothing is exactly nothing', () => {
    expect(sumOfProducts([])).toEqual({ value: 0, worst: 0, rootSumSquare: 0 });
  });

  it('takes every factor at its worst at once', () => {
    // 2 × 3 = 6, and 2.2 × 3.3 = 7.26.
    const { value, worst } = sumOfProducts([[factor('a', 2, 0.2), factor('b', 3, 0.3)]]);
    expect(value).toBe(6);
    expect(worst).toBeCloseTo(1.26, 12);
  });

  it('adds the worst of products linearly and their root-sum-square beside it', () => {
    const sum = sumOfProducts([[factor('a', 30, 3)], [factor('b', 40, 4)], [factor('c', 60, 12)]]);
    expect(sum).toEqual({ value: 130, worst: 19, rootSumSquare: 13 });
  });

  it('knows a quantity again where it stands twice: it is off once, not independently', () => {
    const sum = sumOfProducts([[factor('w', 30, 3)], [factor('w', 30, 3)]]);
    expect(sum.rootSumSquare).toBe(6);
  });

  it('has no uncertainty where one tolerance is unknown, and still a value', () => {
    const sum = sumOfProducts([[factor('a', 2, 0.2)], [factor('b', 3, null)]]);
    expect(sum).toEqual({ value: 5, worst: null, rootSumSquare: null });
  });
});
