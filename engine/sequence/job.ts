/** One question, and the ways of trusting the lock in which it is asked. */
import { assert } from '#outcome';
import type { OrderPhysics, Standing } from '#state';
import { mostFree } from './calm.ts';
import { cheapest } from './cheapest.ts';
import { type HeldLoads, heldLoads, type Trust } from './held-loads.ts';
import { type Loads, loadsOf } from './load.ts';
import { type Reached, reachable } from './reachable.ts';
import { siteOf } from './site.ts';
import { planningLockN } from './states.ts';
import type { Trail } from './trail.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

export type Job = {
  readonly physics: OrderPhysics;
  readonly start: Standing;
  readonly goal: OrderGoal;
  readonly options: OrderOptions;
};

export type Solved = {
  readonly held: HeldLoads;
  readonly loads: Loads;
  readonly trail: Trail;
  readonly optimal: boolean;
  readonly searched: number;
};

export type Answer =
  | { readonly is: 'found'; readonly solved: Solved }
  | { readonly is: 'none' | 'stopped'; readonly searched: number };

export const loadsFor = ({ physics, start, goal, options }: Job): Loads =>
  loadsOf(siteOf(physics, start, goal, options));

type Lock = Pick<Trust, 'lockN'>;

/**
 * The lock at its planning limit; and where that finds nothing, at its nominal limit with the run
 * closed. Last the least strict.
 */
export const locksOf = ({ physics, options }: Job): readonly Lock[] => {
  const [nominalN, planningN] = [physics.lockLimitN, planningLockN(physics)];
  return options.lock === 'nominal'
    ? [{ lockN: nominalN }]
    : [{ lockN: planningN }, { lockN: nominalN }];
};

export const leastStrict = (job: Job): Lock => ({
  lockN: Math.max(...locksOf(job).map(({ lockN }) => lockN)),
});

/** Whether an order exists with the lock trusted as far as it ever is, exposed to so much. */
export const existsWith = (
  job: Job,
  loads: Loads,
  extra: Trust['extra'],
  exposedJ = Number.POSITIVE_INFINITY,
): Reached => {
  const held = heldLoads(loads, { ...leastStrict(job), exposedJ, extra });
  return reachable(loads, held, job.options.statesMost);
};

/** A joule, a brick lifted by a hand's breadth, is nothing; finer than that none is told apart. */
const NOTHING_J = 1;
/** Halvings of what could be set free at the worst: to one part in 64. */
const HALVINGS = 6;

/**
 * The least, J, to which riggers have to be exposed at the batten: what could be set free where
 * they work, if nothing held the set. Known to one part in 64 of the most that could be.
 */
const leastExposed = (job: Job, loads: Loads, extra: Trust['extra'], trail: Trail) => {
  const unlimited = { exposedJ: Number.POSITIVE_INFINITY, searched: 0 };
  if (job.options.lock === 'nominal') return unlimited;
  let searched = 0;
  const isEnough = (exposedJ: number): boolean => {
    const reached = existsWith(job, loads, extra, exposedJ);
    searched += reached.searched;
    return reached.order === 'exists';
  };
  if (isEnough(NOTHING_J)) return { exposedJ: NOTHING_J, searched };
  let [not, enough] = [NOTHING_J, worstOn(trail)];
  if (!isEnough(enough)) return { ...unlimited, searched };
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (not + enough) / 2;
    if (isEnough(middle)) enough = middle;
    else not = middle;
  }
  return { exposedJ: enough, searched };
};

/** The most that any load on the way could set free anywhere, J. */
const worstOn = (last: Trail): number => {
  let mostJ = NOTHING_J;
  for (let trail: Trail | null = last; trail !== null; trail = trail.before) {
    mostJ = Math.max(mostJ, mostFree(trail.place.load.nodes));
  }
  return mostJ;
};

/**
 * The order that exposes riggers least, then under the strictest trust in the lock under which
 * there is one, then the cheapest.
 */
export const solve = (job: Job, loads: Loads, extra: Trust['extra']): Answer => {
  const any = existsWith(job, loads, extra);
  if (any.order !== 'exists') return { is: any.order, searched: any.searched };
  const { exposedJ, searched: more } = leastExposed(job, loads, extra, any.trail);
  let searched = any.searched + more;
  for (const lock of locksOf(job)) {
    const held = heldLoads(loads, { ...lock, exposedJ, extra });
    const reached = reachable(loads, held, job.options.statesMost);
    searched += reached.searched;
    if (reached.order !== 'exists') continue;
    const best = cheapest(loads, held, job.options.statesMost);
    searched += best.searched;
    assert(best.order !== 'none', 'where a way was found there is a best one');
    // A way was found; where the bound comes before the best one, it is told as what it is.
    const isBest = best.order === 'exists';
    const { trail } = isBest ? best : reached;
    return { is: 'found', solved: { held, loads, trail, optimal: isBest, searched } };
  }
  // The least strict lock is the last, and with it a way was found at this very exposure.
  throw new Error('defect: a way that was found is not found again');
};
