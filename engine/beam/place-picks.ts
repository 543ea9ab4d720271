/** Where to take hold of a piece, so that the batten bends least. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { refuse } from './refusal-codes.ts';
import { solveBatten } from './solve-batten.ts';
import type { BattenCase, BattenSolution } from './types.ts';

export type PickTask = {
  /** kg of the whole piece, and x of its centre. */
  readonly mass: number;
  readonly centre: number;
  readonly count: number;
  /** Half the widest and half the narrowest that the piece can be picked, from its centre. */
  readonly halfFrom: number;
  readonly halfTo: number;
};

export type PickPlaces = {
  readonly xs: readonly number[];
  /** Of the batten with it, N·m. */
  readonly largestMoment: number;
  readonly largestTension: number;
  readonly solution: BattenSolution;
};

/** Places a hand would choose among: 20 cm on a span of 10 m, then halved to the millimetre. */
const STEPS = 100;
const FINE_M = 1e-3;

/**
 * Places of evenly spaced picks, alike on both sides of the centre of the piece, for which the
 * largest moment in the batten is least; best first, with every lift line within reach tried too.
 * Each pick carries an equal share, as `loadsAlongBatten` reckons.
 *
 * Source  search on `solveBatten` over the half width, 101 places and the lift lines, the best
 *         made finer to a millimetre; golden table of the-job 3D: ±4.5 ft against −6, 0, +6
 * Holds   two picks or more; the piece is stiff enough to share evenly
 * Omits   that three picks or more on a stiff piece share by their trim; see `pieces`
 * Check   VAL-BEM-12
 */
export const placePicks = (
  the: BattenCase,
  task: PickTask,
): Result<readonly PickPlaces[], readonly Refusal[]> => {
  const fault = taskFault(the, task);
  if (fault.length > 0) return fail(fault);
  const empty = solveBatten(the);
  if (!empty.ok) return empty;
  const { halfFrom, halfTo } = task;
  const even = Array.from(
    { length: STEPS + 1 },
    (_, step) => halfFrom + ((halfTo - halfFrom) * step) / STEPS,
  );
  const onLines = the.lines
    .map(({ x }) => Math.abs(x - task.centre))
    .filter((half) => half >= halfFrom && half <= halfTo);
  const tried = rank(the, task, [...even, ...onLines]);
  const [best] = tried;
  if (best === undefined) return ok([]);
  const finer = refine(the, task, best.half, (halfTo - halfFrom) / STEPS);
  const places = rank(the, task, [finer, ...onLines, ...even]);
  return ok(places.slice(0, 5).map(({ half: _, ...place }) => place));
};

const taskFault = (
  { left, right }: BattenCase,
  { mass, centre, count, halfFrom, halfTo }: PickTask,
): readonly Refusal[] => [
  ...(Number.isInteger(count) && count >= 2 && count <= 12
    ? []
    : [refuse('notSought', 'count', { found: String(count), accepted: '2 to 12 picks' })]),
  ...(Number.isFinite(mass) && mass > 0
    ? []
    : [refuse('notMass', 'mass', { found: String(mass), accepted: 'a mass above 0' })]),
  ...(halfFrom > 0 && halfFrom <= halfTo && centre - halfTo >= left && centre + halfTo <= right
    ? []
    : [
        refuse('notSought', 'halfTo', {
          found: `${halfFrom} to ${halfTo} m on either side of ${centre} m`,
          accepted: 'half widths from small to large that stay on the batten',
        }),
      ]),
];

const picksAt = ({ centre, count }: PickTask, half: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => centre - half + (2 * half * index) / (count - 1));

type Tried = PickPlaces & { readonly half: number };

const tryAt = (the: BattenCase, task: PickTask, half: number): Tried | null => {
  const xs = picksAt(task, half);
  const loads = [...the.loads, ...xs.map((x) => ({ x, mass: task.mass / task.count }))];
  const solved = solveBatten({ ...the, loads });
  if (!solved.ok || 'unstable' in solved.value) return null;
  const solution = solved.value;
  const { moment, tensions } = solution;
  return {
    half,
    xs,
    largestMoment: Math.max(moment.max.value, -moment.min.value),
    largestTension: Math.max(...tensions),
    solution,
  };
};

const rank = (the: BattenCase, task: PickTask, halves: readonly number[]): readonly Tried[] =>
  [...new Set(halves)]
    .map((half) => tryAt(the, task, half))
    .filter((tried) => tried !== null)
    .toSorted((one, other) => one.largestMoment - other.largestMoment);

/** Halves the step about the best place until it is a millimetre. */
const refine = (the: BattenCase, task: PickTask, half: number, stepM: number): number => {
  let best = half;
  for (let step = stepM / 2; step > FINE_M; step /= 2) {
    const near = [best - step, best, best + step].filter(
      (each) => each >= task.halfFrom && each <= task.halfTo,
    );
    best = rank(the, task, near)[0]?.half ?? best;
  }
  return best;
};
