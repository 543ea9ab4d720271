/** A copy of an order that a person changes step by step; nothing of it is kept or saved. */
import type { Step } from '#state';

export type HandOrder = {
  readonly steps: readonly Step[];
  /** As they were before each change, the last one last. */
  readonly past: readonly (readonly Step[])[];
};

export const asFound = (steps: readonly Step[]): HandOrder => ({ steps, past: [] });

const changed = ({ steps, past }: HandOrder, next: readonly Step[]): HandOrder => ({
  steps: next,
  past: [...past, steps],
});

const isWithin = ({ steps }: HandOrder, index: number): boolean =>
  index >= 0 && index < steps.length;

/** Steps are counted from 0; one that is not there changes nothing. */
export const withoutStep = (order: HandOrder, index: number): HandOrder =>
  isWithin(order, index) ? changed(order, order.steps.toSpliced(index, 1)) : order;

/** One place earlier or later. */
export const withStepMoved = (order: HandOrder, index: number, by: -1 | 1): HandOrder => {
  const step = order.steps[index];
  if (step === undefined || !isWithin(order, index + by)) return order;
  return changed(order, order.steps.toSpliced(index, 1).toSpliced(index + by, 0, step));
};

/** Before the step that now has this place; at the end where the place is past the last. */
export const withStep = (order: HandOrder, index: number, step: Step): HandOrder => {
  const place = Math.min(Math.max(0, index), order.steps.length);
  return changed(order, order.steps.toSpliced(place, 0, step));
};

export const undone = (order: HandOrder): HandOrder => {
  const before = order.past.at(-1);
  return before === undefined ? order : { steps: before, past: order.past.slice(0, -1) };
};

const isSame = (one: readonly Step[], other: readonly Step[]): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Back to the found one, as a change that can itself be undone. */
export const backTo = (order: HandOrder, found: readonly Step[]): HandOrder =>
  isSame(order.steps, found) ? order : changed(order, found);

export const differsFrom = ({ steps }: HandOrder, found: readonly Step[]): boolean =>
  !isSame(steps, found);
