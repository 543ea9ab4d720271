/** The mixes inside a band of mass that cost least, by a cost that adds up brick by brick. */
import { openProblem } from './closest-mixes.ts';
import { countsAt } from './halves.ts';
import { byGap, byHabit, firstGuesses, type Mix, mixOf } from './mix.ts';
import { Reach, walkPairs } from './pairs.ts';
import type { KindRange, MixProblem } from './problem.ts';

export type CheapestMixes = {
  /** Least cost first, then the rank's own order, then least gap. */
  readonly mixes: readonly Mix[];
  readonly proven: boolean;
  readonly pairs: number;
};

export type Cost = {
  /** Cost of so many bricks of a kind; rising with the count. */
  readonly of: (kind: KindRange, count: number) => number;
  /** Decides between mixes of one cost, before the gap does. */
  readonly thenBy?: (a: Mix, b: Mix) => number;
};

/** Costs nearer than this are one cost. */
const COST_TIE = 1e-9;

const costOfMix = (problem: MixProblem, cost: Cost, mix: Mix): number =>
  problem.kinds.reduce((sum, kind, place) => sum + cost.of(kind, mix.counts[place] ?? 0), 0);

/** The `keep` cheapest mixes of the problem, whose mass limits must both be finite. */
export const cheapestMixes = (problem: MixProblem, cost: Cost, keep: number): CheapestMixes => {
  const habit = byHabit(problem);
  const price = (mix: Mix): number =>
    Math.round(costOfMix(problem, cost, mix) / COST_TIE) * COST_TIE;
  const byRank = (a: Mix, b: Mix): number =>
    price(a) - price(b) || (cost.thenBy?.(a, b) ?? 0) || byGap(a, b) || habit(a, b);
  const guesses = [...firstGuesses(problem)].sort(byRank);
  const lastGuess = guesses[keep - 1];
  const reach = new Reach(
    Number.POSITIVE_INFINITY,
    lastGuess === undefined ? Number.POSITIVE_INFINITY : price(lastGuess) + COST_TIE,
  );
  const opened = openProblem(problem, problem.massTo, cost.of);
  let mixes: Mix[] = opened.whole ? [] : guesses.slice(0, keep);
  const counts = problem.kinds.map(() => 0);
  const walked = walkPairs(opened.problem, opened.halves, reach, (left, right, _gap, priced) => {
    if (priced > reach.cost) return;
    countsAt(opened.problem, opened.halves.left, left, counts);
    countsAt(opened.problem, opened.halves.right, right, counts);
    const mix = mixOf(problem, [...counts]);
    if (mix === undefined || mixes.some((other) => byRank(other, mix) === 0)) return;
    mixes = [...mixes, mix].sort(byRank).slice(0, keep);
    const last = mixes[keep - 1];
    if (last !== undefined) reach.cost = price(last) + COST_TIE;
  });
  return { mixes, proven: opened.whole && walked, pairs: reach.pairs };
};
