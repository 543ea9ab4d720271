/** Where in a document, by names that stay when a list grows: "the item flat of set 11". */
import type { Json } from '#documents';
import { field, isObject } from './json.ts';

export type Step =
  | { readonly of: 'field'; readonly name: string }
  /** One entry of a list, by what it is called and not by its place. */
  | { readonly of: 'entry'; readonly key: string }
  /** The order of the entries of a list. */
  | { readonly of: 'order' };

export type Spot = readonly Step[];

export const inField = (spot: Spot, name: string): Spot => [...spot, { of: 'field', name }];
export const inEntry = (spot: Spot, key: string): Spot => [...spot, { of: 'entry', key }];

/** A text for each spot, another for every other. */
export const spotKey = (spot: Spot): string =>
  JSON.stringify(
    spot.map((step) =>
      step.of === 'order' ? [0] : step.of === 'field' ? [1, step.name] : [2, step.key],
    ),
  );

const startsWith = (spot: Spot, head: Spot): boolean =>
  head.length <= spot.length && spotKey(spot.slice(0, head.length)) === spotKey(head);

/** Whether one of the two lies within the other, or both are the same. */
export const overlap = (one: Spot, other: Spot): boolean =>
  startsWith(one, other) || startsWith(other, one);

/** `hangs[11].items[flat].takeoff.mass`, for those who look it up in the text. */
export const pathWords = (spot: Spot): string =>
  spot
    .map((step, index) => {
      if (step.of === 'order') return ' (order)';
      if (step.of === 'entry') return `[${step.key}]`;
      return index === 0 ? step.name : `.${step.name}`;
    })
    .join('');

/**
 * What an entry is called within its list; undefined where it has no name. A cue is named by its
 * number and its set, since one cue may move several sets.
 */
const keyOf = (entry: Json): string | undefined => {
  if (!isObject(entry)) return undefined;
  const [id, number, set, name] = ['id', 'number', 'set', 'name'].map((each) => field(entry, each));
  if (typeof id === 'string') return id;
  if (typeof number === 'string') return `${number} on set ${String(set)}`;
  if (typeof set === 'string') return set;
  return typeof name === 'string' ? name : undefined;
};

/** A name for each entry, or undefined where some entry has none or two share one. */
export const keysOf = (entries: readonly Json[]): readonly string[] | undefined => {
  const keys = entries.flatMap((entry) => keyOf(entry) ?? []);
  return keys.length === entries.length && new Set(keys).size === keys.length ? keys : undefined;
};
