/** Sets of every size that a theatre could have, drawn with a seed. */
import type { BalanceSet } from '#balance';
import { type Draw, drawn, type Make } from '../draw.ts';
import type { Blocks } from './energy.ts';

/** Bare sets of one purchase. Every wire and arbor stays below its blocks over the travel. */
export const bareSet =
  (purchase: 1 | 2): Make<BalanceSet> =>
  ({ whole, toEnds }) => {
    const lowStop = toEnds(0.5, 1.5);
    const travelM = toEnds(8, 22);
    return {
      purchase,
      lines: whole(3, 9),
      lineMassPerLength: toEnds(0.05, 0.4),
      batten: toEnds(30, 150),
      carriage: toEnds(20, 120),
      bricks: toEnds(0, 700),
      lowStop,
      wireEndAbove: toEnds(0, 0.8),
      items: [],
      highStop: lowStop + travelM,
      arborTopAtLow: lowStop + travelM + 1.5,
    };
  };

/** Of single or of double purchase, either alike. */
export const anySet: Make<BalanceSet> = (draw) => bareSet(draw.oneOf([1, 2]))(draw);

/** Loft and head blocks at any heights above the highest batten: they must make no difference. */
export const blocksOf = (set: BalanceSet, { several, toEnds }: Draw): Blocks => {
  const topM = Math.max(set.highStop, set.arborTopAtLow) + 2;
  const block = (): number => toEnds(topM, topM + 8);
  return {
    loftM: several(set.lines, set.lines, block),
    headM: block(),
    deadEndM: block(),
    arborCentreBelowM: toEnds(0.5, 3),
  };
};

export type Drawn = {
  readonly set: BalanceSet;
  readonly blocks: Blocks;
  readonly heights: readonly number[];
};

export const drawSets = (
  sets: Make<BalanceSet>,
  {
    seed,
    count,
    heights,
  }: { readonly seed: number; readonly count: number; readonly heights: number },
): readonly Drawn[] =>
  drawn(
    (draw): Drawn => {
      const set = sets(draw);
      return {
        set,
        blocks: blocksOf(set, draw),
        heights: draw.several(heights, heights, ({ toEnds }) => toEnds(set.lowStop, set.highStop)),
      };
    },
    { seed, count },
  );
