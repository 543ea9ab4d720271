import { assert } from '#outcome';
import { GRAVITY } from '#quantities';
import { type ClosestMixes, closestMixes } from './closest-mixes.ts';
import { fewestBricks } from './fewest-bricks.ts';
import { heldBackBy, type MixLimit } from './held-back.ts';
import type { Infeasible } from './infeasible.ts';
import { type Layout, layoutOf } from './layout.ts';
import type { Mix } from './mix.ts';
import { massWindow } from './mix-limits.ts';
import type { Baseline, MixTask } from './mix-task.ts';
import { noMixForSet } from './no-mix.ts';
import { type BrickStock, problemOf, type StackTask } from './problem.ts';

export type RankedMix = Layout & {
  readonly kinds: number;
  /** N, the largest imbalance either way over all variants. */
  readonly worstN: number;
  /** kg, base, bricks and plates. */
  readonly arborMass: number;
};

export type FoundMix = {
  readonly chosen: RankedMix;
  /** The next best two other mixes, in the order of choice. */
  readonly next: readonly RankedMix[];
  /** The mix with the least worst imbalance of all, which the choice may pass over. */
  readonly leastWorst: RankedMix;
  /** N. Mixes no worse than the least worst by more than this count as equally good. */
  readonly bandN: number;
  /** Limits that keep the least worst above what the smallest brick allows. */
  readonly heldBackBy: readonly MixLimit[];
  /** True only when every other mix was measured or ruled out. */
  readonly optimal: boolean;
  readonly searched: number;
};

export type MixResult = FoundMix | { readonly infeasible: Infeasible };

const NEXT_BEST = 2;

const extremesOf = (variants: readonly Baseline[]): Baseline => {
  assert(variants.length > 0, 'a set has at least one variant');
  for (const { minN, maxN } of variants) {
    assert(minN <= maxN, 'the least imbalance is not above the greatest');
  }
  return {
    minN: Math.min(...variants.map(({ minN }) => minN)),
    maxN: Math.max(...variants.map(({ maxN }) => maxN)),
  };
};

/** kg, half the smallest brick of which there is one; 0 where there is none. */
const halfSmallest = (kinds: readonly BrickStock[]): number => {
  const masses = kinds.filter(({ stock }) => stock > 0).map(({ mass }) => mass);
  return masses.length === 0 ? 0 : Math.min(...masses) / 2;
};

const taskOf = (set: MixTask, { minN, maxN }: Baseline): StackTask => ({
  bricks: set.kinds,
  spreader: set.spreader ?? null,
  stackHeight: set.stackHeight,
  baseThickness: set.baseThickness,
  want: (((minN + maxN) / 2) * set.purchase) / GRAVITY,
  ...massWindow(set),
});

const found = (
  set: MixTask,
  task: StackTask,
  extremes: Baseline,
  closest: ClosestMixes,
): FoundMix => {
  const problem = problemOf(task);
  const half = halfSmallest(set.kinds);
  const leastGap = closest.best[0]?.gap ?? 0;
  const ranked = (mix: Mix): RankedMix => {
    const shiftN = (GRAVITY * mix.mass) / set.purchase;
    return {
      ...layoutOf(task, problem, mix),
      kinds: mix.kinds,
      worstN: Math.max(extremes.maxN - shiftN, shiftN - extremes.minN),
      arborMass: set.baseMass + mix.mass,
    };
  };
  const inBand = fewestBricks(problem, leastGap + half, 1 + NEXT_BEST);
  const isListed = (mix: Mix): boolean =>
    inBand.mixes.some((other) => other.counts.join() === mix.counts.join());
  const outside = [...closest.best, ...closest.next].filter((mix) => !isListed(mix));
  const [chosen, ...next] = [...inBand.mixes, ...outside].slice(0, 1 + NEXT_BEST).map(ranked);
  const leastWorst = closest.best[0];
  assert(chosen !== undefined && leastWorst !== undefined, 'the least worst mix is in its band');
  return {
    chosen,
    next,
    leastWorst: ranked(leastWorst),
    bandN: (GRAVITY * half) / set.purchase,
    heldBackBy: heldBackBy(set, task, leastGap, half),
    optimal: closest.proven && inBand.proven,
    searched: closest.pairs + inBand.pairs,
  };
};

/**
 * Show bricks that keep the worst imbalance of a set least: the second of the two brick problems.
 *
 *     s = g·(Σ m·x + p·P) / r        minimise  max over variants of  max( U⁺ − s, s − U⁻ )
 *
 *     U⁺, U⁻  N   maxN, minN  extremes of U over the free range, without show bricks
 *     m       kg  mass of a brick            x  -  bricks of each kind, returned as counts
 *     p       kg  mass of a spreader plate   P  -  plates of the whole stack, as in stackToTarget
 *     r       -   purchase: one brick on the arbor is m/r at the batten (C29)
 *     s       N   what bricks and plates take off U at every height
 *
 * A brick shifts U by the same at every height, so the worst imbalance is half the spread of all
 * variants and the distance of s from their middle: the nearest reachable mass is the best.
 *
 * The choice: among the mixes whose worst imbalance is at most g·m/(2·r) above the least, with m
 * the smallest brick in stock (half of what one such brick shifts), the fewest bricks, then the
 * fewest kinds, then the fewest spreader plates, then the least worst. `leastWorst` is given
 * beside it. Stock, rod, mass limit and every hold (−outN ≤ U − s ≤ inN) bound all of them.
 *
 * Source  the-job.md C28, C29; calculations.md 5
 * Holds   masses above zero; the extremes hold over the whole range in which the set is free
 * Omits   whether the bricks can be put on in any order (C65): a mix that balances best but
 *         cannot be loaded is for `sequence` to refuse
 * Check   VAL-BRK-02 and VAL-BRK-05
 */
export const mixForSet = (set: MixTask): MixResult => {
  const extremes = extremesOf(set.variants);
  const task = taskOf(set, extremes);
  const closest = closestMixes(problemOf(task), NEXT_BEST);
  return closest.best.length === 0
    ? { infeasible: noMixForSet(set, task, closest) }
    : found(set, task, extremes, closest);
};
