/** Two coupled sets: one order for both, found and judged. */

import { type PairVerdict, verifyPair } from '#rules';
import { type Pair, type PairPlan, planPair } from '#sequence';
import type { PairStep } from '#state';
import type { Assumption } from './assumption.ts';
import { type Bearing, bearingOf } from './bearing.ts';
import { loadGoal, strikeGoal } from './goal.ts';
import { type Answer, type OrderJob, openJob } from './job.ts';
import { withBricksBack } from './kept-stock.ts';
import { bareStart, type OrderStart, plannedStart, recordedStart } from './start.ts';
import { judgeAsked, NEAT_M, type OrderQuestion } from './work-out.ts';

type Side = {
  readonly job: OrderJob;
  readonly start: OrderStart;
  readonly goal: OrderQuestion['goal'];
};

export type PairQuestion = {
  readonly first: Side;
  readonly second: Side;
  readonly kind: 'load' | 'strike';
  readonly band: Pair['band'];
  readonly doubt: OrderQuestion['doubt'];
  readonly lock: OrderQuestion['lock'];
};

export type WorkedPair = {
  readonly question: PairQuestion;
  readonly plan: PairPlan;
  readonly steps: readonly PairStep[];
  readonly verdict: PairVerdict;
  /** What carries the lines that each set rigs. */
  readonly bearing: { readonly first: Bearing; readonly second: Bearing };
};

type PairAsked = Pick<PairQuestion, 'kind' | 'band' | 'doubt' | 'lock'> & {
  readonly sets: readonly [string, string];
  readonly from: 'bare' | 'planned' | 'recorded';
};

const STARTS = { bare: bareStart, planned: plannedStart, recorded: recordedStart } as const;

/** Both sets of a pair as they are to be worked on, or what is not known of them. */
export const openPair = (
  documents: Parameters<typeof openJob>[0],
  { sets, from, ...asked }: PairAsked,
): Answer<PairQuestion> => {
  const side = (set: string, partner: string): Answer<Side> => {
    const job = openJob(documents, set, partner);
    if (!job.ok) return job;
    const start = STARTS[from](job.value);
    if (!start.ok) return start;
    const goal =
      asked.kind === 'load'
        ? loadGoal(job.value, null)
        : strikeGoal(job.value, start.value.standing, null);
    return goal.ok
      ? { ok: true, value: { job: job.value, start: start.value, goal: goal.value } }
      : goal;
  };
  const [one, other] = sets;
  const first = side(one, other);
  if (!first.ok) return first;
  const second = side(other, one);
  return second.ok
    ? { ok: true, value: { ...asked, first: first.value, second: second.value } }
    : second;
};

/** A share of a piece has the same name on both sets. */
const sharedItems = ({ first, second }: PairQuestion): Pair['shared'] => {
  const ids = (side: Side) => (side.job.set.hang?.items ?? []).map(({ id }) => id);
  const others = new Set(ids(second));
  return ids(first)
    .filter((id) => others.has(id))
    .map((id) => ({ first: id, second: id }));
};

/** Finds an order for both, and has it replayed by the judge, who has code of its own. */
const workOutPair = (question: PairQuestion): WorkedPair => {
  const { first, second, band, doubt, lock } = question;
  const shared = sharedItems(question);
  const asked = ({ job, start, goal }: Side) => ({
    physics: withBricksBack(job.physics, start.assumed),
    start: start.standing,
    goal,
  });
  const sides = { first: asked(first), second: asked(second) };
  const plan = planPair(
    { ...sides, shared, band },
    {
      doubtShare: doubt === 'worst' ? 1 : 0,
      lock,
      restraint: 'either',
      neatM: NEAT_M[first.job.house.units],
    },
  );
  const steps = 'found' in plan ? plan.found.steps : [];
  const verdict = verifyPair({ ...sides, shared, band }, steps, judgeAsked({ doubt, lock }));
  const borne = ({ job }: Side): Bearing => {
    const own = steps.flatMap((step) =>
      'step' in step && step.set === job.set.lineSet.id ? [step.step] : [],
    );
    return bearingOf(job.house, job.set, own);
  };
  return {
    question,
    plan,
    steps,
    verdict,
    bearing: { first: borne(first), second: borne(second) },
  };
};

const isFound = ({ plan, verdict }: WorkedPair): boolean =>
  'found' in plan && verdict.broken === null && verdict.refused === null;

/** With every mass at its worst; where that has no order, as they are written, and that said. */
export const workOutPairBest = (question: PairQuestion): WorkedPair => {
  const worst = workOutPair(question);
  if (question.doubt === 'none' || isFound(worst)) return worst;
  const { plan } = worst;
  const byN = 'none' in plan && plan.none.why === 'alone' ? plan.none.none.byN : null;
  const written: Assumption = { is: 'massesAsWritten', byN };
  const start = { ...question.first.start, assumed: [written, ...question.first.start.assumed] };
  const again = workOutPair({ ...question, doubt: 'none', first: { ...question.first, start } });
  return isFound(again) ? again : worst;
};
