/**
 * Our own sentences with names put in. The English text in the code is the key: it turns for a UK
 * house, and a tongue has a sentence of its own for it. Names that people gave are never turned.
 */
import { assert } from '#outcome';
import { saidIn } from './told.ts';
import { inUkWords } from './uk-words.ts';
import type { Plural, Voice } from './voice.ts';

export type Names = Readonly<Record<string, string | number>>;

const HOLE = /\{(\w+)\}/g;

/** Fills `{name}`; a hole that nothing fills is a defect. */
const filledWith = (sentence: string, names: Names): string =>
  sentence.replace(HOLE, (_, name: string) => {
    const said = names[name];
    assert(said !== undefined, `"${sentence}" says {${name}}`);
    return `${said}`;
  });

/** Marks an English text that is said somewhere else, so that the catalogues have it. */
export const message = <T extends string>(text: T): T => text;

const isPlural = (text: string | Plural | undefined): text is Plural =>
  text !== undefined && typeof text !== 'string';

/** The sentence of this voice, with its holes still open. */
export const inVoice = (voice: Voice, text: string): string => {
  const { words, tongue } = voice;
  if (tongue === undefined) return words === 'US' ? text : inUkWords(text);
  const said = Object.hasOwn(tongue.texts, text) ? tongue.texts[text] : undefined;
  assert(!isPlural(said), `"${text}" is said without a number`);
  return said ?? saidIn(tongue, text) ?? text;
};

/** One whole sentence, `{name}` by `{name}`. */
export const phrase = (voice: Voice, text: string, names: Names = {}): string =>
  filledWith(inVoice(voice, text), names);

/** How a catalogue writes an English pair of sentences: ICU MessageFormat. */
export const pluralKey = (one: string, other: string): string =>
  `{count, plural, one {${one}} other {${other}}}`;

/** One sentence or another, by a number that both may name as `{count}`. */
export const phraseCount = (
  voice: Voice,
  count: number,
  [one, other]: readonly [one: string, other: string],
  names: Names = {},
): string => {
  const { tongue } = voice;
  const said = tongue?.texts[pluralKey(one, other)];
  const all = { ...names, count };
  if (tongue === undefined || !isPlural(said)) {
    return phrase(voice, count === 1 ? one : other, all);
  }
  const form = new Intl.PluralRules(tongue.language).select(count);
  return filledWith(said.forms[form] ?? said.forms['other'] ?? other, all);
};
