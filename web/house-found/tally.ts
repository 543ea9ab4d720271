/** A stack as it is counted, from the bottom up: plates of one kind and use are one run. */
import type { StackRun } from '#state';

/** One more plate on top. */
export const withPlate = (
  stack: readonly StackRun[],
  { kind, tag }: Pick<StackRun, 'kind' | 'tag'>,
): readonly StackRun[] => {
  const top = stack.at(-1);
  if (top === undefined || top.kind !== kind || top.tag !== tag) {
    return [...stack, { kind, tag, count: 1 }];
  }
  return [...stack.slice(0, -1), { ...top, count: top.count + 1 }];
};

/** The top plate off again; the last of a run takes the run with it. */
export const withoutPlate = (stack: readonly StackRun[]): readonly StackRun[] => {
  const top = stack.at(-1);
  if (top === undefined) return stack;
  const below = stack.slice(0, -1);
  return top.count > 1 ? [...below, { ...top, count: top.count - 1 }] : below;
};

export const withCount = (
  stack: readonly StackRun[],
  index: number,
  count: number,
): readonly StackRun[] =>
  stack.flatMap((run, at) => (at === index ? (count > 0 ? [{ ...run, count }] : []) : [run]));
