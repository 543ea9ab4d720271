/** The orders of a whole show, each worked out only when it is asked for, and then kept. */
import type { House } from '#house';
import { ok, type Refusal } from '#outcome';
import type { Hang, Show } from '#show';
import type { HouseState } from '#state';
import { loadGoal, strikeGoal } from './goal.ts';
import { type Answer, type OrderJob, openJob } from './job.ts';
import { bareStart, plannedStart } from './start.ts';
import { crewQuestion, type OrderQuestion, type WorkedOrder, workOutBest } from './work-out.ts';

export type ShowWork = { readonly set: string; readonly kind: 'load' | 'strike' };

export type NotAsked = { readonly refusals: readonly Refusal[] };

export type OrderSource = {
  /** Hung counterweight sets that move by themselves, in rail order, each loaded and struck. */
  readonly jobs: readonly ShowWork[];
  readonly of: (set: string, kind: ShowWork['kind']) => WorkedOrder | NotAsked;
};

type Documents = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState | null;
};

const questionOf = (documents: Documents, { set, kind }: ShowWork): Answer<OrderQuestion> => {
  const job = openJob(documents, set);
  if (!job.ok) return job;
  const start = kind === 'load' ? bareStart(job.value) : plannedStart(job.value);
  if (!start.ok) return start;
  const goal =
    kind === 'load' ? loadGoal(job.value, null) : strikeGoal(job.value, start.value.standing, null);
  if (!goal.ok) return goal;
  const asked = { job: job.value, start: start.value, goal: goal.value, kind };
  return ok(crewQuestion(asked, recordedSteel(job.value)));
};

/** What the steel of the set is rated for by the record; null where it has none, or no rating. */
const recordedSteel = ({ state, set }: OrderJob): number | null =>
  (state.sets[set.lineSet.id]?.restraints ?? []).find(({ kind }) => kind === 'deadHangSteel')
    ?.rating ?? null;

const hangOn = ({ hangs }: Show, set: string): Hang | undefined =>
  hangs.find((hang) => hang.set === set);

/** A load begins bare on the low stop, a strike as the show plans the set; both say so. */
export const showOrders = (house: House, show: Show, state: HouseState | null): OrderSource => {
  const documents = { house, show, state };
  const kept = new Map<string, WorkedOrder | NotAsked>();
  const jobs = house.lineSets
    .filter(({ id, arbor }) => arbor !== null && hangOn(show, id)?.coupledWith.length === 0)
    .flatMap(({ id }): readonly ShowWork[] => [
      { set: id, kind: 'load' },
      { set: id, kind: 'strike' },
    ]);
  return {
    jobs,
    of: (set, kind) => {
      const key = `${kind} ${set}`;
      const before = kept.get(key);
      if (before !== undefined) return before;
      const question = questionOf(documents, { set, kind });
      const answer = question.ok ? workOutBest(question.value) : { refusals: question.error };
      kept.set(key, answer);
      return answer;
    },
  };
};
