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

/**
 * Goes along from the left end, where slope and height follow from the bent line; from there shear
 * gives moment, moment slope, and slope deflection, each exactly within a segment.
 */
export const bentBatten = (bar: Bar, { left, right }: Ends, line: BentLine): Bent => {
  const { flexibility } = bar;
  const cuts = cutsOf(bar, left, right);
  const drops = dropsAt(bar, cuts);
  const segments: Segment[] = [];
  let [shear, moment] = [0, 0];
  const [first = left] = cuts;
  let slope = line.b + flexibility * slopeAt(bar, first);
  let deflection = line.a + line.b * (first - line.origin) + flexibility * bentAt(bar, first);
  for (let index = 0; index + 1 < cuts.length; index++) {
    const [from, to] = [cuts[index] ?? 0, cuts[index + 1] ?? 0];
    shear -= drops[index] ?? 0;
    const perM = spreadOver(bar, from, to);
    const segment = { from, to, shear, moment, slope, deflection, perM };
    segments.push(segment);
    const length = to - from;
    deflection = deflectionIn(segment, flexibility, length);
    slope = slopeIn(segment, flexibility, length);
    moment += shear * length - (perM * length * length) / 2;
    shear -= perM * length;
  }
  return { segments, flexibility };
};

/** Both ends and every place between them where something begins, ends or pulls, once each. */
const cutsOf = ({ pointXs, patches }: Bar, left: number, right: number): Float64Array => {
  const places = new Float64Array(2 + pointXs.length + 2 * patches.length);
  places.set(pointXs, 2);
  [places[0], places[1]] = [left, right];
  for (let index = 0; index < patches.length; index++) {
    places[2 + pointXs.length + 2 * index] = patches[index]?.from ?? left;
    places[3 + pointXs.length + 2 * index] = patches[index]?.to ?? right;
  }
  places.sort();
  let count = 1;
  for (let index = 1; index < places.length; index++) {
    const place = places[index] ?? right;
    if (place === places[count - 1]) continue;
    places[count] = place;
    count += 1;
  }
  return places.subarray(0, count);
};

/** By how much the shear drops at each cut. */
const dropsAt = ({ pointXs, pointForces }: Bar, cuts: Float64Array): Float64Array => {
  const drops = new Float64Array(cuts.length);
  for (let index = 0; index < pointXs.length; index++) {
    const at = cuts.indexOf(pointXs[index] ?? 0);
    drops[at] = (drops[at] ?? 0) + (pointForces[index] ?? 0);
  }
  return drops;
};

const spreadOver = ({ patches }: Bar, from: number, to: number): number => {
  let perM = 0;
  for (let index = 0; index < patches.length; index++) {
    const patch = patches[index];
    if (patch !== undefined && patch.from <= from && patch.to >= to) perM += patch.perM;
  }
  return perM;
};

/** Everything at one place; at a jump of the shear, its value just right of it. */
export const stationAt = (bent: Bent, x: number): Station => {
  const segment = bent.segments[segmentAt(bent, x)];
  if (segment === undefined) throw new Error('defect: a batten without a segment');
  return stationIn(segment, bent.flexibility, x - segment.from);
};

/** Which segment begins at x or has it inside. */
const segmentAt = ({ segments }: Bent, x: number): number => {
  let low = 0;
  let high = segments.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((segments[middle]?.from ?? 0) <= x) low = middle;
    else high = middle - 1;
  }
  return low;
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

export const shearExtremes = ({ segments }: Bent): Extremes => {
  const kept = keeper();
  for (let index = 0; index < segments.length; index++) {
    const segment = segments[index];
    if (segment === undefined) continue;
    const { from, to, shear, perM } = segment;
    kept.see(from, shear);
    kept.see(to, shear - perM * (to - from));
  }
  return kept.extremes();
};

/** The moment is greatest and least at cuts, and where the shear is nothing. */
export const momentExtremes = ({ segments }: Bent): Extremes => {
  const kept = keeper();
  for (let index = 0; index < segments.length; index++) {
    const segment = segments[index];
    if (segment === undefined) continue;
    const { from, to, shear, moment, perM } = segment;
    kept.see(from, index === 0 ? 0 : moment);
    const t = perM === 0 ? -1 : shear / perM;
    if (t > 0 && t < to - from) kept.see(from + t, moment + (shear * t) / 2);
  }
  kept.see(segments.at(-1)?.to ?? 0, 0);
  return kept.extremes();
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

type Level = { readonly tilt: number; readonly visit: (t: number) => void };

/**
 * Where the slope equals `tilt` within a segment, from one turn of the slope to the next: at most
 * three places, told to `visit` as metres into the segment.
 */
const visitLevel = (segment: Segment, flexibility: number, { tilt, visit }: Level): void => {
  const { from, to, shear, moment, perM } = segment;
  const length = to - from;
  const { first, second } = turnsWithin(segment, length);
  let start = 0;
  let atStart = segment.slope - tilt;
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

/** Where the slope turns: where the moment is nothing, which most segments have nowhere. */
const turnsWithin = ({ shear, moment, perM }: Segment, length: number): Turns => {
  const atEnd = moment + shear * length - (perM * length * length) / 2;
  const isPeakInside = perM > 0 && shear > 0 && shear < perM * length;
  // Between two moments of one sign a parabola that only sags can cross nothing where it is below.
  if (moment > 0 && atEnd > 0) return NO_TURNS;
  if (moment < 0 && atEnd < 0 && !isPeakInside) return NO_TURNS;
  return turnsOf({ a: -perM / 2, b: shear, c: moment });
};

type Turns = { readonly first: number; readonly second: number };
const NO_TURNS: Turns = { first: Number.NaN, second: Number.NaN };

type Quadratic = { readonly a: number; readonly b: number; readonly c: number };

/** Roots of a·t² + b·t + c in order; NaN where there is none. */
const turnsOf = ({ a, b, c }: Quadratic): Turns => {
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
  for (let index = 0; index < segments.length; index++) {
    const segment = segments[index];
    if (segment === undefined) continue;
    const see = (t: number): void =>
      kept.see(segment.from + t, deflectionIn(segment, flexibility, t));
    kept.see(segment.from, segment.deflection);
    visitLevel(segment, flexibility, { tilt: 0, visit: see });
    if (index + 1 === segments.length) see(segment.to - segment.from);
  }
  return kept.extremes();
};

/** Largest sag below the chord between two neighbouring places on the batten, both of them cuts. */
export const sagBetween = (bent: Bent, from: number, to: number): At => {
  const { segments, flexibility } = bent;
  const [first, last] = [stationAt(bent, from).deflection, stationAt(bent, to).deflection];
  const tilt = (last - first) / (to - from);
  const kept = keeper();
  for (let index = segmentAt(bent, from); index < segments.length; index++) {
    const segment = segments[index];
    if (segment === undefined || segment.to > to) break;
    const see = (t: number): void => {
      const x = segment.from + t;
      kept.see(x, deflectionIn(segment, flexibility, t) - first - tilt * (x - from));
    };
    see(0);
    visitLevel(segment, flexibility, { tilt, visit: see });
  }
  return kept.extremes().max;
};
