/** The planner against a general solver, on the same small jobs. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { FOOT } from '#quantities';
import { leastCost, openHighs } from '../../validation/sequence/general-solver.ts';
import { parted, wholeGraph } from '../../validation/sequence/slow-search.ts';
import { costOf, gridOf, planned, slowJob, task } from '../../validation/sequence/small-jobs.ts';

const SEED = 31_415;
const SAMPLES = 24;
/** A whole graph goes to the solver, so only small ones do. */
const STEPS_MOST = 6000;

it(`costs what a general solver finds, on ${SAMPLES} random jobs (seed ${SEED})`, async () => {
  const highs = await openHighs();
  let [compared, found, states, ours, theirs] = [0, 0, 0, 0, 0];
  for (const each of fc.sample(task, { seed: SEED, numRuns: 400 })) {
    if (compared === SAMPLES) break;
    const heights = gridOf(each.set, []);
    const graph = wholeGraph(slowJob(each, heights, 0));
    if (graph.steps.length > STEPS_MOST) continue;
    const { plan } = planned(each, { heightStepM: FOOT / 4 });
    const before = performance.now();
    const cost = leastCost(highs, graph);
    const between = performance.now();
    expect(cost === null ? null : parted(cost)).toEqual(costOf(plan));
    // Where there is none, the planner goes on to say why, so the found ones are timed.
    if (cost !== null) {
      theirs += between - before;
      planned(each, { heightStepM: FOOT / 4 });
      ours += performance.now() - between;
    }
    compared += 1;
    states += graph.states;
    if (cost !== null) found += 1;
  }
  expect(compared).toBe(SAMPLES);
  expect(found).toBeGreaterThan(3);
  const times = `${ours.toFixed(0)} ms here, ${theirs.toFixed(0)} ms in the solver`;
  console.info(`general solver: ${found} of ${compared} found, ${states} states, ${times}`);
});
