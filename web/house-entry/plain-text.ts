/** Values without a source, as a person types them, and back into the document. */
import { message } from '#texts';
import { isList, isObject, type Json } from '../keeping/json.ts';
import type { Form } from './form.ts';
import { numberOr } from './sourced-text.ts';

/** Between the entries of a list; a comma may stand inside a measure. */
const BETWEEN = '; ';

const wordOf = (value: Json | undefined): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
};

export const plainText = (value: Json | undefined): string => {
  if (isList(value)) return value.map(wordOf).join(BETWEEN);
  return isObject(value) ? '' : wordOf(value);
};

/** The entries of a list that was typed on one line; `1, 2, 3` is a list where ids are asked. */
export const entriesOf = (text: string, of: Form): readonly string[] =>
  text
    .split(of.kind === 'id' ? /[;,\s]+/ : /;|\n/)
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '');

const oneJson = (text: string, form: Form): Json => {
  if (form.kind === 'flag') return text === 'yes' ? true : text === 'no' ? false : text;
  return form.kind === 'count' ? numberOr(text) : text.trim();
};

/** What is to be written for a text; undefined where nothing was said. */
export const plainJson = (text: string, form: Form): Json | undefined => {
  if (form.kind === 'list') {
    const entries = entriesOf(text, form.of);
    return entries.length === 0 ? undefined : entries.map((entry) => oneJson(entry, form.of));
  }
  return text.trim() === '' ? undefined : oneJson(text, form);
};

/** From and to, as two texts; an end that is left open goes on. */
export const pairTexts = (value: Json | undefined): readonly [string, string] => {
  const [from, to] = isList(value) ? value : [];
  return [wordOf(from), wordOf(to)];
};

export type PairToWrite = { readonly json: Json | undefined } | { readonly missing: string };

export const pairJson = (
  [from, to]: readonly [string, string],
  { mayGoOn }: { readonly mayGoOn: boolean },
): PairToWrite => {
  const [low, high] = [from.trim(), to.trim()];
  if (low === '' && high === '') return { json: undefined };
  if (mayGoOn) return { json: [low === '' ? null : low, high === '' ? null : high] };
  if (low === '' || high === '') return { missing: message('both ends') };
  return { json: [low, high] };
};

/** Why a list is not known; null where it is, or where nothing was said. */
export const whyUnknown = (value: Json | undefined): string | null => {
  const why = isObject(value) ? value['unknown'] : undefined;
  return typeof why === 'string' ? why : null;
};
