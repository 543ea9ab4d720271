/** Line sets by type, and what those of one type say alike. */
import type { LineSet } from '#house';

export const byType = (sets: readonly LineSet[]): ReadonlyMap<string, readonly LineSet[]> => {
  const types = new Map<string, LineSet[]>();
  for (const set of sets) types.set(set.typeId, [...(types.get(set.typeId) ?? []), set]);
  return types;
};

/** One text where all agree, else each text once. */
export const shared = (sets: readonly LineSet[], say: (set: LineSet) => string): string =>
  [...new Set(sets.map(say))].join('; ');
