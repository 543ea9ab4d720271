/**
 * Edits of a house document: each takes the document and gives the next one. They only write; what
 * may be written is judged by `#documents`, with the shows and the record that name this house.
 */
import type { House } from '#house';
import type { Refusal } from '#outcome';
import { ENGLISH, message, phrase, phraseCount, type Voice } from '#texts';
import {
  at,
  isList,
  isObject,
  type Json,
  type JsonObject,
  type JsonPath,
  withAt,
} from '../keeping/json.ts';
import { readHouseOnce, readShowOnce, readStateOnce } from '../reckoning/read-once.ts';

export type HouseEdit = {
  readonly write: (house: JsonObject) => JsonObject;
  /** What it is, in words; it goes into the record of revisions. */
  readonly what: string;
};

export type Inherited = {
  readonly value: Json;
  /** The kind of set that has it. */
  readonly from: string;
  /** Who stands behind a bare value there. */
  readonly given: Json | undefined;
};

const kindOf = (house: JsonObject, path: JsonPath): Json | undefined => {
  const [list, which] = path;
  if (list === 'lineSets') return at(house, ['lineSets', which ?? '', 'type']);
  return list === 'setTypes' ? at(house, ['setTypes', which ?? '', 'extends']) : undefined;
};

/** The nearest "given" above a place. */
export const givenAbove = (root: Json, path: JsonPath): Json | undefined =>
  path
    .map((_, depth) => path.slice(0, depth))
    .toReversed()
    .map((above) => at(root, [...above, 'given']))
    .find((given) => given !== undefined);

/** What the kind of a set, or the kind that this one is a variety of, has at the same place. */
export const inheritedAt = (house: JsonObject, path: JsonPath): Inherited | null => {
  const kind = kindOf(house, path);
  if (typeof kind !== 'string') return null;
  const there: JsonPath = ['setTypes', kind, ...path.slice(2)];
  const value = at(house, there);
  if (value !== undefined) return { value, from: kind, given: givenAbove(house, there) };
  return path[0] === 'lineSets' ? inheritedAt(house, there) : null;
};

/** A tube and a cable hold as a whole, so a set's own begins as a copy of what its kind has. */
const WHOLES: readonly JsonPath[] = [
  ['batten', 'pipe'],
  ['lift', 'cable'],
];

const withWhole = (house: JsonObject, path: JsonPath): JsonObject => {
  if (path[0] !== 'lineSets' && path[0] !== 'setTypes') return house;
  const whole = WHOLES.find((keys) => keys.every((key, index) => path[index + 2] === key));
  if (whole === undefined) return house;
  const holder = [...path.slice(0, 2), ...whole];
  const inherited = at(house, holder) === undefined ? inheritedAt(house, holder) : null;
  if (inherited === null || !isObject(inherited.value)) return house;
  const { given, value } = inherited;
  const copy = given === undefined || value['given'] !== undefined ? value : { ...value, given };
  return withAt(house, holder, copy) as JsonObject;
};

/**
 * An object that an edit has emptied says nothing; but kinds of set are told by their keys alone,
 * and that there is an arbor is said by its being there.
 */
const withoutEmpty = (house: JsonObject, path: JsonPath): JsonObject => {
  const holder = path.slice(0, -1);
  const value = at(house, holder);
  const isNested = holder.length > 1 && typeof holder.at(-1) === 'string';
  const isKind = holder.at(-2) === 'setTypes' || holder.at(-1) === 'arbor';
  if (!isNested || isKind || !isObject(value) || Object.keys(value).length > 0) return house;
  return withoutEmpty(withAt(house, holder, undefined) as JsonObject, holder);
};

const PURCHASES: readonly (Json | undefined)[] = ['singlePurchase', 'doublePurchase'];

/**
 * A purchase set is refused without an arbor, though nothing of it need be known, so one begins
 * with it; and an arbor of which nothing is said goes with the purchase.
 */
export const withArborBegun = (house: JsonObject, path: JsonPath): JsonObject => {
  const arbor = [...path, 'arbor'];
  const written = at(house, arbor);
  const isPurchase = PURCHASES.includes(at(house, [...path, 'suspension']));
  if (isPurchase && written === undefined && inheritedAt(house, arbor) === null) {
    return withAt(house, arbor, {}) as JsonObject;
  }
  const isEmpty = isObject(written) && Object.keys(written).length === 0;
  return !isPurchase && isEmpty ? (withAt(house, arbor, undefined) as JsonObject) : house;
};

/** One value; undefined takes it away. */
export const withHouseValue = (
  house: JsonObject,
  path: JsonPath,
  value: Json | undefined,
): JsonObject => {
  const begun = withWhole(house, path);
  const next = withAt(begun, path, value) as JsonObject;
  if (value === undefined) return withoutEmpty(next, path);
  const isCarried = path.at(-1) === 'suspension' && path.length === 3;
  return isCarried ? withArborBegun(next, path.slice(0, -1)) : next;
};

/** The next entry of a list, or an entry of a record under its id. */
export const withEntry = (
  house: JsonObject,
  path: JsonPath,
  entry: Json,
  key?: string,
): JsonObject => {
  if (key !== undefined) return withAt(house, [...path, key], entry) as JsonObject;
  const list = at(house, path);
  return withAt(house, path, [...(isList(list) ? list : []), entry]) as JsonObject;
};

/** Where inside the house document an id is named, by the list that it belongs to. */
const NAMED_BY: Readonly<Record<string, readonly string[]>> = {
  brickKinds: ['looksLike', 'kind'],
  rails: ['rail'],
  setTypes: ['type', 'extends'],
  lineSets: ['sets'],
};

