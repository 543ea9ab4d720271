/** An order of work on one set with what the judge said of it, as sheets and screens take it. */
import type { OrderOptions, OrderState, OrderVerdict } from '#rules';
import type { OrderPhysics, Step } from '#state';
import { sheetCode } from './sheet-code.ts';

export type CheckedOrder = {
  readonly set: string;
  readonly job: 'load' | 'strike' | 'change';
  readonly physics: OrderPhysics;
  readonly steps: readonly Step[];
  readonly verdict: OrderVerdict;
  /** What the judge was asked: the words of a sheet say what was tried and what was not. */
  readonly checked: Pick<OrderOptions, 'doubt' | 'faults'>;
};

/** One step between the two states that the judge found. */
export type StepBetween = {
  readonly step: Step;
  /** Counted from 1, as people do. */
  readonly number: number;
  readonly before: OrderState;
  readonly after: OrderState;
  readonly proofs: readonly string[];
};

/**
 * Why no working sheet may be made of an order; null where it may. Only an order that was
 * replayed to its end, with nothing broken, is printed for a crew.
 */
export const whyNotPrinted = ({ set, physics, steps, verdict }: CheckedOrder): string | null => {
  if (physics.set !== set) return `the order is for set ${physics.set}, not for set ${set}`;
  if (steps.length === 0) return 'the order has no step';
  if (verdict.refused !== null) {
    const { step, refusal } = verdict.refused;
    return `step ${step + 1} cannot be replayed: ${refusal.found}`;
  }
  if (verdict.broken !== null) {
    const { rule, step } = verdict.broken;
    return `${rule} is broken ${step < 0 ? 'before the first step' : `by step ${step + 1}`}`;
  }
  return verdict.states.length === steps.length + 1
    ? null
    : `${steps.length} steps have ${verdict.states.length} states, not one more than steps`;
};

/** Each step that could be replayed. */
export const stepsBetween = ({ steps, verdict }: CheckedOrder): readonly StepBetween[] =>
  steps.flatMap((step, index): readonly StepBetween[] => {
    const [before, after] = [verdict.states[index], verdict.states[index + 1]];
    if (before === undefined || after === undefined) return [];
    const proofs = verdict.proofsDue.filter((due) => due.step === index).map((due) => due.proof);
    return [{ step, number: index + 1, before, after, proofs }];
  });

/** Eight letters for an order as it was judged: start, steps, and what was asked of the judge. */
export const orderCode = ({ set, steps, verdict, checked }: CheckedOrder): string =>
  sheetCode({ set, start: verdict.states[0]?.standing ?? null, steps, checked });

/** A set and a job that were judged again count once, as they were judged last. */
export const latestOrders = (orders: readonly CheckedOrder[]): readonly CheckedOrder[] =>
  orders.filter(
    ({ set, job }, index) =>
      !orders.slice(index + 1).some((later) => later.set === set && later.job === job),
  );
