/** Where words may lie so that they cover neither a line nor other words. */
import type { Point } from './shape.ts';

export type Box = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

const overlapArea = (one: Box, other: Box): number => {
  const across = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const down = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return across > 0 && down > 0 ? across * down : 0;
};

const areaOutside = (box: Box, field: Box): number =>
  box.width * box.height - overlapArea(box, field);

/** Whether a box lies within the field and touches nothing. */
export const isFree = (box: Box, taken: readonly Box[], field: Box): boolean =>
  areaOutside(box, field) < 1 && taken.every((each) => overlapArea(box, each) < 1);

/** Leaving the field costs more than lying on a line: what is cut off cannot be read at all. */
const OUTSIDE_COST = 20;

/** The first candidate that covers nothing, else the one that covers least. */
export const freeBox = (
  candidates: readonly Box[],
  taken: readonly Box[],
  field: Box,
): Box | undefined => {
  const costOf = (box: Box): number =>
    taken.reduce((sum, each) => sum + overlapArea(box, each), 0) +
    OUTSIDE_COST * areaOutside(box, field);
  return candidates.reduce<{ readonly box: Box; readonly cost: number } | undefined>(
    (best, box) => {
      if (best !== undefined && best.cost < 1) return best;
      const cost = costOf(box);
      return best === undefined || cost < best.cost ? { box, cost } : best;
    },
    undefined,
  )?.box;
};

/** Small boxes along a line, for words to keep clear of. */
export const boxesAlong = (from: Point, to: Point, clearance: number): readonly Box[] => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const count = Math.max(1, Math.ceil(length / (2 * clearance)));
  return Array.from({ length: count + 1 }, (_, index) => {
    const share = index / count;
    return {
      x: from.x + (to.x - from.x) * share - clearance,
      y: from.y + (to.y - from.y) * share - clearance,
      width: 2 * clearance,
      height: 2 * clearance,
    };
  });
};
