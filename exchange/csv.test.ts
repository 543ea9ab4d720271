import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { delimiterOf, readCsv, writeCsv } from './csv.ts';

const SEED = 20_261_128;

const read = (text: string) => {
  const answer = readCsv('t', text);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value.rows.map((row) => row.map((cell) => cell.text));
};

const codes = (text: string) => {
  const answer = readCsv('t', text);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

const cell = fc.string({ unit: fc.constantFrom(...'a7 ,;"\'=+-@é\t\n|'), maxLength: 8 });
/** Of one width, the first heading plain, so that the delimiter is a comma for all readers. */
const rows = fc.array(fc.array(cell, { minLength: 4, maxLength: 4 }), { maxLength: 6 });
const HEAD = ['a', 'b', 'c', 'd'];

describe('CSV out', () => {
  it('begins with a byte order mark and ends its lines as RFC 4180 says', () => {
    expect(
      writeCsv({
        name: 't',
        rows: [
          ['Set', 'Name'],
          ['1', 'a "b", c'],
        ],
      }),
    ).toBe('\uFEFFSet,Name\r\n1,"a ""b"", c"\r\n');
  });

  it.each(['=1+1', '+1', '-2 ft', '@x', '\tx', '\rx', '＝1', "'=1"])('neutralises %j', (text) => {
    const written = writeCsv({ name: 't', rows: [['h'], [text]] }).slice(1);
    expect(parse(written, { record_delimiter: '\r\n' })[1]).toEqual([`'${text}`]);
    expect(read(written)).toEqual([['h'], [text]]);
  });

  it(`reads back by another program, and by ours to the same cells (seed ${SEED})`, () => {
    fc.assert(
      fc.property(rows, (body) => {
        const table = { name: 't', rows: [HEAD, ...body] };
        const text = writeCsv(table);
        const theirs: string[][] = parse(text, { bom: true, record_delimiter: '\r\n' });
        const starts = /^['=+\-@\t\r\n]/;
        const marked = body.map((row) => row.map((one) => (starts.test(one) ? `'${one}` : one)));
        expect(theirs).toEqual([HEAD, ...marked]);
        expect(read(text.slice(1))).toEqual(table.rows);
      }),
      { seed: SEED },
    );
  });
});

describe('CSV in', () => {
  it(`reads what another program writes (seed ${SEED})`, () => {
    const plain = fc.string({ unit: fc.constantFrom(...'a7 ,;"é\n|'), maxLength: 8 });
    const body = fc.array(fc.array(plain, { minLength: 4, maxLength: 4 }), { maxLength: 6 });
    fc.assert(
      fc.property(body, fc.constantFrom(',', ';', '\t'), (cells, delimiter) => {
        const text = stringify([HEAD, ...cells], { delimiter, quoted: true });
        expect(read(text)).toEqual([HEAD, ...cells]);
      }),
      { seed: SEED },
    );
  });

  it('takes the sign between the headings, outside of quotes, for the delimiter', () => {
    expect(delimiterOf('"a,b,c";d\n1,2;3')).toBe(';');
    expect(delimiterOf('a\tb,c\td')).toBe('\t');
    expect(delimiterOf('alone')).toBe(',');
  });

  it('keeps empty cells at the end, and takes any end of line', () => {
    expect(read('a,b,\r1,,\n2,3,')).toEqual([
      ['a', 'b', ''],
      ['1', '', ''],
      ['2', '3', ''],
    ]);
  });

  it('[EXC-006] refuses a quote that never closes', () => {
    expect(codes('a,b\n1,"open\n2,3')).toEqual(['EXC-006 t!B2']);
  });

  it('[EXC-007] refuses a quote inside a cell, and text behind one', () => {
    expect(codes('a,b\n1,24"')).toEqual(['EXC-007 t!B2']);
    expect(codes('a,b\n"1"x,2')).toEqual(['EXC-007 t!A2']);
  });

  it('[EXC-010] takes 5000 rows and refuses one more', () => {
    expect(codes('a\n'.repeat(5000))).toEqual([]);
    expect(codes('a\n'.repeat(5001))).toEqual(['EXC-010 t!A5001']);
  });

  it('[EXC-011] takes 150 columns and refuses one more', () => {
    expect(codes(Array(150).fill('a').join(','))).toEqual([]);
    expect(codes(Array(151).fill('a').join(','))).toEqual(['EXC-011 t!EU1']);
  });

  it('[EXC-012] takes 32 767 characters in a cell and refuses one more', () => {
    expect(codes('a'.repeat(32_767))).toEqual([]);
    expect(codes('a'.repeat(32_768))).toEqual(['EXC-012 t!A1']);
  });
});
