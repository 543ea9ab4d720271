/** One changed place as a sentence: what it is, what it says now, what it said before. */

import type { Json, JsonObject } from '#documents';
import { unreachable } from '#outcome';
import { inVoice, phrase, type Voice } from '#texts';
import { type ChangedPlace, isMeasured } from './changed-places.ts';
import { chosenWords } from './chosen-words.ts';
import { namesItsFields, spaced, stepWords } from './field-words.ts';
import { field, isList, isObject, isSame } from './json.ts';
import { inEntry, inField, keysOf, type Spot, type Step } from './spot.ts';
import { besidesOf, figureWords, groundsWords, keyWords, valueWords } from './value-words.ts';

/** The steps below what a line is about, as `mass of Dining room flat`. */
type Label = { readonly words: string; readonly isCovered: boolean };

const nameOf = (step: Step | undefined): string | undefined =>
  step?.of === 'field' ? step.name : undefined;

/** The list in which an entry stands, or which holds the entry that a field stands in. */
const listAbove = (spot: Spot, index: number): string | undefined => {
  const [one, two] = [spot[index - 1], spot[index - 2]];
  return spot[index]?.of === 'entry' ? nameOf(one) : one?.of === 'entry' ? nameOf(two) : undefined;
};

/** `names` gives what an entry is called where that is more than its id. */
export const labelAt = (
  spot: Spot,
  from: number,
  voice: Voice,
  names: (spot: Spot) => string | undefined,
): Label => {
  let isCovered = true;
  const parts = spot.slice(from).flatMap((step, offset) => {
    const index = from + offset;
    const next = spot[index + 1];
    // A list is not said where one of its entries is.
    if (next?.of === 'entry') return [];
    if (next?.of === 'field' && step.of === 'field' && namesItsFields(step.name)) return [];
    const said = stepWords(step, spot[index - 1], listAbove(spot, index));
    if (said === null) isCovered = false;
    const { ours, name } = said ?? { ours: spaced(nameOf(step) ?? '') };
    const called =
      step.of === 'entry' ? names(spot.slice(0, index + 1)) : basisIn(spot, index, voice);
    const words = [ours === '' ? '' : inVoice(voice, ours), called ?? name ?? ''].filter(
      (each) => each !== '',
    );
    return words.length === 0 ? [] : [words.join(' ')];
  });
  const words = parts.reduce(
    (whole, what) => (whole === '' ? what : phrase(voice, '{what} of {whole}', { what, whole })),
    '',
  );
  return { words, isCovered };
};

/** The tolerance of what is weighed: its name is one of our words. */
const basisIn = (spot: Spot, index: number, voice: Voice): string | undefined => {
  const basis = nameOf(spot[index]) ?? '';
  const isBasis = nameOf(spot[index - 1]) === 'toleranceByBasis' && voice.tongue !== undefined;
  return isBasis ? chosenWords(voice, 'basis', basis) : undefined;
};

/** What is recorded of an item stands under the name of the item. */
const fieldNameOf = (spot: Spot): string => {
  const names = spot.flatMap((step) => nameOf(step) ?? []);
  return names.length === 4 && names[0] === 'sets' && names[2] === 'items'
    ? 'state'
    : (names.at(-1) ?? '');
};

/** A bare figure is the same as one with nothing beside it. */
const asMeasured = (value: Json | undefined): JsonObject | null => {
  if (isMeasured(value)) return value;
  return typeof value === 'string' || typeof value === 'number' ? { value } : null;
};

/** What stands at the place now and what stood there, without its name. */
export const changeWords = (place: ChangedPlace, voice: Voice): string => {
  const { spot, before, after } = place;
  const name = fieldNameOf(spot);
  if (spot.at(-1)?.of === 'order') {
    const [order, old] = [after, before].map((keys) =>
      valueWords(nameOf(spot.at(-2)) === 'cues' ? cueKeys(keys, voice) : keys, '', voice),
    );
    return phrase(voice, '{now}; was {old}', { now: order ?? '', old: old ?? '' });
  }
  const [old, fresh] = [asMeasured(before), asMeasured(after)];
  const isFigure = isMeasured(before) || isMeasured(after);
  if (isFigure && old !== null && fresh !== null) return figureChange(old, fresh, voice);
  const texts = textsChange(before, after, (text) => valueWords(text, name, voice), voice);
  if (texts !== null) return texts;
  const [now, then] = [valueWords(after, name, voice), valueWords(before, name, voice)];
  return isList(before) || isList(after)
    ? phrase(voice, '{now}; was {old}', { now, old: then })
    : phrase(voice, '{now}, was {old}', { now, old: then });
};

