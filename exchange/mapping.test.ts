import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readHouse } from '#documents';
import { guessColumns, guessMapping, openQuestions, unitsFor } from '#exchange';
import { readCsv } from './csv.ts';
import type { ColumnMapping, Mapping } from './mapping.ts';
import type { Sheet } from './sheet.ts';

const read = readHouse(
  readFileSync(new URL('../examples/kestlemere/house.json', import.meta.url), 'utf8'),
);
if (!read.ok) throw new Error('the example house does not read');
const { house } = read.value;

const sheetOf = (text: string): Sheet => {
  const answer = readCsv('t', text);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

const short = ({ to, unit }: ColumnMapping) => {
  const words = to === null ? '-' : to.is === 'field' ? to.field : JSON.stringify(to);
  return unit === null ? words : `${words} in ${unit}`;
};

const guessed = (text: string) => guessMapping(sheetOf(text), house);

const codes = (mapping: Mapping, sheet: Sheet) =>
  openQuestions(mapping, sheet).map(({ code, path }) => `${code} ${path}`);

const trim = (name: string) => JSON.stringify({ is: 'trim', name, reference: 'batten' });

describe('a guess at foreign columns', () => {
  it('knows a hang list by US and by UK words, and leaves out what it does not know', () => {
    const us = guessed('Line Set,Piece,Type,Low Trim (ft),High Trim (ft),F,Colour,Notes\n');
    expect(us.table).toBe('schedule');
    expect(us.columns.map(short)).toEqual([
      ...['set', 'name', 'family', `${trim('low')} in ft`, `${trim('high')} in ft`],
      ...[JSON.stringify({ is: 'bricks', kind: 'F' }), '-', 'remark'],
    ]);
    const uk = guessed('Bar No.;Description;In;Out [m];Remarks\n');
    expect(uk.columns.map(short)).toEqual([
      ...['set', 'name', trim('in'), `${trim('out')} in m`, 'remark'],
    ]);
  });

  it('knows a take-off, and takes a unit from a heading only where it fits', () => {
    const mapping = guessed('Bar,Item name,Weight (lb),Drop (kg),CG\n');
    expect(mapping.table).toBe('takeoff');
    expect(mapping.columns.map(short)).toEqual(['set', 'name', 'mass in lb', 'drop', 'centre']);
  });

  it('finds the headings below a title, and maps a field once', () => {
    const mapping = guessed('Spring show\n\nSet,Name,What\n1,Tabs,red\n');
    expect(mapping.headRow).toBe(2);
    expect(mapping.columns.map(short)).toEqual(['set', 'name', '-']);
  });

  it('guesses again for a table that a person has chosen', () => {
    const sheet = sheetOf('Set,Name,Family,Kind\n');
    const chosen = guessColumns({ ...guessMapping(sheet, house), table: 'takeoff' }, sheet, house);
    expect(chosen.columns.map(short)).toEqual(['set', 'name', '-', 'kind']);
  });

  it('offers the units of a measure, and none for words', () => {
    expect(unitsFor('takeoff', { is: 'field', field: 'mass' })).toContain('lb');
    expect(unitsFor('takeoff', { is: 'field', field: 'name' })).toEqual([]);
  });
});

describe('what a mapping leaves open', () => {
  const sheet = sheetOf('Set,In,Out\n1,30,"60 ft"\n2,31.5,\n');
  const mapping = guessMapping(sheet, house);
  const withColumn = (at: number, change: Partial<ColumnMapping>): Mapping => ({
    ...mapping,
    columns: mapping.columns.map((one, place) => (place === at ? { ...one, ...change } : one)),
  });

  it('[EXC-022] asks for the unit of bare numbers, and of no other column', () => {
    expect(openQuestions(mapping, sheet)).toEqual([
      {
        code: 'EXC-022',
        path: 't!B1',
        found: '2 bare numbers, the first "30"',
        accepted: 'one of ft, in, yd, m, cm, mm',
      },
    ]);
    expect(codes(withColumn(1, { unit: 'ft' }), sheet)).toEqual([]);
  });

  it('[EXC-023] refuses a unit of another measure', () => {
    expect(codes(withColumn(1, { unit: 'kg' }), sheet)).toEqual(['EXC-023 t!B1']);
  });

  it('[EXC-020] asks which column is the set', () => {
    const without = withColumn(0, { to: null });
    expect(codes(without, sheet)).toContain('EXC-020 t');
  });

  it('[EXC-021] refuses two columns for one field', () => {
    const twice = withColumn(2, { to: { is: 'field', field: 'set' } });
    expect(codes(twice, sheet)).toEqual(['EXC-022 t!B1', 'EXC-021 t!C1']);
  });

  it('[EXC-024] refuses a column that the sheet does not have', () => {
    expect(codes(withColumn(2, { column: 3 }), sheet)).toEqual(['EXC-022 t!B1', 'EXC-024 t!D1']);
  });
});
