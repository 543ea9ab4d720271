import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differenceOf } from './difference.ts';
import type { Json } from './json.ts';
import {
  house as houseSpecimen,
  order,
  show as showSpecimen,
  state,
} from './provocations/specimens.ts';
import { readHouse, readHouseValue } from './read-house.ts';
import { readJson } from './read-json.ts';
import { readOrder, readOrderValue } from './read-order.ts';
import { readShow, readShowValue } from './read-show.ts';
import { readState, readStateValue } from './read-state.ts';
import { writeDocument } from './write-document.ts';

const SEED = 20261125;
const runs = { seed: SEED, numRuns: 400 };

const plant = readHouseValue(houseSpecimen);
const house = plant.ok ? plant.value.house : undefined;
const hung = readShowValue(showSpecimen, house);
const show = hung.ok ? hung.value.show : undefined;

const DOCUMENTS = {
  house: { raw: houseSpecimen, read: readHouseValue, readText: readHouse },
  show: {
    raw: showSpecimen,
    read: (value: unknown) => readShowValue(value, house),
    readText: (text: string) => readShow(text, house),
  },
  state: {
    raw: state,
    read: (value: unknown) => readStateValue(value, house, show),
    readText: (text: string) => readState(text, house, show),
  },
  order: {
    raw: order,
    read: (value: unknown) => readOrderValue(value, house, show),
    readText: (text: string) => readOrder(text, house, show),
  },
};

type Holder = Record<string | number, unknown>;

/** Every place in a value, as its holder and key. */
const placesOf = (value: unknown): readonly (readonly [Holder, string])[] =>
  typeof value === 'object' && value !== null
    ? Object.keys(value).flatMap((key) => [
        [value as Holder, key] as const,
        ...placesOf((value as Holder)[key]),
      ])
    : [];

/** What a person, a program or a spiteful stranger may leave in a place. */
const anything = fc.oneof(
  fc.constantFrom<unknown>(null, true, 0, -1, 1e300, Number.NaN, '', ' ', '12', '12 ft', '-3 lb'),
  fc.constantFrom<unknown>('5 %', '1', 'single', 'F', [], {}, { unknown: 'x' }, undefined),
  fc.constantFrom<unknown>({ value: '1 ft', basis: 'weighed' }, { value: 1, unknown: 'x' }),
  fc.jsonValue({ maxDepth: 3 }),
  fc.string({ maxLength: 20 }),
  fc.integer(),
);

const mutation = fc.record({
  place: fc.nat(),
  what: fc.constantFrom('put', 'drop', 'add', 'swap'),
  value: anything,
  other: fc.nat(),
});

type Mutation = typeof mutation extends fc.Arbitrary<infer T> ? T : never;

const mutate = (raw: unknown, { place, what, value, other }: Mutation): void => {
  const places = placesOf(raw);
  const chosen = places[place % places.length];
  const further = places[other % places.length];
  if (!chosen || !further) return;
  const [holder, key] = chosen;
  if (what === 'drop') delete holder[key];
  else if (what === 'add') holder[`${key}x`] = value;
  else if (what === 'swap') holder[key] = structuredClone(further[0][further[1]]);
  else holder[key] = value;
};

describe.each(Object.entries(DOCUMENTS))('a %s', (_kind, { raw, read, readText }) => {
  it(`spoiled anyhow is read or refused with words, and never throws (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (mutations) => {
        const spoiled: unknown = structuredClone(raw);
        for (const one of mutations) mutate(spoiled, one);
        const answer = read(spoiled);
        if (answer.ok) return answer.value.raw === spoiled;
        return (
          answer.error.length > 0 &&
          answer.error.every(
            ({ code, found, accepted }) =>
              /^(DOC|QTY)-\d{3}$/.test(code) && found.trim() !== '' && accepted.trim() !== '',
          )
        );
      }),
      runs,
    );
  });

  it(`cut or stained anywhere in its text never makes the reading throw (seed ${SEED})`, () => {
    const text = JSON.stringify(raw, null, 1);
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.string({ maxLength: 3 }), (at, stain) => {
        const spoiled = text.slice(0, at) + stain + text.slice(at + 1);
        const answer = readText(spoiled);
        return answer.ok || answer.error.length > 0;
      }),
      runs,
    );
  });

  it('reads back from what it is written as', () => {
    const first = readText(writeDocument(raw as Json));
    expect(first.ok && first.value.raw).toEqual(raw);
    const again = first.ok ? writeDocument(first.value.raw) : '';
    expect(again).toBe(writeDocument(raw as Json));
  });
});

/** JSON of any kind without the keys that are refused by name. */
const json = fc
  .jsonValue({ maxDepth: 5 })
  .filter(
    (value) => !/"(__proto__|constructor|prototype|toString|valueOf)"/.test(JSON.stringify(value)),
  );

/** A key twice, a hostile key, a number beyond all: grammar that we refuse for other reasons. */
const NOT_GRAMMAR = ['DOC-008', 'DOC-009', 'DOC-012'];

describe('JSON', () => {
  it(`written is the same when it is read (seed ${SEED})`, () => {
    fc.assert(
      fc.property(json, (value) => {
        const answer = readJson(writeDocument(value as Json));
        // JSON has one zero; a negative one is written without its sign.
        expect(answer).toEqual({ ok: true, value: JSON.parse(JSON.stringify(value)) });
      }),
      runs,
    );
  });

  it(`is taken where the built-in parser takes it, and nowhere else (seed ${SEED})`, () => {
    const text = JSON.stringify({ a: [1, -2.5e3, 'x\\u00e9\\n', null], b: { c: true, d: {} } });
    const piece = fc.constantFrom('{', '}', '[', ']', ',', ':', '"', '\\', '0', '.', 'e', '-', ' ');
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(3), piece, (at, cut, put) => {
        const spoiled = text.slice(0, at) + put + text.slice(at + cut);
        let isJson = true;
        try {
          JSON.parse(spoiled);
        } catch {
          isJson = false;
        }
        const answer = readJson(spoiled);
        const isGrammar = answer.ok || answer.error.every(({ code }) => NOT_GRAMMAR.includes(code));
        return isGrammar === isJson;
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  it(`has no difference from itself, and some from anything else (seed ${SEED})`, () => {
    fc.assert(
      fc.property(json, json, (one, other) => {
        const isSame = JSON.stringify(one) === JSON.stringify(other);
        expect(differenceOf(one, structuredClone(one))).toEqual([]);
        if (!isSame && Object.keys(Object(one)).length + Object.keys(Object(other)).length < 2) {
          expect(differenceOf(one, other).length).toBeGreaterThan(0);
        }
      }),
      runs,
    );
  });
});
