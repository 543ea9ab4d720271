/** By how much a state that is asked for is not held. */
import { holdsAt, nodeAt } from './held.ts';
import { ratedFor } from './held-loads.ts';
import { type Job, leastStrict } from './job.ts';
import type { Load, Loads } from './load.ts';
import { AWAY, HANGING } from './site.ts';
import { pointSpan } from './span.ts';

const ROUNDING_N = 1e-6;

/** How much more hold a load would need at a height; 0 where it is held. */
export const shortfall = (job: Job, loads: Loads, load: Load, heightM: number): number => {
  const node = nodeAt(load.nodes, heightM);
  const { lockN } = leastStrict(job);
  if (node === null) return Number.POSITIVE_INFINITY;
  const rated = ratedFor(loads.site, { extra: null }, load);
  const { inN, outN } = holdsAt(rated, pointSpan(heightM), lockN);
  const doubtN = job.options.doubtShare * node.doubtN;
  const { lowN, highN } = node.contact;
  const overN = Math.max(lowN + doubtN - inN, doubtN - highN - outN);
  return overN <= ROUNDING_N ? 0 : overN;
};

/** The same for the goal at its height; 0 where no height is asked for. */
export const goalShortfall = (job: Job, loads: Loads): number => {
  const { goal } = job;
  if (goal.height === null) return 0;
  const { site } = loads;
  const load = loads.changed(loads.first, {
    counts: site.counts.goal,
    phases: site.items.map(({ start, wanted }) =>
      wanted === null ? start : wanted ? HANGING : AWAY,
    ),
    onSteel: goal.service === 'deadHung',
    tied: false,
  });
  return shortfall(job, loads, load, goal.height);
};
