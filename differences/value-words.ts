/** Values as they were typed, with words round them and nothing worked out. */
import type { Json, JsonObject } from '#documents';
import { isMeasured } from './changed-places.ts';
import { spaced, stepWords } from './field-words.ts';
import { field, isList, isObject } from './json.ts';

/** Our words in those of the house; names that people gave are not put through it. */
export type Translate = (ours: string) => string;

/** Free text stands in quotes, so that it is not read as our words. */
const QUOTED: readonly string[] = [
  'name',
  'remark',
  'remarks',
  'note',
  'reason',
  'how',
  'description',
  'keptEmpty',
];

/** Words chosen from a list of ours: `houseRule` is read as `house rule`. */
const CHOSEN: readonly string[] = [
  'basis',
  'bearing',
  'collar',
  'family',
  'kind',
  'knowledge',
  'lock',
  'operatingSide',
  'reference',
  'resists',
  'ring',
  'serves',
  'service',
  'suspension',
  'tag',
  'termination',
  'wall',
];

const textWords = (text: string, name: string): string => {
  if (QUOTED.includes(name)) return `“${text}”`;
  return CHOSEN.includes(name) && /^[a-zA-Z]+$/.test(text) ? spaced(text) : text;
};

/** A value of the field `name`, in words; undefined is what is not written at all. */
export const valueWords = (value: Json | undefined, name: string, say: Translate): string => {
  if (value === undefined) return say('not written');
  if (value === null) return say('nothing');
  if (typeof value === 'boolean') return say(value ? 'yes' : 'no');
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return textWords(value, name);
  if (isList(value)) return listWords(value, name, say);
  if (!isObject(value)) return '';
  return isMeasured(value) ? measuredWords(value, say) : objectWords(value, say);
};

const listWords = (list: readonly Json[], name: string, say: Translate): string => {
  if (list.length === 0) return say('none');
  const parts = list.map((entry) =>
    isObject(entry)
      ? (runWords(entry) ?? `(${objectWords(entry, say)})`)
      : valueWords(entry, name, say),
  );
  return parts.join(', ');
};

/** Bricks on an arbor: `21 F, show`. */
const runWords = (entry: JsonObject): string | null => {
  const { kind, count, tag, ...others } = entry;
  if (typeof kind !== 'string' || typeof count !== 'number') return null;
  if (Object.keys(others).length > 0 || (tag !== undefined && typeof tag !== 'string')) return null;
  return tag === undefined ? `${count} ${kind}` : `${count} ${kind} (${tag})`;
};

export const labelOf = (name: string, say: Translate): string =>
  say(stepWords({ of: 'field', name }, undefined, undefined)?.ours || spaced(name));

const objectWords = (value: JsonObject, say: Translate): string => {
  const parts = Object.entries(value).map(
    ([name, inner]) => `${labelOf(name, say)} ${valueWords(inner, name, say)}`,
  );
  return parts.length === 0 ? say('nothing') : parts.join(', ');
};

/** What a measured figure says first: the figure, or that it is unknown and why. */
export const figureWords = (value: JsonObject, say: Translate): string | null => {
  const unknown = field(value, 'unknown');
  if (unknown !== undefined) {
    return `${say('unknown')} (${valueWords(unknown, 'unknown', say)})`;
  }
  const figure = field(value, 'value');
  return figure === undefined ? null : valueWords(figure, 'value', say);
};

/** `basis weighed`, `source rigger’s scale`: each field beside the figure. */
export const groundsWords = (name: string, value: Json | undefined, say: Translate): string =>
  `${say(GROUNDS[name] ?? labelOf(name, (ours) => ours))} ${valueWords(value, name, say)}`;

const GROUNDS: Readonly<Record<string, string>> = { by: 'by', on: 'on', at: 'at' };

export const besidesOf = (value: JsonObject): readonly string[] =>
  Object.keys(value).filter((name) => name !== 'value' && name !== 'unknown');

const measuredWords = (value: JsonObject, say: Translate): string => {
  const figure = figureWords(value, say);
  const besides = besidesOf(value).map((name) => groundsWords(name, value[name], say));
  return [...(figure === null ? [] : [figure]), ...besides].join(', ');
};
