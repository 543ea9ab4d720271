/** An order of work on one set with what the judge said of it, as sheets and screens take it. */
import type { OrderOptions, OrderState, OrderVerdict } from '#rules';
import type { RestraintNeeded } from '#sequence';
import type { OrderPhysics, Step } from '#state';
import type { Assumption } from './assumption.ts';
import { type Bearing, whyNotBorne } from './bearing.ts';

export type WorkKind = 'load' | 'strike' | 'change';

export type CheckedOrder = {
  readonly set: string;
  readonly job: WorkKind;
  readonly physics: OrderPhysics;
  readonly steps: readonly Step[];
  readonly verdict: OrderVerdict;
  /** What the judge was asked: the words of a sheet say what was tried and what was not. */
  readonly checked: Pick<OrderOptions, 'doubt' | 'faults'>;
  readonly assumed: readonly Assumption[];
  /** What the search asks for from outside; null where it asks for nothing, or nobody searched. */
  readonly restraint: RestraintNeeded | null;
  /** What carries the lines that the order rigs. */
  readonly bearing: Bearing;
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

/** Replayed to its end with nothing broken. An order without a step is so too, if it is held. */
export const isAccepted = ({ verdict }: Pick<CheckedOrder, 'verdict'>): boolean =>
  verdict.broken === null && verdict.refused === null;

/**
 * Why no working sheet may be made of an order; null where it may. Only an order that was
 * replayed to its end, with nothing broken, is printed for a crew.
 */
export const whyNotPrinted = ({
  set,
  physics,
  steps,
  verdict,
  bearing,
}: CheckedOrder): string | null => {
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
    ? whyNotBorne(bearing)
    : `${steps.length} steps have ${verdict.states.length} states, not one more than steps`;
};

/** Each step that could be replayed. */
export const stepsBetween = ({
  steps,
  verdict,
}: Pick<CheckedOrder, 'steps' | 'verdict'>): readonly StepBetween[] =>
  steps.flatMap((step, index): readonly StepBetween[] => {
    const [before, after] = [verdict.states[index], verdict.states[index + 1]];
    if (before === undefined || after === undefined) return [];
    const proofs = verdict.proofsDue.filter((due) => due.step === index).map((due) => due.proof);
    return [{ step, number: index + 1, before, after, proofs }];
  });