/** The house with every mention of an id changed, or taken away. */
const withMentions = (
  value: Json,
  keys: readonly string[],
  from: string,
  to: string | null,
): Json => {
  if (isList(value)) return value.map((entry) => withMentions(entry, keys, from, to));
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]): readonly (readonly [string, Json])[] => {
      if (!keys.includes(key)) return [[key, withMentions(inner, keys, from, to)]];
      if (inner === from) return to === null ? [] : [[key, to]];
      if (!isList(inner)) return [[key, inner]];
      return [[key, inner.flatMap((one) => (one === from ? (to === null ? [] : [to]) : [one]))]];
    }),
  );
};

/** Another id for an entry, and for every mention of it in the house. */
export const withRenamed = (
  house: JsonObject,
  list: string,
  { from, to }: { readonly from: string; readonly to: string },
): JsonObject => {
  const entries = house[list];
  const renamed: Json = isList(entries)
    ? entries.map((entry) =>
        isObject(entry) && entry['id'] === from ? { ...entry, id: to } : entry,
      )
    : Object.fromEntries(
        Object.entries(isObject(entries) ? entries : {}).map(([key, entry]) => [
          key === from ? to : key,
          entry,
        ]),
      );
  const next = { ...house, [list]: renamed };
  return withMentions(next, NAMED_BY[list] ?? [], from, to) as JsonObject;
};

/** Without an entry; a line set goes out of its bay with it. */
export const withoutEntry = (house: JsonObject, path: JsonPath, id: string | null): JsonObject => {
  const next = withAt(house, path, undefined) as JsonObject;
  if (path[0] !== 'lineSets' || path.length !== 2 || id === null) return next;
  return withMentions(next, ['sets'], id, null) as JsonObject;
};

export type Referring = {
  readonly shows: readonly JsonObject[];
  readonly state: JsonObject | null;
};

const nameOf = (document: JsonObject): string => String(document['name'] ?? document['id']);

const entries = (value: Json | undefined): readonly Json[] => (isList(value) ? value : []);

const inShow = (show: JsonObject, list: string, id: string, voice: Voice): readonly string[] => {
  const name = nameOf(show);
  const ofSet = (value: Json): boolean => isObject(value) && value['set'] === id;
  if (list === 'lineSets') {
    const cues = entries(show['cues']).filter(ofSet).length;
    const moves = entries(show['hangs']).some(
      (hang) => isObject(hang) && entries(hang['coupledWith']).includes(id),
    );
    return [
      ...(entries(show['hangs']).some(ofSet)
        ? [phrase(voice, 'what hangs on it in {name}', { name })]
        : []),
      ...(cues > 0
        ? [phraseCount(voice, cues, ['{count} cue of {name}', '{count} cues of {name}'], { name })]
        : []),
      ...(at(show, ['keptEmpty', id]) === undefined
        ? []
        : [phrase(voice, 'it is kept empty in {name}', { name })]),
      ...(moves ? [phrase(voice, 'a set that moves with it in {name}', { name })] : []),
    ];
  }
  if (list !== 'brickKinds') return [];
  const fixed = entries(show['hangs']).filter((hang) => at(hang, ['bricks', 'counts', id]));
  if (fixed.length === 0) return [];
  return [
    phraseCount(
      voice,
      fixed.length,
      ['bricks fixed on {count} set of {name}', 'bricks fixed on {count} sets of {name}'],
      { name },
    ),
  ];
};

/** How the record is called where it names an entry. */
export const RECORD = message('the record of how things stand');

const inState = (state: JsonObject, list: string, id: string): readonly string[] => {
  const sets = isObject(state['sets']) ? Object.values(state['sets']) : [];
  const galleries = isObject(state['galleries']) ? Object.values(state['galleries']) : [];
  const holds = (value: Json | undefined): boolean =>
    entries(value).some((one) => isObject(one) && one['kind'] === id);
  switch (list) {
    case 'lineSets':
      return at(state, ['sets', id]) === undefined ? [] : [RECORD];
    case 'galleries':
      return at(state, ['galleries', id]) === undefined ? [] : [RECORD];
    case 'brickKinds': {
      const stacks = sets.some((set) => holds(at(set, ['stack'])));
      const stock = galleries.some(
        (each) => at(each, ['stock', id]) !== undefined || holds(at(each, ['reserved'])),
      );
      return stacks || stock ? [RECORD] : [];
    }
    default:
      return [];
  }
};

/** What names an entry of a list from outside the house, in words. */
export const referencesTo = (
  list: string,
  id: string,
  { shows, state }: Referring,
  voice: Voice = ENGLISH,
): readonly string[] => [
  ...shows.flatMap((show) => inShow(show, list, id, voice)),
  ...(state === null ? [] : inState(state, list, id)),
];

const within = (document: string, refusals: readonly Refusal[]): readonly Refusal[] =>
  refusals.map((each) => ({ ...each, path: `${document}: ${each.path}` }));

/**
 * Why a house may not be taken: its own faults, and those of what names it. A show that could not
 * be read before is no worse than it was, and asks nothing.
 */
export const houseRefusals = (
  next: JsonObject,
  before: House,
  { shows, state }: Referring,
): readonly Refusal[] => {
  const read = readHouseOnce(next);
  if (!read.ok) return read.error;
  const { house } = read.value;
  const ofShows = shows.flatMap((show) => {
    const answer = readShowOnce(show, house);
    if (answer.ok || !readShowOnce(show, before).ok) return [];
    return within(`show ${nameOf(show)}`, answer.error);
  });
  const record = state === null ? null : readStateOnce(state, house);
  const ofState = record === null || record.ok ? [] : within('state', record.error);
  return [...ofShows, ...ofState];
};
