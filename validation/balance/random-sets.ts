/** Sets of every size that a theatre could have, drawn with a seed. */
import fc from 'fast-check';
import type { BalanceSet } from '#balance';
import type { Blocks } from './energy.ts';

export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

/** Bare sets of one purchase. Every wire and arbor stays below its blocks over the travel. */
export const bareSet = (purchase: 1 | 2): fc.Arbitrary<BalanceSet> =>
  fc
    .record({
      lines: fc.integer({ min: 3, max: 9 }),
      lineMassPerLength: between(0.05, 0.4),
      batten: between(30, 150),
      carriage: between(20, 120),
      bricks: between(0, 700),
      lowStop: between(0.5, 1.5),
      travelM: between(8, 22),
      wireEndAbove: between(0, 0.8),
    })
    .map(({ travelM, ...set }) => ({
      ...set,
      purchase,
      items: [],
      highStop: set.lowStop + travelM,
      arborTopAtLow: set.lowStop + travelM + 1.5,
    }));

/** Loft and head blocks at any heights above the highest batten: they must make no difference. */
export const blocksOf = (set: BalanceSet): fc.Arbitrary<Blocks> => {
  const topM = Math.max(set.highStop, set.arborTopAtLow) + 2;
  const block = between(topM, topM + 8);
  return fc.record({
    loftM: fc.array(block, { minLength: set.lines, maxLength: set.lines }),
    headM: block,
    deadEndM: block,
    arborCentreBelowM: between(0.5, 3),
  });
};

export const heightsIn = (set: BalanceSet, parts: readonly number[]): readonly number[] =>
  parts.map((part) => set.lowStop + part * (set.highStop - set.lowStop));

export const parts = (count: number): fc.Arbitrary<readonly number[]> =>
  fc.array(between(0, 1), { minLength: count, maxLength: count });

export type Drawn = {
  readonly set: BalanceSet;
  readonly blocks: Blocks;
  readonly heights: readonly number[];
};

export const drawSets = (
  sets: fc.Arbitrary<BalanceSet>,
  {
    seed,
    count,
    heights,
  }: { readonly seed: number; readonly count: number; readonly heights: number },
): readonly Drawn[] =>
  fc.sample(
    sets.chain((set) =>
      fc
        .tuple(blocksOf(set), parts(heights))
        .map(([blocks, drawn]) => ({ set, blocks, heights: heightsIn(set, drawn) })),
    ),
    { seed, numRuns: count },
  );
