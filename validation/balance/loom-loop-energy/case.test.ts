import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { BalanceItem, BalanceSet } from '#balance';
import { imbalanceAt, loomTooShort } from '#balance';
import { record } from '../../record.ts';
import { forceByEnergy, isNear } from '../energy.ts';
import { bareSet, between, drawSets } from '../random-sets.ts';

const SEED = 20_266;
const TOLERANCE = 2e-5;

const loom: fc.Arbitrary<BalanceItem> = fc.oneof(
  fc.record({
    kind: fc.constant('loom' as const),
    massPerLength: between(0.3, 6),
    length: between(12, 40),
    fixedAt: between(0, 15),
  }),
  fc.record({
    kind: fc.constant('deckLoom' as const),
    massPerLength: between(0.3, 6),
    length: between(12, 40),
  }),
);
const hung = fc
  .tuple(fc.oneof(bareSet(1), bareSet(2)), fc.array(loom, { minLength: 1, maxLength: 3 }))
  .map(([set, items]): BalanceSet => ({ ...set, items }));

const changesOf = (item: BalanceItem): readonly number[] => {
  if (item.kind === 'loom') return [item.length - item.fixedAt, item.fixedAt + item.length];
  return item.kind === 'deckLoom' ? [item.length] : [];
};

it(`VAL-BAL-06 the load of a loom is the slope of its energy (seed ${SEED})`, () => {
  const drawn = drawSets(hung, { seed: SEED, count: 300, heights: 20 });
  const errors = drawn.flatMap(({ set, blocks, heights }) =>
    heights
      .filter((heightM) => !set.items.some((item) => loomTooShort(item, heightM)))
      .filter((heightM) => !isNear(heightM, set.items.flatMap(changesOf)))
      .map((heightM) => Math.abs(imbalanceAt(set, heightM) - forceByEnergy(set, blocks, heightM))),
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-06', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  expect(errors.length).toBeGreaterThan(4000);
});
