/** Bricks that balance best and cannot be put on are no answer (the demo's plan, S3 and trap 7). */
import { describe, expect, it } from 'vitest';
import {
  bareStart,
  isAccepted,
  loadGoal,
  type OrderQuestion,
  openJob,
  otherBricks,
  workOut,
} from '#orders';
import type { Refusal, Result } from '#outcome';
import { openExample } from '../open-example.ts';
import { pounds } from './plan-sets.ts';

const { house, show, state } = openExample('kestlemere');

const must = <T>(answer: Result<T, readonly Refusal[]>): T => {
  if (answer.ok) return answer.value;
  throw new Error(JSON.stringify(answer.error));
};

const loadOf = (set: string, bricks?: OrderQuestion['goal']['bricks']): OrderQuestion => {
  const job = must(openJob({ house, show, state }, set));
  const goal = must(loadGoal(job, null));
  return {
    job,
    start: must(bareStart(job)),
    goal: bricks === undefined ? goal : { ...goal, bricks },
    kind: 'load',
    doubt: 'worst',
    lock: 'planning',
    restraint: 'either',
    steelN: null,
  };
};

/** As listed, with a lock that holds so much. */
const withLock = (asked: OrderQuestion, lockLb: number): OrderQuestion => ({
  ...asked,
  doubt: 'none',
  job: { ...asked.job, physics: { ...asked.job.physics, lockLimitN: pounds(lockLb) } },
});

describe('[trap 7] bricks that go on', () => {
  const seven = loadOf('9', { F: 7 });

  it('are six and a half where the seventh asks more of the lock than it holds', () => {
    // At 25.4 ft, where the mid gallery still reaches, the seventh makes it 49 lb arbor heavy.
    expect(otherBricks(withLock(seven, 50))).toBeNull();
    const other = otherBricks(withLock(seven, 46));
    expect(other?.counts).toEqual({ F: 6, H: 1 });
    expect(other !== null && isAccepted(other.worked.order)).toBe(true);
    expect(other?.worked.order.restraint).toBeNull();
  });

  it('are not made up where no near mix goes on', () => {
    expect('found' in workOut({ ...seven, restraint: 'none' }).plan).toBe(false);
    expect(otherBricks(seven)).toBeNull();
  });

  it('are the planned ones where those go on, and only of a load', () => {
    expect(otherBricks(loadOf('8'))).toBeNull();
    expect(otherBricks({ ...withLock(seven, 46), kind: 'strike' })).toBeNull();
  });
});
