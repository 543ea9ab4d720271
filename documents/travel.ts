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
  const { lowStop, highStop } = set;
  const told = (bound: number, words: string): void =>
    faults.refuse('outsideTravel', path, {
      found: metresText(height),
      accepted: `${words} ${metresText(bound)}, where a stop of line set ${set.id} is`,
    });
  if (lowStop.height.known && height < lowStop.height.value - slack) {
    told(lowStop.height.value, 'at least');
  }
  if (highStop.height.known && height > highStop.height.value + slack) {
    told(highStop.height.value, 'at most');
  }
};
