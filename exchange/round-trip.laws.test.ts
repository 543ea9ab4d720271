import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Json, type JsonObject, readHouse, readShowValue } from '#documents';
import {
  applyMapping,
  guessMapping,
  readTable,
  type TextTable,
  tablesOut,
  writeCsv,
  writeXlsx,
} from '#exchange';
import type { Result } from '#outcome';

const SEED = 20_261_128;

const must = <T>(answer: Result<T, unknown>): T => {
  if (!answer.ok) throw new Error(JSON.stringify(answer.error, null, 1));
  return answer.value;
};

const { house } = must(
  readHouse(readFileSync(new URL('../examples/kestlemere/house.json', import.meta.url), 'utf8')),
);

/** Words with every sign that the notation, CSV or XML uses for itself. */
const words = fc
  .string({ unit: fc.constantFrom(...'aZ7 |;\\[]±×:,"\'=+-@<&>é_x'), minLength: 1, maxLength: 12 })
  .map((text) => text.trim())
  .filter((text) => text !== '');
const id = fc.string({ unit: fc.constantFrom(...'abc123'), minLength: 1, maxLength: 4 });

const given = fc.record(
  {
    basis: fc.constantFrom('weighed', 'measured', 'published', 'estimated'),
    source: words,
    by: words,
    on: fc.constant('2026-05-04'),
  },
  { requiredKeys: ['basis'] },
);

/** A value bare, with who stands behind it, or unknown; never of the same form twice in a row. */
const valued = (figure: fc.Arbitrary<Json>, tolerance: fc.Arbitrary<Json>): fc.Arbitrary<Json> =>
  fc.oneof(
    figure,
    fc.record({ unknown: words }),
    fc.tuple(figure, fc.option(tolerance), given).map(([value, within, who]) => ({
      value,
      ...(within === null ? {} : { tolerance: within }),
      ...who,
    })),
  );

const hundredths = fc.integer({ min: 1, max: 4000 }).map((count) => count / 100);
const measured = (...units: readonly string[]): fc.Arbitrary<Json> =>
  valued(
    fc.tuple(hundredths, fc.constantFrom(...units)).map(([count, unit]) => `${count} ${unit}`),
    fc.constantFrom('5 %', '0.5 %'),
  );
const mass = measured('lb', 'kg', 'oz');
const length = measured('ft', 'm', 'in');
const perLength = measured('lb/ft', 'kg/m');
const share = measured('%');
const place = fc.integer({ min: -20, max: 20 }).map((count) => `${count} ft`);
const count = fc.integer({ min: 1, max: 99 });

const some = (fields: Readonly<Record<string, fc.Arbitrary<Json>>>, needed: readonly string[]) =>
  fc.record(fields, { requiredKeys: [...needed] }) as unknown as fc.Arbitrary<JsonObject>;

const listed = (one: fc.Arbitrary<Json>, minLength = 0): fc.Arbitrary<Json> =>
  fc.array(one, { minLength, maxLength: 3 });

const part = { name: words, count };
const takeoff = fc.oneof(
  some({ by: fc.constant('mass'), mass, hem: mass, given }, ['by', 'mass']),
  some(
    {
      by: fc.constant('cloth'),
      width: length,
      fullness: share,
      paint: share,
      bottomMassPerLength: perLength,
      ties: fc.record({ count: valued(count, fc.constant(1)), each: mass }),
      given,
    },
    ['by'],
  ),
  some(
    {
      by: fc.constant('frame'),
      members: listed(some({ ...part, length, massPerLength: perLength }, ['name', 'count'])),
      hardware: listed(some({ ...part, each: mass, z: length }, ['name', 'count'])),
      allowance: share,
    },
    ['by'],
  ),
  some(
    {
      by: fc.constant('units'),
      units: listed(some({ ...part, each: mass, clampEach: mass }, ['name', 'count']), 1),
    },
    ['by', 'units'],
  ),
  some({ by: fc.constant('loom'), massPerLength: perLength, length, fixedAt: length }, ['by']),
);

