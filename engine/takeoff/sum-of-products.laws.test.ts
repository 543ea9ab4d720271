import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Uncertain } from './sum-of-products.ts';
import { sumOfProducts } from './sum-of-products.ts';

const SEED = 20_411;
const RUNS = { seed: SEED, numRuns: 300 };

const magnitude = fc.double({ min: 0, max: 100, noNaN: true });
const factor: fc.Arbitrary<Uncertain> = fc.record({
  key: fc.constantFrom('a', 'b', 'c', 'd'),
  value: magnitude,
  tolerance: fc.double({ min: 0, max: 10, noNaN: true }),
});
/** One quantity has one value and one tolerance wherever it stands. */
const products = fc
  .array(fc.array(factor, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 5 })
  .map((lists) => {
    const first = new Map(lists.flat().map((it) => [it.key, it] as const));
    return lists.map((list) => list.map((it) => first.get(it.key) ?? it));
  });

const slack = (...sizes: readonly number[]): number => 1e-9 * (1 + Math.max(...sizes));

describe(`sums of products, seed ${SEED}`, () => {
  it('never move further than their worst, wherever the quantities lie', () => {
    fc.assert(
      fc.property(
        products,
        fc.record({ a: unit(), b: unit(), c: unit(), d: unit() }),
        (lists, moved) => {
          const { value, worst } = sumOfProducts(lists);
          const shifted = sumOfProducts(
            lists.map((list) =>
              list.map((it) => ({
                ...it,
                value: Math.max(
                  0,
                  it.value + (it.tolerance ?? 0) * moved[it.key as keyof typeof moved],
                ),
              })),
            ),
          );
          expect(Math.abs(shifted.value - value)).toBeLessThanOrEqual(
            (worst ?? 0) + slack(value, worst ?? 0),
          );
        },
      ),
      RUNS,
    );
  });

  it('reach their worst with every quantity at its upper end', () => {
    fc.assert(
      fc.property(products, (lists) => {
        const { value, worst } = sumOfProducts(lists);
        const upper = sumOfProducts(
          lists.map((list) => list.map((it) => ({ ...it, value: it.value + (it.tolerance ?? 0) }))),
        );
        expect(Math.abs(upper.value - value - (worst ?? 0))).toBeLessThanOrEqual(
          slack(upper.value),
        );
      }),
      RUNS,
    );
  });

  it('have a root-sum-square that is never wider than the worst', () => {
    fc.assert(
      fc.property(products, (lists) => {
        const { worst, rootSumSquare } = sumOfProducts(lists);
        expect(rootSumSquare ?? 0).toBeLessThanOrEqual((worst ?? 0) + slack(worst ?? 0));
      }),
      RUNS,
    );
  });

  it('add: two lists together have the sum of their values and of their worst', () => {
    fc.assert(
      fc.property(products, products, (one, other) => {
        const first = sumOfProducts(one);
        const second = sumOfProducts(other);
        const both = sumOfProducts([...one, ...other]);
        expect(Math.abs(both.value - first.value - second.value)).toBeLessThanOrEqual(
          slack(both.value),
        );
        expect(
          Math.abs((both.worst ?? 0) - (first.worst ?? 0) - (second.worst ?? 0)),
        ).toBeLessThanOrEqual(slack(both.worst ?? 0, both.value));
      }),
      RUNS,
    );
  });
});

/** Where a quantity lies between the ends of its tolerance. */
function unit(): fc.Arbitrary<number> {
  return fc.double({ min: -1, max: 1, noNaN: true });
}
