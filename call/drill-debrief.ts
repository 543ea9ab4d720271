/** What would have come of a planted fault, and where it could have been seen. */
import { setFreeAt } from '#assessment';
import type { CommandAnswer } from '#events';
import { postOf } from '#rules';
import type { OrderPhysics, PostId, Standing, Step } from '#state';
import { type DrillFault, type RanAway, reallyDone, worldAfter } from './drill-world.ts';
import { platesOf } from './plates.ts';

/** How a drill ended. Steps are counted from 0. */
export type DrillEnd = { readonly step: number } & (
  | /** Told by whoever counted, stopped, doubted or found it otherwise. */ {
      readonly is: 'caught';
      readonly by: PostId;
      readonly how: 'count' | 'stop' | 'doubt' | 'found';
    }
  /** Hands could not do what they were told. */
  | {
      readonly is: 'impossible';
      readonly by: PostId;
      readonly why: { readonly found: string; readonly accepted: string };
    }
  | { readonly is: 'ranAway'; readonly ran: RanAway }
  /** Worked to its end: with the fault still in it, or with none. */
  | { readonly is: 'done'; readonly isWrong: boolean }
  /** The house gave no leave. */
  | { readonly is: 'refused'; readonly by: PostId; readonly answer: CommandAnswer }
);

export type Debrief = {
  /** Bricks on the arbor by the record and in truth, where the drill ended. */
  readonly plates: { readonly told: number; readonly truly: number };
  /** Where nothing would have held it, had everybody gone on; null where something always did. */
  readonly ran: (RanAway & { readonly step: number }) | null;
  /** The most that it would have set free on the way, if what held it had given way. */
  readonly mostJ: number;
  readonly mostAt: number;
  /** The first rule that the truth breaks: it would have kept leave back, had it been known. */
  readonly rule: { readonly step: number; readonly rule: string; readonly says: string } | null;
  /** The next step at which a second counts before the lock is opened; null where none comes. */
  readonly count: { readonly step: number; readonly post: PostId } | null;
};

type Planted = {
  readonly physics: OrderPhysics;
  readonly start: Standing;
  readonly steps: readonly Step[];
  readonly fault: DrillFault;
};

type Way = {
  readonly ran: Debrief['ran'];
  readonly mostJ: number;
  readonly mostAt: number;
  readonly rule: Debrief['rule'];
};

/** The whole order as hands would have done it, from the fault on, until nothing holds. */
const wayOf = ({ physics, start, steps, fault }: Planted): Way => {
  let truth = start;
  let way: Way = { ran: null, mostJ: 0, mostAt: fault.step, rule: null };
  for (const [at] of steps.entries()) {
    const after = worldAfter(physics, truth, reallyDone(steps, at, fault));
    truth = after.truth;
    if (at < fault.step) continue;
    const freeJ = after.ran?.energyJ ?? setFreeAt(physics, truth).energy;
    way = {
      ran: after.ran === null ? null : { ...after.ran, step: at },
      mostJ: Math.max(way.mostJ, freeJ),
      mostAt: freeJ > way.mostJ ? at : way.mostAt,
      rule: way.rule ?? (after.broken === null ? null : { step: at, ...after.broken }),
    };
    if (after.ran !== null || after.cannot !== null) return way;
  }
  return way;
};

/** Unlocked after a change: the second counts first (6.3, 2 and 3). */
const countAfter = (steps: readonly Step[], fault: DrillFault): Debrief['count'] => {
  if (fault.is !== 'miscount') return null;
  const step = steps.findIndex(
    ({ act }, at) => at > fault.step && (act === 'fly' || act === 'ease'),
  );
  return step < 0 ? null : { step, post: 'headFly' };
};

export const debriefOf = (
  planted: Planted,
  { told, truth }: { readonly told: Standing; readonly truth: Standing },
): Debrief => ({
  plates: { told: platesOf(told.stack), truly: platesOf(truth.stack) },
  ...wayOf(planted),
  count: countAfter(planted.steps, planted.fault),
});

/** Everybody whose work the order is, and who is asked for a second word. */
export const postsOf = (steps: readonly Step[]): readonly PostId[] => [
  ...new Set<PostId>(['headFly', 'rail', 'watcher', 'deck', ...steps.map(postOf)]),
];
