/** What is asked for on the order screen: which job on which set, and how the set stands first. */

import type { House } from '#house';
import {
  bareStart,
  crewQuestion,
  loadGoal,
  type OrderQuestion,
  openJob,
  plannedStart,
  recordedStart,
  strikeGoal,
  type WorkedOrder,
  type WorkKind,
  workOutBest,
  writtenStart,
} from '#orders';
import { ok, type Refusal, type Result, unreachable } from '#outcome';
import type { Show } from '#show';
import type { HouseState, OrderPhysics, SetState, Standing } from '#state';
import type { OrderStartName } from '../address/address.ts';

export type Asked = {
  readonly set: string;
  readonly job: WorkKind;
  readonly from: OrderStartName;
};

/** From which starts a job makes sense; the first is meant where nothing is said. */
export const STARTS: Readonly<Record<WorkKind, readonly OrderStartName[]>> = {
  load: ['bare'],
  strike: ['planned', 'recorded'],
  change: ['recorded'],
};

export const startFor = (job: WorkKind, from: OrderStartName | null): OrderStartName => {
  const [first] = STARTS[job];
  return from !== null && STARTS[job].includes(from) ? from : (first ?? 'recorded');
};

/** What hangs is struck, what is bare is hung; the person may ask for the other. */
export const likelyJob = (recorded: SetState | undefined): WorkKind =>
  (recorded?.items ?? []).some(({ phase }) => phase !== 'away' && phase !== 'beside')
    ? 'strike'
    : 'load';

export type Documents = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState | null;
};

type Answer = Result<OrderQuestion, readonly Refusal[]>;

const STARTS_OF = { bare: bareStart, planned: plannedStart, recorded: recordedStart } as const;

/** In a call: how the set truly stands, and its physics with what was weighed and pulled in it. */
export type InCall = { readonly standing: Standing; readonly physics: OrderPhysics };

export const questionOf = (
  documents: Documents,
  { set, job: kind, from }: Asked,
  inCall: InCall | null = null,
): Answer => {
  const read = openJob(documents, set);
  if (!read.ok) return read;
  const job = inCall === null ? read : ok({ ...read.value, physics: inCall.physics });
  const start =
    inCall === null ? STARTS_OF[from](job.value) : ok(writtenStart(job.value, inCall.standing));
  if (!start.ok) return start;
  const goal = goalOf(kind, job.value, start.value.standing);
  if (!goal.ok) return goal;
  const asked = { job: job.value, start: start.value, goal: goal.value, kind };
  return ok(crewQuestion(asked));
};

const goalOf = (
  kind: WorkKind,
  job: OrderQuestion['job'],
  standing: OrderQuestion['start']['standing'],
) => {
  switch (kind) {
    case 'load':
    case 'change':
      return loadGoal(job, null);
    case 'strike':
      return strikeGoal(job, standing, null);
    default:
      return unreachable(kind);
  }
};

export type OrderAnswer = WorkedOrder | { readonly refusals: readonly Refusal[] };

/** May take a second: never on the thread of the page. */
export const answerOf = (
  documents: Documents,
  asked: Asked,
  inCall: InCall | null = null,
): OrderAnswer => {
  const question = questionOf(documents, asked, inCall);
  return question.ok ? workOutBest(question.value) : { refusals: question.error };
};
