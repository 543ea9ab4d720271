/**
 * The order of work of every counterweight set of the demo, load and strike, by the words of the
 * issue: warm, 100 ms each at most, 500 ms for the house curtain and the iron bridge. With the
 * count of states. Run it by itself: `node bench/order.bench.ts`.
 */
import type { OrderPlan } from '#sequence';
import { DEMO_JOBS, type PlanJob, planOf } from '../examples/kestlemere/plan-jobs.ts';
import { pounds } from '../examples/kestlemere/plan-sets.ts';

const SLOW = new Set(['1', '36']);
const MOST_MS = 100;
const SLOW_MOST_MS = 500;
const RUNS = 7;

const median = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[values.length >> 1] ?? Number.NaN;

const words = (plan: OrderPlan): string => {
  if ('none' in plan) return `none exists, all ${plan.none.searched} states searched`;
  if ('stopped' in plan) return `none found in ${plan.stopped.searched} states`;
  const { searched, restraint } = plan.found;
  const held = restraint === null ? '' : `, ${Math.round(restraint.rated / pounds(1))} lb held`;
  return `${searched} states${held}`;
};

let [late, allMs, worstMs] = [0, 0, 0];

const timed = (job: PlanJob, doubtShare: number): void => {
  let plan = planOf(job, { doubtShare });
  const times = Array.from({ length: RUNS }, () => {
    const before = performance.now();
    plan = planOf(job, { doubtShare });
    return performance.now() - before;
  });
  const ms = median(times);
  allMs += ms;
  worstMs = Math.max(worstMs, ms);
  const mostMs = SLOW.has(job.set.id) ? SLOW_MOST_MS : MOST_MS;
  if (ms > mostMs) late += 1;
  const mark = ms > mostMs ? `  late: ${mostMs} ms at most` : '';
  console.log(`${job.name.padEnd(16)}${ms.toFixed(1).padStart(7)} ms  ${words(plan)}${mark}`);
};

for (const [what, doubtShare] of [
  ['Masses as listed', 0],
  ['Every mass at its worst', 1],
] as const) {
  console.log(`\n${what}`);
  [allMs, worstMs] = [0, 0];
  for (const job of DEMO_JOBS) timed(job, doubtShare);
  console.log(`all ${DEMO_JOBS.length}: ${allMs.toFixed(0)} ms, worst ${worstMs.toFixed(1)} ms`);
}
if (late > 0) {
  console.error(`${late} plans take longer than they may`);
  process.exitCode = 1;
}
