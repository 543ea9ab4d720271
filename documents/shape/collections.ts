/** Lists, records by id, pairs, and objects of several kinds told apart by one field. */
import { describe, isObject } from '../json.ts';
import type { JsonSchema, Place, Shape } from './shape.ts';
import { inside } from './shape.ts';
import { choice, id } from './words.ts';

type Size = { readonly min?: number; readonly max: number };

export const list = <T>(entry: Shape<T>, { min = 0, max }: Size): Shape<readonly T[]> => ({
  schema: {
    type: 'array',
    items: entry.schema,
    ...(min > 0 ? { minItems: min } : {}),
    maxItems: max,
  },
  standIn: [],
  read: (value, place) => {
    if (!Array.isArray(value)) {
      refuseType(value, place, 'a list');
      return [];
    }
    if (!sizeTaken(value.length, { min, max }, place)) return [];
    // A list with holes is not JSON; `from` visits the holes too, so that each is refused.
    return Array.from(value, (one: unknown, index) => entry.read(one, inside(place, index)));
  },
});

/** Entries by id. The order of the file is kept. */
export const record = <T>(
  entry: Shape<T>,
  { max }: { readonly max: number },
): Shape<Readonly<Record<string, T>>> => ({
  schema: {
    type: 'object',
    propertyNames: id.schema,
    additionalProperties: entry.schema,
    maxProperties: max,
  },
  standIn: {},
  read: (value, place) => {
    if (!isObject(value)) {
      refuseType(value, place, 'an object with an entry for each id');
      return {};
    }
    const keys = Object.keys(value);
    if (!sizeTaken(keys.length, { min: 0, max }, place)) return {};
    return Object.fromEntries(
      keys.map((key) => {
        const here = inside(place, key);
        id.read(key, here);
        return [key, entry.read(value[key], here)];
      }),
    );
  },
});

/** Two bounds, in a list of two. */
export const pair = <T, U>(first: Shape<T>, second: Shape<U>): Shape<readonly [T, U]> => ({
  schema: {
    type: 'array',
    prefixItems: [first.schema, second.schema],
    items: false,
    minItems: 2,
    maxItems: 2,
  },
  standIn: [first.standIn, second.standIn],
  read: (value, place) => {
    if (!Array.isArray(value)) {
      refuseType(value, place, 'a list of two');
      return [first.standIn, second.standIn];
    }
    if (!sizeTaken(value.length, { min: 2, max: 2 }, place)) return [first.standIn, second.standIn];
    return [first.read(value[0], inside(place, 0)), second.read(value[1], inside(place, 1))];
  },
});

/** A value where null has a plain meaning of its own, which `about` states. */
export const orNull = <T>(shape: Shape<T>): Shape<T | null> => ({
  schema: { anyOf: [shape.schema, { type: 'null' }] },
  standIn: shape.standIn,
  read: (value, place) => (value === null ? null : shape.read(value, place)),
});

type Kinds = Readonly<Record<string, Shape<object>>>;
type KindValue<K extends Kinds> = { [N in keyof K]: K[N] extends Shape<infer T> ? T : never };

/** Objects of several kinds; the field `by` names the kind, and each kind has its own fields. */
export const variant = <K extends Kinds>(by: string, kinds: K): Shape<KindValue<K>[keyof K]> => {
  type Value = KindValue<K>[keyof K];
  const names = Object.keys(kinds) as [string, ...string[]];
  const kindShape = choice(names);
  const standIn = (kinds[names[0]] as Shape<Value>).standIn;
  return {
    schema: { oneOf: names.map((kind) => kinds[kind]?.schema ?? {}) },
    standIn,
    read: (value, place) => {
      if (!isObject(value)) {
        refuseType(value, place, `an object whose "${by}" is one of ${names.join(', ')}`);
        return standIn;
      }
      const here = inside(place, by);
      if (!Object.hasOwn(value, by)) {
        const accepted = `one of ${names.join(', ')}`;
        place.faults.refuse('fieldMissing', here.path, { found: 'nothing', accepted });
        return standIn;
      }
      if (!names.some((kind) => kind === value[by])) {
        kindShape.read(value[by], here);
        return standIn;
      }
      return (kinds[value[by] as string] as Shape<Value>).read(value, place);
    },
  };
};

/** The one word that a kind has in the field that tells kinds apart. */
export const only = <T extends string>(word: T): Shape<T> => ({
  ...choice([word]),
  schema: { const: word } satisfies JsonSchema,
});

const refuseType = (value: unknown, place: Place, accepted: string): void =>
  place.faults.refuse(value === null ? 'nullWritten' : 'wrongType', place.path, {
    found: describe(value),
    accepted,
  });

const sizeTaken = (size: number, { min = 0, max }: Size, place: Place): boolean => {
  if (size >= min && size <= max) return true;
  const many = min === max ? `exactly ${max}` : `${min} to ${max}`;
  place.faults.refuse(size > max ? 'tooMany' : 'tooFew', place.path, {
    found: `${size}`,
    accepted: many,
  });
  return false;
};
