/** Values as they were typed, with words round them and nothing worked out. */
import type { Json, JsonObject } from '#documents';
import { inVoice, message, phrase, type Voice } from '#texts';
import { isMeasured } from './changed-places.ts';
import { chosenWords } from './chosen-words.ts';
import { spaced, stepWords } from './field-words.ts';
import { field, isList, isObject } from './json.ts';

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

const textWords = (text: string, name: string, voice: Voice): string =>
  QUOTED.includes(name) ? `“${text}”` : (chosenWords(voice, name, text) ?? figure(text, voice));

/** A figure and its unit, with the decimal mark of the language; anything else as it stands. */
const FIGURE = /^[-+\u2212]?\d+\.\d+(?:\s*[\p{L}'"%°].*)?$/u;

const figure = (text: string, { tongue }: Voice): string =>
  tongue !== undefined && FIGURE.test(text)
    ? text.replace(/(\d)\.(\d)/g, `$1${tongue.decimalMark}$2`)
    : text;

/** A value of the field `name`, in words; undefined is what is not written at all. */
export const valueWords = (value: Json | undefined, name: string, voice: Voice): string => {
  if (value === undefined) return phrase(voice, 'not written');
  if (value === null) return phrase(voice, 'nothing');
  if (typeof value === 'boolean') return phrase(voice, value ? 'yes' : 'no');
  if (typeof value === 'number') return figure(String(value), voice);
  if (typeof value === 'string') return textWords(value, name, voice);
  if (isList(value)) return listWords(value, name, voice);
  if (!isObject(value)) return '';
  return isMeasured(value) ? measuredWords(value, voice) : objectWords(value, voice);
};

const listWords = (list: readonly Json[], name: string, voice: Voice): string => {
  if (list.length === 0) return phrase(voice, 'none');
  const parts = list.map((entry) =>
    isObject(entry)
      ? (runWords(entry, voice) ?? `(${objectWords(entry, voice)})`)
      : valueWords(entry, name, voice),
  );
  // Where a comma stands before decimals, it stands between no figures.
  return parts.join(voice.tongue?.decimalMark === ',' ? '; ' : ', ');
};

/** Bricks on an arbor: `21 F, show`. */
const runWords = (entry: JsonObject, voice: Voice): string | null => {
  const { kind, count, tag, ...others } = entry;
  if (typeof kind !== 'string' || typeof count !== 'number') return null;
  if (Object.keys(others).length > 0 || (tag !== undefined && typeof tag !== 'string')) return null;
  if (tag === undefined) return `${count} ${kind}`;
  const said = voice.tongue === undefined ? tag : chosenWords(voice, 'tag', tag);
  return `${count} ${kind} (${said ?? tag})`;
};

export const labelOf = (name: string, voice: Voice): string =>
  inVoice(voice, stepWords({ of: 'field', name }, undefined, undefined)?.ours || spaced(name));

const objectWords = (value: JsonObject, voice: Voice): string => {
  const parts = Object.entries(value).map(
    ([name, inner]) => `${labelOf(name, voice)} ${valueWords(inner, name, voice)}`,
  );
  return parts.length === 0 ? phrase(voice, 'nothing') : parts.join(', ');
};

/** What a measured figure says first: the figure, or that it is unknown and why. */
export const figureWords = (value: JsonObject, voice: Voice): string | null => {
  const unknown = field(value, 'unknown');
  if (unknown !== undefined) {
    return phrase(voice, 'unknown ({why})', { why: valueWords(unknown, 'unknown', voice) });
  }
  const figure = field(value, 'value');
  return figure === undefined ? null : valueWords(figure, 'value', voice);
};

/** `basis weighed`, `source rigger’s scale`: each field beside the figure. */
export const groundsWords = (name: string, value: Json | undefined, voice: Voice): string => {
  const said = valueWords(value, name, voice);
  const ours = Object.hasOwn(GROUNDS, name) ? GROUNDS[name] : undefined;
  return ours === undefined
    ? `${labelOf(name, voice)} ${said}`
    : phrase(voice, ours, { value: said });
};

const GROUNDS: Readonly<Record<string, string>> = {
  by: message('by {value}'),
  on: message('on {value}'),
  at: message('at {value}'),
};

export const besidesOf = (value: JsonObject): readonly string[] =>
  Object.keys(value).filter((name) => name !== 'value' && name !== 'unknown');

const measuredWords = (value: JsonObject, voice: Voice): string => {
  const figure = figureWords(value, voice);
  const besides = besidesOf(value).map((name) => groundsWords(name, value[name], voice));
  return [...(figure === null ? [] : [figure]), ...besides].join(', ');
};

/** A cue is known by its number and its set. */
export const keyWords = (key: string, voice: Voice): string => {
  const [, number, set] = /^(.*) on set (.*)$/.exec(key) ?? [];
  return number === undefined || set === undefined
    ? key
    : phrase(voice, '{number} on set {set}', { number, set });
};
