/** One question, and the ways of trusting the lock in which it is asked. */
import { assert } from '#outcome';
import type { OrderPhysics, Standing } from '#state';
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

/**
 * The lock at its planning limit; and where that finds nothing, at its nominal limit with the run
 * closed, but for work at the batten, which no closed run can hold. Last the least strict.
 */
export const trustsOf = ({ physics, options }: Job): readonly Omit<Trust, 'extra'>[] => {
  const [nominalN, planningN] = [physics.lockLimitN, planningLockN(physics)];
  return options.lock === 'nominal'
    ? [{ lockN: nominalN }]
    : [{ lockN: planningN }, { lockN: nominalN }];
};

/** Whether an order exists with the lock trusted as far as it ever is. */
export const existsWith = (job: Job, loads: Loads, extra: Trust['extra']): Reached => {
  const trust = trustsOf(job).at(-1);
  if (trust === undefined) return { order: 'none', searched: 0 };
  return reachable(loads, heldLoads(loads, { ...trust, extra }), job.options.statesMost);
};

/** The cheapest order under the strictest trust under which there is one. */
export const solve = (job: Job, loads: Loads, extra: Trust['extra']): Answer => {
  let searched = 0;
  let isStopped = false;
  for (const trust of trustsOf(job)) {
    const held = heldLoads(loads, { ...trust, extra });
    const reached = reachable(loads, held, job.options.statesMost);
    searched += reached.searched;
    isStopped ||= reached.order === 'stopped';
    if (reached.order !== 'exists') continue;
    const best = cheapest(loads, held, job.options.statesMost);
    searched += best.searched;
    assert(best.order !== 'none', 'where a way was found there is a best one');
    // A way was found; where the bound comes before the best one, it is told as what it is.
    const isBest = best.order === 'exists';
    const { trail } = isBest ? best : reached;
    return { is: 'found', solved: { held, loads, trail, optimal: isBest, searched } };
  }
  return { is: isStopped ? 'stopped' : 'none', searched };
};
