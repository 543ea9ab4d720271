import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { POUND_FORCE } from '#quantities';
import { searchedSlowly } from '../../validation/sequence/slow-search.ts';
import {
  costOf,
  gridOf,
  planned,
  QUARTER,
  slowJob,
  task,
} from '../../validation/sequence/small-jobs.ts';
import { faultsOf } from './example-replay.contract.ts';

const SEED = 90_117;
const RUNS = { seed: SEED, numRuns: 60 };

describe(`orders on small sets (seed ${SEED})`, () => {
  it('costs what the cheapest on a fine grid costs, and is none where that has none', () => {
    let [states, found, none] = [0, 0, 0];
    fc.assert(
      fc.property(task, (each) => {
        const { plan } = planned(each, {});
        expect('stopped' in plan).toBe(false);
        const heights = 'found' in plan ? plan.found.states.map((s) => s.standing.height) : [];
        const slow = searchedSlowly(slowJob(each, gridOf(each.set, heights), 0));
        states += slow.states;
        if ('found' in plan) found += 1;
        else none += 1;
        expect(slow.cost).toEqual(costOf(plan));
      }),
      RUNS,
    );
    // Both answers must come up, or the comparison says nothing.
    expect(found).toBeGreaterThan(10);
    expect(none).toBeGreaterThan(10);
    const counts = `${found} found, ${none} none, ${states} states the slow way`;
    console.info(`orders: ${counts}`);
  });

  it('finds the least restraint on a grid of heights, and one step less has none', () => {
    let [states, needed] = [0, 0];
    const stepN = 5 * POUND_FORCE;
    fc.assert(
      fc.property(task, (each) => {
        const { plan } = planned(each, {
          restraint: 'out',
          restraintStepN: stepN,
          heightStepM: QUARTER,
        });
        const heights = gridOf(each.set, []);
        if (!('found' in plan)) {
          expect(searchedSlowly(slowJob(each, heights, 1e6)).cost).toBeNull();
          return;
        }
        const { restraint } = plan.found;
        if (restraint === null) return;
        needed += 1;
        const [at, less] = [0, stepN].map((n) =>
          searchedSlowly(slowJob(each, heights, restraint.rated - n)),
        );
        states += (at?.states ?? 0) + (less?.states ?? 0);
        expect(at?.cost).not.toBeNull();
        expect(less?.cost).toBeNull();
      }),
      { ...RUNS, numRuns: 90 },
    );
    expect(needed).toBeGreaterThan(5);
    console.info(`least restraint: ${needed} needed, ${states} states the slow way`);
  });

  it('replays without a fault, plate by plate, within the planning limit or the run closed', () => {
    let [replayed, restrained, nominal] = [0, 0, 0];
    fc.assert(
      fc.property(task, (each) => {
        const { physics, plan } = planned(each, { restraint: 'either', lock: 'planning' });
        if (!('found' in plan)) return;
        replayed += 1;
        if (plan.found.restraint !== null) restrained += 1;
        if (plan.found.states.some(({ lockUsed }) => lockUsed === 'nominal')) nominal += 1;
        expect(faultsOf(physics, plan.found, each.doubtShare)).toEqual([]);
      }),
      { ...RUNS, numRuns: 200 },
    );
    expect(restrained).toBeGreaterThan(10);
    expect(nominal).toBeGreaterThan(10);
    console.info(`replayed ${replayed}, ${restrained} with a restraint, ${nominal} nominal`);
  });
});
