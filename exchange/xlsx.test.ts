import { strToU8, zipSync } from 'fflate';
import readXlsxFile from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import writeXlsxFile from 'write-excel-file/node';
import { readXlsx } from './read-xlsx.ts';
import type { Cell } from './sheet.ts';
import { writeXlsx } from './write-xlsx.ts';

const TEXTS = ['=1+1', '-24 ft', "'x", 'a & <b> "c"', ' two  spaces ', 'línea\nnueva', '_x0041_'];

const cells = (bytes: Uint8Array): readonly (readonly Cell[])[] => {
  const answer = readXlsx('f.xlsx', bytes);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value[0]?.rows ?? [];
};

const texts = (bytes: Uint8Array) => cells(bytes).map((row) => row.map(({ text }) => text));

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>';

/** A workbook made by hand; `sheet` is what stands in `sheetData`. */
const workbook = (sheet: string, more: Readonly<Record<string, string>> = {}): Uint8Array => {
  const parts = {
    'xl/workbook.xml': `${HEAD}<workbook><sheets><sheet name="S" sheetId="1" r:id="rId1" \
xmlns:r="r"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `${HEAD}<Relationships><Relationship Id="rId1" \
Target="/xl/worksheets/sheet1.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `${HEAD}<worksheet><sheetData>${sheet}</sheetData></worksheet>`,
    ...more,
  };
  const bytes = Object.entries(parts).map(([path, text]) => [path, strToU8(text)] as const);
  return zipSync(Object.fromEntries(bytes));
};

