/**
 * Where a value stands: in the document by the places of its lists, and for a person by ids, as
 * the list of what is unknown names it. A field on the page has its own place among ids.
 */
import { at, isList, isObject, type Json, type JsonPath } from '../keeping/json.ts';

/** `setTypes.SP6.arbor`, `lineSets["a.b"].y` and `hangs[3]` as their keys. */
export const keysOf = (path: string): readonly string[] =>
  [...path.matchAll(/\["((?:[^"\\]|\\.)*)"\]|\[(\d+)\]|([^.[\]"]+)/g)].map(
    ([, quoted, index, plain]) => quoted ?? index ?? plain ?? '',
  );

export const idOf = (entry: Json | undefined): string | undefined => {
  const id = isObject(entry) ? entry['id'] : undefined;
  return typeof id === 'string' ? id : undefined;
};

/** Each entry of a list by its id; one without keeps its place. */
export const idKeys = (root: Json, path: JsonPath): readonly string[] =>
  path.map((key, depth) =>
    typeof key === 'number' ? (idOf(at(root, path.slice(0, depth + 1))) ?? String(key)) : key,
  );

/** The place in the document of what ids name; null where there is no such entry. */
export const documentPath = (root: Json, keys: readonly string[]): JsonPath | null => {
  const path: (string | number)[] = [];
  for (const key of keys) {
    const holder = at(root, path);
    if (!isList(holder)) {
      path.push(key);
      continue;
    }
    const index = holder.findIndex((entry, place) => (idOf(entry) ?? String(place)) === key);
    if (index < 0) return null;
    path.push(index);
  }
  return path;
};

/** The id that a field has on the page. */
export const fieldId = (keys: readonly string[]): string =>
  ['field', ...keys.map(encodeURIComponent)].join('/');

export const fieldName = (keys: readonly string[]): string =>
  keys
    .map((key) => (/^[\w$-]+$/.test(key) ? key : `["${key}"]`))
    .join('.')
    .replaceAll('.[', '[');

const ID_MAX = 32;

/** An id made from a name, and from none that is there: `Upper gallery` as `upper-gallery`. */
export const idFrom = (name: string, taken: readonly string[]): string => {
  const base = name
    .normalize('NFKD')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, ID_MAX - 3);
  if (base === '' || !taken.includes(base)) return base;
  const next = Array.from({ length: 98 }, (_, index) => `${base}-${index + 2}`);
  return next.find((id) => !taken.includes(id)) ?? '';
};
