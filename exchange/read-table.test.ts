import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readTable, writeXlsx } from '#exchange';

const refusedBy = (file: string, bytes: Uint8Array) => {
  const answer = readTable(file, bytes);
  return answer.ok ? [] : answer.error.map(({ code, found }) => `${code} ${found}`);
};

const workbook = writeXlsx({ name: 'S', rows: [['Set'], ['1']] });

describe('a file handed in', () => {
  it('is read by what it is, if its name says the same', () => {
    const csv = readTable('Hang list.CSV', strToU8('\uFEFFSet;Name\r\n1;<b>Tabs</b>'));
    expect(csv).toEqual({
      ok: true,
      value: [
        {
          name: 'Hang list',
          rows: [
            [
              { is: 'text', text: 'Set' },
              { is: 'text', text: 'Name' },
            ],
            [
              { is: 'text', text: '1' },
              { is: 'text', text: '<b>Tabs</b>' },
            ],
          ],
        },
      ],
    });
    expect(refusedBy('a.xlsx', workbook)).toEqual([]);
  });

  it('[EXC-001] is refused with another ending', () => {
    expect(refusedBy('list.xls', workbook)).toEqual(['EXC-001 "list.xls"']);
    expect(refusedBy('csv', strToU8('a'))).toEqual(['EXC-001 "csv"']);
  });

  it('[EXC-002] is refused where its content is of another kind', () => {
    expect(refusedBy('a.csv', workbook)).toEqual(['EXC-002 a ZIP archive, such as a workbook']);
    expect(refusedBy('a.xlsx', strToU8('Set,Name'))).toEqual(['EXC-002 plain text']);
    expect(refusedBy('a.csv', strToU8('<html>'))).toEqual(['EXC-002 a page in HTML or XML']);
    expect(refusedBy('a.csv', strToU8('\uFEFF\r\n  <!doctype html>'))).toEqual([
      'EXC-002 a page in HTML or XML',
    ]);
    const png = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0]);
    expect(refusedBy('list.xlsx', png)).toEqual(['EXC-002 a picture']);
    expect(refusedBy('a.csv', strToU8('%PDF-1.7'))).toEqual(['EXC-002 a PDF']);
    expect(refusedBy('a.csv', new Uint8Array([0xff, 0xfe, 0x61, 0]))).toEqual([
      'EXC-002 text in UTF-16',
    ]);
    expect(refusedBy('a.csv', new Uint8Array([0x61, 0, 0x62]))).toEqual([
      'EXC-002 bytes that are no text',
    ]);
    const late = new Uint8Array(9000).fill(0x61);
    late[8999] = 0;
    expect(refusedBy('a.csv', late)).toEqual(['EXC-002 bytes that are no text']);
    expect(refusedBy('a.xlsx', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]))).toEqual([
      'EXC-002 an old or locked workbook',
    ]);
  });

  it('[EXC-003] is refused above 4 MiB, and not at 4 MiB', () => {
    const most = new Uint8Array(4 * 1024 * 1024).fill(0x0a);
    expect(refusedBy('a.csv', most)).not.toContain('EXC-003 4194304 bytes');
    expect(refusedBy('a.csv', new Uint8Array(4 * 1024 * 1024 + 1))).toEqual([
      'EXC-003 4194305 bytes',
    ]);
  });

  it('[EXC-004] is refused with nothing in it', () => {
    expect(refusedBy('a.csv', new Uint8Array(0))).toEqual(['EXC-004 no filled cell']);
    expect(refusedBy('a.csv', strToU8(' ,\n,'))).toEqual(['EXC-004 no filled cell']);
    expect(refusedBy('a.xlsx', writeXlsx({ name: 'S', rows: [['', '']] }))).toEqual([
      'EXC-004 no filled cell',
    ]);
  });

  it('[EXC-005] is refused in an encoding of before UTF-8', () => {
    const latin = new Uint8Array([...strToU8('Set,Name\n1,D'), 0xe9, ...strToU8('cor')]);
    expect(refusedBy('a.csv', latin)).toEqual(['EXC-005 a byte that is no UTF-8, at 12']);
  });
});
