import { setFreeAt } from '#assessment';
import { FOOT } from '#quantities';
import { verifyOrder } from '#rules';
import { type OrderGoal, type OrderOptions, type OrderPlan, planOrder } from '#sequence';
import type { Step } from '#state';
import type { Assumption } from './assumption.ts';
import { bearingOf } from './bearing.ts';
import { type CheckedOrder, isAccepted, type WorkKind } from './checked-order.ts';
import { goalAssumptions } from './goal.ts';
import type { OrderJob } from './job.ts';
import { stockAssumptions, withBricksBack } from './kept-stock.ts';
import type { OrderStart } from './start.ts';

export type OrderQuestion = {
  readonly job: OrderJob;
  readonly start: OrderStart;
  readonly goal: OrderGoal;
  readonly kind: WorkKind;
  /** Every mass at its worst, or as it is written. */
  readonly doubt: 'worst' | 'none';
  /** With `nominal` nobody is ever in the way of a fault, so none is tried. */
  readonly lock: 'planning' | 'nominal';
  /** Whether the search may ask for one restraint from outside. */
  readonly restraint: 'either' | 'none';
  /** Rating of the steel that the set is to be hung on; null where nobody has said. */
  readonly steelN: number | null;
};

/** As a crew works: every mass at its worst, faults tried, any one restraint allowed. */
export const crewQuestion = (
  asked: Pick<OrderQuestion, 'job' | 'start' | 'goal' | 'kind'>,
  steelN: number | null = null,
): OrderQuestion => ({
  ...asked,
  doubt: 'worst',
  lock: 'planning',
  restraint: 'either',
  steelN,
});

export type WorkedOrder = {
  readonly question: OrderQuestion;
  readonly plan: OrderPlan;
  /** Without steps where no order was found: `plan` says why. */
  readonly order: CheckedOrder;
};

/** Heights that a crew can call: a quarter foot, or five centimetres. */
export const NEAT_M = { customary: FOOT / 4, metric: 0.05 } as const;

/** Built pieces stand on horses with their picks tight; cloth and cable do not. */
const rigidItems = ({ set }: OrderJob): readonly string[] =>
  (set.hang?.items ?? []).filter(({ kind }) => kind === 'tipping').map(({ id }) => id);

/**
 * Bricks that may lie on the arbor on the way only. A set goes onto its steel, and comes off it,
 * with the load balanced, though none is on its arbor before or after (the-job.md S12).
 */
const spareFor = (
  { physics, house }: OrderJob,
  { standing }: OrderStart,
  { service, items }: OrderGoal,
): Readonly<Record<string, number>> => {
  if (service !== 'deadHung' && standing.service !== 'deadHung') return {};
  const [kind] = house.brickKinds
    .filter(({ serves }) => serves.show)
    .flatMap(({ id }) => physics.bricks.filter((brick) => brick.id === id))
    .toSorted((one, other) => other.massKg - one.massKg);
  if (kind === undefined) return {};
  const ids = new Set([...Object.keys(standing.items), ...Object.keys(items)]);
  const mostN = [...ids].reduce((sum, id) => sum + physics.itemMostN(id), 0);
  return { [kind.id]: Math.ceil(mostN / kind.atBattenN) };
};

/** What the judge is to be asked of an order that is searched for like this. */
export const judgeAsked = ({
  doubt,
  lock,
}: Pick<OrderQuestion, 'doubt' | 'lock'>): CheckedOrder['checked'] => ({
  doubt,
  faults: lock === 'planning' ? 'check' : 'skip',
});

/**
 * An order that somebody wrote, replayed by the judge, with what each standing would set free.
 * It is taken as it stands: no step is mended and none is searched for.
 */
export const judgedOrder = (
  job: OrderJob,
  start: OrderStart,
  steps: readonly Step[],
  kind: WorkKind,
  checked: CheckedOrder['checked'],
): CheckedOrder => {
  const { house, state, set } = job;
  const { id } = set.lineSet;
  const physics = withBricksBack(job.physics, start.assumed);
  const verdict = verifyOrder(physics, start.standing, steps, {
    ...checked,
    releasableJ: (standing) => setFreeAt(physics, standing).energy,
  });
  const assumed = [...start.assumed, ...stockAssumptions(id, house, state)];
  const bearing = bearingOf(house, set, steps);
  const order = { set: id, job: kind, physics, steps, verdict, checked, assumed };
  return { ...order, restraint: null, bearing };
};

/** Finds an order of work, and has it replayed by the judge, who shares no code with the search. */
export const workOut = (
  question: OrderQuestion,
  more: Pick<Partial<OrderOptions>, 'explain' | 'statesMost'> = {},
): WorkedOrder => {
  const { job, start, goal, kind, doubt, lock, restraint, steelN } = question;
  const plan = planOrder(withBricksBack(job.physics, start.assumed), start.standing, goal, {
    doubtShare: doubt === 'worst' ? 1 : 0,
    lock,
    restraint,
    rests: rigidItems(job),
    spare: spareFor(job, start, goal),
    steelN,
    neatM: NEAT_M[job.house.units],
    ...more,
  });
  const found = 'found' in plan ? plan.found : null;
  const order = judgedOrder(job, start, found?.steps ?? [], kind, judgeAsked(question));
  const assumed = [...order.assumed, ...goalAssumptions(job, goal)];
  return { question, plan, order: { ...order, assumed, restraint: found?.restraint ?? null } };
};

/** Whether a search found an order that the judge accepts. */
const isFound = ({ plan, order }: WorkedOrder): boolean => 'found' in plan && isAccepted(order);

/** A restraint that only a doubt asks for is said to be so: a scale may be the lighter tool. */
const withHint = (worst: WorkedOrder): WorkedOrder => {
  const { question, order } = worst;
  if (order.restraint === null) return worst;
  const written = { ...question, doubt: 'none', restraint: 'none' } as const;
  if (!isFound(workOut(written, { explain: false }))) return worst;
  const hint: Assumption = { is: 'noRestraintIfWeighed' };
  return { ...worst, order: { ...order, assumed: [...order.assumed, hint] } };
};

/**
 * With every mass at its worst; where that has no order, with every mass as it is written, and
 * that said as `massesAsWritten`: what is not known must be weighed or pull-tested first.
 */
export const workOutBest = (question: OrderQuestion): WorkedOrder => {
  const worst = workOut(question);
  if (question.doubt === 'none') return worst;
  if (isFound(worst)) return withHint(worst);
  const byN = 'none' in worst.plan ? worst.plan.none.byN : null;
  const { start } = question;
  const written: Assumption = { is: 'massesAsWritten', byN };
  const again = workOut({
    ...question,
    doubt: 'none',
    start: { ...start, assumed: [...start.assumed, written] },
  });
  if (isFound(again)) return again;
  // That none exists with the masses as written says more than that a search was cut short.
  return 'stopped' in worst.plan && 'none' in again.plan ? again : worst;
};
