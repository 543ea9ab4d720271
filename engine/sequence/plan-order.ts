import { metres, newtons } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import { haltsOf } from './heights.ts';
import { type Job, loadsFor, type Solved, solve } from './job.ts';
import { leastRestraint } from './least-restraint.ts';
import type { Loads } from './load.ts';
import { goalSpan } from './reachable.ts';
import { mustHaul } from './rigging.ts';
import { goalShortfall, shortfall } from './shortfall.ts';
import { fewerTolerances, smallestChange } from './smallest-change.ts';
import { isWithin, pointSpan } from './span.ts';
import { type Stage, stagesOf } from './stages.ts';
import { type Told, told } from './told.ts';
import type { BrokenRule, OrderGoal, OrderOptions, OrderPlan, RestraintNeeded } from './types.ts';

/** Five pounds of force: finer than any restraint is rated. */
const STEP_N = 22.2411;

export const USUAL: OrderOptions = {
  doubtShare: 1,
  lock: 'planning',
  restraint: 'either',
  restraintStepN: STEP_N,
  statesMost: 200_000,
  explain: true,
  rests: [],
  restAtM: null,
  work: null,
  travel: null,
  spare: {},
  heightStepM: null,
  neatM: 0.05,
  steelN: null,
  sharesBatten: false,
};

/**
 * The order of work on one set from how it stands to how it is to stand: least restraint from
 * outside, then riggers exposed to the least, then the lock within its planning limit, then fewest
 * flights, handlings and plates.
 * Which side goes first is nowhere written: it follows from what holds. People are where a single
 * fault would run only while it is held.
 *
 * Source  procedure.md, the-job.md section 4; candidate heights docs/why/0009
 * Holds   one set by itself, from a known state; items that stay on are never taken off between
 * Omits   coupled sets; mass limit of the arbor; what the restraint's anchor, batten and lines bear
 *         (each is for others to judge); loaders and rail in what is exposed; time
 */
export const planOrder = (
  physics: OrderPhysics,
  start: Standing,
  goal: OrderGoal,
  asked: Partial<OrderOptions> = {},
): OrderPlan => {
  const job: Job = { physics, start, goal, options: { ...USUAL, ...asked } };
  const wrong = wrongGoal(job);
  if (wrong !== null) return none({ rule: wrong });
  const loads = loadsFor(job);
  const fault = startFault(job, loads);
  if (fault !== null) return fault;
  const goalAt = goalFault(job, loads);
  if (goalAt.byN !== undefined) {
    // Start and goal were looked at, and no way between them makes the goal hold.
    const smallest = job.options.explain ? (fewerTolerances(job)?.change ?? null) : null;
    return none({ rule: 'HOLD', ...goalAt, searched: 2, smallestChange: smallest });
  }
  const answer = solve(job, loads, null);
  if (answer.is === 'found') return found(answer.solved, null);
  if (answer.is === 'stopped') return { stopped: { searched: answer.searched } };
  if (!job.options.explain) return none({ rule: 'HOLD', searched: answer.searched });
  return withRestraint(job, loads, answer.searched);
};

type Why = Partial<Omit<Extract<OrderPlan, { readonly none: unknown }>['none'], 'exhaustive'>>;

const none = (why: Why & { readonly rule: BrokenRule }): OrderPlan => ({
  none: {
    searched: 0,
    exhaustive: true,
    atHeight: null,
    byN: null,
    smallestChange: null,
    ...why,
  },
});

/** What no search is needed for: the goal names what is not there, or the set is taken. */
const wrongGoal = ({ physics, start, goal, options }: Job): BrokenRule | null => {
  if (start.service === 'paused' || start.service === 'lockedOut') return 'SERVICE';
  const steel = start.restraints.some(
    ({ kind, rating }) => kind === 'deadHangSteel' && rating !== null,
  );
  const needsSteel = goal.service === 'deadHung' || start.service === 'deadHung';
  if (needsSteel && !steel && options.steelN === null) return 'SERVICE';
  const { lowStop, highStop } = physics;
  const from = options.travel?.fromM ?? lowStop.heightM;
  const to = options.travel?.toM ?? highStop.heightM;
  const [travel, all] = [
    { lo: from, hi: to },
    { lo: lowStop.heightM, hi: highStop.heightM },
  ];
  if (goal.height !== null && !isWithin(pointSpan(goal.height), travel)) return 'TRAVEL';
  if (!isWithin(pointSpan(start.height), all)) return 'TRAVEL';
  if (goal.service === 'deadHung' && goal.height === null) return 'GOAL';
  for (const [kind, count] of Object.entries(goal.bricks)) {
    const isWhole = Number.isInteger(count) && count >= 0;
    if (!isWhole || !physics.bricks.some(({ id }) => id === kind)) return 'GOAL';
  }
  const unheard = Object.entries(goal.items).some(
    ([id, wanted]) => wanted === 'on' && !(physics.itemMostN(id) > 0),
  );
  return unheard ? 'GOAL' : null;
};

