/** Numbers of line sets for a person to read: `1–13, 15, D1–D4`. */

const partsOf = (id: string): { readonly before: string; readonly number: number } | null => {
  // A leading nought is part of the name: 07 does not follow 6.
  const [, before, digits] = /^(\D*)([1-9]\d{0,4})$/.exec(id) ?? [];
  return before === undefined || digits === undefined ? null : { before, number: Number(digits) };
};

const isNext = (one: string, other: string): boolean => {
  const [first, second] = [partsOf(one), partsOf(other)];
  if (first === null || second === null) return false;
  return first.before === second.before && second.number === first.number + 1;
};

const SHORTEST_RUN = 3;

const wordsOf = (run: readonly string[]): string =>
  run.length < SHORTEST_RUN ? run.join(', ') : `${run[0]}–${run.at(-1)}`;

/** In the order given; three and more that follow one another are one run. */
export const runsOfSets = (ids: readonly string[]): string => {
  const runs: string[][] = [];
  for (const id of ids) {
    const last = runs.at(-1);
    if (last !== undefined && isNext(last.at(-1) ?? '', id)) last.push(id);
    else runs.push([id]);
  }
  return runs.map(wordsOf).join(', ');
};
