/** What the order of work on a candidate would need; asked for one by one, since it costs time. */
import {
  type Assumption,
  bareStart,
  type CountOfKind,
  crewQuestion,
  isAccepted,
  loadGoal,
  type OrderQuestion,
  openJob,
  plannedStart,
  strikeGoal,
  type WorkedOrder,
  workOutBest,
} from '#orders';
import { ok, type Refusal, type Result } from '#outcome';
import type { BrokenRule, SmallestChange } from '#sequence';
import { showWith } from './trial.ts';
import type { PlacingAsked } from './types.ts';

export type WorkNeeds =
  /** An order exists; the restraint that it asks for, or null where staging alone does it. */
  | {
      readonly is: 'order';
      readonly restraint: {
        readonly resists: 'in' | 'out';
        readonly ratedN: number;
        readonly fromM: number;
        readonly toM: number;
      } | null;
      /** Only with every mass as it is written: weigh or pull-test first. */
      readonly asWritten: boolean;
    }
  | {
      readonly is: 'noOrder';
      readonly rule: BrokenRule;
      readonly change: SmallestChange['change'] | null;
    }
  /** Not found in so many states, or found and not accepted: stop and ask. */
  | { readonly is: 'notFound' }
  | { readonly is: 'refused'; readonly refusals: readonly Refusal[] };

export type CandidateWork = { readonly load: WorkNeeds; readonly strike: WorkNeeds };

type Job = 'load' | 'strike';

/** What the record has on the arbor that the piece leaves; null where nobody recorded it. */
const leftBricks = ({ piece, state }: PlacingAsked): readonly CountOfKind[] | null => {
  if (piece.from === null) return [];
  const stack = state?.sets[piece.from]?.stack ?? null;
  if (stack === null) return null;
  return stack.flatMap(({ kind, count, tag }) => (tag === 'show' ? [{ kind, count }] : []));
};

/** To hang it elsewhere it comes off first, and its bricks with it. */
const bricksBack = (asked: PlacingAsked, set: string): readonly Assumption[] => {
  const { from } = asked.piece;
  const bricks = leftBricks(asked) ?? [];
  return from === null || from === set || bricks.length === 0
    ? []
    : [{ is: 'bricksBack', set: from, bricks }];
};

const questionOf = (
  asked: PlacingAsked,
  set: string,
  kind: Job,
): Result<OrderQuestion, readonly Refusal[]> => {
  const { house, state } = asked;
  const job = openJob({ house, show: showWith(asked, set), state }, set);
  if (!job.ok) return job;
  const start = kind === 'load' ? bareStart(job.value) : plannedStart(job.value);
  if (!start.ok) return start;
  const goal =
    kind === 'load' ? loadGoal(job.value, null) : strikeGoal(job.value, start.value.standing, null);
  if (!goal.ok) return goal;
  const assumed = [...start.value.assumed, ...bricksBack(asked, set)];
  const from = { ...start.value, assumed };
  return ok(crewQuestion({ job: job.value, start: from, goal: goal.value, kind }));
};

const needsOf = (asked: PlacingAsked, { plan, order }: WorkedOrder): WorkNeeds => {
  if ('none' in plan) {
    // Where nobody knows which bricks the old arbor gives back, it is no proof that none exists.
    if (leftBricks(asked) === null) return { is: 'notFound' };
    const { rule, smallestChange } = plan.none;
    return { is: 'noOrder', rule, change: smallestChange?.change ?? null };
  }
  if ('stopped' in plan || !isAccepted(order)) return { is: 'notFound' };
  const { restraint } = plan.found;
  return {
    is: 'order',
    restraint:
      restraint === null
        ? null
        : {
            resists: restraint.resists,
            ratedN: restraint.rated,
            fromM: restraint.from,
            toM: restraint.to,
          },
    asWritten: order.assumed.some(({ is }) => is === 'massesAsWritten'),
  };
};

/**
 * The least restraint that hanging and striking the piece on this set would need, from a bare set
 * and back to one, by the search and the judge of every order of work.
 *
 * Holds   show bricks that the record has on the arbor which the piece leaves lie at whichever
 *         gallery takes them: it is struck there first
 * Check   examples/kestlemere/which-set.test.ts
 */
export const workOn = (asked: PlacingAsked, set: string): CandidateWork => {
  const answer = (kind: Job): WorkNeeds => {
    const question = questionOf(asked, set, kind);
    return question.ok
      ? needsOf(asked, workOutBest(question.value))
      : { is: 'refused', refusals: question.error };
  };
  return { load: answer('load'), strike: answer('strike') };
};