/** A set that is not held to begin with has no first step: make it safe, then ask again. */
const startFault = (job: Job, loads: Loads): OrderPlan | null => {
  const byN = shortfall(job, loads, loads.first, job.start.height);
  if (byN === 0) return null;
  const change = fewerTolerances(job)?.change ?? null;
  const atHeight = job.start.height;
  return none({ rule: 'HOLD', atHeight, byN: newtons(byN), searched: 1, smallestChange: change });
};

/** Where the goal itself is not held, however one comes there. */
const goalFault = (job: Job, loads: Loads): Why => {
  const byN = goalShortfall(job, loads);
  return byN === 0 ? {} : { atHeight: job.goal.height, byN: newtons(byN) };
};

const stagesFor = ({ loads, held, trail }: Solved): readonly Stage[] => {
  const { site } = loads;
  const span = goalSpan(loads, held, trail.place) ?? pointSpan(site.start.height);
  return stagesOf(site, haltsOf(site, held, trail, span));
};

const tellOf = (solved: Solved): Told => told(solved.loads, solved.held, stagesFor(solved));

const found = (solved: Solved, restraint: RestraintNeeded | null, more = 0): OrderPlan => {
  const { steps, states } = tellOf(solved);
  const searched = solved.searched + more;
  const { exposedJ } = solved.held.trust;
  const exposed = Number.isFinite(exposedJ) ? exposedJ : null;
  const { optimal } = solved;
  return { found: { steps, states, restraint, exposedJ: exposed, searched, optimal } };
};

/** Textbook numbers leave friction out of what a line is rated for. */
const isHauled = ({ options }: Job, solved: Solved): boolean =>
  options.lock === 'planning' && mustHaul(solved.loads.site, solved.held, stagesFor(solved));

/**
 * More of a kind is wanted than lies on the arbor and on all galleries together. Where several
 * things stand in the way no single change helps, and this is the one that no hold makes good.
 */
const lacksBricks = ({ physics, start, goal }: Job): boolean =>
  Object.entries(goal.bricks).some(([kind, wanted]) => {
    const onArbor = start.stack
      .filter((run) => run.kind === kind && run.tag === 'show')
      .reduce((sum, { count }) => sum + count, 0);
    const loose = physics.galleries.reduce((sum, { stock }) => sum + (stock[kind] ?? 0), 0);
    return wanted > onArbor + loose;
  });

const withRestraint = (
  job: Job,
  loads: Loads,
  searched: number,
  line: 'line' | 'hauled' = 'line',
): OrderPlan => {
  const least = leastRestraint(job, loads, line);
  if (least.is === 'stopped') {
    // Staging alone was searched to its end; what is cut short is only the look for a restraint.
    if (job.options.restraint === 'none') return none({ rule: 'HOLD', searched });
    return { stopped: { searched: searched + least.searched } };
  }
  if (least.is === 'none') {
    const change = smallestChange(job);
    return none({
      rule: change?.rule ?? (lacksBricks(job) ? 'STOCK' : 'HOLD'),
      searched: searched + least.searched,
      smallestChange: change?.change ?? null,
    });
  }
  const answer = solve(job, loads, least.extra);
  if (answer.is !== 'found') return { stopped: { searched: searched + answer.searched } };
  // A line that has to draw the arbor up needs friction's worth more, so it is asked for anew.
  if (isHauled(job, answer.solved)) {
    return withRestraint(job, loads, searched + answer.solved.searched, 'hauled');
  }
  const { restraintSpan } = tellOf(answer.solved);
  const span = restraintSpan ?? pointSpan(job.start.height);
  const needed: RestraintNeeded = {
    resists: least.extra.resists,
    rated: newtons(least.extra.ratedN),
    from: metres(span.lo),
    to: metres(span.hi),
    refutedStates: least.refutedStates,
  };
  if (job.options.restraint !== 'none') return found(answer.solved, needed, searched);
  const { refutedStates: _, ...change } = needed;
  return none({
    rule: 'HOLD',
    searched,
    atHeight: metres(span.lo),
    byN: newtons(Math.max(0, least.extra.ratedN - job.physics.lockLimitN)),
    smallestChange: { change: 'restraint', ...change },
  });
};
