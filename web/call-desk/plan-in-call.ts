/** An order of work for a set of the call, from how it truly stands, found on another thread. */
import { type CallDesk, type CallDocuments, stateAfter } from '#call';
import { isAccepted } from '#orders';
import type { Refusal } from '#outcome';
import type { HouseNow, SetNow, Standing, Step } from '#state';
import { message } from '#texts';
import { answerFrom } from '../order/found.ts';
import type { Asked, Documents, InCall, OrderAnswer } from '../order/question.ts';

/** What may be planned from: a set that is known, with no leave out on it. */
export const startOf = ({ standing, leave, asked }: SetNow): Standing | null =>
  leave === null && asked === null ? standing : null;

export type CaseInCall = InCall & {
  /** The house as it stands now: bricks, and what is kept for other sets. */
  readonly documents: Documents;
};

/** Null where the set is not known, is worked on, or what was measured of it is not understood. */
export const caseInCall = (
  { house, show, state }: CallDocuments,
  desk: Pick<CallDesk, 'physicsOf'>,
  { now, set: id }: { readonly now: HouseNow; readonly set: string },
): CaseInCall | null => {
  const set = now.sets[id];
  const standing = set === undefined ? null : startOf(set);
  const physics = desk.physicsOf(now, id);
  if (standing === null || physics === null) return null;
  const after = stateAfter(state, now, { by: '', atMs: 0, nameOf: (by) => by });
  return { documents: { house, show, state: after }, standing, physics };
};

export const NOT_PLANNED: Refusal = {
  code: 'not planned',
  path: '',
  found: 'unknown',
  accepted: message('how the set stands and what was measured of it'),
};

export type PlanFound =
  | { readonly is: 'order'; readonly steps: readonly Step[]; readonly answer: OrderAnswer }
  | { readonly is: 'none'; readonly answer: OrderAnswer };

/** Judged once more in the page; the server judges it again before it takes it. */
export const planFound = (
  inCall: CaseInCall | null,
  asked: Asked,
  found: Parameters<typeof answerFrom>[2],
): PlanFound => {
  if (inCall === null) return { is: 'none', answer: { refusals: [NOT_PLANNED] } };
  const answer = answerFrom(inCall.documents, asked, found, inCall);
  if ('refusals' in answer || !('found' in answer.plan)) return { is: 'none', answer };
  const { order } = answer;
  const isGood = isAccepted(order) && order.steps.length > 0;
  return isGood ? { is: 'order', steps: order.steps, answer } : { is: 'none', answer };
};
