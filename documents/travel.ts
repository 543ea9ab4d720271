/** How far a batten travels, as its stops are known; an unknown stop bounds nothing. */
import type { House, LineSet } from '#house';
import { metresText } from './bounds.ts';
import type { Faults } from './faults.ts';

/** Room for the rounding of ft to m, and no more. */
const ROUNDING = 1e-9;

export const setById = (house: House, id: string): LineSet | undefined =>
  house.lineSets.find((set) => set.id === id);

/**
 * Refuses a height that the batten cannot reach. `slack` is for heights measured on the day, which
 * are not more exact than a tape held against a batten.
 */
export const checkReachable = (
  set: LineSet,
  height: number,
  { path, faults, slack = ROUNDING }: { path: string; faults: Faults; slack?: number },
): void => {
  const low = set.lowStop.height;
  const high = set.highStop.height;
  const isBelow = low.known && height < low.value - slack;
  const isAbove = high.known && height > high.value + slack;
  if (!isBelow && !isAbove) return;
  const bound = isBelow ? low : high;
  faults.refuse('outsideTravel', path, {
    found: metresText(height),
    accepted: `${isBelow ? 'at least' : 'at most'} ${bound.known ? metresText(bound.value) : ''}, the ${
      isBelow ? 'low' : 'high'
    } stop of line set ${set.id}`,
  });
};
