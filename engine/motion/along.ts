/** The travel as it is met by a set that goes one way: pieces in order, each straight. */
import { heightsBetween, sidesAt } from './broken-line.ts';
import type { BrokenLine, Travel, Way } from './types.ts';

/** A quantity on one piece: its value where the piece is entered, and where it is left. */
export type Straight = { readonly first: number; readonly last: number };

export type Stretch = {
  readonly fromM: number;
  readonly toM: number;
  readonly lengthM: number;
};

/** From the start to the stop that lies that way; none where the set is on it. */
export const stretchesAlong = (
  { height, lowStop, highStop }: Omit<Travel, 'curve'>,
  way: Way,
  lines: readonly BrokenLine[],
): readonly Stretch[] => {
  const [fromM, toM] = way === 'in' ? [lowStop, height] : [height, highStop];
  const upward = heightsBetween(lines, { fromM, toM });
  const met = way === 'in' ? upward.toReversed() : upward;
  return met.slice(1).map((endM, index) => {
    const startM = met[index] ?? endM;
    return { fromM: startM, toM: endM, lengthM: Math.abs(endM - startM) };
  });
};

/** A quantity over one stretch in the order in which it is met. */
export const over = (line: BrokenLine, { fromM, toM }: Stretch, way: Way): Straight => {
  const [start, end] = [sidesAt(line, fromM), sidesAt(line, toM)];
  return way === 'in'
    ? { first: start.below, last: end.above }
    : { first: start.above, last: end.below };
};

/** The imbalance as a force that drives the set on its way; below zero it slows the set. */
export const driveOver = (curve: BrokenLine, stretch: Stretch, way: Way): Straight => {
  const { first, last } = over(curve, stretch, way);
  return way === 'in' ? { first, last } : { first: -first, last: -last };
};

/** Work of a force over the first so many metres of a stretch. */
export const workOver = ({ first, last }: Straight, { lengthM }: Stretch, xM: number): number =>
  xM * (first + ((last - first) * xM) / (2 * lengthM));

/** Height after so many metres of a stretch; its very end where all of it is done. */
export const heightAfter = ({ fromM, toM, lengthM }: Stretch, xM: number): number =>
  xM === lengthM ? toM : fromM + (toM - fromM) * (xM / lengthM);
