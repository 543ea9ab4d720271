/**
 * Edits of a show document: each takes the document and gives the next one. They only write; what
 * may be written is judged by `#documents`, which reads every result before it is taken.
 */
import type { HangFamily, ItemKind } from '#show';
import {
  at,
  isList,
  isObject,
  type Json,
  type JsonObject,
  type JsonPath,
  withAt,
} from '../keeping/json.ts';

export type Edit = {
  readonly write: (show: JsonObject) => JsonObject;
  /** What it is, in words; it goes into the record of revisions. */
  readonly what: string;
};

const hangsOf = (show: JsonObject): readonly Json[] => {
  const hangs = show['hangs'];
  return isList(hangs) ? hangs : [];
};

const setOf = (hang: Json): Json | undefined => (isObject(hang) ? hang['set'] : undefined);

/** Where the hang of a set stands in the document; null where the set is empty. */
export const hangPath = (show: JsonObject, set: string): JsonPath | null => {
  const index = hangsOf(show).findIndex((hang) => setOf(hang) === set);
  return index < 0 ? null : ['hangs', index];
};

/** Each show's hangs by their sets: they are asked for set after set, and never change in place. */
const bySet = new WeakMap<JsonObject, ReadonlyMap<Json | undefined, JsonObject>>();

const hangsBySet = (show: JsonObject): ReadonlyMap<Json | undefined, JsonObject> => {
  const kept = bySet.get(show);
  if (kept !== undefined) return kept;
  // The first of two on one set is meant, as everywhere.
  const own = new Map(
    hangsOf(show)
      .filter(isObject)
      .toReversed()
      .map((hang) => [hang['set'], hang]),
  );
  bySet.set(show, own);
  return own;
};

/** The hang as it was written, with its typed measures. */
export const writtenHang = (show: JsonObject, set: string): JsonObject | null =>
  hangsBySet(show).get(set) ?? null;

const inHang = (
  show: JsonObject,
  set: string,
  path: JsonPath,
  change: (value: Json | undefined) => Json | undefined,
): JsonObject => {
  const hang = hangPath(show, set);
  if (hang === null) return show;
  const whole = [...hang, ...path];
  return withAt(show, whole, change(at(show, whole))) as JsonObject;
};

/** One field of a hang; undefined takes it away. */
export const withField = (
  show: JsonObject,
  set: string,
  path: JsonPath,
  value: Json | undefined,
): JsonObject => inHang(show, set, path, () => value);

/** Whether a bare measure at this path has a basis from a "given" above it. */
export const hasGiven = (root: JsonObject, path: JsonPath): boolean =>
  path.some((_, depth) => {
    const above = at(root, path.slice(0, depth));
    return isObject(above) && isObject(above['given']);
  });

/**
 * A length that a person decides, such as a trim: it stays in the form in which it was written. An
 * own source goes, since it spoke of the old figure.
 */
export const withLength = (
  show: JsonObject,
  set: string,
  path: JsonPath,
  text: string,
): JsonObject => {
  const hang = hangPath(show, set);
  const isBare = hang !== null && hasGiven(show, [...hang, ...path]);
  return inHang(show, set, path, (before) => lengthAnew(before, text, isBare));
};

/** A length in the form of the one before it. */
export const lengthAnew = (before: Json | undefined, text: string, isBare: boolean): Json => {
  if (isObject(before) && before['basis'] !== undefined) {
    return { value: text, basis: before['basis'] };
  }
  return isBare ? text : { value: text, basis: 'estimated', source: TYPED };
};

export const TYPED = 'typed in';

/**
 * A mass typed anew. Basis, source and tolerance spoke of the old figure, so they go; until
 * somebody says how the new one is known, it counts as estimated, the widest doubt there is.
 */
export const withMass = (show: JsonObject, set: string, path: JsonPath, text: string): JsonObject =>
  inHang(show, set, path, () => ({ value: text, basis: 'estimated', source: TYPED }));

