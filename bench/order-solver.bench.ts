/**
 * The order of work against a general solver, on the same random small jobs in the same run: the
 * solver is handed the whole graph of states, ready made, and looks for a shortest path; ours
 * makes its own states and says which they are. Both are warm; same cost or it stops. Run it by
 * itself: `node bench/order-solver.bench.ts`.
 */
import fc from 'fast-check';
import { FOOT } from '#quantities';
import { leastCost, openHighs } from '../validation/sequence/general-solver.ts';
import { parted, wholeGraph } from '../validation/sequence/slow-search.ts';
import { costOf, gridOf, planned, slowJob, task } from '../validation/sequence/small-jobs.ts';

const SEED = 31_415;
const SAMPLES = 24;
/** A whole graph goes to the solver, so only small ones do. */
const STEPS_MOST = 6000;
const RUNS = 3;

/** What the issue asks for. */
const TIMES_FASTER_MIN = 20;

const median = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[values.length >> 1] ?? Number.NaN;

const timed = (work: () => void): number => {
  work();
  return median(
    Array.from({ length: RUNS }, () => {
      const before = performance.now();
      work();
      return performance.now() - before;
    }),
  );
};

const highs = await openHighs();
let [compared, states, ours, solver, whole] = [0, 0, 0, 0, 0];
for (const each of fc.sample(task, { seed: SEED, numRuns: 600 })) {
  if (compared === SAMPLES) break;
  const job = slowJob(each, gridOf(each.set, []), 0);
  const graph = wholeGraph(job);
  const cost = leastCost(highs, graph);
  if (graph.steps.length > STEPS_MOST || cost === null) continue;
  const { plan } = planned(each, { heightStepM: FOOT / 4 });
  if (JSON.stringify(costOf(plan)) !== JSON.stringify(parted(cost))) {
    throw new Error(`another optimum: ${JSON.stringify(costOf(plan))} and ${parted(cost)}`);
  }
  compared += 1;
  states += graph.states;
  solver += timed(() => leastCost(highs, graph));
  whole += timed(() => leastCost(highs, wholeGraph(job)));
  ours += timed(() => planned(each, { heightStepM: FOOT / 4 }));
}
const line = (what: string, value: string): void => {
  console.log(`${what.padEnd(58)}${value.padStart(14)}`);
};
line(`jobs with an order, same optimum (seed ${SEED})`, String(compared));
line('states in their graphs', String(states));
line('ours, all of it', `${ours.toFixed(1)} ms`);
line('HiGHS, the path alone, graph given', `${solver.toFixed(1)} ms`);
line('HiGHS, graph and path', `${whole.toFixed(1)} ms`);
line('times faster than the path alone', (solver / ours).toFixed(1));
line('times faster than graph and path', (whole / ours).toFixed(1));
if (whole / ours < TIMES_FASTER_MIN) {
  console.error(`less than ${TIMES_FASTER_MIN} times faster`);
  process.exitCode = 1;
}
