import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { BalanceSet } from '#balance';
import { balanceCurve } from '#balance';
import { record } from '../../record.ts';
import { potentialEnergy } from '../energy.ts';
import { bareSet, between, blocksOf } from '../random-sets.ts';

const SEED = 20_274;
const TOLERANCE = 5e-4;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function with one low place is least. */
const leastAt = (energy: (heightM: number) => number, fromM: number, toM: number): number => {
  let [low, high] = [fromM, toM];
  for (let step = 0; step < 120; step += 1) {
    const reachM = GOLDEN * (high - low);
    if (energy(high - reachM) < energy(low + reachM)) high = low + reachM;
    else low = high - reachM;
  }
  return (low + high) / 2;
};

/** The set with bricks that balance it at a height, reckoned from its energy alone. */
const balancedAt = (
  set: BalanceSet,
  heightM: number,
  blocks: Parameters<typeof potentialEnergy>[1],
) => {
  const stepM = 0.01;
  const bare = { ...set, bricks: 0 };
  const heavyJ =
    potentialEnergy(bare, blocks, heightM + stepM) - potentialEnergy(bare, blocks, heightM - stepM);
  return { ...set, bricks: (set.purchase * heavyJ) / (2 * stepM * 9.80665) };
};

const drawn = fc.sample(
  fc.oneof(bareSet(1), bareSet(2)).chain((set) =>
    fc.record({
      set: fc.constant({ ...set, carriage: 0 }),
      blocks: blocksOf(set),
      part: between(0.3, 0.7),
      isCloth: fc.boolean(),
      mass: between(60, 300),
      drop: between(4, 9),
    }),
  ),
  { seed: SEED, numRuns: 150 },
);

it(`VAL-BAL-14 rests are where energy is least, runaways where it is most (seed ${SEED})`, () => {
  const counts = { settles: 0, runs: 0 };
  const errors = drawn.map(({ set, blocks, part, isCloth, mass, drop }) => {
    const cloth = { kind: 'cloth', mass, drop, tie: 0, hem: 0 } as const;
    const hung = isCloth ? { ...set, items: [cloth] } : set;
    const [fromM, toM] = [set.lowStop, isCloth ? Math.min(drop, set.highStop) : set.highStop];
    const balanced = balancedAt(hung, fromM + part * (toM - fromM), blocks);
    const sign = isCloth ? 1 : -1;
    const byEnergyM = leastAt(
      (heightM) => sign * potentialEnergy(balanced, blocks, heightM),
      fromM,
      toM,
    );
    counts[isCloth ? 'settles' : 'runs'] += 1;
    const [found, ...more] = balanceCurve(balanced, fromM, toM).equilibria;
    expect(more).toEqual([]);
    expect(found?.settles).toBe(isCloth);
    return Math.abs((found?.height ?? Number.NaN) - byEnergyM);
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-14', worst, tolerance: TOLERANCE, unit: 'm', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  expect(Math.min(counts.settles, counts.runs)).toBeGreaterThan(40);
});
