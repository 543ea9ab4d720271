/**
 * Why no mix lies inside the mass limits, and the least that would have to change. Each limit is
 * lifted alone, then two together, then all; the first that help are the answer.
 */
import { type CheapestMixes, cheapestMixes } from './cheapest-mixes.ts';
import { closestMixes } from './closest-mixes.ts';
import type { Change, InfeasibleCode } from './infeasible.ts';
import { byGap, type Mix } from './mix.ts';
import { type KindRange, type MixProblem, problemOf, type StackTask } from './problem.ts';

type LimitName = 'stock' | 'rod' | 'massLimit';

/** Limits which, lifted together, let a mix in; and by how much each has to give. */
export type Fix = { readonly code: InfeasibleCode; readonly change: Change };

export type MissingLimits = {
  /** Those that need the fewest limits lifted. Empty when no number of these bricks would do. */
  readonly fixes: readonly Fix[];
  /** False when a search gave up, so that an empty list proves nothing. */
  readonly proven: boolean;
};

const SETS: readonly (readonly (readonly LimitName[])[])[] = [
  [['stock'], ['rod'], ['massLimit']],
  [
    ['stock', 'rod'],
    ['stock', 'massLimit'],
    ['rod', 'massLimit'],
  ],
  [['stock', 'rod', 'massLimit']],
];

const CODES: Readonly<Record<LimitName, InfeasibleCode>> = {
  stock: 'stockTooSmall',
  rod: 'rodTooShort',
  massLimit: 'massLimitTooLow',
};

/**
 * No mix heavier than this needs to be looked at: the cheapest mix falls below the least wanted
 * mass when any of its bricks comes off, with the plates that may come off with it.
 */
const heaviestUseful = ({ bricks, spreader, massFrom }: StackTask): number => {
  const heaviest = bricks.reduce((most, { mass }) => Math.max(most, mass), 0);
  const thickest = bricks.reduce((most, { thickness }) => Math.max(most, thickness), 0);
  const plates = spreader === null ? 0 : Math.ceil(thickest / spreader.every) + 1;
  return Math.max(massFrom, 0) + heaviest + plates * (spreader?.mass ?? 0);
};

const extraBricks = (kind: KindRange, count: number): number => Math.max(0, count - kind.stock);

/** Plates rise with thickness, so that the thinner mix is the lower one. */
const lowerThenLighter = (a: Mix, b: Mix): number => a.thickness - b.thickness || byGap(a, b);

/** The mix that asks least of the lifted limits: fewest bricks more, then least rod, then mass. */
const leastAsked = (problem: MixProblem, lifted: readonly LimitName[]): CheapestMixes => {
  if (lifted.includes('stock')) {
    return cheapestMixes(problem, { of: extraBricks, thenBy: lowerThenLighter }, 1);
  }
  if (lifted.includes('rod')) {
    const thickness = (kind: KindRange, count: number): number => count * kind.thickness;
    return cheapestMixes(problem, { of: thickness, thenBy: lowerThenLighter }, 1);
  }
  const { best, proven, pairs } = closestMixes(problem, 0);
  return { mixes: best.slice(0, 1), proven, pairs };
};

const heightOf = ({ spreader, baseThickness }: StackTask, mix: Mix): number =>
  baseThickness + mix.thickness + mix.plates * (spreader?.thickness ?? 0);

const changeFor = (
  task: StackTask,
  massLimit: number,
  problem: MixProblem,
  lifted: readonly LimitName[],
  { mix, proven }: { readonly mix: Mix; readonly proven: boolean },
): Change => ({
  ...(lifted.includes('stock')
    ? {
        moreBricks: Object.fromEntries(
          problem.kinds
            .map((kind, place) => [kind.id, extraBricks(kind, mix.counts[place] ?? 0)] as const)
            .filter(([, count]) => count > 0),
        ),
      }
    : {}),
  ...(lifted.includes('rod')
    ? { moreRod: Math.max(0, heightOf(task, mix) - task.stackHeight) }
    : {}),
  ...(lifted.includes('massLimit') ? { moreMassLimit: Math.max(0, mix.mass - massLimit) } : {}),
  proven,
});

const tryLifting = (
  task: StackTask,
  massLimit: number,
  lifted: readonly LimitName[],
): { readonly fix: Fix | undefined; readonly proven: boolean } => {
  const massTo = Math.min(
    task.massTo,
    lifted.includes('massLimit') ? Number.POSITIVE_INFINITY : massLimit,
    heaviestUseful(task),
  );
  // Measured from the least mass, so that "closest" means "lightest that does".
  const want = Math.max(task.massFrom, 0);
  const problem = problemOf(
    { ...task, want, massTo },
    { stock: lifted.includes('stock'), rod: lifted.includes('rod') },
  );
  const { mixes, proven } = leastAsked(problem, lifted);
  const mix = mixes[0];
  if (mix === undefined) return { fix: undefined, proven };
  const code = lifted.length === 1 ? CODES[lifted[0] as LimitName] : 'severalLimits';
  return {
    fix: { code, change: changeFor(task, massLimit, problem, lifted, { mix, proven }) },
    proven,
  };
};

/**
 * Which limits keep every mix out of the task's mass limits. `massLimit` is what the arbor's
 * rating leaves for bricks and plates (kg, infinite where there is none); the task's own mass
 * limits come from what is wanted and are never lifted here.
 */
export const missingLimits = (task: StackTask, massLimit: number): MissingLimits => {
  let proven = true;
  for (const sets of SETS) {
    const fixes: Fix[] = [];
    for (const lifted of sets) {
      if (lifted.includes('massLimit') && massLimit === Number.POSITIVE_INFINITY) continue;
      const tried = tryLifting(task, massLimit, lifted);
      proven &&= tried.proven;
      if (tried.fix !== undefined) fixes.push(tried.fix);
    }
    if (fixes.length > 0) return { fixes, proven };
  }
  return { fixes: [], proven };
};

/**
 * The mass of one more piece that would close the gap below the least wanted mass. It is the
 * smallest such piece for the bricks at hand; whether the rod has room depends on its thickness.
 */
export const missingPiece = (task: StackTask): Change | undefined => {
  const below = closestMixes(
    problemOf({
      ...task,
      want: task.massFrom,
      massFrom: Number.NEGATIVE_INFINITY,
      massTo: task.massFrom,
    }),
    0,
  );
  const mix = below.best[0];
  if (mix === undefined) return undefined;
  const onePiece = { massFrom: task.massFrom - mix.mass, massTo: task.massTo - mix.mass };
  return { onePiece, proven: below.proven };
};