const item = some(
  {
    name: words,
    kind: fc.constantFrom('clear', 'cloth', 'standing'),
    takeoff,
    drop: length,
    pick: length,
    centre: valued(fc.constantFrom(0, 0.25, 0.46, 1), fc.constant(0.05)),
    placement: fc.oneof(
      fc.record({ points: listed(place, 1) }),
      fc.constant({ from: '-3 ft', to: '3 ft' }),
    ),
    releases: listed(some({ how: words, mass }, ['how'])),
    carriesPerson: fc.boolean(),
    remark: words,
    given,
  },
  ['name', 'kind', 'takeoff'],
);

const hang = some(
  {
    name: words,
    family: fc.constantFrom('soft', 'hard', 'electric', 'other'),
    halfDepth: length,
    trims: fc.uniqueArray(
      some({ name: words, height: length, reference: fc.constantFrom('batten', 'lens') }, [
        ...['name', 'height', 'reference'],
      ]),
      { maxLength: 3, selector: (trim) => trim['name'] },
    ),
    items: fc
      .tuple(fc.array(item, { maxLength: 3 }), fc.uniqueArray(id, { minLength: 3, maxLength: 3 }))
      .map(([items, ids]) => items.map((one, at) => ({ id: ids[at] ?? 'x', ...one }))),
    bricks: fc.record({
      counts: fc.dictionary(fc.constantFrom('F', 'H'), fc.integer({ min: 0, max: 20 })),
      reason: words,
    }),
    remark: words,
    given,
  },
  ['name', 'family', 'trims', 'items'],
);

const SETS = house.lineSets.slice(0, 3).map(({ id: set }) => set);

const show = fc.tuple(given, fc.array(hang, { minLength: 1, maxLength: 3 })).map(
  ([who, hangs]): JsonObject => ({
    format: 'counterpoise-show',
    version: 1,
    id: 'law',
    name: 'A law',
    house: house.id,
    given: who,
    hangs: hangs.map((one, at) => ({ set: SETS[at] ?? '', ...one })),
  }),
);

const bytesOf = (table: TextTable, form: string): Uint8Array =>
  form === 'csv' ? new TextEncoder().encode(writeCsv(table)) : writeXlsx(table);

const takenIn = (table: TextTable, form: string, into: JsonObject) => {
  const [sheet] = must(readTable(`t.${form}`, bytesOf(table, form)));
  if (sheet === undefined) throw new Error('no sheet');
  return must(applyMapping({ mapping: guessMapping(sheet, house), sheet, show: into, house }));
};

/** Trims stand in the order of the columns, which is one for all sets. */
const inOrder = (raw: JsonObject) =>
  must(readShowValue(raw, house)).show.hangs.map((one) => ({
    ...one,
    trims: one.trims.toSorted((a, b) => (a.name < b.name ? -1 : 1)),
  }));

describe('any show', () => {
  it(`comes back from its tables, into itself and into an empty one (seed ${SEED})`, () => {
    let tried = 0;
    fc.assert(
      fc.property(show, fc.constantFrom('csv', 'xlsx'), (raw, form) => {
        const read = readShowValue(raw, house);
        // What documents themselves refuse is none of ours, such as a height out of travel.
        fc.pre(read.ok);
        tried += 1;
        const tables = tablesOut(house, must(read));
        const itself = takenIn(tables.schedule, form, raw);
        expect(itself.changes).toEqual([]);
        const hasItems = tables.takeoff.rows.length > 1;
        if (hasItems) expect(takenIn(tables.takeoff, form, raw).changes).toEqual([]);
        const { given: _given, ...rest } = raw;
        const hung = takenIn(tables.schedule, form, { ...rest, hangs: [] }).document;
        const whole = hasItems ? takenIn(tables.takeoff, form, hung).document : hung;
        expect(inOrder(whole)).toEqual(inOrder(raw));
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(tried).toBeGreaterThanOrEqual(40);
  });
});
