/** What has changed between two revisions of a document, place by place. */
import type { Json, JsonObject } from '#documents';
import { field, isList, isObject, isSame, namesOf } from './json.ts';
import { inEntry, inField, keysOf, type Spot } from './spot.ts';

export type ChangedPlace = {
  readonly spot: Spot;
  /** Undefined where there was nothing. */
  readonly before: Json | undefined;
  /** Undefined where there is nothing any more. */
  readonly after: Json | undefined;
};

/** A figure with what stands behind it is one thing: a mass and the basis that it rests on. */
export const isMeasured = (value: Json | undefined): value is JsonObject =>
  isObject(value) && ['value', 'basis', 'unknown'].some((name) => Object.hasOwn(value, name));

/**
 * Every changed place, in the order of the newer document. Entries of a list that all have names
 * are matched by them; other lists are one place, and so is a measured figure.
 */
export const changedPlaces = (
  before: Json | undefined,
  after: Json | undefined,
  spot: Spot = [],
): readonly ChangedPlace[] => {
  if (isSame(before, after)) return [];
  if (isList(before) && isList(after)) return listPlaces(before, after, spot);
  const isWhole = isMeasured(before) || isMeasured(after);
  if (isWhole || !isObject(before) || !isObject(after)) return [{ spot, before, after }];
  return namesOf(after, before).flatMap((name) =>
    changedPlaces(field(before, name), field(after, name), inField(spot, name)),
  );
};

type List = readonly Json[];

const listPlaces = (before: List, after: List, spot: Spot): readonly ChangedPlace[] => {
  const [oldKeys, newKeys] = [keysOf(before), keysOf(after)];
  if (oldKeys === undefined || newKeys === undefined) return [{ spot, before, after }];
  const old = new Map(oldKeys.map((key, index) => [key, before[index]]));
  const fresh = new Map(newKeys.map((key, index) => [key, after[index]]));
  const places = [...new Set([...newKeys, ...oldKeys])].flatMap((key) =>
    changedPlaces(old.get(key), fresh.get(key), inEntry(spot, key)),
  );
  const kept = oldKeys.filter((key) => fresh.has(key));
  const order = newKeys.filter((key) => old.has(key));
  const isInOrder = isSame(kept, order);
  return isInOrder
    ? places
    : [...places, { spot: [...spot, { of: 'order' }], before: kept, after: order }];
};
