import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { POUND } from '#quantities';
import { searchedSlowly } from '../../validation/sequence/slow-search.ts';
import {
  costOf,
  gridOf,
  planned,
  slowJob,
  type Task,
  task,
} from '../../validation/sequence/small-jobs.ts';
import { lb } from './example-jobs.contract.ts';
import { faultsOf } from './example-replay.contract.ts';

const SEED = 60_127;

/** So that a replay may open the run again. */
const PLANNING = { lock: 'planning' } as const;

/** A carriage of 95 lb with the bricks of the goal, or of the start where they come off. */
const laden = ({ set, full, half, doubtShare }: Task): number => {
  const [F, H] = set.bricks;
  if (F === undefined || H === undefined) throw new Error('two kinds');
  const listed = set.arbor.carriageKg + full * F.massKg + half * H.massKg;
  return listed + doubtShare * (full * F.doubtKg + half * H.doubtKg);
};

const limitedTo = (each: Task, limitKg: number): Task => ({
  ...each,
  set: { ...each.set, arbor: { ...each.set.arbor, limitKg } },
});

describe(`a limit on the arbor (seed ${SEED})`, () => {
  it('of just what is wanted changes no order, and half a pound less leaves none to load', () => {
    let [found, refused] = [0, 0];
    fc.assert(
      fc.property(task, (each) => {
        const free = planned(each, PLANNING).plan;
        const just = planned(limitedTo(each, laden(each)), PLANNING);
        expect(costOf(just.plan)).toEqual(costOf(free));
        if (!('found' in just.plan)) return;
        found += 1;
        expect(faultsOf(just.physics, just.plan.found, each.doubtShare)).toEqual([]);
        if (each.strikes || each.full + each.half === 0) return;
        const less = planned(limitedTo(each, laden(each) - 0.5 * POUND), PLANNING).plan;
        expect(less).toMatchObject({ none: { exhaustive: true, rule: 'MASS' } });
        refused += 1;
      }),
      { seed: SEED, numRuns: 80 },
    );
    // Both must come up, or the law says nothing.
    expect(found).toBeGreaterThan(15);
    expect(refused).toBeGreaterThan(5);
  });

  it('costs what the slow way costs, on either side of it', () => {
    let none = 0;
    fc.assert(
      fc.property(task, fc.constantFrom(-10, 0, 20), (each, moreLb) => {
        const limited = limitedTo(each, laden(each) + lb(moreLb));
        const { plan } = planned(limited, {});
        const heights = 'found' in plan ? plan.found.states.map((s) => s.standing.height) : [];
        const slow = searchedSlowly(slowJob(limited, gridOf(limited.set, heights), 0));
        if ('none' in plan) none += 1;
        expect(slow.cost).toEqual(costOf(plan));
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(none).toBeGreaterThan(5);
  });
});
