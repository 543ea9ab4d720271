/** The published form of each document as JSON Schema 2020-12, from the shapes that read it. */
import type { Dimension } from '#quantities';
import type { DocumentKind } from './envelope.ts';
import { houseShape } from './house-shape.ts';
import { CURRENT_VERSION } from './migrations.ts';
import { orderShape } from './order-shape.ts';
import { EXAMPLES, measureSchema } from './shape/measure.ts';
import { givenSchema } from './shape/object.ts';
import type { JsonSchema } from './shape/shape.ts';
import { sourcedSchema } from './shape/sourced.ts';
import { showShape } from './show-shape.ts';
import { stateShape } from './state-shape.ts';

const SHAPES: Readonly<Record<DocumentKind, JsonSchema>> = {
  house: houseShape.schema,
  show: showShape.schema,
  state: stateShape.schema,
  order: orderShape.schema,
};

const TITLES: Readonly<Record<DocumentKind, string>> = {
  house: 'A fly house: its fixed plant, its bricks and its rules',
  show: 'A show: what hangs on each line set, at which heights, with which cues',
  state: 'How things stand: line sets and galleries at one moment',
  order: 'An order of work on one line set: what is done, step by step',
};

const LIMITS_NOT_HERE =
  'A measure is a text with its unit. This schema holds the form; reading also checks units, ' +
  'bounds, sources and references, and refuses what it cannot take with a code and a path.';

export const schemaOf = (kind: DocumentKind): JsonSchema => {
  const schema = made.get(kind) ?? makeSchema(kind);
  made.set(kind, schema);
  return schema;
};

/** A form asks it for every field of a house. */
const made = new Map<DocumentKind, JsonSchema>();

const makeSchema = (kind: DocumentKind): JsonSchema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: `urn:counterpoise:${kind}:${CURRENT_VERSION}`,
  title: TITLES[kind],
  description: LIMITS_NOT_HERE,
  ...SHAPES[kind],
  $defs: definitionsFor(SHAPES[kind]),
});

const anyTolerance = (dimension: Dimension): JsonSchema => ({
  type: 'string',
  maxLength: 60,
  examples: ['2 %', EXAMPLES[dimension][0]],
  description: 'Half width: a share of the value, or in the measure of the value.',
});

const numberTolerance: JsonSchema = {
  type: ['string', 'number'],
  description: 'Half width: a share of the value such as "2 %", or a number.',
};

const ofNumber = (bare: JsonSchema): JsonSchema => sourcedSchema(bare, numberTolerance);

/** Every definition that a shape may name. */
const DEFINITIONS: Readonly<Record<string, JsonSchema>> = {
  given: givenSchema,
  ...Object.fromEntries(
    (Object.keys(EXAMPLES) as Dimension[]).flatMap((dimension) => [
      [dimension, measureSchema(dimension)],
      [
        `sourced-${dimension}`,
        sourcedSchema({ $ref: `#/$defs/${dimension}` }, anyTolerance(dimension)),
      ],
    ]),
  ),
  'sourced-count': ofNumber({ type: 'integer', minimum: 0, examples: [2] }),
  'sourced-number': ofNumber({ type: 'number', minimum: 0, examples: [1, 0.5] }),
  'sourced-centre': ofNumber({ type: 'number', minimum: 0, maximum: 1, examples: [0.46] }),
  'sourced-flag': sourcedSchema({ type: 'boolean' }, { not: {} }),
};

/** The definitions that a schema names, and those that these name. */
const definitionsFor = (schema: JsonSchema): JsonSchema => {
  const found = new Set<string>();
  const gather = (part: unknown): void => {
    for (const [, name] of JSON.stringify(part).matchAll(/"#\/\$defs\/([\w-]+)"/g)) {
      if (name === undefined || found.has(name)) continue;
      found.add(name);
      gather(DEFINITIONS[name] ?? {});
    }
  };
  gather(schema);
  return Object.fromEntries([...found].toSorted(byText).map((name) => [name, DEFINITIONS[name]]));
};

const byText = (one: string, other: string): number => (one < other ? -1 : 1);
