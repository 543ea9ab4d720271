/** One mix of bricks, measured against its problem. */
import type { KindRange, MixProblem, PlateWindow } from './problem.ts';

export type Mix = {
  /** In the order of the problem's kinds. */
  readonly counts: readonly number[];
  readonly bricks: number;
  /** Kinds of which there is at least one. */
  readonly kinds: number;
  /** m of bricks, without plates. */
  readonly thickness: number;
  /** Spreader plates in the whole stack. */
  readonly plates: number;
  /** kg of these bricks and all plates. */
  readonly mass: number;
  /** kg, mass against the wanted mass, without its sign. */
  readonly gap: number;
};

const windowOf = (problem: MixProblem, thickness: number): PlateWindow | undefined =>
  problem.windows.find(
    ({ thicknessFrom, thicknessTo }) => thickness >= thicknessFrom && thickness < thicknessTo,
  );

/** The mix of these counts, or undefined where it does not stand on the rod or pass the limits. */
export const mixOf = (problem: MixProblem, counts: readonly number[]): Mix | undefined => {
  let [mass, thickness, bricks, kinds] = [0, 0, 0, 0];
  for (const [place, kind] of problem.kinds.entries()) {
    const count = counts[place] ?? 0;
    if (count < kind.from || count > kind.to) return undefined;
    mass += count * kind.mass;
    thickness += count * kind.thickness;
    bricks += count;
    if (count > 0) kinds += 1;
  }
  const window = windowOf(problem, thickness);
  if (window === undefined) return undefined;
  mass += window.plateMass;
  if (mass < problem.massFrom || mass > problem.massTo) return undefined;
  const gap = Math.abs(mass - problem.want);
  return { counts, bricks, kinds, thickness, plates: window.plates, mass, gap };
};

/** Whole millionths of a gram or micrometres, so that noise in the last digit decides nothing. */
const grain = (value: number): number => Math.round(value * 1e9);

/** For `sort`: least gap first, in grains. */
export const byGap = (a: Mix, b: Mix): number => grain(a.gap) - grain(b.gap);

/**
 * The last word between mixes that are as good as each other, so that the same bricks always come
 * out: fewest kinds, fewest plates, lowest stack, lighter arbor, then more of the heavier kind.
 */
export const byHabit =
  (problem: MixProblem) =>
  (a: Mix, b: Mix): number => {
    const first =
      a.kinds - b.kinds ||
      a.plates - b.plates ||
      grain(a.thickness) - grain(b.thickness) ||
      grain(a.mass) - grain(b.mass);
    if (first !== 0) return first;
    for (const place of problem.heaviestFirst) {
      const more = (b.counts[place] ?? 0) - (a.counts[place] ?? 0);
      if (more !== 0) return more;
    }
    return 0;
  };

/** As many of each kind as still go on, heaviest first or densest first: a fair first guess. */
const filled = (problem: MixProblem, places: readonly number[]): number[] => {
  const room = problem.windows.reduce((top, { thicknessTo }) => Math.max(top, thicknessTo), 0);
  const counts = problem.kinds.map((kind) => kind.from);
  const sum = (of: (kind: KindRange) => number): number =>
    problem.kinds.reduce((total, kind) => total + kind.from * of(kind), 0);
  let mass = sum((kind) => kind.mass);
  let thickness = sum((kind) => kind.thickness);
  const want = Math.min(problem.want, problem.massTo);
  for (const place of places) {
    const kind = problem.kinds[place] as KindRange;
    const byRod = kind.thickness > 0 ? (room - thickness) / kind.thickness : kind.to;
    const more = Math.floor(Math.min((want - mass) / kind.mass, byRod, kind.to - kind.from));
    if (more <= 0) continue;
    counts[place] = kind.from + more;
    mass += more * kind.mass;
    thickness += more * kind.thickness;
  }
  return counts;
};

const DENSITY_CAP = 1e12;

const density = ({ mass, thickness }: KindRange): number =>
  thickness > 0 ? mass / thickness : mass * DENSITY_CAP;

/**
 * Mixes near the wanted mass, found without a search: two first guesses and their neighbours.
 * They tell the search how far it need look; they never decide an answer.
 */
export const firstGuesses = (problem: MixProblem): readonly Mix[] => {
  const densest = [...problem.heaviestFirst].sort(
    (a, b) => density(problem.kinds[b] as KindRange) - density(problem.kinds[a] as KindRange),
  );
  const found = new Map<string, Mix>();
  for (const places of [problem.heaviestFirst, densest]) {
    const centre = filled(problem, places);
    const neighbours = [centre];
    for (const place of places) {
      for (const change of [1, -1, 2, -2]) {
        neighbours.push(centre.map((count, other) => (other === place ? count + change : count)));
      }
    }
    for (const counts of neighbours) {
      const mix = mixOf(problem, counts);
      if (mix !== undefined) found.set(counts.join(), mix);
    }
  }
  return [...found.values()];
};

/** The counts of the first guess, whether or not they pass the limits. */
export const firstCounts = (problem: MixProblem): readonly number[] =>
  filled(problem, problem.heaviestFirst);
