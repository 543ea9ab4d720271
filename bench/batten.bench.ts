/**
 * Tensions of a thousand battens, seven lines and twelve loads each, lines that only pull, against
 * a general solver of quadratic programs on the same cases in the same run. Both start from the
 * same case and end with the tension of every line, which have to agree; both are warm. The whole
 * answer (bending, deflection, sag) is timed too: the solver has no such thing to be held against.
 * Run it by itself: `node bench/batten.bench.ts`.
 */
import { Bench } from 'tinybench';
import { type BattenSolution, solveBatten } from '#beam';
import { wholeWeight } from '../validation/beam/judge-batten.ts';
import { programOf, tensionsByQp } from '../validation/beam/least-energy.ts';
import { houseBatten } from '../validation/beam/random-battens.ts';
import { drawFrom } from '../validation/draw.ts';

const SEED = 20_306;
const CASES = 1000;

/** What the issue asks for. */
const TIMES_FASTER_MIN = 20;
/** Of the load, as in VAL-BEM-14. */
const SAME = 1e-6;

type Case = ReturnType<typeof houseBatten>;

const solved = (the: Case): BattenSolution => {
  const answer = solveBatten(the);
  if (!answer.ok || 'unstable' in answer.value) throw new Error('a batten without an answer');
  return answer.value;
};

/** Everything that a screen shows of it; read, so that it is worked out. */
const whole = (the: Case): number => {
  const { moment, shear, deflection, sag, tensions } = solved(the);
  return (
    moment.max.value + shear.max.value + deflection.max.x + (sag?.value ?? 0) + tensions.length
  );
};

const worstOff = (cases: readonly Case[]): number =>
  Math.max(
    ...cases.flatMap((the) => {
      const { forceN } = wholeWeight(the);
      const theirs = tensionsByQp(the);
      return solved(the).tensions.map((each, i) => Math.abs(each - (theirs[i] ?? NaN)) / forceN);
    }),
  );

const line = (what: string, value: string): void => {
  console.log(`${what.padEnd(58)}${value.padStart(14)}`);
};

/** Median time of one case, µs, each piece of work over all cases. */
const medians = async (work: Readonly<Record<string, () => void>>): Promise<readonly number[]> => {
  const bench = new Bench({ time: 1500, iterations: 15, warmupTime: 500, warmupIterations: 3 });
  for (const [name, run] of Object.entries(work)) bench.add(name, run);
  await bench.run();
  return bench.tasks.map((task) => {
    if (task.result.state !== 'completed') throw new Error(`${task.name}: ${task.result.state}`);
    return (task.result.latency.p50 * 1000) / CASES;
  });
};

export const run = async (): Promise<void> => {
  const draw = drawFrom(SEED);
  const cases = Array.from({ length: CASES }, () => houseBatten(draw));
  const withSlack = cases.filter((the) => solved(the).slack.includes(true)).length;
  const worst = worstOff(cases);
  const [ours = NaN, theirs = NaN, building = NaN, all = NaN] = await medians({
    ours: () => {
      for (const the of cases) solved(the);
    },
    theirs: () => {
      for (const the of cases) tensionsByQp(the);
    },
    building: () => {
      for (const the of cases) programOf(the);
    },
    whole: () => {
      for (const the of cases) whole(the);
    },
  });
  const alone = (theirs - building) / ours;
  line(`${CASES} battens, seed ${SEED}; with slack lines`, String(withSlack));
  line('worst difference between the two, of the load', worst.toExponential(1));
  line('tensions of one batten', `${ours.toFixed(1)} µs`);
  line('by the general solver (quadprog)', `${theirs.toFixed(1)} µs`);
  line('  times faster', `${(theirs / ours).toFixed(1)} x`);
  line('  of the solver, building the program for it', `${building.toFixed(1)} µs`);
  line('  times faster, that left out of theirs alone', `${alone.toFixed(1)} x`);
  line('with bending, deflection and sag', `${all.toFixed(1)} µs`);
  line('  times faster than the tensions alone by the solver', `${(theirs / all).toFixed(1)} x`);
  if (!(worst <= SAME)) throw new Error(`the answers differ by ${worst} of the load`);
  if (!(theirs / ours >= TIMES_FASTER_MIN)) {
    throw new Error(
      `a batten is ${(theirs / ours).toFixed(1)} x faster, under ${TIMES_FASTER_MIN}`,
    );
  }
};

if (import.meta.main) await run();
