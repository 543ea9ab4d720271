/**
 * Every part-mix of half of the kinds. Two halves together make every mix, so that the search
 * looks through the square root of their number (it meets in the middle).
 */
import type { KindRange, MixProblem } from './problem.ts';

export type Half = {
  /** Places of this half's kinds in the problem. */
  readonly places: readonly number[];
  readonly size: number;
  readonly mass: Float64Array;
  readonly thickness: Float64Array;
  /** What a part-mix costs, by the caller's measure. */
  readonly cost: Float64Array;
  /** The counts of a part-mix in one number; `countsAt` reads it. */
  readonly code: Float64Array;
};

/** The right half lies in order of mass, and knows the heaviest part that a room takes. */
export type SortedHalf = Half & {
  readonly thicknessUp: Float64Array;
  /** Heaviest among the parts that are at most as thick as `thicknessUp` at the same place. */
  readonly heaviestTo: Float64Array;
  /** Least cost among the parts from the same place up, in order of mass. */
  readonly cheapestFrom: Float64Array;
};

export type Halves = { readonly left: Half; readonly right: SortedHalf };

export type Bounds = {
  /** kg and m; no part-mix may be heavier or thicker. */
  readonly massTo: number;
  readonly thicknessTo: number;
  readonly costOf: (kind: KindRange, count: number) => number;
};

/** Part-mixes in one half. Four kinds of a hundred a half stay below it; memory is 10 MB. */
const PARTS_MAX = 250_000;

const radix = (kind: KindRange): number => kind.to - kind.from + 1;

/** Writes the counts of part-mix `index` into `counts`, which is in the order of the problem. */
export const countsAt = (
  problem: MixProblem,
  half: Half,
  index: number,
  counts: number[],
): void => {
  let code = half.code[index] as number;
  for (const place of half.places) {
    const kind = problem.kinds[place] as KindRange;
    const above = code % radix(kind);
    counts[place] = kind.from + above;
    code = (code - above) / radix(kind);
  }
};

/** All part-mixes of these kinds inside the bounds, or undefined when there are too many. */
const partMixes = (
  problem: MixProblem,
  places: readonly number[],
  { massTo, thicknessTo, costOf }: Bounds,
): Half | undefined => {
  let [masses, thicknesses, costs, codes] = [[0], [0], [0], [0]];
  let unit = 1;
  for (const place of places) {
    const kind = problem.kinds[place] as KindRange;
    const next = { mass: [] as number[], thickness: [] as number[], cost: [] as number[] };
    const nextCodes: number[] = [];
    for (let part = 0; part < masses.length; part += 1) {
      for (let count = kind.from; count <= kind.to; count += 1) {
        const mass = (masses[part] as number) + count * kind.mass;
        const thickness = (thicknesses[part] as number) + count * kind.thickness;
        if (mass > massTo || thickness >= thicknessTo) break;
        next.mass.push(mass);
        next.thickness.push(thickness);
        next.cost.push((costs[part] as number) + costOf(kind, count));
        nextCodes.push((codes[part] as number) + (count - kind.from) * unit);
      }
      if (nextCodes.length > PARTS_MAX) return undefined;
    }
    [masses, thicknesses, costs, codes] = [next.mass, next.thickness, next.cost, nextCodes];
    unit *= radix(kind);
    if (unit > Number.MAX_SAFE_INTEGER) return undefined;
  }
  return {
    places,
    size: masses.length,
    mass: new Float64Array(masses),
    thickness: new Float64Array(thicknesses),
    cost: new Float64Array(costs),
    code: new Float64Array(codes),
  };
};

const isRising = (values: Float64Array): boolean => {
  for (let at = 1; at < values.length; at += 1) {
    if ((values[at] as number) < (values[at - 1] as number)) return false;
  }
  return true;
};

const inOrder = (values: Float64Array): Uint32Array => {
  const order = new Uint32Array(values.length);
  for (let at = 0; at < order.length; at += 1) order[at] = at;
  return isRising(values)
    ? order
    : order.sort((a, b) => (values[a] as number) - (values[b] as number));
};

/** A loop and not `from`: that walks an iterator, which takes a third of the whole choice. */
const pick = (values: Float64Array, order: Uint32Array): Float64Array => {
  const picked = new Float64Array(order.length);
  for (let at = 0; at < picked.length; at += 1) picked[at] = values[order[at] as number] as number;
  return picked;
};

const sortedByMass = (half: Half): SortedHalf => {
  const byMass = inOrder(half.mass);
  const byThickness = inOrder(half.thickness);
  const heaviestTo = pick(half.mass, byThickness);
  for (let at = 1; at < heaviestTo.length; at += 1) {
    heaviestTo[at] = Math.max(heaviestTo[at] as number, heaviestTo[at - 1] as number);
  }
  const cost = pick(half.cost, byMass);
  const cheapestFrom = cost.slice();
  for (let at = cheapestFrom.length - 2; at >= 0; at -= 1) {
    cheapestFrom[at] = Math.min(cheapestFrom[at] as number, cheapestFrom[at + 1] as number);
  }
  return {
    places: half.places,
    size: half.size,
    mass: pick(half.mass, byMass),
    thickness: pick(half.thickness, byMass),
    cost,
    cheapestFrom,
    code: pick(half.code, byMass),
    thicknessUp: pick(half.thickness, byThickness),
    heaviestTo,
  };
};

/**
 * Which kinds go left and which right. Up to three kinds, the right half is one kind, which needs
 * no sorting; above that the halves grow evenly.
 */
const divided = (problem: MixProblem): readonly [readonly number[], readonly number[]] => {
  const range = (place: number): number => {
    const kind = problem.kinds[place] as KindRange;
    return kind.to - kind.from + 1;
  };
  const places = [...problem.kinds.keys()].sort((a, b) => range(b) - range(a) || a - b);
  if (places.length <= 3) return [places.slice(1), places.slice(0, 1)];
  const halves: [number[], number[]] = [[], []];
  const sizes: [number, number] = [1, 1];
  for (const place of places) {
    const side = sizes[0] <= sizes[1] ? 0 : 1;
    halves[side].push(place);
    sizes[side] *= range(place);
  }
  return halves;
};

/** Both halves of the problem, or undefined when a half has too many part-mixes. */
export const halvesOf = (problem: MixProblem, bounds: Bounds): Halves | undefined => {
  const [leftPlaces, rightPlaces] = divided(problem);
  const left = partMixes(problem, leftPlaces, bounds);
  if (left === undefined) return undefined;
  const right = partMixes(problem, rightPlaces, bounds);
  return right === undefined ? undefined : { left, right: sortedByMass(right) };
};
