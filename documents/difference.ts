/** What has changed between two revisions of a document, leaf by leaf. */
import { isObject, pathTo } from './json.ts';

export type Change = {
  readonly path: string;
  /** Undefined where there was nothing. */
  readonly before: unknown;
  /** Undefined where there is nothing any more. */
  readonly after: unknown;
};

/**
 * Every changed value with its path, in the order of the newer document. Entries of a list that all
 * have an id (`id`, or `set` for a hang, or `number` with `set` for a cue) are matched by it, and
 * their path is that of the newer list; so a set put in before others is one change and not forty.
 */
export const differenceOf = (before: unknown, after: unknown): readonly Change[] =>
  changesAt('', before, after);

const changesAt = (path: string, before: unknown, after: unknown): readonly Change[] => {
  if (Array.isArray(before) && Array.isArray(after)) return listChanges(path, before, after);
  if (isObject(before) && isObject(after)) {
    const gone = Object.keys(before).filter((key) => !Object.hasOwn(after, key));
    return [...Object.keys(after), ...gone].flatMap((key) =>
      changesAt(pathTo(path, key), before[key], after[key]),
    );
  }
  return isSame(before, after) ? [] : [{ path, before, after }];
};

const isSame = (one: unknown, other: unknown): boolean =>
  Object.is(one, other) || JSON.stringify(one) === JSON.stringify(other);

type List = readonly unknown[];

const listChanges = (path: string, before: List, after: List): readonly Change[] => {
  const oldKeys = keysOf(before);
  const newKeys = keysOf(after);
  if (!oldKeys || !newKeys) return byPlace(path, before, after);
  const gone = before.filter((_, index) => !newKeys.includes(oldKeys[index] ?? ''));
  const kept = oldKeys.filter((key) => newKeys.includes(key));
  const order = newKeys.filter((key) => oldKeys.includes(key));
  return [
    ...after.flatMap((entry, index) =>
      changesAt(pathTo(path, index), before[oldKeys.indexOf(newKeys[index] ?? '')], entry),
    ),
    ...gone.map((entry) => ({
      path: pathTo(path, before.indexOf(entry)),
      before: entry,
      after: undefined,
    })),
    ...(isSame(kept, order) ? [] : [{ path, before: oldKeys, after: newKeys }]),
  ];
};

const byPlace = (path: string, before: List, after: List): readonly Change[] =>
  Array.from({ length: Math.max(before.length, after.length) }, (_, index) => index).flatMap(
    (index) => changesAt(pathTo(path, index), before[index], after[index]),
  );

/** A key for each entry, or undefined where some entry has none or two have the same. */
const keysOf = (entries: List): readonly string[] | undefined => {
  const keys = entries.map(keyOf);
  const named = keys.flatMap((key) => (key === undefined ? [] : [key]));
  return named.length === entries.length && new Set(named).size === named.length
    ? named
    : undefined;
};

const keyOf = (entry: unknown): string | undefined => {
  if (!isObject(entry)) return undefined;
  const { id, number, set } = entry;
  if (typeof id === 'string') return id;
  if (typeof number === 'string') return `${number} of ${String(set)}`;
  return typeof set === 'string' ? set : undefined;
};
