/** Documents as they are kept: plain JSON, never changed in place, so that old and new share. */
import type { Json, JsonObject } from '#documents';

export type { Json, JsonObject };

/** Where in a document; a number is a place in a list. */
export type JsonPath = readonly (string | number)[];

export const isList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value);

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const step = (value: Json | undefined, key: string | number): Json | undefined => {
  if (isList(value)) return typeof key === 'number' ? value[key] : undefined;
  return isObject(value) && Object.hasOwn(value, key) ? value[key] : undefined;
};

/** What stands at a path; undefined where nothing does. */
export const at = (root: Json | undefined, path: JsonPath): Json | undefined =>
  path.reduce<Json | undefined>(step, root);

/**
 * The document with `value` at the path; undefined takes the field away. Objects on the way are
 * made where they are missing; a list must be there already.
 */
export const withAt = (root: Json | undefined, path: JsonPath, value: Json | undefined): Json => {
  const [key, ...rest] = path;
  if (key === undefined) return value ?? null;
  const inner = rest.length === 0 ? value : withAt(step(root, key), rest, value);
  if (typeof key === 'number') {
    const list = isList(root) ? root : [];
    return inner === undefined
      ? list.filter((_, index) => index !== key)
      : Object.assign([...list], { [key]: inner });
  }
  const object = isObject(root) ? root : {};
  if (inner !== undefined) return { ...object, [key]: inner };
  const { [key]: _gone, ...others } = object;
  return others;
};

/** Whether two documents say the same, whatever the order of their fields. */
export const isSame = (one: Json | undefined, other: Json | undefined): boolean => {
  if (one === other) return true;
  if (isList(one) && isList(other)) {
    return one.length === other.length && one.every((value, index) => isSame(value, other[index]));
  }
  if (!isObject(one) || !isObject(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && isSame(one[key], other[key]))
  );
};
