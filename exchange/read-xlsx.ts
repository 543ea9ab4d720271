/**
 * A workbook (ISO/IEC 29500, SpreadsheetML) to plain cells. A formula stays a formula, whatever
 * result is kept beside it; a number shown as a day is a date; a number shown in per cent carries
 * its sign.
 */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { cellFault } from './cell-limits.ts';
import { BLANK, type Cell, cellName, refuse, type Sheet, textCell } from './sheet.ts';
import {
  attribute,
  below,
  listBelow,
  type Parts,
  textOf,
  workbookParts,
  type Xml,
} from './workbook-parts.ts';

const escapes = (text: string): string =>
  text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );

/** Plain or rich text; what is only read aloud (`rPh`) is left out. */
const richText = (xml: Xml): string => {
  const runs = listBelow(xml, 'r').map((run) => textOf(run['t']));
  return escapes(textOf(xml['t']) + runs.join(''));
};

type Shown = 'plain' | 'date' | 'percent';

/** Built-in formats by number: ISO/IEC 29500 part 1, 18.8.30 (from memory). */
const shownBy = (id: number, custom: ReadonlyMap<number, string>): Shown => {
  if ((id >= 14 && id <= 22) || (id >= 45 && id <= 47)) return 'date';
  if ((id >= 27 && id <= 36) || (id >= 50 && id <= 58)) return 'date';
  if (id === 9 || id === 10) return 'percent';
  const code = (custom.get(id) ?? '').replace(/"[^"]*"|\\.|\[[^\]]*\]/g, '');
  if (code.includes('%')) return 'percent';
  return /[dmyhs]/i.test(code) && !/general/i.test(code) ? 'date' : 'plain';
};

type Book = { readonly texts: readonly string[]; readonly shown: readonly Shown[] };

const bookOf = (parts: Parts): Book => {
  const styles = below(parts.get('xl/styles.xml'), 'styleSheet');
  const custom = new Map(
    listBelow(below(styles, 'numFmts'), 'numFmt').map((format) => [
      Number(attribute(format, 'numFmtId')),
      attribute(format, 'formatCode'),
    ]),
  );
  return {
    texts: listBelow(below(parts.get('xl/sharedStrings.xml'), 'sst'), 'si').map(richText),
    shown: listBelow(below(styles, 'cellXfs'), 'xf').map((xf) =>
      shownBy(Number(attribute(xf, 'numFmtId')), custom),
    ),
  };
};

/** Fifteen figures are what a spreadsheet program keeps; more is noise of the binary fraction. */
const figures = (value: number): string => String(Number(value.toPrecision(15)));

const numberCell = (raw: string, shown: Shown): Cell => {
  const value = Number(raw);
  if (raw.trim() === '' || !Number.isFinite(value)) return textCell(raw);
  if (shown === 'date') return { is: 'date', text: raw };
  if (shown === 'percent') return textCell(`${figures(value * 100)} %`);
  return { is: 'number', text: figures(value) };
};

const cellOf = (xml: Xml, book: Book): Cell => {
  if (Object.hasOwn(xml, 'f')) return { is: 'formula', text: textOf(xml['f']) };
  const raw = textOf(xml['v']);
  switch (attribute(xml, 't')) {
    case 'inlineStr':
      return textCell(richText(below(xml, 'is')));
    case 's':
      return textCell(book.texts[Number(raw)] ?? '');
    case 'str':
      return textCell(escapes(raw));
    case 'b':
      return textCell(raw === '1' ? 'yes' : 'no');
    case 'e':
      return { is: 'error', text: raw };
    case 'd':
      return { is: 'date', text: raw };
    default:
      return numberCell(raw, book.shown[Number(attribute(xml, 's'))] ?? 'plain');
  }
};

const columnOf = (name: string): number =>
  [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

type Place = { readonly row: number; readonly column: number };

const placeOf = (reference: string, otherwise: Place): Place => {
  const [, letters, row] = /^([A-Z]{1,3})(\d{1,7})$/.exec(reference) ?? [];
  if (letters === undefined) return otherwise;
  return { row: Number(row) - 1, column: columnOf(letters) };
};

type Answer = Result<Sheet, Refusal>;

/** Cells that are only coloured are passed over, however far out they stand. */
const sheetOf = (name: string, xml: Xml, book: Book): Answer => {
  const rows: Cell[][] = [];
  let at: Place = { row: -1, column: 0 };
  for (const row of listBelow(below(xml, 'worksheet', 'sheetData'), 'row')) {
    at = { row: at.row + 1, column: 0 };
    for (const one of listBelow(row, 'c')) {
      const place = placeOf(attribute(one, 'r'), at);
      at = { row: place.row, column: place.column + 1 };
      const cell = cellOf(one, book);
      if (cell.is === 'text' && cell.text === '') continue;
      const fault = cellFault(cellName(name, place.row, place.column), {
        ...place,
        characters: cell.text.length,
      });
      if (fault !== null) return fail(fault);
      while (rows.length <= place.row) rows.push([]);
      const cells = rows[place.row] ?? [];
      while (cells.length < place.column) cells.push(BLANK);
      cells[place.column] = cell;
    }
  }
  return ok({ name, rows });
};

const notWorkbook = (file: string): Refusal =>
  refuse('contentOther', file, {
    found: 'an archive without a workbook in it',
    accepted: 'a workbook saved as .xlsx',
  });

export const readXlsx = (
  file: string,
  bytes: Uint8Array,
): Result<readonly Sheet[], readonly Refusal[]> => {
  const parts = workbookParts(file, bytes);
  if (!parts.ok) return fail([parts.error]);
  const workbook = parts.value.get('xl/workbook.xml');
  if (workbook === undefined) return fail([notWorkbook(file)]);
  const links = new Map(
    listBelow(
      below(parts.value.get('xl/_rels/workbook.xml.rels'), 'Relationships'),
      'Relationship',
    ).map((link) => [attribute(link, 'Id'), attribute(link, 'Target')]),
  );
  const book = bookOf(parts.value);
  const sheets: Sheet[] = [];
  for (const sheet of listBelow(below(workbook, 'workbook', 'sheets'), 'sheet')) {
    const target = (links.get(attribute(sheet, 'id')) ?? '').replace(/^\/?(?:xl\/)?/, 'xl/');
    const xml = parts.value.get(target);
    if (xml === undefined) continue;
    const read = sheetOf(attribute(sheet, 'name'), xml, book);
    if (!read.ok) return fail([read.error]);
    sheets.push(read.value);
  }
  return ok(sheets);
};
