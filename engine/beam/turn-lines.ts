/** Which turnbuckles to turn, and by how much, to level the batten or to even out its lines. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { barOf, bentAt } from './bars.ts';
import { refuse } from './refusal-codes.ts';
import { solveBatten } from './solve-batten.ts';
import type { BattenCase, BattenSolution, LiftLine, Unstable } from './types.ts';

export type Turning = {
  /** Metres by which each line is to be made shorter; longer is negative. */
  readonly turns: readonly number[];
  /** Trims after it, from true. */
  readonly trims: readonly number[];
  readonly before: BattenSolution;
  readonly after: BattenSolution;
};

/** Stands and pieces carry or pull by their own heights, which no turn here reckons with. */
const coupledFaults = ({ supports = [], pieces = [] }: BattenCase): readonly Refusal[] =>
  [
    { path: 'supports', count: supports.length },
    { path: 'pieces', count: pieces.length },
  ]
    .filter(({ count }) => count > 0)
    .map(({ path, count }) =>
      refuse('notSought', path, {
        found: String(count),
        accepted: 'a batten that hangs free, with its loads as points and patches',
      }),
    );

type Turned = Result<Turning | { readonly unstable: Unstable }, readonly Refusal[]>;

/**
 * Turns that bring the batten level at every line: then each line carries what it would carry if
 * it did not stretch, and its trim makes up for its stretch.
 *
 *     trim_i = T_i / k_i − y        with T_i of rigid true lines, y the mean height kept
 *
 * Source  a level batten is a beam on level supports; check-values 4.6 gives T_i of two such
 * Holds   the batten is stable; a line that is slack on level supports is left just touching
 * Omits   that turning one line of a real batten settles the others: turn, look, turn again
 * Check   VAL-BEM-10
 */
export const turnsToLevel = (the: BattenCase): Turned => {
  const faults = coupledFaults(the);
  if (faults.length > 0) return fail(faults);
  const lines = the.lines.map(({ x }): LiftLine => ({ x, stiffness: null }));
  const level = solveBatten({ ...the, lines });
  if (!level.ok) return level;
  if ('unstable' in level.value) return ok(level.value);
  return turnedTo(the, { tensions: level.value.tensions, bends: level.value.deflection.atLines });
};

/**
 * Turns that share the load among the lines as evenly as balance allows. Tensions that all are
 * equal hold a batten only if its load sits in the middle of the lines; else the nearest are
 *
 *     T_i = α + β·x_i        with Σ T = W and Σ T·x = M
 *
 * Source  least sum of squares of the differences under the two conditions of balance
 * Holds   all T_i above 0; where one would push, it is refused, for that line would hang slack
 * Check   VAL-BEM-10
 */
export const turnsToEven = (the: BattenCase): Turned => {
  const faults = coupledFaults(the);
  if (faults.length > 0) return fail(faults);
  const now = solveBatten(the);
  if (!now.ok) return now;
  if ('unstable' in now.value) return ok(now.value);
  const xs = the.lines.map(({ x }) => x);
  const [n, sumX] = [xs.length, xs.reduce((sum, x) => sum + x, 0)];
  const sumXx = xs.reduce((sum, x) => sum + x * x, 0);
  const forceN = now.value.tensions.reduce((sum, each) => sum + each, 0);
  const momentNm = now.value.tensions.reduce((sum, each, i) => sum + each * (xs[i] ?? 0), 0);
  const spread = n * sumXx - sumX * sumX;
  const b = (n * momentNm - sumX * forceN) / spread;
  const a = (forceN - b * sumX) / n;
  const wanted = xs.map((x) => a + b * x);
  if (wanted.some((each) => each < 0)) {
    return fail([
      refuse('notEven', 'loads', {
        found: `a load whose middle is at x = ${momentNm / forceN} m`,
        accepted: 'one nearer to the middle of the lines; or leave the far lines slack',
      }),
    ]);
  }
  const bends = bendsUnder(the, wanted);
  const { a: up, b: tilt } = straightThrough(xs, turnsFor(the, wanted, bends));
  return turnedTo(the, {
    tensions: wanted,
    bends: bends.map((y, i) => y + up + tilt * (xs[i] ?? 0)),
  });
};

/** The straight line nearest to so many points, by least squares. */
const straightThrough = (
  xs: readonly number[],
  ys: readonly number[],
): { readonly a: number; readonly b: number } => {
  const n = xs.length;
  const meanX = xs.reduce((sum, x) => sum + x, 0) / n;
  const meanY = ys.reduce((sum, y) => sum + y, 0) / n;
  const top = xs.reduce((sum, x, i) => sum + (x - meanX) * ((ys[i] ?? 0) - meanY), 0);
  const bottom = xs.reduce((sum, x) => sum + (x - meanX) ** 2, 0);
  const b = top / bottom;
  return { a: meanY - b * meanX, b };
};

type Wanted = { readonly tensions: readonly number[]; readonly bends: readonly number[] };

/** How much shorter each line must be made, for it to pull so hard where the batten bends so. */
const turnsFor = (
  { lines }: BattenCase,
  tensions: readonly number[],
  bends: readonly number[],
): readonly number[] =>
  lines.map(
    ({ stiffness, trim = 0 }, i) =>
      (stiffness === null ? 0 : (tensions[i] ?? 0) / stiffness) - (bends[i] ?? 0) - trim,
  );

/** The mean turn is nothing, so that the batten as a whole stays at its trim. */
const turnedTo = (the: BattenCase, { tensions, bends }: Wanted): Turned => {
  const asked = turnsFor(the, tensions, bends);
  const mean = asked.reduce((sum, turn) => sum + turn, 0) / asked.length;
  const turns = asked.map((turn) => turn - mean);
  const lines = the.lines.map((line, i) => ({ ...line, trim: (line.trim ?? 0) + (turns[i] ?? 0) }));
  const [before, after] = [solveBatten(the), solveBatten({ ...the, lines })];
  if (!before.ok) return before;
  if (!after.ok) return after;
  if ('unstable' in before.value) return ok(before.value);
  if ('unstable' in after.value) return ok(after.value);
  const trims = lines.map(({ trim }) => trim);
  return ok({ turns, trims, before: before.value, after: after.value });
};

/** The bent line at each lift line under these tensions, up to how high and tilted it hangs. */
const bendsUnder = (the: BattenCase, tensions: readonly number[]): readonly number[] => {
  const { pipe, left, right, loads, lines } = the;
  const own = { from: left, to: right, mass: pipe.massPerLength * (right - left) };
  const bar = barOf([own, ...loads], 1 / (pipe.elasticModulus * pipe.secondMoment));
  const whole = {
    ...bar,
    pointXs: [...bar.pointXs, ...lines.map(({ x }) => x)],
    pointForces: [...bar.pointForces, ...tensions.map((tension) => -tension)],
  };
  return lines.map(({ x }) => bar.flexibility * bentAt(whole, x));
};
