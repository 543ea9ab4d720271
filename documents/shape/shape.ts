/**
 * A shape reads one JSON value into what the engine takes, and publishes what it takes as JSON
 * Schema. Reader and schema are written once, side by side, so that they cannot drift apart.
 *
 * A shape never throws and never stops: what it refuses goes to the faults of its place, and a
 * stand-in takes the place of the value so that the rest is read too. A document with a fault is
 * refused as a whole, so no stand-in ever leaves this room.
 */
import type { Provenance } from '#house';
import type { Faults } from '../faults.ts';
import { pathTo } from '../json.ts';

export type JsonSchema = { readonly [key: string]: unknown };

/** Where a value stands: its path, who stands behind the sourced values here, and the faults. */
export type Place = {
  readonly path: string;
  readonly given: Provenance | null;
  readonly faults: Faults;
  /** What was read before, where the caller keeps it. */
  readonly memory?: ReadMemory | undefined;
};

/**
 * Values that were read without a fault, each under what was "given" above it. For documents that
 * never change in place: an edit makes new objects along its path, and the rest need not be read
 * again.
 */
export type ReadMemory = WeakMap<object, { readonly given: string; readonly read: unknown }>;

const NOBODY = 'null';
/** What stands behind the values, as text; it is asked once for every hang. */
const givenTexts = new WeakMap<Provenance, string>();
const givenText = (given: Provenance | null): string => {
  if (given === null) return NOBODY;
  const text = givenTexts.get(given) ?? JSON.stringify(given);
  givenTexts.set(given, text);
  return text;
};

export type Shape<T> = {
  readonly schema: JsonSchema;
  readonly standIn: T;
  readonly read: (value: unknown, place: Place) => T;
};

export const inside = (place: Place, key: string | number): Place => ({
  ...place,
  path: pathTo(place.path, key),
});

/** Reads a value once for each memory; what it says must not depend on where it stands. */
export const remembered = <T>(shape: Shape<T>): Shape<T> => ({
  ...shape,
  read: (value, place) => {
    const { memory, faults } = place;
    if (memory === undefined || typeof value !== 'object' || value === null) {
      return shape.read(value, place);
    }
    const given = givenText(place.given);
    const before = memory.get(value);
    if (before !== undefined && before.given === given) return before.read as T;
    const faultsBefore = faults.count();
    const read = shape.read(value, place);
    if (faults.count() === faultsBefore) memory.set(value, { given, read });
    return read;
  },
});

/** The same document value, kept by the engine in another form. */
export const mapped = <T, U>(shape: Shape<T>, into: (value: T) => U): Shape<U> => ({
  schema: shape.schema,
  standIn: into(shape.standIn),
  read: (value, place) => into(shape.read(value, place)),
});

/** A shape with one more condition, which is asked only where the value itself was taken. */
export const checked = <T>(shape: Shape<T>, check: (value: T, place: Place) => void): Shape<T> => ({
  ...shape,
  read: (value, place) => {
    const before = place.faults.count();
    const read = shape.read(value, place);
    if (place.faults.count() === before) check(read, place);
    return read;
  },
});
