import { cheapestMixes } from './cheapest-mixes.ts';
import { type ClosestMixes, closestMixes } from './closest-mixes.ts';
import {
  type Change,
  causeNotFound,
  type Infeasible,
  type InfeasibleCode,
  notFound,
} from './infeasible.ts';
import { type Layout, layoutOf } from './layout.ts';
import { missingLimits, missingPiece } from './missing-limit.ts';
import type { Mix } from './mix.ts';
import {
  type BrickStock,
  MASS_TIE,
  type MixProblem,
  problemOf,
  type SpreaderPlates,
  type StackTask,
} from './problem.ts';

export type StackInput = {
  /** kg, the whole arbor wanted: carriage, bricks and plates. */
  readonly target: number;
  /** kg, the arbor without bricks and plates. */
  readonly carriage: number;
  readonly bricks: readonly BrickStock[];
  /** m of usable rod. */
  readonly stackHeight: number;
  readonly spreader?: SpreaderPlates;
  /** kg. Given, a stack farther off the target than this is no answer. */
  readonly tolerance?: number;
};

export type Stack = Layout & {
  /** kg, the whole arbor. */
  readonly total: number;
  /** kg, total − target: positive is heavier than wanted. */
  readonly error: number;
};

export type RankedStack = Stack & {
  /** True for a stack as good as the chosen one: same error without its sign, as many bricks. */
  readonly optimal: boolean;
};

export type FoundStack = Stack & {
  /** True only when every other stack was measured or ruled out. */
  readonly optimal: boolean;
  /** With a tolerance: the fewest bricks inside it, then the least error. */
  readonly fewestWithinTolerance?: RankedStack;
  /** Every other stack that is as good, then the next best two. */
  readonly alternatives: readonly RankedStack[];
  /** Stacks as good as the chosen one beyond the thousand that are listed. */
  readonly alternativesOmitted: number;
  /** Pairs of part-stacks looked at. */
  readonly searched: number;
};

export type StackResult = FoundStack | { readonly infeasible: Infeasible };

const NEXT_BEST = 2;

const REASONS: Readonly<Partial<Record<InfeasibleCode, string>>> = {
  stockTooSmall: 'The stock of bricks does not reach the target within the tolerance.',
  rodTooShort: 'The rod does not take the bricks that reach the target within the tolerance.',
  severalLimits: 'Neither more bricks nor a longer rod alone reaches the target: it takes both.',
};

const stackOf = (input: StackInput, task: StackTask, problem: MixProblem, mix: Mix): Stack => {
  const total = input.carriage + mix.mass;
  return { ...layoutOf(task, problem, mix), total, error: total - input.target };
};

/** With what the target and its tolerance ask of bricks and plates alone. */
const bandOf = (task: StackTask, tolerance: number): StackTask => ({
  ...task,
  massFrom: task.want - tolerance,
  massTo: task.want + tolerance,
});

const belowCarriage = (task: StackTask, tolerance: number, change: Change): Infeasible => ({
  code: 'belowCarriage',
  reason: 'The carriage without bricks is already heavier than the target and its tolerance.',
  smallestChange: { moreTarget: -task.want - tolerance, proven: true },
  otherChanges: [change],
});

const outsideTolerance = (
  task: StackTask,
  tolerance: number,
  closest: ClosestMixes,
): Infeasible => {
  const leastGap = closest.best[0]?.gap ?? 0;
  const wider: Change = { tolerance: leastGap, proven: closest.proven };
  if (task.want + tolerance < 0) return belowCarriage(task, tolerance, wider);
  const band = bandOf(task, tolerance);
  const missing = missingLimits(band, Number.POSITIVE_INFINITY);
  const [first, ...others] = missing.fixes;
  if (first !== undefined) {
    return {
      code: first.code,
      reason: REASONS[first.code] ?? '',
      smallestChange: first.change,
      otherChanges: [...others.map(({ change }) => change), wider],
    };
  }
  if (!missing.proven) return causeNotFound(closest.pairs, wider);
  const piece = missingPiece(band);
  return {
    code: 'bricksTooCoarse',
    reason: 'No number of these bricks comes within the tolerance of the target.',
    smallestChange: wider,
    otherChanges: piece === undefined ? [] : [piece],
  };
};

const fewestWithin = (
  input: StackInput,
  task: StackTask,
  tolerance: number,
): RankedStack | null => {
  const problem = problemOf(bandOf(task, tolerance));
  const { mixes, proven } = cheapestMixes(problem, { of: (_kind, count) => count }, 1);
  const mix = mixes[0];
  return mix === undefined ? null : { ...stackOf(input, task, problem, mix), optimal: proven };
};

/**
 * Bricks that bring an arbor to a wanted mass: the first of the two brick problems.
 *
 *     minimise  | A0 + Σ m·x + p·P − A |,  then Σ x
 *     where     P = ⌊ Σ τ·x / e ⌋ or ⌈ ⌉,  Σ τ·x + t·P ≤ H,  0 ≤ x ≤ stock, whole numbers
 *
 *     A0  kg  carriage               A  kg  target
 *     m   kg  mass of a brick        τ  m   its thickness
 *     p   kg  mass of a plate        t  m   its thickness
 *     e   m   brick thickness between two plates
 *     H   m   stackHeight            x  -   bricks of each kind, returned as counts
 *
 * Without a tolerance there is always an answer, if only no bricks at all, and `error` says how
 * far off it is. With one, an answer outside it is infeasible, with the limit that is in the way.
 * Bad input (a mass of zero, two kinds of one id, a broken count) is a defect of the caller.
 *
 * Source  calculations.md 5; the-job.md C6, C7
 * Holds   masses above zero; thicknesses and stocks of zero or more
 * Omits   collars and the locking plate, which are in the carriage or in the stack height given;
 *         left out of both, the stack stands higher than it says
 * Check   VAL-BRK-01 and VAL-BRK-04
 */
export const stackToTarget = (input: StackInput): StackResult => {
  const task: StackTask = {
    bricks: input.bricks,
    spreader: input.spreader ?? null,
    stackHeight: input.stackHeight,
    baseThickness: 0,
    want: input.target - input.carriage,
    massFrom: Number.NEGATIVE_INFINITY,
    massTo: Number.POSITIVE_INFINITY,
  };
  const problem = problemOf(task);
  const closest = closestMixes(problem, NEXT_BEST);
  const chosen = closest.best[0];
  if (chosen === undefined) return { infeasible: notFound(closest.pairs) };
  const { tolerance } = input;
  if (tolerance !== undefined && chosen.gap > tolerance + MASS_TIE) {
    return {
      infeasible: closest.proven
        ? outsideTolerance(task, tolerance, closest)
        : notFound(closest.pairs),
    };
  }
  const ranked = (mix: Mix, optimal: boolean): RankedStack => ({
    ...stackOf(input, task, problem, mix),
    optimal,
  });
  const fewest = tolerance === undefined ? null : fewestWithin(input, task, tolerance);
  return {
    ...ranked(chosen, closest.proven),
    ...(fewest === null ? {} : { fewestWithinTolerance: fewest }),
    alternatives: [
      ...closest.best.slice(1).map((mix) => ranked(mix, closest.proven)),
      ...closest.next.map((mix) => ranked(mix, false)),
    ],
    alternativesOmitted: closest.omitted,
    searched: closest.pairs,
  };
};
