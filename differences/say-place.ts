/** One changed place as a sentence: what it is, what it says now, what it said before. */

import type { Json, JsonObject } from '#documents';
import { unreachable } from '#outcome';
import { type ChangedPlace, isMeasured } from './changed-places.ts';
import { namesItsFields, spaced, stepWords } from './field-words.ts';
import { field, isList, isObject, isSame } from './json.ts';
import { inEntry, inField, keysOf, type Spot, type Step } from './spot.ts';
import { besidesOf, figureWords, groundsWords, type Translate, valueWords } from './value-words.ts';

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
  say: Translate,
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
    const known = step.of === 'entry' ? (names(spot.slice(0, index + 1)) ?? name) : name;
    const words = [ours === '' ? '' : say(ours), known ?? ''].filter((each) => each !== '');
    return words.length === 0 ? [] : [words.join(' ')];
  });
  return { words: parts.toReversed().join(` ${say('of')} `), isCovered };
};

const fieldNameOf = (spot: Spot): string => spot.flatMap((step) => nameOf(step) ?? []).at(-1) ?? '';

/** A bare figure is the same as one with nothing beside it. */
const asMeasured = (value: Json | undefined): JsonObject | null => {
  if (isMeasured(value)) return value;
  return typeof value === 'string' || typeof value === 'number' ? { value } : null;
};

/** What stands at the place now and what stood there, without its name. */
export const changeWords = (place: ChangedPlace, say: Translate): string => {
  const { spot, before, after } = place;
  const name = fieldNameOf(spot);
  if (spot.at(-1)?.of === 'order') {
    return `${valueWords(after, '', say)}; ${say('was')} ${valueWords(before, '', say)}`;
  }
  const [old, fresh] = [asMeasured(before), asMeasured(after)];
  const isFigure = isMeasured(before) || isMeasured(after);
  if (isFigure && old !== null && fresh !== null) return figureChange(old, fresh, say);
  const [now, then] = [valueWords(after, name, say), valueWords(before, name, say)];
  return `${now}${isList(before) || isList(after) ? ';' : ','} ${say('was')} ${then}`;
};

const figureChange = (old: JsonObject, fresh: JsonObject, say: Translate): string => {
  const [now, then] = [figureWords(fresh, say), figureWords(old, say)];
  const notWritten = say('not written');
  const figure =
    now === then
      ? now === null
        ? []
        : [`${now} ${say('as before')}`]
      : [`${now ?? notWritten}, ${say('was')} ${then ?? notWritten}`];
  const besides = [...new Set([...besidesOf(fresh), ...besidesOf(old)])].flatMap((name) => {
    const [value, was] = [field(fresh, name), field(old, name)];
    if (isSame(value, was)) return [];
    return [`${groundsWords(name, value, say)}, ${say('was')} ${valueWords(was, name, say)}`];
  });
  return [...figure, ...besides].join('; ');
};

/** Everything that an added or removed thing says, a line for each value. */
export const leafLines = (
  value: Json,
  spot: Spot,
  from: number,
  say: Translate,
): readonly string[] => {
  const keys = isList(value) ? keysOf(value) : undefined;
  if (isList(value) && keys !== undefined && value.length > 0) {
    return value.flatMap((entry, index) =>
      leafLines(entry, inEntry(spot, keys[index] ?? ''), from, say),
    );
  }
  if (isObject(value) && !isMeasured(value)) {
    return Object.keys(value).flatMap((name) =>
      leafLines(value[name] ?? null, inField(spot, name), from, say),
    );
  }
  const { words } = labelAt(spot, from, say, () => undefined);
  const said = valueWords(value, fieldNameOf(spot), say);
  return [words === '' ? said : `${words} ${said}`];
};

/** Added, taken away or changed. */
export const fateOf = ({ before, after }: ChangedPlace): 'added' | 'gone' | 'changed' => {
  if (before === undefined) return 'added';
  return after === undefined ? 'gone' : 'changed';
};

export const fateWords = (fate: 'added' | 'gone', say: Translate): string => {
  switch (fate) {
    case 'added':
      return say('added');
    case 'gone':
      return say('taken away');
    default:
      return unreachable(fate);
  }
};
