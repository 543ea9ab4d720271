import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { DOCUMENT_KINDS } from './envelope.ts';
import type { Json } from './json.ts';
import * as specimens from './provocations/specimens.ts';
import { STRUCTURE_PROVOCATIONS } from './provocations/structure-and-values.ts';
import { schemaOf } from './schema-of.ts';
import { writeDocument } from './write-document.ts';

const fileOf = (path: string): string =>
  readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');

const SPECIMENS = {
  house: specimens.house,
  show: specimens.show,
  state: specimens.state,
  order: specimens.order,
};

const EXAMPLES = {
  house: ['kestlemere/house.json', 'skelderwick/house.json'],
  show: [
    'kestlemere/clockmaker.show.json',
    'kestlemere/winterferry.show.json',
    'skelderwick/regatta.show.json',
  ],
  state: ['kestlemere/state.json', 'skelderwick/state.json'],
  order: ['kestlemere/orders/harbour-drop-load.order.json'],
};

const validatorOf = (kind: (typeof DOCUMENT_KINDS)[number]) =>
  new Ajv2020({
    strict: true,
    strictTypes: false,
    strictTuples: false,
    validateFormats: false,
  }).compile(schemaOf(kind));

/** Slips of structure that a schema sees by itself, without the units of what is written. */
const SEEN_BY_SCHEMA = [
  ...['DOC-030', 'DOC-031', 'DOC-032', 'DOC-033', 'DOC-034', 'DOC-035', 'DOC-036', 'DOC-041'],
  'DOC-043',
];

describe.each(DOCUMENT_KINDS)('the schema of a %s', (kind) => {
  it('is the one that is checked in', () => {
    expect(fileOf(`documents/schema/${kind}.schema.json`)).toBe(
      writeDocument(schemaOf(kind) as Json),
    );
  });

  it('compiles in a validator from outside, and takes what reading takes', () => {
    const validate = validatorOf(kind);
    expect(validate(SPECIMENS[kind]), JSON.stringify(validate.errors)).toBe(true);
    for (const example of EXAMPLES[kind]) {
      const isTaken = validate(JSON.parse(fileOf(`examples/${example}`)));
      expect(isTaken, `${example}: ${JSON.stringify(validate.errors?.slice(0, 3))}`).toBe(true);
    }
  });

  it('refuses what is wrong in form', () => {
    const validate = validatorOf(kind);
    const spoiled = SEEN_BY_SCHEMA.flatMap((code) => STRUCTURE_PROVOCATIONS[code] ?? []).filter(
      ({ title }) => title.startsWith(`${kind}, `) || title.startsWith(`${kind} without`),
    );
    expect(spoiled.length).toBeGreaterThan(8);
    const taken = spoiled.filter(({ input }) => validate(input)).map(({ title }) => title);
    // A suspension may stand in the set or in its type, which a schema cannot look up.
    expect(taken.filter((title) => !title.includes('suspension'))).toEqual([]);
  });

  it('describes every field', () => {
    const bare: string[] = [];
    const walk = (schema: unknown, at: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      for (const [key, value] of Object.entries(schema)) {
        if (key === 'properties') {
          for (const [name, field] of Object.entries(value as Record<string, object>)) {
            if (!('description' in field) && !('$ref' in field)) bare.push(`${at}/${name}`);
          }
        }
        walk(value, `${at}/${key}`);
      }
    };
    walk(schemaOf(kind), '');
    expect(bare.filter((path) => !path.includes('$defs'))).toEqual([]);
  });
});

describe('measures in a schema', () => {
  const validate = validatorOf('state');
  const withHeight = (height: unknown) =>
    validate({ ...specimens.state, sets: { '1': { height } } });

  it.each(['24\'-6 1/2"', '7.48 m', '30.5 ft', '24′ 6½″', '½ in', '7,48 m', '24 ft 6 in'])(
    'takes %s',
    (text) => {
      expect(withHeight(text)).toBe(true);
    },
  );

  it.each([24, '24', '', 'twelve feet', null])('does not take %s', (value) => {
    expect(withHeight(value)).toBe(false);
  });
});
