import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type JsonObject, readHouse, readShow, readShowValue } from '#documents';
import {
  applyMapping,
  guessMapping,
  readTable,
  type TextTable,
  tablesOut,
  writeCsv,
  writeXlsx,
} from '#exchange';
import type { House } from '#house';
import type { Result } from '#outcome';

const text = (path: string): string =>
  readFileSync(new URL(`../examples/${path}`, import.meta.url), 'utf8');

const must = <T>(answer: Result<T, unknown>): T => {
  if (!answer.ok) throw new Error(JSON.stringify(answer.error, null, 1));
  return answer.value;
};

const FORMS: readonly {
  readonly form: string;
  readonly bytes: (table: TextTable) => Uint8Array;
}[] = [
  { form: 'csv', bytes: (table) => new TextEncoder().encode(writeCsv(table)) },
  { form: 'xlsx', bytes: writeXlsx },
];

const SHOWS = [
  ['kestlemere', 'clockmaker'],
  ['kestlemere', 'winterferry'],
  ['skelderwick', 'regatta'],
] as const;

const opened = (folder: string, name: string) => {
  const { house } = must(readHouse(text(`${folder}/house.json`)));
  return { house, document: must(readShow(text(`${folder}/${name}.show.json`), house)) };
};

/** A file handed in and applied with the mapping that is guessed from our own headings. */
const takenIn = (file: string, bytes: Uint8Array, show: JsonObject, house: House) => {
  const [sheet] = must(readTable(file, bytes));
  if (sheet === undefined) throw new Error('no sheet');
  return must(applyMapping({ mapping: guessMapping(sheet, house), sheet, show, house }));
};

const CASES = SHOWS.flatMap(([folder, name]) =>
  FORMS.map(({ form, bytes }) => ({ folder, name, form, bytes })),
);

describe.each(CASES)('$name through $form', ({ folder, name, form, bytes }) => {
  const { house, document } = opened(folder, name);
  const tables = tablesOut(house, document);

  it('changes nothing in the show that it came from', () => {
    const schedule = takenIn(`s.${form}`, bytes(tables.schedule), document.raw, house);
    const takeoff = takenIn(`t.${form}`, bytes(tables.takeoff), document.raw, house);
    expect([...schedule.changes, ...takeoff.changes]).toEqual([]);
    expect(schedule.document).toBe(document.raw);
  });

  it('gives the same hangs to a show in which nothing hangs', () => {
    const { given: _given, ...rest } = document.raw;
    const blank = { ...rest, hangs: [], keptEmpty: {} };
    const before = structuredClone(blank);
    const schedule = takenIn(`s.${form}`, bytes(tables.schedule), blank, house);
    const takeoff = takenIn(`t.${form}`, bytes(tables.takeoff), schedule.document, house);
    const read = must(readShowValue(takeoff.document, house));
    expect(read.show.hangs).toEqual(document.show.hangs);
    expect(read.show.keptEmpty).toEqual(document.show.keptEmpty);
    expect(blank).toEqual(before);
  });
});

describe('the tables', () => {
  it('have a row a set in rail order, and the words of the show', () => {
    const { house, document } = opened('kestlemere', 'clockmaker');
    const { schedule } = tablesOut(house, document);
    const [head = [], ...rows] = schedule.rows;
    expect(rows.map(([set]) => set)).toEqual(house.lineSets.map(({ id }) => id));
    const ofSet = (id: string) =>
      Object.fromEntries(head.map((word, at) => [word, rows.find(([one]) => one === id)?.[at]]));
    expect(ofSet('9')).toMatchObject({
      Name: 'Harbour drop',
      'Trim: in (batten)': '28.25 ft',
      'Bricks: F': '6',
      'Bricks: H': '1',
      'Known by': 'calculated; source: demo plan',
    });
    expect(ofSet('4')).toMatchObject({ Name: '', 'Kept empty': 'depth of 5' });
  });

  it('say in brackets who stands behind a figure where the row does not', () => {
    const { house, document } = opened('kestlemere', 'clockmaker');
    const [head = [], ...rows] = tablesOut(house, document).takeoff.rows;
    const row = rows.find(([set]) => set === '1') ?? [];
    expect(row[head.indexOf('Mass')]).toBe('520 lb ± 5 % [weighed; source: weighed 3 years ago]');
    expect(row[head.indexOf('Drop')]).toBe('30 ft');
    expect(row[head.indexOf('Where along the batten')]).toBe('from -24 ft to 24 ft');
  });
});
