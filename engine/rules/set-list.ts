import type { House, LineSet } from '#house';

/** From this many sets in a row on, a list says from where to where. */
const RUN = 3;

/** Sets in rail order in few words: `1 to 13, 15, D1`. */
export const setList = ({ lineSets }: House, sets: readonly LineSet[]): string => {
  const listed = new Set(sets.map(({ id }) => id));
  const runs: string[][] = [[]];
  for (const { id } of lineSets) {
    if (listed.has(id)) runs.at(-1)?.push(id);
    else runs.push([]);
  }
  return runs.flatMap(runWords).join(', ');
};

const runWords = (run: readonly string[]): readonly string[] =>
  run.length < RUN ? run : [`${run[0]} to ${run.at(-1)}`];

/** Sets that share a value, in rail order; a set without one is left out. */
export const setsBy = <T>(
  { lineSets }: House,
  keyOf: (lineSet: LineSet) => T | null,
): ReadonlyMap<T, readonly LineSet[]> => {
  const groups = new Map<T, LineSet[]>();
  for (const lineSet of lineSets) {
    const value = keyOf(lineSet);
    if (value !== null) groups.set(value, [...(groups.get(value) ?? []), lineSet]);
  }
  return groups;
};
