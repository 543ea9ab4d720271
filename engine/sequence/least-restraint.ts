import { unreachable } from '#outcome';
import type { Trust } from './held-loads.ts';
import { existsWith, type Job } from './job.ts';
import type { Loads } from './load.ts';
import { planningLockN } from './states.ts';
import type { OrderOptions } from './types.ts';

export type LeastRestraint =
  | {
      readonly is: 'least';
      readonly extra: NonNullable<Trust['extra']>;
      /** States searched for the proof that one step less has no order. */
      readonly refutedStates: number;
    }
  | { readonly is: 'none'; readonly searched: number }
  | { readonly is: 'stopped'; readonly searched: number };

/** Ratings are tried up to so many steps: some 60 t at a step of 5 lb. */
const STEPS_MOST = 2 ** 15;

type Way = Pick<NonNullable<Trust['extra']>, 'resists' | 'as'>;

/**
 * The smallest rating, in whole steps, of one restraint over the whole travel against one way, with
 * which an order exists. More hold never takes an order away, so halving finds it, and the last
 * rating refused is one step less, searched to its end. What is made fast goes before a line.
 *
 * Source  the-job.md C56
 */
export const leastRestraint = (job: Job, loads: Loads, line: 'line' | 'hauled'): LeastRestraint => {
  const { restraint } = job.options;
  // Where none may be rigged, the least of either way says what would be asked for.
  const ways = waysOf(restraint === 'none' ? 'either' : restraint, line);
  let best: LeastRestraint = { is: 'none', searched: 0 };
  let searched = 0;
  for (const way of ways) {
    const least = leastAgainst(job, loads, way);
    if (least.is === 'stopped') return least;
    if (least.is === 'none') searched += least.searched;
    else if (best.is !== 'least' || least.extra.ratedN < best.extra.ratedN) best = least;
  }
  return best.is === 'least' ? best : { is: 'none', searched };
};

const AGAINST_IN: readonly Way[] = [{ resists: 'in', as: 'fast' }];

export const waysOf = (
  restraint: OrderOptions['restraint'],
  line: 'line' | 'hauled' = 'line',
): readonly Way[] => {
  const againstOut: readonly Way[] = [
    { resists: 'out', as: 'fast' },
    { resists: 'out', as: line },
  ];
  switch (restraint) {
    case 'either':
      return [...againstOut, ...AGAINST_IN];
    case 'out':
      return againstOut;
    case 'in':
      return AGAINST_IN;
    case 'none':
      return [];
    default:
      return unreachable(restraint);
  }
};

const leastAgainst = (job: Job, loads: Loads, way: Way): LeastRestraint => {
  const { restraintStepN } = job.options;
  let searched = 0;
  const ask = (steps: number) => {
    const extra = { ...way, ratedN: steps * restraintStepN, span: null };
    const reached = existsWith(job, loads, extra);
    searched += reached.searched;
    return reached;
  };
  const most = ask(STEPS_MOST);
  if (most.order !== 'exists') {
    return { is: most.order === 'stopped' ? 'stopped' : 'none', searched };
  }
  // Up to the planning limit it is worth no more than the lock, and without it there was no order.
  const useless = Math.floor(planningLockN(job.physics) / restraintStepN);
  const alone = existsWith(job, loads, null).searched;
  let [refused, taken, refutedStates] = [useless, useless + 1, alone];
  while (taken < STEPS_MOST) {
    const reached = ask(taken);
    if (reached.order === 'stopped') return { is: 'stopped', searched };
    if (reached.order === 'exists') break;
    [refused, refutedStates, taken] = [taken, reached.searched, Math.min(STEPS_MOST, taken * 2)];
  }
  while (taken - refused > 1) {
    const middle = (taken + refused) >> 1;
    const reached = ask(middle);
    if (reached.order === 'stopped') return { is: 'stopped', searched };
    if (reached.order === 'exists') taken = middle;
    else [refused, refutedStates] = [middle, reached.searched];
  }
  return {
    is: 'least',
    extra: { ...way, ratedN: taken * restraintStepN, span: null },
    refutedStates,
  };
};
