/**
 * Values that somebody stands behind. Written whole, `{ "value": "35 lb", "basis": "weighed" }`;
 * bare, `"35 lb"`, under a "given" that says how it is known; or `{ "unknown": "why" }`. An absent
 * field is unknown without a reason. Nothing else is read, and nothing is filled in.
 */
import type { Known, Provenance } from '#house';
import { BASES, known, unknownValue } from '#house';
import { describe, isObject } from '../json.ts';
import type { Measure } from './measure.ts';
import { readsAsObject, refuseUnknownFields } from './object.ts';
import type { JsonSchema, Place, Shape } from './shape.ts';
import { inside } from './shape.ts';
import { choice, day, flag, name, remark } from './words.ts';

const NAMES = ['value', 'tolerance', 'basis', 'source', 'by', 'on', 'unknown'] as const;
const OWN = ['source', 'by', 'on'] as const;

export const sourced = <T>(of: Measure<T>): Shape<Known<T>> => ({
  schema: { $ref: `#/$defs/sourced-${of.called}` },
  standIn: unknownValue(),
  read: (value, place) => {
    if (!isObject(value)) return readBare(of, value, place);
    if (!readsAsObject(value, place, NAMES)) return unknownValue();
    refuseUnknownFields(value, NAMES, place);
    return Object.hasOwn(value, 'unknown')
      ? readUnknown(value, place)
      : readWhole(of, value, place);
  },
});

const readBare = <T>(of: Measure<T>, value: unknown, place: Place): Known<T> => {
  const read = of.read(value, place);
  if (read === undefined) return unknownValue();
  if (place.given === null) return refuseBasis(describe(value), place);
  return known(read, place.given);
};

const refuseBasis = (found: string, place: Place): { readonly known: false } => {
  place.faults.refuse('noBasis', place.path, {
    found: `${found}, and no "given" above it`,
    accepted: `{ "value": …, "basis": … } with a basis of ${BASES.join(', ')}`,
  });
  return unknownValue();
};

type Written = Readonly<Record<string, unknown>>;

const readUnknown = (value: Written, place: Place): { readonly known: false } => {
  const others = NAMES.filter((key) => key !== 'unknown' && Object.hasOwn(value, key));
  if (others.length > 0) {
    place.faults.refuse('valueAndUnknown', place.path, {
      found: `"unknown" together with ${others.join(', ')}`,
      accepted: '{ "unknown": "why" } alone, or a value without "unknown"',
    });
    return unknownValue();
  }
  return unknownValue(remark.read(value['unknown'], inside(place, 'unknown')));
};

const readWhole = <T>(of: Measure<T>, value: Written, place: Place): Known<T> => {
  const provenance = readProvenance(value, place);
  if (!Object.hasOwn(value, 'value')) {
    place.faults.refuse('neitherValue', place.path, {
      found: describe(value),
      accepted: '{ "value": … }, or { "unknown": "why" }',
    });
    return unknownValue();
  }
  const read = of.read(value['value'], inside(place, 'value'));
  if (read === undefined || provenance === undefined) return unknownValue();
  return known(
    read,
    provenance,
    Object.hasOwn(value, 'tolerance')
      ? of.tolerance(read, value['tolerance'], inside(place, 'tolerance'))
      : undefined,
  );
};

const readProvenance = (value: Written, place: Place): Provenance | undefined => {
  const own = Object.fromEntries(
    OWN.filter((key) => Object.hasOwn(value, key)).map((key) => [
      key,
      (key === 'on' ? day : name).read(value[key], inside(place, key)),
    ]),
  );
  if (Object.hasOwn(value, 'basis')) {
    return { basis: choice(BASES).read(value['basis'], inside(place, 'basis')), ...own };
  }
  if (place.given === null) {
    refuseBasis(describe(value), place);
    return undefined;
  }
  if (Object.keys(own).length > 0) {
    place.faults.refuse('sourceWithoutBasis', place.path, {
      found: `${Object.keys(own).join(', ')} without a basis`,
      accepted: `a basis beside it: ${BASES.join(', ')}`,
    });
    return undefined;
  }
  return place.given;
};

/** Yes or no, with somebody who says so. */
export const yesOrNo: Measure<boolean> = {
  schema: flag.schema,
  called: 'flag',
  read: (value, place) => {
    const before = place.faults.count();
    const read = flag.read(value, place);
    return place.faults.count() === before ? read : undefined;
  },
  tolerance: (_value, written, place) => {
    place.faults.refuse('toleranceOther', place.path, {
      found: describe(written),
      accepted: 'no tolerance: it is yes or no',
    });
    return undefined;
  },
};

/** The three ways of writing, for the definitions of a published schema. */
export const sourcedSchema = (bare: JsonSchema, tolerance: JsonSchema): JsonSchema => ({
  anyOf: [
    { ...bare, description: 'The value alone, where a "given" above says how it is known.' },
    {
      type: 'object',
      description: 'The value with who stands behind it.',
      properties: {
        value: bare,
        tolerance,
        basis: { enum: BASES, description: 'How it is known; needed where no "given" says so.' },
        source: { ...name.schema, description: 'The document, sheet or sample, in words.' },
        by: { ...name.schema, description: 'Who found it.' },
        on: { ...day.schema, description: 'The day on which it was found.' },
      },
      required: ['value'],
      additionalProperties: false,
    },
    {
      type: 'object',
      description: 'Plainly unknown, and why.',
      properties: { unknown: remark.schema },
      required: ['unknown'],
      additionalProperties: false,
    },
  ],
});
