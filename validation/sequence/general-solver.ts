/**
 * The order as a shortest path, for HiGHS (npm `highs` 1.15.3), a general solver of linear programs
 * that knows nothing of sets: one unit flows from the start to any state that meets the goal, over
 * every step of the whole state graph on a grid of heights, at the least cost.
 */
import loadHighs, { type Highs } from 'highs';
import type { Graph } from './slow-search.ts';

/** The package calls itself CommonJS to the compiler, and is a module. */
export const openHighs = loadHighs as unknown as typeof loadHighs.default;

const SCALE = 1000;

/** Cost of the cheapest flow, or null where none can flow. */
export const leastCost = (highs: Highs, { states, steps, goals }: Graph): number | null => {
  if (goals.length === 0) return null;
  const entries = steps.flatMap(([from, to], column): (readonly [number, number, number])[] => [
    [from, column, 1],
    [to, column, -1],
  ]);
  for (const [index, goal] of goals.entries()) entries.push([goal, steps.length + index, 1]);
  const rows = Array.from({ length: states }, (): (readonly [number, number])[] => []);
  for (const [row, column, value] of entries) rows[row]?.push([column, value]);
  const starts = [0];
  for (const row of rows) starts.push((starts.at(-1) ?? 0) + row.length);
  const columns = steps.length + goals.length;
  const balance = rows.map((_, row) => (row === 0 ? 1 : 0));
  const data = {
    numCols: columns,
    numRows: states,
    sense: highs.constants.objectiveSense.minimize,
    colCost: [...steps.map(([, , cost]) => cost / SCALE), ...goals.map(() => 0)],
    colLower: Array.from({ length: columns }, () => 0),
    colUpper: Array.from({ length: columns }, () => 1),
    rowLower: balance,
    rowUpper: balance,
    integrality: Array.from({ length: columns }, () => 0 as const),
    matrix: {
      format: 'csr' as const,
      numRows: states,
      numCols: columns,
      starts,
      indices: rows.flatMap((row) => row.map(([column]) => column)),
      values: rows.flatMap((row) => row.map(([, value]) => value)),
    },
  };
  return highs.withModel(data, (model) => {
    model.options.set({ output_flag: false });
    const { modelStatus } = model.run();
    if (modelStatus === highs.constants.modelStatus.infeasible) return null;
    if (modelStatus !== highs.constants.modelStatus.optimal) throw new Error(`${modelStatus}`);
    const flows = Array.from(model.getSolution().colValue);
    // A cheapest flow of one unit is a path: whole numbers, but for the solver's rounding.
    return steps.reduce((sum, [, , cost], at) => sum + cost * Math.round(flows[at] ?? 0), 0);
  });
};