/** Null for what is no list of sentences, each there once. */
const textsOf = (value: Json | undefined): readonly string[] | null => {
  if (!isList(value)) return null;
  const texts = value.flatMap((each) => (typeof each === 'string' ? [each] : []));
  return new Set(texts).size < value.length ? null : texts;
};

/**
 * A list of sentences of which some stay in their order: only those that came and went are said.
 * Null for any other list, of which both are said whole.
 */
const textsChange = (
  before: Json | undefined,
  after: Json | undefined,
  say: (text: string) => string,
  voice: Voice,
): string | null => {
  const [old, fresh] = [textsOf(before), textsOf(after)];
  if (old === null || fresh === null) return null;
  const [added, gone] = [missingFrom(old, fresh), missingFrom(fresh, old)];
  const stayed = missingFrom(gone, old);
  if (stayed.length === 0 || added.length + gone.length === 0) return null;
  if (!isSame(stayed, missingFrom(added, fresh))) return null;
  return [
    ...added.map((text) => fateWords('added', say(text), voice)),
    ...gone.map((text) => fateWords('gone', say(text), voice)),
  ].join('; ');
};

const missingFrom = (known: readonly string[], list: readonly string[]): readonly string[] =>
  list.filter((text) => !known.includes(text));

const cueKeys = (keys: Json | undefined, voice: Voice): Json | undefined =>
  isList(keys) ? keys.map((key) => (typeof key === 'string' ? keyWords(key, voice) : key)) : keys;

const figureChange = (old: JsonObject, fresh: JsonObject, voice: Voice): string => {
  const [now, then] = [figureWords(fresh, voice), figureWords(old, voice)];
  const notWritten = phrase(voice, 'not written');
  const figure =
    now === then
      ? now === null
        ? []
        : [phrase(voice, '{now} as before', { now })]
      : [
          phrase(voice, '{now}, was {old}', {
            now: now ?? notWritten,
            old: then ?? notWritten,
          }),
        ];
  const besides = [...new Set([...besidesOf(fresh), ...besidesOf(old)])].flatMap((name) => {
    const [value, was] = [field(fresh, name), field(old, name)];
    if (isSame(value, was)) return [];
    const said = groundsWords(name, value, voice);
    return [phrase(voice, '{now}, was {old}', { now: said, old: valueWords(was, name, voice) })];
  });
  return [...figure, ...besides].join('; ');
};

/** Everything that an added or removed thing says, a line for each value. */
export const leafLines = (
  value: Json,
  spot: Spot,
  from: number,
  voice: Voice,
): readonly string[] => {
  const keys = isList(value) ? keysOf(value) : undefined;
  if (isList(value) && keys !== undefined && value.length > 0) {
    return value.flatMap((entry, index) =>
      leafLines(entry, inEntry(spot, keys[index] ?? ''), from, voice),
    );
  }
  if (isObject(value) && !isMeasured(value)) {
    return Object.keys(value).flatMap((name) =>
      leafLines(value[name] ?? null, inField(spot, name), from, voice),
    );
  }
  const { words } = labelAt(spot, from, voice, () => undefined);
  const said = valueWords(value, fieldNameOf(spot), voice);
  return [words === '' ? said : `${words} ${said}`];
};

/** Added, taken away or changed. */
export const fateOf = ({ before, after }: ChangedPlace): 'added' | 'gone' | 'changed' => {
  if (before === undefined) return 'added';
  return after === undefined ? 'gone' : 'changed';
};

/** `what` is its name among others of its kind; empty where the heading says it. */
export const fateWords = (fate: 'added' | 'gone', what: string, voice: Voice): string => {
  switch (fate) {
    case 'added':
      return what === '' ? phrase(voice, 'added') : phrase(voice, '{what} added', { what });
    case 'gone':
      return what === ''
        ? phrase(voice, 'taken away')
        : phrase(voice, '{what} taken away', { what });
    default:
      return unreachable(fate);
  }
};