/** A value in its whole form, so that a basis or a tolerance of its own can stand beside it. */
const wholeForm = (value: Json | undefined): JsonObject => {
  if (isObject(value)) return value;
  return value === undefined ? {} : { value };
};

export const withBasis = (
  show: JsonObject,
  set: string,
  path: JsonPath,
  basis: string,
): JsonObject =>
  inHang(show, set, path, (before) => {
    const { source: _spoke, by: _who, on: _when, ...rest } = wholeForm(before);
    return { ...rest, basis };
  });

/** An emptied tolerance goes; the house's tolerance for the basis holds then. */
export const withTolerance = (
  show: JsonObject,
  set: string,
  path: JsonPath,
  text: string,
): JsonObject =>
  inHang(show, set, path, (before) => {
    const { tolerance: _old, ...rest } = wholeForm(before);
    const whole = isObject(before) ? rest : { value: before ?? '' };
    return text.trim() === '' ? whole : { ...whole, tolerance: text };
  });

export type NewHang = {
  readonly set: string;
  readonly name: string;
  readonly family: HangFamily;
  /** Sets of the house in rail order, so that the document stays in that order too. */
  readonly railOrder: readonly string[];
};

/** Hangs something on an empty set. That it was kept empty for a reason is then no longer said. */
export const withHang = (
  show: JsonObject,
  { set, name, family, railOrder }: NewHang,
): JsonObject => {
  const hangs = hangsOf(show);
  const order = railOrder.indexOf(set);
  const later = hangs.findIndex((hang) => railOrder.indexOf(String(setOf(hang))) > order);
  const place = later < 0 ? hangs.length : later;
  const hang: JsonObject = { set, name, family, trims: [], items: [] };
  const hung = { ...show, hangs: [...hangs.slice(0, place), hang, ...hangs.slice(place)] };
  const isKept = at(hung, ['keptEmpty', set]) !== undefined;
  return isKept ? (withAt(hung, ['keptEmpty', set], undefined) as JsonObject) : hung;
};

/** The set is empty again. */
export const withoutHang = (show: JsonObject, set: string): JsonObject => ({
  ...show,
  hangs: hangsOf(show).filter((hang) => setOf(hang) !== set),
});

export type NewItem = { readonly name: string; readonly kind: ItemKind };

const idFrom = (name: string, taken: readonly Json[]): string => {
  const ids = taken.map((item) => (isObject(item) ? item['id'] : undefined));
  const letters = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');
  const stem = letters.replace(/^-+|-+$/g, '').slice(0, 24) || 'item';
  let id = stem;
  for (let count = 2; ids.includes(id); count += 1) id = `${stem}-${count}`;
  return id;
};

/** A new item has a name and nothing else: its mass is unknown until somebody types it. */
export const withItem = (show: JsonObject, set: string, item: NewItem): JsonObject =>
  inHang(show, set, ['items'], (before) => {
    const items = isList(before) ? before : [];
    const { name, kind } = item;
    const takeoff = { by: 'mass', mass: { unknown: 'not typed in yet' } };
    return [...items, { id: idFrom(name, items), name, kind, takeoff }];
  });

export const withoutItem = (show: JsonObject, set: string, index: number): JsonObject =>
  inHang(show, set, ['items', index], () => undefined);

/** Whoever knows the mass as a whole need not work it out from parts. */
export const withWholeMass = (
  show: JsonObject,
  set: string,
  index: number,
  text: string,
): JsonObject =>
  inHang(show, set, ['items', index, 'takeoff'], () => ({
    by: 'mass',
    mass: { value: text, basis: 'estimated', source: TYPED },
  }));

/** Bricks fixed by a person, with the reason; null leaves the choice to the program. */
export const withBricks = (
  show: JsonObject,
  set: string,
  bricks: { readonly counts: Readonly<Record<string, number>>; readonly reason: string } | null,
): JsonObject => withField(show, set, ['bricks'], bricks ?? undefined);
