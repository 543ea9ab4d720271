/** What is before a post now, the most pressing first: one of it is the next action. */
import { nextFor } from '#call';
import { postOf } from '#rules';
import type { AskedNow, HouseNow, LeaveNow, PostId, SetNow, Step, StopNow } from '#state';

/**
 * Leave was given, and it is being done; another post waits for the word of this one; this one
 * asked and waits for another; the next step of an order, which it may ask leave for; or a zone
 * that it keeps as marshal, on a set whose order is done or gone.
 */
export type PostTask = { readonly set: string; readonly step: Step } & (
  | { readonly is: 'inHand'; readonly leave: LeaveNow }
  | { readonly is: 'wordAsked'; readonly asked: AskedNow }
  | { readonly is: 'waits'; readonly asked: AskedNow }
  | { readonly is: 'next' }
  | { readonly is: 'mayReopen' }
);

const RANK: Readonly<Record<PostTask['is'], number>> = {
  inHand: 0,
  wordAsked: 1,
  waits: 2,
  next: 3,
  mayReopen: 4,
};

/** What this post has asked, and waits for another to say. */
const waitingOf = ({ sets }: HouseNow, post: PostId): readonly PostTask[] =>
  Object.entries(sets).flatMap(([set, { asked }]): readonly PostTask[] =>
    asked !== null && asked.post === post && asked.secondOf !== post
      ? [{ is: 'waits', set, step: asked.step, asked }]
      : [],
  );

const isAtRest = ({ plan, leave, asked, standing }: SetNow): boolean =>
  standing !== null &&
  leave === null &&
  asked === null &&
  (plan === null || plan.done === plan.steps.length);

/** No order opens it again, so it is the lead's word that does. */
const keptBy = ({ zones, sets }: HouseNow, post: PostId): readonly PostTask[] =>
  zones.flatMap(({ zone, set }): readonly PostTask[] => {
    const step: Step = { act: 'reopen', zone };
    const now = sets[set];
    if (now === undefined || !isAtRest(now) || postOf(step) !== post) return [];
    return [{ is: 'mayReopen', set, step }];
  });

/** In the order of the rail among those that press alike. */
export const tasksOf = (
  now: HouseNow,
  order: readonly string[],
  post: PostId,
): readonly PostTask[] => {
  const { next, waits, doing } = nextFor(now, post);
  const all: readonly PostTask[] = [
    ...doing.map(({ set, leave }) => ({ is: 'inHand', set, step: leave.step, leave }) as const),
    ...waits.map(({ set, asked }) => ({ is: 'wordAsked', set, step: asked.step, asked }) as const),
    ...waitingOf(now, post),
    ...next.map(({ set, step }) => ({ is: 'next', set, step }) as const),
    ...keptBy(now, post),
  ];
  return all.toSorted(
    (one, other) =>
      RANK[one.is] - RANK[other.is] || order.indexOf(one.set) - order.indexOf(other.set),
  );
};

/** Stops that hold this set, or everything. */
export const stopsOn = (
  { stops }: Pick<HouseNow, 'stops'>,
  set: string | null,
): readonly StopNow[] =>
  stops.filter((stop) => stop.set === null || set === null || stop.set === set);

type Alarmed = { readonly id: string; readonly is: 'unheld' | 'unknown'; readonly set: SetNow };

/** Sets of which every post must know: nothing holds them, or nobody knows any more. */
export const alarmedSets = (
  { sets }: Pick<HouseNow, 'sets'>,
  order: readonly string[],
): readonly Alarmed[] =>
  order.flatMap((id): readonly Alarmed[] => {
    const set = sets[id];
    if (set === undefined) return [];
    if (set.held === 'unheld') return [{ id, is: 'unheld', set }];
    // One that nobody had recorded when the call began is no news.
    const isLost = set.standing === null && set.last !== null;
    return isLost ? [{ id, is: 'unknown', set }] : [];
  });

/** The unlocking of a set whose bricks or pieces changed asks the second for a count of its own. */
export const asksCount = (set: SetNow, step: Step): boolean =>
  set.changed && (step.act === 'fly' || step.act === 'ease');
