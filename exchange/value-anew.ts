/** What a cell does to the value that stands in the document: nothing, a new value, or refused. */
import type { Json, JsonObject } from '#documents';
import { type Refusal, refusal } from '#outcome';
import { type Dimension, parseQuantity } from '#quantities';
import type { Reads } from './fields.ts';
import {
  type Given,
  isObject,
  isSame,
  readTyped,
  type Typed,
  type Value,
  valueIn,
  wholeValue,
} from './notation.ts';
import type { Said } from './rows-in.ts';
import { quoted, refuse } from './sheet.ts';

export type Anew =
  | { readonly is: 'same' }
  | { readonly is: 'new'; readonly json: Json }
  | { readonly is: 'refused'; readonly refusal: Refusal };

export const SAME: Anew = { is: 'same' };
export const refusedAs = (one: Refusal): Anew => ({ is: 'refused', refusal: one });
export const anew = (json: Json): Anew => ({ is: 'new', json });

export const notRead = (said: Said, accepted: string): Anew =>
  refusedAs(refuse('notRead', said.where, { found: quoted(said.text), accepted }));

type Figured = Exclude<Typed, { readonly unknown: string }>;

const siOf = (dimension: Dimension, text: string): number | null => {
  const parsed = parseQuantity(dimension, text, { signed: true });
  return parsed.ok ? parsed.value : null;
};

const isSameFigure = (old: Json, typed: string, reads: Reads): boolean => {
  if (String(old) === typed) return true;
  if (reads.is !== 'measure') return Number(old) === Number(typed);
  const before = siOf(reads.dimension, String(old));
  return before !== null && before === siOf(reads.dimension, typed);
};

/**
 * A bare figure that is the one before says nothing new. Where the table says how it is known,
 * that and the tolerance are compared as well.
 */
const isUnchanged = (
  old: Value | undefined,
  typed: Figured,
  { given, reads }: { readonly given: Given; readonly reads: Reads },
): boolean => {
  if (old === undefined || 'unknown' in old) return false;
  if (!isSameFigure(old.value, typed.value, reads)) return false;
  const tolerance = old.tolerance === undefined ? null : String(old.tolerance);
  if (given === null) return typed.tolerance === null || typed.tolerance === tolerance;
  return typed.tolerance === tolerance && isSame(given, old.given);
};

const isNumber = (text: string): boolean => /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/.test(text);

const numeric = (text: string, reads: Reads): Json =>
  reads.is === 'number' && isNumber(text) ? Number(text) : text;

const figureFault = (said: Said, { value }: Figured, reads: Reads): Anew | null => {
  if (reads.is === 'number') return isNumber(value) ? null : notRead(said, 'a plain number');
  if (reads.is !== 'measure') return null;
  const parsed = parseQuantity(reads.dimension, value, { signed: true });
  if (parsed.ok) return null;
  const { code, found, accepted } = parsed.error;
  return refusedAs(refusal(code, said.where, { found, accepted }));
};

export const basisAsked = (said: Said): Anew => {
  const accepted = 'a column Known by, one answer for all rows, or [weighed] behind the figure';
  return refusedAs(refuse('basisAsked', said.where, { found: quoted(said.text), accepted }));
};

type Standing = {
  readonly before: Json | undefined;
  /** The "given" of the document where the value stands. */
  readonly above: Given;
  /** What the table says of the whole row. */
  readonly row: Given;
  readonly reads: Reads;
};

export const valueAnew = (said: Said, { before, above, row, reads }: Standing): Anew => {
  const typed = readTyped(said.text);
  if (typed === undefined)
    return notRead(said, '35 lb ± 5 % [weighed; source: …], or unknown: why');
  const old = valueIn(before, above);
  if ('unknown' in typed) return isSame(old, typed) ? SAME : anew(wholeValue(typed));
  const fault = figureFault(said, typed, reads);
  if (fault !== null) return fault;
  const given = typed.own ?? row;
  if (isUnchanged(old, typed, { given, reads })) return SAME;
  if (given === null) return basisAsked(said);
  const value = numeric(typed.value, reads);
  const { tolerance } = typed;
  return anew(
    wholeValue(
      tolerance === null
        ? { value, given }
        : { value, tolerance: numeric(tolerance, reads), given },
    ),
  );
};

/** The object with a value at a path; objects on the way are made where there are none. */
export const withValue = (root: JsonObject, path: readonly string[], json: Json): JsonObject => {
  const [key, ...rest] = path;
  if (key === undefined) return root;
  const inner = root[key];
  return {
    ...root,
    [key]: rest.length === 0 ? json : withValue(isObject(inner) ? inner : {}, rest, json),
  };
};

export const withoutKey = (root: JsonObject, key: string): JsonObject =>
  Object.fromEntries(Object.entries(root).filter(([one]) => one !== key));
