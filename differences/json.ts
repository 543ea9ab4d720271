import type { Json, JsonObject } from '#documents';

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const isList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value);

/** A field of its own; what every object has by birth is none. */
export const field = (object: JsonObject, name: string): Json | undefined =>
  Object.hasOwn(object, name) ? object[name] : undefined;

/** Whether two values say the same, whatever the order of their fields. */
export const isSame = (one: Json | undefined, other: Json | undefined): boolean => {
  if (Object.is(one, other)) return true;
  if (isList(one) && isList(other)) {
    return one.length === other.length && one.every((value, index) => isSame(value, other[index]));
  }
  if (!isObject(one) || !isObject(other)) return false;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => Object.hasOwn(other, name) && isSame(one[name], other[name]))
  );
};

/** Names of both, in the order of the first; what only the second has comes after. */
export const namesOf = (first: JsonObject, second: JsonObject): readonly string[] => [
  ...new Set([...Object.keys(first), ...Object.keys(second)]),
];
