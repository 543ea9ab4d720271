/** The mixes nearest to a wanted mass: all that are equally good, and the next best. */
import { countsAt, type Halves, halvesOf } from './halves.ts';
import { byGap, byHabit, firstCounts, firstGuesses, type Mix, mixOf } from './mix.ts';
import { Reach, walkPairs } from './pairs.ts';
import { type KindRange, MASS_TIE, type MixProblem } from './problem.ts';

export type ClosestMixes = {
  /** Least gap, then fewest bricks: all of them. Empty when no mix passes the limits. */
  readonly best: readonly Mix[];
  /** How many more of the best there are than `best` holds. */
  readonly omitted: number;
  readonly next: readonly Mix[];
  /** True when every mix was looked at or ruled out. */
  readonly proven: boolean;
  readonly pairs: number;
};

/** Equally good mixes that are kept one by one; more than these are counted only. */
export const BEST_MAX = 1000;

/** kg. A new best must be better by this, so that noise does not restart the search. */
const STEP = 1e-10;

const brickCount = (_kind: KindRange, count: number): number => count;

/** Counts on either side of the first guess, tried when the whole range has too many mixes. */
const WIDTHS = [Number.POSITIVE_INFINITY, 64, 32, 16, 8, 4, 2, 1, 0];

export type Opened = {
  readonly problem: MixProblem;
  readonly halves: Halves;
  /** False when the ranges had to be cut down around the first guess. */
  readonly whole: boolean;
};

const narrowed = (problem: MixProblem, width: number): MixProblem => {
  if (width === Number.POSITIVE_INFINITY) return problem;
  const centre = firstCounts(problem);
  const kinds = problem.kinds.map((kind, place) => ({
    ...kind,
    from: Math.max(kind.from, (centre[place] ?? 0) - width),
    to: Math.min(kind.to, (centre[place] ?? 0) + width),
  }));
  return { ...problem, kinds };
};

/** The halves of a problem, cut down as far as memory asks for, and whether they were. */
export const openProblem = (
  problem: MixProblem,
  massTo: number,
  costOf: (kind: KindRange, count: number) => number = brickCount,
): Opened => {
  const thicknessTo = problem.windows.reduce((top, window) => Math.max(top, window.thicknessTo), 0);
  for (const width of WIDTHS) {
    const cut = narrowed(problem, width);
    const halves = halvesOf(cut, { massTo, thicknessTo, costOf });
    if (halves !== undefined) {
      return { problem: cut, halves, whole: width === Number.POSITIVE_INFINITY };
    }
  }
  throw new Error('defect: a single mix has too many parts');
};

/**
 * How far the next-best mixes can lie: as far as the `next`-th guess that is worse than the best
 * guess, since the true best is no worse than that one.
 */
const farthest = (guesses: readonly Mix[], next: number): number => {
  const sorted = [...guesses].sort((a, b) => byGap(a, b) || a.bricks - b.bricks);
  const best = sorted[0];
  if (best === undefined) return Number.POSITIVE_INFINITY;
  if (next === 0) return best.gap + MASS_TIE;
  const worse = sorted.filter((mix) => byGap(best, mix) !== 0 || mix.bricks > best.bricks);
  const last = worse[next - 1];
  return last === undefined ? Number.POSITIVE_INFINITY : last.gap + MASS_TIE;
};

/** Keeps the best and the next as mixes come in, once the least gap is known. */
const gathering = (problem: MixProblem, leastGap: number, nextMax: number) => {
  const habit = byHabit(problem);
  const isBest = (mix: Mix): boolean => mix.gap <= leastGap + MASS_TIE;
  const byRank = (a: Mix, b: Mix): number =>
    (isBest(a) ? 0 : 1) - (isBest(b) ? 0 : 1) ||
    (isBest(a) ? 0 : byGap(a, b)) ||
    a.bricks - b.bricks ||
    habit(a, b);
  let best: Mix[] = [];
  let next: Mix[] = [];
  let found = 0;
  const addNext = (mixes: readonly Mix[]): void => {
    next = [...next, ...mixes].sort(byRank).slice(0, nextMax);
  };
  return {
    add: (mix: Mix): void => {
      const fewest = best[0]?.bricks ?? Number.POSITIVE_INFINITY;
      if (!isBest(mix) || mix.bricks > fewest) {
        addNext([mix]);
        return;
      }
      if (mix.bricks < fewest) {
        addNext(best);
        [best, found] = [[], 0];
      }
      found += 1;
      if (best.length < BEST_MAX) best.push(mix);
    },
    /** Whether a mix of so many bricks, so far off, could still be kept. */
    wants: (gap: number, bricks: number): boolean => {
      const last = next.at(-1);
      if (last === undefined || next.length < nextMax || !isBest(last)) return true;
      return gap <= leastGap + MASS_TIE && bricks <= last.bricks;
    },
    /** kg; a mix farther off than this is no longer of use. */
    reach: (): number =>
      next.length < nextMax
        ? Number.POSITIVE_INFINITY
        : Math.max(leastGap, next.at(-1)?.gap ?? 0) + MASS_TIE,
    result: () => ({
      best: best.sort((a, b) => habit(a, b)),
      omitted: found - best.length,
      next,
    }),
  };
};

const leastGapOf = (opened: Opened, reach: Reach): { gap: number; proven: boolean } => {
  let least = reach.gap;
  const walked = walkPairs(opened.problem, opened.halves, reach, (_left, _right, gap) => {
    if (gap > least) return;
    least = gap;
    reach.gap = gap - STEP;
  });
  return { gap: least, proven: walked };
};

/** In a range that was cut down, the guesses outside it are better than nothing. */
const liesIn = (problem: MixProblem, mix: Mix): boolean =>
  problem.kinds.every((kind, place) => {
    const count = mix.counts[place] ?? 0;
    return count >= kind.from && count <= kind.to;
  });

/**
 * The mixes with the least gap to the wanted mass, then the fewest bricks, and `next` mixes after
 * those in the same order. Exact: each mix is either measured or shown to lie farther off.
 */
export const closestMixes = (problem: MixProblem, nextMax: number): ClosestMixes => {
  const guesses = firstGuesses(problem);
  const far = farthest(guesses, nextMax);
  const opened = openProblem(problem, Math.min(problem.massTo, problem.want + far));
  const bestGuess = guesses.reduce((least, mix) => Math.min(least, mix.gap), far);
  const reach = new Reach(bestGuess, Number.POSITIVE_INFINITY);
  const least = leastGapOf(opened, reach);
  const gathered = gathering(problem, least.gap, nextMax);
  if (!opened.whole) guesses.filter((mix) => !liesIn(opened.problem, mix)).forEach(gathered.add);
  reach.gap = far;
  const counts = problem.kinds.map(() => 0);
  const walked = walkPairs(opened.problem, opened.halves, reach, (left, right, gap, bricks) => {
    if (!gathered.wants(gap, bricks)) return;
    countsAt(opened.problem, opened.halves.left, left, counts);
    countsAt(opened.problem, opened.halves.right, right, counts);
    const mix = mixOf(problem, [...counts]);
    if (mix !== undefined) gathered.add(mix);
    reach.gap = Math.min(far, gathered.reach());
  });
  const proven = opened.whole && least.proven && walked;
  return { ...gathered.result(), proven, pairs: reach.pairs };
};
