import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { BalanceSet } from '#balance';
import { imbalanceAt, imbalanceBelow } from '#balance';
import { record } from '../../record.ts';
import { forceByEnergy, isNear, potentialEnergy } from '../energy.ts';
import { bareSet, between, drawSets } from '../random-sets.ts';

const SEED = 20_263;
const TOLERANCE = 2e-5;

type Cloth = Extract<BalanceSet['items'][number], { kind: 'cloth' }>;
const cloth: fc.Arbitrary<Cloth> = fc.record({
  kind: fc.constant('cloth' as const),
  mass: between(10, 300),
  drop: between(2, 12),
  tie: between(0, 1),
  hem: between(0, 40),
});
const hung = fc
  .tuple(fc.oneof(bareSet(1), bareSet(2)), fc.array(cloth, { minLength: 1, maxLength: 3 }))
  .map(([set, items]): BalanceSet => ({ ...set, items }));

const changesOf = (set: BalanceSet): readonly number[] =>
  set.items.flatMap((item) => (item.kind === 'cloth' ? [item.tie, item.tie + item.drop] : []));

it(`VAL-BAL-03 cloth on the deck is no load: U is the slope of the energy (seed ${SEED})`, () => {
  const drawn = drawSets(hung, { seed: SEED, count: 300, heights: 20 });
  const errors = drawn.flatMap(({ set, blocks, heights }) =>
    heights
      .filter((heightM) => !isNear(heightM, changesOf(set)))
      .map((heightM) => Math.abs(imbalanceAt(set, heightM) - forceByEnergy(set, blocks, heightM))),
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-03', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  expect(errors.length).toBeGreaterThan(4000);
});

it(`VAL-BAL-03 crossing the hem costs what both sides of it say (seed ${SEED})`, () => {
  const drawn = drawSets(hung, { seed: SEED, count: 300, heights: 1 });
  const halfM = 0.005;
  const errors = drawn.flatMap(({ set, blocks }) => {
    const [first] = set.items;
    if (first?.kind !== 'cloth') return [];
    const hemM = first.tie + first.drop;
    const others = changesOf({ ...set, items: set.items.slice(1) });
    if (isNear(hemM, others) || hemM + 1 > set.highStop) return [];
    const rises = [-halfM, halfM].map((offsetM) => potentialEnergy(set, blocks, hemM + offsetM));
    const costJ = (rises[1] ?? 0) - (rises[0] ?? 0);
    // Straight on each side, so each half counts at its middle.
    const saidJ =
      (halfM / 2) *
      (imbalanceAt(set, hemM - halfM) +
        imbalanceBelow(set, hemM) +
        imbalanceAt(set, hemM) +
        imbalanceAt(set, hemM + halfM));
    return [Math.abs(costJ - saidJ) / (2 * halfM)];
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-03', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(errors.length).toBeGreaterThan(200);
});
