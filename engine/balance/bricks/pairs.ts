/** Walks the pairs of part-mixes that can matter, and counts how many it looked at. */
import type { Half, Halves } from './halves.ts';
import type { MixProblem, PlateWindow } from './problem.ts';

/** What a walk may look at before it gives up. About a tenth of a second's work. */
export const PAIRS_MAX = 5_000_000;

/** What the walk still looks for. The visitor narrows it as it finds. */
export class Reach {
  /** kg off the wanted mass. Below zero: found, look no further. */
  gap: number;
  /** Of the caller's cost. */
  cost: number;
  /** Pairs looked at so far. */
  pairs = 0;

  constructor(gap: number, cost: number) {
    this.gap = gap;
    this.cost = cost;
  }
}

export type Visit = (left: number, right: number, gap: number, cost: number) => void;

/** First place whose value is not below `value`, in a rising list. */
export const firstAtLeast = (rising: Float64Array, value: number): number => {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((rising[middle] as number) < value) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** Heaviest part of the right half that is thinner than this, or minus infinity. */
const heaviestUnder = ({ right }: Halves, thickness: number): number => {
  const above = firstAtLeast(right.thicknessUp, thickness);
  return above === 0 ? Number.NEGATIVE_INFINITY : (right.heaviestTo[above - 1] as number);
};

/** One part-mix on the left with one plate window, and where the right half may lie for it. */
type Slot = {
  readonly left: number;
  readonly cost: number;
  /** Right part's mass that would be exact, and its bounds. */
  readonly need: number;
  readonly massFrom: number;
  readonly massTo: number;
  readonly thicknessFrom: number;
  readonly thicknessTo: number;
};

const slotOf = (
  problem: MixProblem,
  halves: Halves,
  left: number,
  window: PlateWindow,
): Slot | undefined => {
  const thickness = halves.left.thickness[left] as number;
  const thicknessTo = window.thicknessTo - thickness;
  if (thicknessTo <= 0) return undefined;
  const mass = (halves.left.mass[left] as number) + window.plateMass;
  const massFrom = problem.massFrom - mass;
  const massTo = Math.min(problem.massTo - mass, heaviestUnder(halves, thicknessTo));
  if (massTo < massFrom) return undefined;
  return {
    left,
    cost: halves.left.cost[left] as number,
    need: problem.want - mass,
    massFrom,
    massTo,
    thicknessFrom: window.thicknessFrom - thickness,
    thicknessTo,
  };
};

const fits = (right: Half, at: number, slot: Slot): boolean => {
  const thickness = right.thickness[at] as number;
  return thickness >= slot.thicknessFrom && thickness < slot.thicknessTo;
};

/**
 * From the exact mass outwards, up and down, as far as the reach goes; from the least mass up
 * where the gap is open, so that the rising cost can end the walk.
 */
const walkSlot = ({ right }: Halves, slot: Slot, reach: Reach, visit: Visit): void => {
  const look = (at: number, gap: number): void => {
    reach.pairs += 1;
    if (fits(right, at, slot)) visit(slot.left, at, gap, slot.cost + (right.cost[at] as number));
  };
  const centre = reach.gap === Number.POSITIVE_INFINITY ? slot.massFrom : slot.need;
  const nearest = Math.min(Math.max(centre, slot.massFrom), slot.massTo);
  const start = firstAtLeast(right.mass, nearest);
  for (let up = start; up < right.size; up += 1) {
    const mass = right.mass[up] as number;
    const gap = Math.abs(mass - slot.need);
    if (mass > slot.massTo || (mass >= slot.need && gap > reach.gap)) break;
    if (slot.cost + (right.cheapestFrom[up] as number) > reach.cost) break;
    if (gap <= reach.gap) look(up, gap);
  }
  for (let down = start - 1; down >= 0; down -= 1) {
    const mass = right.mass[down] as number;
    const gap = Math.abs(slot.need - mass);
    if (mass < slot.massFrom || gap > reach.gap) break;
    look(down, gap);
  }
};

/**
 * Visits every mix whose gap and cost lie within the reach, and perhaps a few outside it. False
 * when it gave up at `PAIRS_MAX` pairs, so that nothing is proven.
 */
export const walkPairs = (
  problem: MixProblem,
  halves: Halves,
  reach: Reach,
  visit: Visit,
): boolean => {
  for (let left = 0; left < halves.left.size; left += 1) {
    for (const window of problem.windows) {
      if (reach.gap < 0) return true;
      if (reach.pairs > PAIRS_MAX) return false;
      reach.pairs += 1;
      if ((halves.left.cost[left] as number) > reach.cost) continue;
      const slot = slotOf(problem, halves, left, window);
      if (slot !== undefined) walkSlot(halves, slot, reach, visit);
    }
  }
  return true;
};
