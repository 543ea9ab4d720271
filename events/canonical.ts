/**
 * One text for one value: JSON as RFC 8785 writes it (JCS), so that a hash of it is the same on
 * every machine. Members are sorted by UTF-16 code units; numbers and texts are written as
 * ECMAScript does, which is what the RFC asks for. Nothing is between them.
 */
import { assert } from '#outcome';
import { isWellFormed } from './well-formed.ts';

export const canonicalJson = (value: unknown): string => {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') return number(value);
  if (typeof value === 'string') return string(value);
  assert(typeof value === 'object', 'a canonical text is of JSON and of nothing else');
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  return members(value as Readonly<Record<string, unknown>>);
};

const number = (value: number): string => {
  assert(Number.isFinite(value), 'a number in JSON is finite');
  return JSON.stringify(value);
};

const string = (value: string): string => {
  assert(isWellFormed(value), 'a text in I-JSON has no half of a pair of surrogates');
  return JSON.stringify(value);
};

/** `<` on texts compares UTF-16 code units, as section 3.2.3 asks. */
const members = (value: Readonly<Record<string, unknown>>): string =>
  `{${Object.keys(value)
    .sort((a, b) => (a < b ? -1 : 1))
    .map((name) => `${string(name)}:${canonicalJson(value[name])}`)
    .join(',')}}`;
