/**
 * A table as a workbook (ISO/IEC 29500, SpreadsheetML): one sheet of inline texts, the headings
 * frozen. No cell is a formula, and none can become one when it is edited: all are formatted as
 * text. The same table gives the same bytes.
 */
import { strToU8, zipSync } from 'fflate';
import { startsLikeFormula } from './formula-mark.ts';
import { columnName, type TextTable } from './sheet.ts';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** `_x0041_` is read as A by spreadsheet programs, so what looks like it is written escaped. */
const escaped = (text: string): string =>
  text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** Places in `cellXfs` below. */
const STYLE = { heading: 1, text: 2, quoted: 3 } as const;

const WRAPPED = '<alignment vertical="top" wrapText="1"/>';

const STYLES = `${HEAD}<styleSheet xmlns="${MAIN}">\
<fonts count="2"><font/><font><b/></font></fonts>\
<fills count="2"><fill><patternFill patternType="none"/></fill>\
<fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders>\
<cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="4"><xf/>\
<xf numFmtId="49" fontId="1" applyNumberFormat="1" applyFont="1" applyAlignment="1">${WRAPPED}</xf>\
<xf numFmtId="49" applyNumberFormat="1" applyAlignment="1">${WRAPPED}</xf>\
<xf numFmtId="49" quotePrefix="1" applyNumberFormat="1" applyAlignment="1">${WRAPPED}</xf>\
</cellXfs></styleSheet>`;

const styleOf = (text: string, row: number): number => {
  if (row === 0) return STYLE.heading;
  return startsLikeFormula(text) ? STYLE.quoted : STYLE.text;
};

const cellXml = (text: string, row: number, column: number): string =>
  text === ''
    ? ''
    : `<c r="${columnName(column)}${row + 1}" s="${styleOf(text, row)}" t="inlineStr"><is>\
<t xml:space="preserve">${escaped(text)}</t></is></c>`;

/** Width of a column in characters: as its longest line, within what can be looked at. */
const widthOf = (table: TextTable, column: number): number => {
  const lines = table.rows.flatMap((row) => (row[column] ?? '').split('\n'));
  return Math.min(60, Math.max(6, ...lines.map((line) => line.length + 2)));
};

const sheetXml = (table: TextTable): string => {
  const columns = (table.rows[0] ?? []).map(
    (_, at) =>
      `<col min="${at + 1}" max="${at + 1}" width="${widthOf(table, at)}" customWidth="1"/>`,
  );
  const rows = table.rows.map(
    (cells, row) =>
      `<row r="${row + 1}">${cells.map((text, at) => cellXml(text, row, at)).join('')}</row>`,
  );
  return `${HEAD}<worksheet xmlns="${MAIN}"><sheetViews><sheetView workbookViewId="0">\
<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>\
<cols>${columns.join('')}</cols><sheetData>${rows.join('')}</sheetData></worksheet>`;
};

const relation = (id: number, kind: string, target: string): string =>
  `<Relationship Id="rId${id}" Type="${OFFICE}/${kind}" Target="${target}"/>`;

const relations = (...all: readonly string[]): string =>
  `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${all.join('')}</Relationships>`;

const override = (part: string, kind: string): string =>
  `<Override PartName="/${part}" ContentType="${TYPE}.${kind}+xml"/>`;

const CONTENT_TYPES = `${HEAD}<Types xmlns="${PACKAGE}/content-types">\
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>\
<Default Extension="xml" ContentType="application/xml"/>\
${override('xl/workbook.xml', 'sheet.main')}${override('xl/worksheets/sheet1.xml', 'worksheet')}\
${override('xl/styles.xml', 'styles')}</Types>`;

/** A constant, so that the same table gives the same bytes; ZIP has no room for "no day". */
const DAY = new Date(2000, 0, 1);

export const writeXlsx = (table: TextTable): Uint8Array => {
  const parts: Readonly<Record<string, string>> = {
    '[Content_Types].xml': CONTENT_TYPES,
    '_rels/.rels': relations(relation(1, 'officeDocument', 'xl/workbook.xml')),
    'xl/workbook.xml': `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>\
<sheet name="${escaped(table.name)}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relations(
      relation(1, 'worksheet', 'worksheets/sheet1.xml'),
      relation(2, 'styles', 'styles.xml'),
    ),
    'xl/styles.xml': STYLES,
    'xl/worksheets/sheet1.xml': sheetXml(table),
  };
  const bytes = Object.entries(parts).map(([path, text]) => [path, strToU8(text)] as const);
  return zipSync(Object.fromEntries(bytes), { mtime: DAY });
};
