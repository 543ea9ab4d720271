/** Where the curve leaves the limit of the lock, which is all that the plan has engaged. */
import type { Stretch } from './balance-subject.ts';

/** A stretch of heights on one side of zero, with U at both ends, N. */
export type OpenStretch = {
  readonly side: -1 | 1;
  readonly fromM: number;
  readonly toM: number;
  readonly fromN: number;
  readonly toN: number;
  /** Where the edge crosses the limit, and does not just begin or end. */
  readonly crossesAt: readonly number[];
};

/** Stretches that touch, as one region with one label. */
export type OpenRegion = {
  readonly side: -1 | 1;
  readonly fromM: number;
  readonly toM: number;
  readonly leastN: number;
  readonly mostN: number;
  readonly stretches: readonly OpenStretch[];
  /** Ends that a slope decides: known to no better than the masses are. */
  readonly crossesAt: readonly number[];
};

const SAME_M = 1e-6;

/** The part of a straight edge that lies past the limit on one side; null where none does. */
const pastLimit = (
  { fromM, toM, from, to }: Stretch,
  side: -1 | 1,
  limitN: number,
): OpenStretch | null => {
  const startN = side * (side === 1 ? from.highN : from.lowN);
  const endN = side * (side === 1 ? to.highN : to.lowN);
  if (Math.max(startN, endN) <= limitN) return null;
  const crossing = (limitN - startN) / (endN - startN);
  const crossM = fromM + crossing * (toM - fromM);
  const starts = startN > limitN;
  const ends = endN > limitN;
  return {
    side,
    fromM: starts ? fromM : crossM,
    toM: ends ? toM : crossM,
    fromN: side * (starts ? startN : limitN),
    toN: side * (ends ? endN : limitN),
    crossesAt: starts && ends ? [] : [crossM],
  };
};

const joined = (stretches: readonly OpenStretch[]): readonly OpenRegion[] =>
  stretches.reduce<readonly OpenRegion[]>((regions, stretch) => {
    const last = regions.at(-1);
    const sizes = [Math.abs(stretch.fromN), Math.abs(stretch.toN)];
    const alone: OpenRegion = {
      side: stretch.side,
      fromM: stretch.fromM,
      toM: stretch.toM,
      leastN: Math.min(...sizes),
      mostN: Math.max(...sizes),
      stretches: [stretch],
      crossesAt: stretch.crossesAt,
    };
    if (last === undefined || Math.abs(last.toM - stretch.fromM) > SAME_M) {
      return [...regions, alone];
    }
    const wider: OpenRegion = {
      ...last,
      toM: stretch.toM,
      leastN: Math.min(last.leastN, alone.leastN),
      mostN: Math.max(last.mostN, alone.mostN),
      stretches: [...last.stretches, stretch],
      crossesAt: [...last.crossesAt, ...stretch.crossesAt],
    };
    return [...regions.slice(0, -1), wider];
  }, []);

/**
 * Regions of the travel that the lock alone does not hold, from the bottom up. `limitN` null: no
 * limit is known, and nothing can be said to be held or not.
 */
export const openRegions = (
  stretches: readonly Stretch[],
  limitN: number | null,
): readonly OpenRegion[] =>
  limitN === null
    ? []
    : ([-1, 1] as const).flatMap((side) =>
        joined(
          stretches.flatMap((stretch) => {
            const open = pastLimit(stretch, side, limitN);
            return open === null ? [] : [open];
          }),
        ),
      );
