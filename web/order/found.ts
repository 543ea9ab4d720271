/**
 * A found order as plain data that goes from thread to thread, and back to a whole one: the page
 * replays it with its own judge before it is shown.
 */
import {
  type Assumption,
  type CheckedOrder,
  judgeAsked,
  judgedOrder,
  type OrderQuestion,
  type WorkedOrder,
} from '#orders';
import type { Refusal } from '#outcome';
import type { Step } from '#state';
import {
  type Asked,
  type Documents,
  type InCall,
  type OrderAnswer,
  questionOf,
} from './question.ts';

export type Found = {
  readonly plan: WorkedOrder['plan'];
  readonly steps: readonly Step[];
  readonly doubt: OrderQuestion['doubt'];
  readonly startAssumed: readonly Assumption[];
  readonly assumed: CheckedOrder['assumed'];
  readonly restraint: CheckedOrder['restraint'];
};

export type FoundAnswer = Found | { readonly refusals: readonly Refusal[] };

export const foundOf = (answer: OrderAnswer): FoundAnswer => {
  if ('refusals' in answer) return answer;
  const { plan, order, question } = answer;
  const { steps, assumed, restraint } = order;
  return {
    plan,
    steps,
    doubt: question.doubt,
    startAssumed: question.start.assumed,
    assumed,
    restraint,
  };
};

/** The same documents give the same question, so only what was found has to travel. */
export const answerFrom = (
  documents: Documents,
  asked: Asked,
  found: FoundAnswer,
  inCall: InCall | null = null,
): OrderAnswer => {
  if ('refusals' in found) return found;
  const { plan, steps, doubt, startAssumed, assumed, restraint } = found;
  const read = questionOf(documents, asked, inCall);
  if (!read.ok) return { refusals: read.error };
  const start = { ...read.value.start, assumed: startAssumed };
  const question: OrderQuestion = { ...read.value, start, doubt };
  const order = judgedOrder(question.job, start, steps, question.kind, judgeAsked(question));
  return { question, plan, order: { ...order, assumed, restraint } };
};
