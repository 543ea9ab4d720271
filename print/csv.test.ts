import { describe, expect, it } from 'vitest';
import { csvOf } from './csv.ts';
import { sampleSheet } from './sample-sheet.ts';

const MARK = '\uFEFF';

const linesOf = (
  rows: readonly (readonly (string | number | null)[])[],
  frame: string | null = null,
): readonly string[] => {
  const data = { columns: ['item', 'mass (lb)'], rows };
  const text = csvOf(sampleSheet({ data, frame })) ?? '';
  return text.replace(MARK, '').split('\r\n');
};

describe('a sheet as CSV', () => {
  it('is nothing where the sheet has no table', () => {
    expect(csvOf(sampleSheet())).toBeNull();
  });

  it('has one heading row with units, and the sheet that each row is from', () => {
    expect(linesOf([['Legs', 54.5]])).toEqual([
      'item,mass (lb),revision,sheet code,note',
      'Legs,54.5,4,7F3K-Q2MX,NOT AN ORDER OF WORK',
      '',
    ]);
  });

  it('says on each row that the demo is not real', () => {
    const [, first] = linesOf([['Legs', 54.5]], 'DEMO: an invented house and show');
    expect(first).toContain('NOT AN ORDER OF WORK; DEMO: an invented house and show');
  });

  it('begins with a byte order mark, once', () => {
    const text = csvOf(sampleSheet({ data: { columns: ['a'], rows: [['é']] } })) ?? '';
    expect(text.lastIndexOf(MARK)).toBe(0);
  });

  // RFC 4180 rules 5 to 7, from memory: a field with a comma, a quote or a line break is quoted,
  // and a quote inside it is doubled.
  it('quotes what would end a field', () => {
    const rows = [
      ['24\'-6 1/2"', 1],
      ['a, b', 2],
      ['two\nlines', 3],
    ];
    const text = linesOf(rows).join('\r\n');
    expect(text).toContain('"24\'-6 1/2""",1,');
    expect(text).toContain('"a, b",2,');
    expect(text).toContain('"two\nlines",3,');
  });

  it('defuses text that a spreadsheet would run, in cells and in headings', () => {
    const dangerous = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '=HYPERLINK("x")'];
    const data = { columns: ['=cmd'], rows: dangerous.map((text) => [text]) };
    const text = csvOf(sampleSheet({ data })) ?? '';
    const fields = text
      .replace(MARK, '')
      .split('\r\n')
      .slice(0, dangerous.length + 1);
    for (const field of fields) expect(field).toMatch(/^"?'/);
  });

  it('leaves numbers numbers, and an unknown one empty', () => {
    const [, first, second] = linesOf([
      ['drop', -3],
      ['unknown', null],
    ]);
    expect(first).toMatch(/^drop,-3,/);
    expect(second).toMatch(/^unknown,,/);
  });
});
