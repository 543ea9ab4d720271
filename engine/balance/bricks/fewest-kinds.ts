/** Mixes near enough to the wanted mass, by kinds, bricks, plates and then gap. */
import { type Cost, cheapestMixes } from './cheapest-mixes.ts';
import { byGap, byHabit, type Mix, mixOf } from './mix.ts';
import { MASS_TIE, type MixProblem } from './problem.ts';

export type FewestKinds = {
  readonly mixes: readonly Mix[];
  readonly proven: boolean;
  readonly pairs: number;
};

/** Choices of kinds that are tried; a house with a dozen kinds has 4,096. */
const CHOICES_MAX = 5_000;

const BRICKS: Cost = { of: (_kind, count) => count, thenBy: (a, b) => a.plates - b.plates };

/** All choices of `size` out of these places, in their order. */
function* choices(places: readonly number[], size: number): Generator<readonly number[]> {
  if (size === 0) yield [];
  for (const [at, place] of size === 0 ? [] : places.entries()) {
    for (const rest of choices(places.slice(at + 1), size - 1)) yield [place, ...rest];
  }
}

/** The problem with at least one brick of each chosen kind and none of the others. */
const only = (problem: MixProblem, chosen: readonly number[]): MixProblem => ({
  ...problem,
  kinds: problem.kinds.map((kind, place) =>
    chosen.includes(place) ? { ...kind, from: 1 } : { ...kind, to: 0 },
  ),
});

/**
 * The first `keep` mixes at most `gapMax` kg off the wanted mass, by fewest kinds, fewest bricks,
 * fewest plates, least gap. Choices of few kinds come first, so that the search can end with them.
 */
export const fewestKinds = (problem: MixProblem, gapMax: number, keep: number): FewestKinds => {
  const band = {
    ...problem,
    massFrom: Math.max(problem.massFrom, problem.want - gapMax - MASS_TIE),
    massTo: Math.min(problem.massTo, problem.want + gapMax + MASS_TIE),
  };
  const habit = byHabit(problem);
  const byRank = (a: Mix, b: Mix): number =>
    a.kinds - b.kinds || a.bricks - b.bricks || a.plates - b.plates || byGap(a, b) || habit(a, b);
  const none = mixOf(
    band,
    problem.kinds.map(() => 0),
  );
  const usable = [...problem.kinds.keys()].filter((place) => (problem.kinds[place]?.to ?? 0) > 0);
  let mixes: Mix[] = none === undefined ? [] : [none];
  let [proven, pairs, tried] = [true, 0, 0];
  for (let size = 1; size <= usable.length && mixes.length < keep; size += 1) {
    for (const chosen of choices(usable, size)) {
      tried += 1;
      if (tried > CHOICES_MAX) return { mixes: mixes.sort(byRank), proven: false, pairs };
      const cheapest = cheapestMixes(only(band, chosen), BRICKS, keep);
      proven &&= cheapest.proven;
      pairs += cheapest.pairs;
      mixes.push(...cheapest.mixes);
    }
    mixes = mixes.sort(byRank).slice(0, keep);
  }
  return { mixes, proven, pairs };
};
