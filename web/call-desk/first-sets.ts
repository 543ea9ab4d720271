/** Which sets a head flyman looks at first: not held, not known any more, worked. */
import { platesOf } from '#call';
import type { HouseNow, PlanNow, PostId, SetNow, Step } from '#state';

export type SetInCall = { readonly id: string; readonly set: SetNow };

export type FirstSets = {
  readonly unheld: readonly SetInCall[];
  /** Known once in this call, and not any more. */
  readonly doubted: readonly SetInCall[];
  readonly worked: readonly SetInCall[];
  /** Something was done on them and no order stands: it was done otherwise, or none was told. */
  readonly begun: readonly SetInCall[];
  readonly tagged: readonly SetInCall[];
  /** Nobody knew how they stood when the call was opened, and nobody has looked since. */
  readonly neverKnown: readonly string[];
};

const isPlanOpen = (plan: PlanNow | null): boolean =>
  plan !== null && plan.done < plan.steps.length;

export const isWorked = ({ asked, leave, plan }: SetNow): boolean =>
  asked !== null || leave !== null || isPlanOpen(plan);

const isBegun = ({ plan, since }: SetNow): boolean =>
  plan === null && since !== null && since.steps.length > 0;

/** In the order of the rail, as the house lists its sets. */
export const firstSets = (now: HouseNow, order: readonly string[]): FirstSets => {
  const sets = order.flatMap((id): readonly SetInCall[] => {
    const set = now.sets[id];
    return set === undefined ? [] : [{ id, set }];
  });
  const unheld = sets.filter(({ set }) => set.held === 'unheld');
  const unknown = sets.filter(({ set }) => set.standing === null);
  const rest = sets.filter(({ set }) => set.held !== 'unheld' && set.standing !== null);
  return {
    unheld,
    doubted: unknown.filter(({ set }) => set.last !== null || set.notes.length > 0),
    worked: rest.filter(({ set }) => isWorked(set)),
    begun: rest.filter(({ set }) => !isWorked(set) && isBegun(set)),
    tagged: rest.filter(({ set }) => set.tag !== null && !isWorked(set) && !isBegun(set)),
    neverKnown: unknown
      .filter(({ set }) => set.last === null && set.notes.length === 0)
      .map(({ id }) => id),
  };
};

/** What waits for a post's word. */
export const waitingFor = (now: HouseNow, post: PostId): readonly SetInCall[] =>
  Object.entries(now.sets)
    .filter(([, { asked }]) => asked?.secondOf === post)
    .map(([id, set]) => ({ id, set }));

/** Bricks that a step of an order puts on or takes off. */
const bricksOf = (step: Step): number =>
  step.act === 'add' ? step.count : step.act === 'remove' ? -step.count : 0;

export type Tally = {
  readonly on: number;
  /** When the order is done; null where there is none. */
  readonly atEnd: number | null;
  /** By the show, with all of it hung; null where the show hangs nothing or has no mix yet. */
  readonly byShow: number | null;
};

/** Bricks of the step that is under way, as far as they were counted aloud. */
const begunOf = ({ leave }: SetNow): number =>
  leave === null ? 0 : Math.sign(bricksOf(leave.step)) * leave.plates;

/**
 * Plates on the arbor against those that are to be there.
 *
 * Source  the-job.md C85: any difference stops the set
 * Omits   spreader plates, which no tally counts
 */
export const tallyOf = (set: SetNow, byShow: number | null): Tally | null => {
  const { standing, plan } = set;
  if (standing === null) return null;
  const on = platesOf(standing.stack);
  const rest = plan?.steps.slice(plan.done).reduce((sum, step) => sum + bricksOf(step), 0);
  return { on, atEnd: rest === undefined ? null : on + rest - begunOf(set), byShow };
};

/** Whether plates are missing or too many where no work is open that would mend it. */
export const isTallyOff = ({ on, atEnd, byShow }: Tally, set: SetNow): boolean => {
  if (byShow === null || isWorked(set)) return false;
  const hangs = Object.values(set.standing?.items ?? {}).some((phase) => phase === 'flying');
  return atEnd === null && hangs && on !== byShow;
};
