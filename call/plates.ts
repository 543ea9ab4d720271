/** Bricks of a step that is under way: the stack as it is after so many of them. */
import type { StackRun, Step } from '#state';

export type BrickStep = Extract<Step, { readonly act: 'add' | 'remove' }>;

export const isBrickStep = (step: Step): step is BrickStep =>
  step.act === 'add' || step.act === 'remove';

const putOn = (stack: readonly StackRun[], kind: string): readonly StackRun[] => {
  const top = stack.at(-1);
  return top?.kind === kind && top.tag === 'show'
    ? [...stack.slice(0, -1), { ...top, count: top.count + 1 }]
    : [...stack, { kind, count: 1, tag: 'show' }];
};

/** The uppermost brick goes, with a spreader that lay on it; null where it is of another kind. */
const takeOff = (stack: readonly StackRun[], kind: string): readonly StackRun[] | null => {
  const at = stack.findLastIndex(({ tag, count }) => tag !== 'spreader' && count > 0);
  const top = stack[at];
  if (top?.kind !== kind) return null;
  const below = stack.slice(0, at);
  return top.count === 1 ? below : [...below, { ...top, count: top.count - 1 }];
};

/** The stack after `count` bricks of a step; null where it cannot have had so many of the kind. */
export const stackAfter = (
  stack: readonly StackRun[],
  { act, kind }: BrickStep,
  count: number,
): readonly StackRun[] | null => {
  let next: readonly StackRun[] | null = stack;
  for (let moved = 0; moved < count && next !== null; moved++) {
    next = act === 'add' ? putOn(next, kind) : takeOff(next, kind);
  }
  return next;
};

/** Bricks on an arbor, spreader plates left out. */
export const platesOf = (stack: readonly StackRun[]): number =>
  stack.reduce((sum, { count, tag }) => sum + (tag === 'spreader' ? 0 : count), 0);
