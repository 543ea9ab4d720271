/**
 * The batten cut at every force and every end of a patch. Within a segment shear is straight,
 * moment a parabola and the bent line a quartic, so that every extreme is found exactly.
 */
import { crossing } from '#numerics';
import { type Bar, bentAt, slopeAt } from './bars.ts';
import type { At, Extremes, Station } from './types.ts';

export type Segment = {
  readonly from: number;
  readonly to: number;
  /** Just right of `from`; dM/dx. */
  readonly shear: number;
  readonly moment: number;
  readonly slope: number;
  readonly deflection: number;
  /** Spread load, N for each metre, down. */
  readonly perM: number;
};

/** The batten under all its forces, lines among them as forces upward. */
export type Bent = {
  readonly segments: readonly Segment[];
  readonly flexibility: number;
};

type Ends = { readonly left: number; readonly right: number };
type BentLine = { readonly a: number; readonly b: number; readonly origin: number };

export const bentBatten = (bar: Bar, { left, right }: Ends, line: BentLine): Bent => {
  const places = [...bar.pointXs, ...bar.patches.flatMap(({ from, to }) => [from, to])];
  const cuts = [...new Set([left, ...places, right])].toSorted((one, other) => one - other);
  const jumps = new Map<number, number>();
  for (const [index, x] of bar.pointXs.entries()) {
    jumps.set(x, (jumps.get(x) ?? 0) + (bar.pointForces[index] ?? 0));
  }
  const segments: Segment[] = [];
  let [shear, moment] = [0, 0];
  for (let index = 0; index + 1 < cuts.length; index++) {
    const [from, to] = [cuts[index] ?? 0, cuts[index + 1] ?? 0];
    shear -= jumps.get(from) ?? 0;
    const perM = bar.patches.reduce(
      (sum, patch) => (patch.from <= from && patch.to >= to ? sum + patch.perM : sum),
      0,
    );
    const slope = line.b + bar.flexibility * slopeAt(bar, from);
    const deflection = line.a + line.b * (from - line.origin) + bar.flexibility * bentAt(bar, from);
    segments.push({ from, to, shear, moment, slope, deflection, perM });
    const length = to - from;
    moment += shear * length - (perM * length * length) / 2;
    shear -= perM * length;
  }
  return { segments, flexibility: bar.flexibility };
};

/** Everything at one place; at a jump of the shear, its value just right of it. */
export const stationAt = (bent: Bent, x: number): Station => {
  const { segments } = bent;
  let low = 0;
  let high = segments.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((segments[middle]?.from ?? 0) <= x) low = middle;
    else high = middle - 1;
  }
  const segment = segments[low];
  if (segment === undefined) throw new Error('defect: a batten without a segment');
  return stationIn(segment, bent.flexibility, x - segment.from);
};

const stationIn = (segment: Segment, flexibility: number, t: number): Station => {
  const { from, shear, moment, perM } = segment;
  return {
    x: from + t,
    shear: shear - perM * t,
    moment: moment + shear * t - (perM * t * t) / 2,
    slope: slopeIn(segment, flexibility, t),
    deflection: deflectionIn(segment, flexibility, t),
  };
};

/** Of the values offered, the greatest and the least with their places. */
export const extremesOf = (values: readonly At[]): Extremes => {
  const [first] = values;
  if (first === undefined) throw new Error('defect: extremes of nothing');
  let [max, min] = [first, first];
  for (const each of values) {
    if (each.value > max.value) max = each;
    if (each.value < min.value) min = each;
  }
  return { max, min };
};

export const shearExtremes = ({ segments }: Bent): Extremes => {
  const kept = keeper();
  for (const { from, to, shear, perM } of segments) {
    kept.see(from, shear);
    kept.see(to, shear - perM * (to - from));
  }
  return kept.extremes();
};

/** Places where the moment can be greatest or least: cuts, and where the shear is nothing. */
export const momentsOf = ({ segments }: Bent): readonly At[] => {
  const values: At[] = [];
  for (const [index, { from, to, shear, moment, perM }] of segments.entries()) {
    values.push({ x: from, value: index === 0 ? 0 : moment });
    const t = perM === 0 ? -1 : shear / perM;
    if (t > 0 && t < to - from) {
      values.push({ x: from + t, value: moment + (shear * t) / 2 });
    }
  }
  values.push({ x: segments.at(-1)?.to ?? 0, value: 0 });
  return values;
};