const refusedBy = (bytes: Uint8Array) => {
  const answer = readXlsx('f.xlsx', bytes);
  return answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`);
};

describe('a workbook out', () => {
  const table = { name: 'Schedule', rows: [['Set', 'Name'], ...TEXTS.map((one) => ['1', one])] };

  it('reads back by another program as the same texts, and none is a formula', async () => {
    const [sheet] = await readXlsxFile(Buffer.from(writeXlsx(table)), { trim: false });
    expect(sheet?.sheet).toBe('Schedule');
    const theirs = sheet?.data.map(([, name]) => name);
    expect(theirs).toEqual(['Name', ...TEXTS]);
  });

  it('reads back by ours, and is the same bytes every time', () => {
    expect(texts(writeXlsx(table))).toEqual(table.rows);
    expect(writeXlsx(table)).toEqual(writeXlsx(table));
  });
});

describe('a workbook in', () => {
  it('reads what another program writes: texts, numbers, days, yes and no', async () => {
    const bytes = await writeXlsxFile([
      [{ value: 'Set' }, { value: 'a <b>' }, { value: 12.5 }, { value: true }],
      [null, { value: new Date(Date.UTC(2026, 4, 4)), type: Date, format: 'dd/mm/yyyy' }],
    ]).toBuffer();
    expect(cells(bytes)).toEqual([
      [
        { is: 'text', text: 'Set' },
        { is: 'text', text: 'a <b>' },
        { is: 'number', text: '12.5' },
        { is: 'text', text: 'yes' },
      ],
      [
        { is: 'text', text: '' },
        { is: 'date', text: '46146' },
      ],
    ]);
  });

  it('keeps a formula a formula, whatever result stands beside it', async () => {
    const written = await writeXlsxFile([[{ value: '=SUM(1,2)', type: 'Formula' }]]).toBuffer();
    expect(cells(written)[0]?.[0]?.is).toBe('formula');
    const cached = workbook('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>');
    expect(cells(cached)).toEqual([[{ is: 'formula', text: '1+1' }]]);
    const shared = workbook('<row r="1"><c r="B1"><f t="shared" si="0"/><v>2</v></c></row>');
    expect(cells(shared)[0]?.[1]?.is).toBe('formula');
  });

  it('gives a number in per cent its sign, and a feet-and-inches day away', () => {
    const styles = `${HEAD}<styleSheet><numFmts>\
<numFmt numFmtId="164" formatCode="0.0&quot; ft&quot;"/>\
<numFmt numFmtId="165" formatCode="[$-409]d-mmm"/></numFmts><cellXfs><xf numFmtId="0"/>\
<xf numFmtId="9"/><xf numFmtId="164"/><xf numFmtId="165"/></cellXfs></styleSheet>`;
    const row = '<c s="1"><v>0.07</v></c><c s="2"><v>12.5</v></c><c s="3"><v>46000</v></c>';
    const book = workbook(`<row>${row}<c t="e"><v>#REF!</v></c></row>`, {
      'xl/styles.xml': styles,
    });
    expect(cells(book)).toEqual([
      [
        { is: 'text', text: '7 %' },
        { is: 'number', text: '12.5' },
        { is: 'date', text: '46000' },
        { is: 'error', text: '#REF!' },
      ],
    ]);
  });

  it('reads rich text without what is only read aloud, and cells where they say they stand', () => {
    const shared = `${HEAD}<sst><si><r><t>House </t></r><r><rPr><b/></rPr><t>tabs</t></r>\
<rPh><t>no</t></rPh></si></sst>`;
    const book = workbook('<row r="2"><c r="C2" t="s"><v>0</v></c></row>', {
      'xl/sharedStrings.xml': shared,
    });
    expect(texts(book)).toEqual([[], ['', '', 'House tabs']]);
  });

  it('passes over cells that are only coloured, however far out', () => {
    const book = workbook('<row r="1"><c r="A1"><v>1</v></c><c r="XFD1" s="1"/></row>');
    expect(texts(book)).toEqual([['1']]);
  });

  it('[EXC-008] refuses what would open too large, without opening it', () => {
    const bomb = workbook('', { 'xl/worksheets/sheet2.xml': ' '.repeat(9 * 1024 * 1024) });
    expect(bomb.length).toBeLessThan(100_000);
    expect(refusedBy(bomb)).toEqual(['EXC-008 f.xlsx']);
    const parts = Array.from({ length: 501 }, (_, at) => [`x${at}`, new Uint8Array(0)] as const);
    expect(refusedBy(zipSync(Object.fromEntries(parts)))).toEqual(['EXC-008 f.xlsx']);
  });

  it('opens nothing but the parts of a table, so that a bomb beside them stays shut', () => {
    const book = workbook('<row><c><v>1</v></c></row>', {
      'xl/media/picture.xml': ' '.repeat(9 * 1024 * 1024),
    });
    expect(texts(book)).toEqual([['1']]);
  });

  it('[EXC-009] refuses a file that lies of its size, is cut off, or is no XML', () => {
    const book = workbook('<row><c><v>1</v></c></row>');
    expect(refusedBy(book.subarray(0, book.length - 30))).toEqual(['EXC-009 f.xlsx']);
    const broken = workbook('<row><c><v>1</c></row>');
    expect(refusedBy(broken)).toEqual(['EXC-009 f.xlsx: xl/worksheets/sheet1.xml']);
  });

  it('[EXC-013] refuses declarations, and with them entities that grow or fetch', () => {
    const sheet = `${HEAD}<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>\
<worksheet><sheetData><row><c><v>&b;</v></c></row></sheetData></worksheet>`;
    const book = workbook('', { 'xl/worksheets/sheet1.xml': sheet });
    expect(refusedBy(book)).toEqual(['EXC-013 f.xlsx: xl/worksheets/sheet1.xml']);
  });

  it('[EXC-010] [EXC-011] [EXC-012] refuses cells beyond the limits', () => {
    const at = (cell: string, text = '1') =>
      refusedBy(
        workbook(`<row r="1"><c r="${cell}" t="inlineStr"><is><t>${text}</t></is></c></row>`),
      );
    expect(at('A5000')).toEqual([]);
    expect(at('A5001')).toEqual(['EXC-010 S!A5001']);
    expect(at('ET1')).toEqual([]);
    expect(at('EU1')).toEqual(['EXC-011 S!EU1']);
    expect(at('B2', 'a'.repeat(32_767))).toEqual([]);
    expect(at('B2', 'a'.repeat(32_768))).toEqual(['EXC-012 S!B2']);
  });

  it('[EXC-002] refuses an archive that is no workbook', () => {
    expect(refusedBy(zipSync({ 'content.xml': strToU8('<a/>') }))).toEqual(['EXC-002 f.xlsx']);
  });
});
