/**
 * The integrator of the package `odex`, for the cases that need it. It is taken at run time, for
 * the package brings its types as sources, which our compiler settings do not take.
 */
import { createRequire } from 'node:module';

type Slope = (x: number, y: readonly number[]) => readonly number[];

/** As much of it as is used here. */
type Package = {
  readonly Solver: new (
    unknowns: number,
  ) => {
    relativeTolerance: number;
    absoluteTolerance: number;
    solve(
      slope: Slope,
      from: number,
      start: readonly number[],
      to: number,
    ): { readonly y: readonly number[]; readonly outcome: number };
  };
};

const require = createRequire(import.meta.url);
const odex: Package = require('odex');

/** What it calls a solve that came to its end. */
const CONVERGED = 0;

/** Place and speed after a time, to 1 in 10¹¹ a step. */
export const after = (
  slope: (placeM: number, speedMs: number) => readonly [number, number],
  start: readonly [number, number],
  timeS: number,
): readonly [number, number] => {
  const solver = new odex.Solver(2);
  solver.relativeTolerance = 1e-11;
  solver.absoluteTolerance = 1e-13;
  const { y, outcome } = solver.solve(
    (_t, [place = Number.NaN, speed = Number.NaN]) => slope(place, speed),
    0,
    start,
    timeS,
  );
  if (outcome !== CONVERGED) throw new Error(`the integrator stopped with ${outcome}`);
  return [y[0] ?? Number.NaN, y[1] ?? Number.NaN];
};