/** Slope of the bent line, t metres into a segment. */
const slopeIn = ({ slope, moment, shear, perM }: Segment, flexibility: number, t: number): number =>
  slope - flexibility * t * (moment + t * (shear / 2 - (perM * t) / 6));

const deflectionIn = (
  { deflection, slope, moment, shear, perM }: Segment,
  flexibility: number,
  t: number,
): number =>
  deflection + t * (slope - flexibility * t * (moment / 2 + t * (shear / 6 - (perM * t) / 24)));

/**
 * Where the slope equals `tilt` within a segment, from one turn of the slope to the next: at most
 * three places, told to `visit` as metres into the segment.
 */
const visitLevel = (
  segment: Segment,
  flexibility: number,
  { tilt, visit }: { readonly tilt: number; readonly visit: (t: number) => void },
): void => {
  const { from, to, shear, moment, perM } = segment;
  const length = to - from;
  const { first, second } = turnsOf({ a: -perM / 2, b: shear, c: moment });
  let start = 0;
  let atStart = slopeIn(segment, flexibility, 0) - tilt;
  for (let part = 0; part < 3; part++) {
    const end = part === 0 ? first : part === 1 ? second : length;
    if (!(end > start && end <= length)) continue;
    const atEnd = slopeIn(segment, flexibility, end) - tilt;
    if (atStart * atEnd < 0) {
      const slopeTo = (t: number): number => slopeIn(segment, flexibility, t) - tilt;
      const bend = (t: number): number => -flexibility * (moment + shear * t - (perM * t * t) / 2);
      visit(crossing(slopeTo, bend, { from: start, to: end }));
    }
    start = end;
    atStart = atEnd;
  }
};

type Quadratic = { readonly a: number; readonly b: number; readonly c: number };

/** Roots of a·t² + b·t + c in order; NaN where there is none. */
const turnsOf = ({ a, b, c }: Quadratic): { readonly first: number; readonly second: number } => {
  const none = Number.NaN;
  if (a === 0) return { first: b === 0 ? none : -c / b, second: none };
  const inside = b * b - 4 * a * c;
  if (inside < 0) return { first: none, second: none };
  // The larger root first, then the other from their product, so that nothing cancels.
  const sum = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(inside));
  if (sum === 0) return { first: 0, second: none };
  const [one, other] = [sum / a, c / sum];
  return { first: Math.min(one, other), second: Math.max(one, other) };
};

/** Keeps the greatest and the least of what it is shown. */
const keeper = () => {
  let [maxX, max, minX, min] = [0, Number.NEGATIVE_INFINITY, 0, Number.POSITIVE_INFINITY];
  return {
    see: (x: number, value: number): void => {
      if (value > max) [maxX, max] = [x, value];
      if (value < min) [minX, min] = [x, value];
    },
    extremes: (): Extremes => ({ max: { x: maxX, value: max }, min: { x: minX, value: min } }),
  };
};

export const deflectionExtremes = ({ segments, flexibility }: Bent): Extremes => {
  const kept = keeper();
  for (const segment of segments) {
    const see = (t: number): void =>
      kept.see(segment.from + t, deflectionIn(segment, flexibility, t));
    see(0);
    visitLevel(segment, flexibility, { tilt: 0, visit: see });
    see(segment.to - segment.from);
  }
  return kept.extremes();
};

/** Largest sag below the chord between two neighbouring places on the batten, both of them cuts. */
export const sagBetween = (bent: Bent, from: number, to: number): At => {
  const [first, last] = [stationAt(bent, from).deflection, stationAt(bent, to).deflection];
  const tilt = (last - first) / (to - from);
  const kept = keeper();
  for (const segment of bent.segments) {
    if (segment.from < from || segment.to > to) continue;
    const see = (t: number): void => {
      const x = segment.from + t;
      kept.see(x, deflectionIn(segment, bent.flexibility, t) - first - tilt * (x - from));
    };
    see(0);
    visitLevel(segment, bent.flexibility, { tilt, visit: see });
  }
  return kept.extremes().max;
};
