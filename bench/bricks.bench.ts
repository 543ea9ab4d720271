/**
 * Brick choice against a general solver, on the same random cases in the same run. The solver's
 * time is one program, least error only; ours is the whole answer: least error, fewest bricks, all
 * ties, the next two. Both are warm. Run it by itself: `node bench/bricks.bench.ts`.
 */
import { Bench } from 'tinybench';
import { stackToTarget } from '#balance';
import { leastErrorByMilp, openHighs } from '../validation/bricks/milp.ts';
import { stackCases } from '../validation/bricks/random-cases.ts';

const SEED = 31_415;
const CASES = 200;

/** What the design asks for: brick choice this many times faster than the solver. */
const TIMES_FASTER_MIN = 20;

/** ms; no single choice may take longer, also in houses with more kinds than a house has. */
const LONGEST_MAX = 250;

const POUNDS = [25, 12.5, 22, 6, 33, 44];
const INCHES = [1.2, 0.6, 1.25, 0.3, 1.5, 2];

/** Six kinds, 480 of each, on a 66 in rod: larger than any house, and it must not hang. */
const largest = (target: number) => ({
  target,
  carriage: 43,
  bricks: POUNDS.map((pounds, at) => ({
    id: `k${at}`,
    mass: pounds * 0.45359237,
    thickness: (INCHES[at] ?? 1) * 0.0254,
    stock: 480,
  })),
  stackHeight: 66 * 0.0254,
});

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);

const line = (what: string, value: string): void => {
  console.log(`${what.padEnd(52)}${value.padStart(14)}`);
};

const ms = (value: number): string => `${value.toFixed(3)} ms`;

/** Median time in ms of each case, every case its own task so that no case hides another. */
const medians = async (
  names: readonly string[],
  work: (at: number) => void,
  iterations: number,
): Promise<readonly number[]> => {
  const bench = new Bench({ time: 0, iterations, warmupTime: 0, warmupIterations: 2 });
  for (const [at, name] of names.entries()) bench.add(name, () => work(at));
  await bench.run();
  return bench.tasks.map((task) => {
    if (task.result.state !== 'completed') throw new Error(`${task.name}: ${task.result.state}`);
    return task.result.latency.p50;
  });
};

export const run = async (): Promise<void> => {
  const highs = await openHighs();
  const cases = stackCases(SEED, CASES);
  const names = cases.map((_, at) => `case ${at}`);
  const ours = await medians(
    names,
    (at) => {
      const input = cases[at];
      if (input !== undefined) stackToTarget(input);
    },
    25,
  );
  const theirs = await medians(
    names,
    (at) => {
      const input = cases[at];
      if (input !== undefined) leastErrorByMilp(highs, input);
    },
    5,
  );
  const big = [100, 300, 500, 700, 900].map(largest);
  const large = await medians(
    big.map(({ target }) => `six kinds, ${target} kg`),
    (at) => {
      const input = big[at];
      if (input !== undefined) stackToTarget(input);
    },
    5,
  );
  const faster = median(theirs) / median(ours);
  const fasterInAll = sum(theirs) / sum(ours);
  const slowestCase = Math.min(...theirs.map((time, at) => time / (ours[at] ?? Number.NaN)));
  line(`brick choice, median of ${CASES} cases, seed ${SEED}`, ms(median(ours)));
  line('brick choice, slowest case', ms(Math.max(...ours)));
  line('MILP solver (HiGHS), median of the same cases', ms(median(theirs)));
  line('MILP solver (HiGHS), slowest case', ms(Math.max(...theirs)));
  line('six kinds, 480 of each, 66 in rod, slowest of five', ms(Math.max(...large)));
  line('times faster than the MILP solver, by medians', `${faster.toFixed(0)} x`);
  line('times faster than the MILP solver, all cases together', `${fasterInAll.toFixed(0)} x`);
  line('times faster, in the case least in our favour', `${slowestCase.toFixed(1)} x`);
  const least = Math.min(faster, fasterInAll);
  if (!(least >= TIMES_FASTER_MIN)) {
    throw new Error(`brick choice is ${least.toFixed(1)} x faster, under ${TIMES_FASTER_MIN} x`);
  }
  if (!(Math.max(...large) <= LONGEST_MAX)) {
    throw new Error(`six kinds take ${ms(Math.max(...large))}, over ${ms(LONGEST_MAX)}`);
  }
};

if (import.meta.main) await run();
