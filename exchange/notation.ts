/**
 * How a value that somebody stands behind is written in a cell, and read back:
 *
 *     520 lb ± 5 % [weighed; source: store; by: A; on: 2026-05-04]
 *     unknown: not weighed yet
 *
 * The brackets are left out where the column "Known by" of the row says the same. A backslash
 * stands before a sign of this notation that is meant as itself.
 */
import type { Json, JsonObject } from '#documents';
import { BASES } from '#house';

/** Basis, source, by, on as the document has them; null where nobody says. */
export type Given = JsonObject | null;

const OWN = ['source', 'by', 'on'] as const;

export const escaped = (text: string): string => text.replace(/[\\;|]/g, (sign) => `\\${sign}`);

export const unescaped = (text: string): string => text.replace(/\\(.)/g, '$1');

/** Splits at a sign that has no backslash before it, and trims the pieces. */
export const splitAt = (text: string, sign: ';' | '|'): readonly string[] => {
  const pieces: string[] = [''];
  let isEscaped = false;
  for (const one of text) {
    const isSplit = one === sign && !isEscaped;
    if (isSplit) pieces.push('');
    else pieces[pieces.length - 1] += one;
    isEscaped = one === '\\' && !isEscaped;
  }
  return pieces.map((piece) => piece.trim());
};

export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const isList = (value: unknown): value is readonly Json[] => Array.isArray(value);

export const listOf = (value: unknown): readonly Json[] => (isList(value) ? value : []);

/** Basis, source, by and on, in this order, so that two can be compared as texts. */
export const givenOf = (value: unknown): Given => {
  if (!isObject(value) || value['basis'] === undefined) return null;
  const own = ['basis', ...OWN].filter((key) => value[key] !== undefined);
  return Object.fromEntries(own.map((key) => [key, value[key] ?? null]));
};

/** The "given" that holds inside an object. */
export const givenIn = (value: unknown, above: Given): Given =>
  (isObject(value) ? givenOf(value['given']) : null) ?? above;

export const isSame = (one: unknown, other: unknown): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

export const givenText = (given: Given): string =>
  given === null
    ? ''
    : Object.entries(given)
        .map(([key, value]) => (key === 'basis' ? '' : `${key}: `) + escaped(String(value)))
        .join('; ');

/** Undefined where it is not in this form. */
export const readGiven = (text: string): JsonObject | undefined => {
  const [basis = '', ...more] = splitAt(text, ';');
  if (!BASES.some((one) => one === basis)) return undefined;
  const read: Record<string, Json> = { basis };
  for (const piece of more) {
    const [, key, words] = /^(source|by|on):\s*(.+)$/s.exec(piece) ?? [];
    if (key === undefined || words === undefined || Object.hasOwn(read, key)) return undefined;
    read[key] = unescaped(words);
  }
  return givenOf(read) ?? undefined;
};

/** A value without what it inherits: its figure, tolerance and who stands behind it. */
export type Value =
  | { readonly unknown: string }
  | { readonly value: Json; readonly tolerance?: Json; readonly given: Given };

export const valueIn = (raw: Json | undefined, above: Given): Value | undefined => {
  if (raw === undefined) return undefined;
  if (!isObject(raw)) return { value: raw, given: above };
  if (typeof raw['unknown'] === 'string') return { unknown: raw['unknown'] };
  const given = givenOf(raw) ?? above;
  const value = raw['value'] ?? null;
  const tolerance = raw['tolerance'];
  return tolerance === undefined ? { value, given } : { value, tolerance, given };
};

export const valueText = (value: Value | undefined, row: Given): string => {
  if (value === undefined) return '';
  if ('unknown' in value) return `unknown: ${escaped(value.unknown)}`;
  const within = value.tolerance === undefined ? '' : ` ± ${String(value.tolerance)}`;
  const own = isSame(value.given, row) ? '' : ` [${givenText(value.given)}]`;
  return `${String(value.value)}${within}${own}`;
};

/** A value as it is typed in a cell, its brackets read; undefined where they are in no form. */
export type Typed =
  | { readonly unknown: string }
  | { readonly value: string; readonly tolerance: string | null; readonly own: Given };

export const readTyped = (text: string): Typed | undefined => {
  const [, why] = /^unknown:\s*(.+)$/is.exec(text) ?? [];
  if (why !== undefined) return { unknown: unescaped(why) };
  const [, figure = '', brackets] = /^([^[]*?)\s*(?:\[(.*)\])?$/s.exec(text) ?? [];
  const own = brackets === undefined ? null : readGiven(brackets);
  const [value = '', tolerance = null, ...more] = figure.split('±').map((part) => part.trim());
  if (own === undefined || value === '' || tolerance === '' || more.length > 0) return undefined;
  return { value, tolerance, own };
};

/** The whole form of a value, which inherits nothing. */
export const wholeValue = (value: Value): JsonObject => {
  if ('unknown' in value) return value;
  const { given, ...figures } = value;
  return { ...figures, ...given };
};
