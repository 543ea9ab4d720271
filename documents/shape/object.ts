/** Objects with named fields, each needed, filled in where it is absent, or left out. */
import type { Provenance } from '#house';
import { BASES } from '#house';
import { describe, isObject } from '../json.ts';
import { nearestName } from '../nearest-name.ts';
import type { JsonSchema, Place, Shape } from './shape.ts';
import { inside } from './shape.ts';
import { choice, day, name } from './words.ts';

type Needed<T> = { readonly kind: 'needed'; readonly shape: Shape<T>; readonly about: string };
type Filled<T> = {
  readonly kind: 'filled';
  readonly shape: Shape<T>;
  readonly absent: T;
  readonly about: string;
};
type LeftOut<T> = { readonly kind: 'leftOut'; readonly shape: Shape<T>; readonly about: string };

type AnyField = Needed<unknown> | Filled<unknown> | LeftOut<unknown>;
export type Fields = Readonly<Record<string, AnyField>>;

type ValueOf<F> =
  F extends Filled<infer T> ? T : F extends { readonly shape: Shape<infer T> } ? T : never;
type OptionalNames<F> = {
  [K in keyof F]: F[K] extends { readonly kind: 'leftOut' } ? K : never;
}[keyof F];

/** What an object of these fields reads as. */
export type ReadOf<F> = {
  readonly [K in Exclude<keyof F, OptionalNames<F>>]: ValueOf<F[K]>;
} & { readonly [K in OptionalNames<F>]?: ValueOf<F[K]> };

/** The field must be there. */
export const needed = <T>(shape: Shape<T>, about: string): Needed<T> => ({
  kind: 'needed',
  shape,
  about,
});

/** An absent field reads as `absent`, which says that nothing was said and guesses nothing. */
export const filled = <T, A>(shape: Shape<T>, absent: A, about: string): Filled<T | A> => ({
  kind: 'filled',
  shape,
  absent,
  about,
});

/** An absent field stays absent. */
export const leftOut = <T>(shape: Shape<T>, about: string): LeftOut<T> => ({
  kind: 'leftOut',
  shape,
  about,
});

type Options = {
  /** Whether a "given" may stand here for the sourced values inside. */
  readonly given?: boolean;
};

export const object = <F extends Fields>(fields: F, { given = false }: Options = {}) => {
  const names = [...Object.keys(fields), ...(given ? ['given'] : [])];
  const standIn = standInOf(fields) as ReadOf<F>;
  const shape: Shape<ReadOf<F>> = {
    schema: objectSchema(fields, given),
    standIn,
    read: (value, place) => {
      if (!readsAsObject(value, place, names)) return standIn;
      refuseUnknownFields(value, names, place);
      const under = given ? withGiven(value, place) : place;
      return readFields(fields, value, under) as ReadOf<F>;
    },
  };
  return shape;
};

const standInOf = (fields: Fields): Record<string, unknown> => {
  const out: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(fields)) {
    if (field.kind === 'needed') out[key] = field.shape.standIn;
    if (field.kind === 'filled') out[key] = field.absent;
  }
  return out;
};

const objectSchema = (fields: Fields, given: boolean): JsonSchema => {
  const required = Object.entries(fields).flatMap(([key, { kind }]) =>
    kind === 'needed' ? [key] : [],
  );
  return {
    type: 'object',
    properties: {
      ...(given ? { given: { $ref: '#/$defs/given' } } : {}),
      ...Object.fromEntries(
        Object.entries(fields).map(([key, { shape, about }]) => [
          key,
          { ...shape.schema, description: about },
        ]),
      ),
    },
    ...(required.length > 0 ? { required } : {}),
    additionalProperties: false,
  };
};

export const readsAsObject = (
  value: unknown,
  place: Place,
  names: readonly string[],
): value is Readonly<Record<string, unknown>> => {
  if (isObject(value)) return true;
  place.faults.refuse(value === null ? 'nullWritten' : 'wrongType', place.path, {
    found: describe(value),
    accepted: `an object with ${names.join(', ')}`,
  });
  return false;
};

const UNKNOWN_FIELDS_TOLD = 20;

export const refuseUnknownFields = (
  value: Readonly<Record<string, unknown>>,
  names: readonly string[],
  place: Place,
): void => {
  const unknown = Object.keys(value).filter((key) => !names.includes(key));
  for (const key of unknown.slice(0, UNKNOWN_FIELDS_TOLD)) {
    const near = nearestName(key, names);
    const more = unknown.length - UNKNOWN_FIELDS_TOLD;
    place.faults.refuse('fieldUnknown', inside(place, key).path, {
      found: `the field ${describe(key)}${more > 0 ? ` (and ${more} more here)` : ''}`,
      accepted: near === undefined ? `only ${names.join(', ')}` : `perhaps ${near} was meant`,
    });
  }
};

const readFields = (
  fields: Fields,
  value: Readonly<Record<string, unknown>>,
  place: Place,
): Record<string, unknown> => {
  const out: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(fields)) {
    const here = inside(place, key);
    if (Object.hasOwn(value, key)) out[key] = field.shape.read(value[key], here);
    else if (field.kind === 'filled') out[key] = field.absent;
    else if (field.kind === 'needed') {
      out[key] = field.shape.standIn;
      place.faults.refuse('fieldMissing', here.path, { found: 'nothing', accepted: field.about });
    }
  }
  return out;
};

const givenShape = object({
  basis: needed(choice(BASES), 'How the values below are known.'),
  source: leftOut(name, 'The document, sheet or sample, in words.'),
  by: leftOut(name, 'Who found them.'),
  on: leftOut(day, 'The day on which they were found.'),
});

/** Schema of "given", which every document defines once. */
export const givenSchema: JsonSchema = {
  ...givenShape.schema,
  description: 'Who stands behind every sourced value below that has no basis of its own.',
};

const withGiven = (value: Readonly<Record<string, unknown>>, place: Place): Place => {
  if (!Object.hasOwn(value, 'given')) return place;
  const given: Provenance = givenShape.read(value['given'], inside(place, 'given'));
  return { ...place, given };
};
