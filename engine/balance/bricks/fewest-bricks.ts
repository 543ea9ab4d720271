/** Mixes near enough to the wanted mass, by bricks, kinds, plates and then gap. */
import { type CheapestMixes, type Cost, cheapestMixes } from './cheapest-mixes.ts';
import { MASS_TIE, type MixProblem } from './problem.ts';

/**
 * Each brick is lifted over an edge at a height, twice, so fewer bricks come before fewer kinds:
 * eleven half bricks are one kind, and five full ones with a half are less work and less risk.
 */
const HANDLED: Cost = {
  of: (_kind, count) => count,
  thenBy: (a, b) => a.kinds - b.kinds || a.plates - b.plates,
};

/** The first `keep` mixes at most `gapMax` kg off the wanted mass, by that order. */
export const fewestBricks = (problem: MixProblem, gapMax: number, keep: number): CheapestMixes =>
  cheapestMixes(
    {
      ...problem,
      massFrom: Math.max(problem.massFrom, problem.want - gapMax - MASS_TIE),
      massTo: Math.min(problem.massTo, problem.want + gapMax + MASS_TIE),
    },
    HANDLED,
    keep,
  );
