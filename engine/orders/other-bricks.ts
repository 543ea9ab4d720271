/** Bricks that balance best and cannot be put on are no answer: others near them may be one. */
import type { OrderGoal } from '#sequence';
import { isAccepted } from './checked-order.ts';
import { type OrderQuestion, type WorkedOrder, workOut } from './work-out.ts';

export type OtherBricks = {
  readonly counts: OrderGoal['bricks'];
  readonly worked: WorkedOrder;
};

/** A near mix: what it changes at the batten, N, and how many plates are others. */
type Candidate = {
  readonly counts: OrderGoal['bricks'];
  readonly byN: number;
  readonly plates: number;
};

/**
 * Planned kinds, and the lightest of the house to make up the difference: a third kind on one arbor
 * is a mistake waiting for a loader.
 */
const candidates = ({ job, goal }: OrderQuestion): readonly Candidate[] => {
  const shown = job.house.brickKinds.filter(({ serves }) => serves.show).map(({ id }) => id);
  const own = job.physics.bricks
    .filter(({ id }) => shown.includes(id))
    .toSorted((one, other) => one.massKg - other.massKg);
  const kinds = own.filter(({ id }, index) => index === 0 || (goal.bricks[id] ?? 0) > 0);
  const largestN = Math.max(0, ...kinds.map(({ atBattenN }) => atBattenN));
  let made: readonly Candidate[] = [{ counts: {}, byN: 0, plates: 0 }];
  for (const { id, atBattenN } of kinds) {
    const planned = goal.bricks[id] ?? 0;
    made = made.flatMap(({ counts, byN, plates }) =>
      [-2, -1, 0, 1, 2].flatMap((change): readonly Candidate[] => {
        const count = planned + change;
        if (count < 0) return [];
        const more = count === 0 ? counts : { ...counts, [id]: count };
        return [{ counts: more, byN: byN + change * atBattenN, plates: plates + Math.abs(change) }];
      }),
    );
  }
  return made
    .filter(({ byN, plates }) => plates > 0 && Math.abs(byN) <= largestN)
    .toSorted((one, other) => Math.abs(one.byN) - Math.abs(other.byN) || one.plates - other.plates);
};

/** So many other mixes are tried, each a search of its own, and not a long one. */
const TRIED_MOST = 8;
const QUICK = { explain: false, statesMost: 4000 } as const;

/**
 * Bricks for a load that go on by staging alone where the planned ones do not: the nearest to what
 * is planned, by what they change at the batten. Null where the planned ones go on by themselves,
 * or where no near mix does.
 *
 * Source  procedure.md: brick choice is part of the plan; the-job.md S3 and trap 7
 * Omits   mixes further off than one largest brick; how well they balance: the card says that
 */
export const otherBricks = (question: OrderQuestion): OtherBricks | null => {
  if (question.kind !== 'load' || question.goal.service !== 'in') return null;
  const alone = { ...question, restraint: 'none' } as const;
  if (goesOn(workOut(alone, QUICK))) return null;
  for (const { counts } of candidates(question).slice(0, TRIED_MOST)) {
    const worked = workOut({ ...alone, goal: { ...question.goal, bricks: counts } }, QUICK);
    if (goesOn(worked)) return { counts, worked };
  }
  return null;
};

const goesOn = ({ plan, order }: WorkedOrder): boolean => 'found' in plan && isAccepted(order);
