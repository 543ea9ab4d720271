/** What a post is offered: its next steps, what waits for its word, and what it is doing. */
import { type StepBetween, stepsBetween } from '#orders';
import { postOf, verifyOrder } from '#rules';
import type { AskedNow, HouseNow, LeaveNow, PostId, Step } from '#state';
import type { CallDesk } from './desk-types.ts';

export type NextStep = {
  readonly set: string;
  readonly step: Step;
  /** Counted from 1 in the order that was told, and how many it has. */
  readonly number: number;
  readonly of: number;
};

export type NextFor = {
  /** The next step of each order, where it is the work of this post. */
  readonly next: readonly NextStep[];
  readonly waits: readonly { readonly set: string; readonly asked: AskedNow }[];
  readonly doing: readonly { readonly set: string; readonly leave: LeaveNow }[];
};

/** What one post has before it, set by set. It asks no rule: that is asked with the step. */
export const nextFor = ({ sets }: HouseNow, post: PostId): NextFor => {
  const all = Object.entries(sets);
  return {
    next: all.flatMap(([set, { plan, leave, asked }]): readonly NextStep[] => {
      const step = plan?.steps[plan.done];
      if (plan === null || step === undefined || leave !== null || asked !== null) return [];
      const { done, steps } = plan;
      return postOf(step) === post ? [{ set, step, number: done + 1, of: steps.length }] : [];
    }),
    waits: all.flatMap(([set, { asked }]) =>
      asked !== null && asked.secondOf === post ? [{ set, asked }] : [],
    ),
    doing: all.flatMap(([set, { leave }]) =>
      leave !== null && leave.post === post ? [{ set, leave }] : [],
    ),
  };
};

/**
 * One step between how the set stands and how it would stand, as a sheet says it; null where that
 * is not known. It says nothing of whether leave is given.
 */
export const betweenOf = (
  now: HouseNow,
  set: string,
  step: Step,
  desk: Pick<CallDesk, 'physicsOf'>,
): StepBetween | null => {
  const { leave, standing, plan, since } = now.sets[set] ?? {};
  // Bricks of the step that is under way are on it already: it is said from where it began.
  const start = leave?.before ?? standing ?? null;
  const physics = desk.physicsOf(now, set);
  if (start === null || physics === null) return null;
  const verdict = verifyOrder(physics, start, [step], { doubt: 'worst', faults: 'check' });
  const [between] = stepsBetween({ steps: [step], verdict });
  const number = (plan?.done ?? since?.steps.length ?? 0) + 1;
  return between === undefined ? null : { ...between, number };
};
