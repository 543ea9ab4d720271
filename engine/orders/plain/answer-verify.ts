import { fail, ok, type Refusal, type Result } from '#outcome';
import type { VerifyAsked } from './asked.ts';
import { stepOf } from './plain-set.ts';
import {
  type Replayed,
  replayed,
  type StateAnswer,
  statesOf,
  type VerdictAnswer,
  verdictOf,
} from './replayed.ts';

export type VerifyAnswer = {
  readonly states: readonly StateAnswer[];
  readonly verdict: VerdictAnswer;
};

/** The order replayed; a step that makes no sense is refused by its path, and nothing after it. */
export const judgePlain = (asked: VerifyAsked): Result<Replayed, readonly Refusal[]> => {
  const order = replayed(asked, asked.steps.map(stepOf));
  const { refused } = order.verdict;
  if (refused === null) return ok(order);
  const path = refused.step < 0 ? 'start' : `steps[${refused.step}]`;
  return fail([{ ...refused.refusal, path }]);
};

/** Everything that `compute verify` says of an order of work on one set. */
export const answerVerify = (asked: VerifyAsked): Result<VerifyAnswer, readonly Refusal[]> => {
  const order = judgePlain(asked);
  return order.ok ? ok({ states: statesOf(order.value), verdict: verdictOf(order.value) }) : order;
};
