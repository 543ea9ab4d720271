/** JSON as values, and the words in which a place or a find is told to a person. */

export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export type JsonObject = { readonly [key: string]: Json };

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** `lineSets[3].lowStop`: indexes in brackets, plain keys after a dot, all other keys quoted. */
export const pathTo = (path: string, key: string | number): string => {
  if (typeof key === 'number') return `${path}[${key}]`;
  if (!/^[\w$-]+$/.test(key)) return `${path}[${JSON.stringify(key.slice(0, 60))}]`;
  return path === '' ? key : `${path}.${key}`;
};

const FOUND_MAX = 60;

export const shorten = (text: string): string =>
  text.length <= FOUND_MAX ? text : `${text.slice(0, FOUND_MAX - 1)}…`;

/** A value as it is named in a refusal, never longer than a line. */
export const describe = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'string') return JSON.stringify(shorten(value));
  if (typeof value === 'number') return `the number ${value}`;
  if (typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return `an object with ${describeKeys(Object.keys(value))}`;
  return `a ${typeof value}, which is not JSON`;
};

const describeKeys = (keys: readonly string[]): string => {
  if (keys.length === 0) return 'nothing in it';
  const first = keys.slice(0, 3).map((key) => JSON.stringify(shorten(key)));
  return keys.length > 3 ? `${first.join(', ')} and ${keys.length - 3} more` : first.join(', ');
};
