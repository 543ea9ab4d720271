/** A mix as it lies on the arbor: order from the bottom, plates and height. */
import { type PlateRun, stackHeight } from '#house';
import type { Mix } from './mix.ts';
import type { MixProblem, StackTask } from './problem.ts';

export type Layout = {
  /** Number of each kind put on; every kind of the input is named, also with 0. */
  readonly counts: Readonly<Record<string, number>>;
  readonly bricks: number;
  /** Spreader plates in the whole stack, those of the base included. */
  readonly plates: number;
  /** m, base, bricks and plates. */
  readonly stackHeight: number;
  /** From the bottom, above what lies there: bigger bricks first, a suggestion only. */
  readonly order: readonly PlateRun[];
  /** For each plate, how many of these bricks lie under it; 0 where it lies in the base. */
  readonly platesAfter: readonly number[];
};

/** m. A plate's place is reached by a stack that is this much too low by rounding alone. */
const PLACE_TIE = 1e-9;

/**
 * Where the plates go: each on the first brick that brings the stack to its place, or on top where
 * the count is rounded up and the stack ends below the place.
 */
const platesAfter = (
  { spreader, baseThickness }: StackTask,
  thicknesses: readonly number[],
  plates: number,
): readonly number[] => {
  if (spreader === null) return [];
  const heights = [baseThickness];
  for (const thickness of thicknesses) heights.push((heights.at(-1) ?? 0) + thickness);
  return Array.from({ length: plates }, (_, plate) => {
    const place = (plate + 1) * spreader.every - PLACE_TIE;
    const bricks = heights.findIndex((height) => height >= place);
    return bricks < 0 ? thicknesses.length : bricks;
  });
};

/** The mix as a stack on this arbor. Half bricks' place is the plan's choice, not this one's. */
export const layoutOf = (task: StackTask, problem: MixProblem, mix: Mix): Layout => {
  const { spreader, baseThickness } = task;
  const thickness = baseThickness + mix.thickness;
  const runs = problem.heaviestFirst
    .map((place) => ({ place, count: mix.counts[place] ?? 0 }))
    .filter(({ count }) => count > 0);
  const thicknesses = runs.flatMap(({ place, count }) =>
    Array.from({ length: count }, () => problem.kinds[place]?.thickness ?? 0),
  );
  return {
    counts: Object.fromEntries(problem.kinds.map(({ id }, place) => [id, mix.counts[place] ?? 0])),
    bricks: mix.bricks,
    plates: mix.plates,
    stackHeight: stackHeight({
      brickThicknessM: thickness,
      spreader:
        spreader === null
          ? null
          : { thicknessM: spreader.thickness, everyM: spreader.every, rule: spreader.rule },
    }),
    order: runs.map(({ place, count }) => ({ kind: problem.kinds[place]?.id ?? '', count })),
    platesAfter: platesAfter(task, thicknesses, mix.plates),
  };
};
