import { assert } from '#outcome';
import type { BrokenLine } from './types.ts';

/** Heights from two lengths differ in the last places; nobody sets a batten to a micrometre. */
const SAME_HEIGHT_M = 1e-6;

export const isSameHeight = (oneM: number, otherM: number): boolean =>
  Math.abs(oneM - otherM) <= SAME_HEIGHT_M;

/** Both values at a height: just below it and just above; beyond its ends a line goes on level. */
export const sidesAt = (
  line: BrokenLine,
  heightM: number,
): { readonly below: number; readonly above: number } => {
  const next = line.findIndex(({ height }) => height > heightM || isSameHeight(height, heightM));
  const [upper, lower] = [line[next], line[next - 1]];
  if (upper !== undefined && isSameHeight(upper.height, heightM)) return upper;
  if (upper === undefined) return level(line.at(-1)?.above);
  if (lower === undefined) return level(upper.below);
  const share = (heightM - lower.height) / (upper.height - lower.height);
  return level(lower.above + share * (upper.below - lower.above));
};

const level = (value: number | undefined): { readonly below: number; readonly above: number } => {
  assert(value !== undefined, 'a line along the travel has at least one node');
  return { below: value, above: value };
};

/** Heights of a line's nodes strictly between two heights, and these two, upward. */
export const heightsBetween = (
  lines: readonly BrokenLine[],
  { fromM, toM }: { readonly fromM: number; readonly toM: number },
): readonly number[] => {
  const heights = lines
    .flatMap((line) => line.map(({ height }) => height))
    .filter((heightM) => heightM > fromM && heightM < toM)
    .toSorted((one, other) => one - other);
  const apart = [fromM];
  for (const heightM of heights) {
    const isNew = !isSameHeight(heightM, apart.at(-1) ?? fromM) && !isSameHeight(heightM, toM);
    if (isNew) apart.push(heightM);
  }
  return isSameHeight(fromM, toM) ? apart : [...apart, toM];
};
