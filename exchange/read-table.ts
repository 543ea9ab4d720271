/** A file that somebody hands in, to sheets of plain cells. Nothing in it is ever run. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { readCsv } from './csv.ts';
import { FILE_BYTES_MAX } from './limits.ts';
import { readXlsx } from './read-xlsx.ts';
import { quoted, refuse, type Sheet } from './sheet.ts';
import { decodeUtf8 } from './utf8.ts';

type Content =
  | 'archive'
  | 'oldWorkbook'
  | 'pdf'
  | 'picture'
  | 'utf16'
  | 'markup'
  | 'binary'
  | 'text';

const BEGINNINGS: readonly (readonly [Content, readonly number[]])[] = [
  ['archive', [0x50, 0x4b]],
  ['oldWorkbook', [0xd0, 0xcf, 0x11, 0xe0]],
  ['pdf', [0x25, 0x50, 0x44, 0x46]],
  ['utf16', [0xff, 0xfe]],
  ['utf16', [0xfe, 0xff]],
  ['picture', [0x89, 0x50, 0x4e, 0x47]],
  ['picture', [0xff, 0xd8, 0xff]],
  ['picture', [0x47, 0x49, 0x46, 0x38]],
];

/** Blanks and a byte order mark may stand before a page, and before a table. */
const BLANKS = new Set([0x20, 0x09, 0x0a, 0x0d, 0xef, 0xbb, 0xbf]);
const LESS_THAN = 0x3c;

const WORDS: Readonly<Record<Content, string>> = {
  archive: 'a ZIP archive, such as a workbook',
  oldWorkbook: 'an old or locked workbook',
  pdf: 'a PDF',
  picture: 'a picture',
  utf16: 'text in UTF-16',
  markup: 'a page in HTML or XML',
  binary: 'bytes that are no text',
  text: 'plain text',
};

const contentOf = (bytes: Uint8Array): Content => {
  const known = BEGINNINGS.find(([, signs]) => signs.every((sign, at) => bytes[at] === sign));
  if (known !== undefined) return known[0];
  const first = bytes.find((byte) => !BLANKS.has(byte));
  if (first === LESS_THAN) return 'markup';
  return bytes.includes(0) ? 'binary' : 'text';
};

type Answer = Result<readonly Sheet[], readonly Refusal[]>;

const csvSheets = (file: string, bytes: Uint8Array): Answer => {
  const decoded = decodeUtf8(bytes);
  if (!decoded.ok) {
    const found = `a byte that is no UTF-8, at ${decoded.at}`;
    const accepted = 'CSV saved as UTF-8';
    return fail([refuse('notUtf8', file, { found, accepted })]);
  }
  const read = readCsv(file.replace(/\.csv$/i, ''), decoded.text);
  return read.ok ? ok([read.value]) : read;
};

const isFilled = ({ rows }: Sheet): boolean =>
  rows.some((row) => row.some(({ text }) => text.trim() !== ''));

/** Sheets without a filled cell are left out. */
export const readTable = (file: string, bytes: Uint8Array): Answer => {
  const ending = /\.(csv|xlsx)$/i.exec(file)?.[1]?.toLowerCase();
  if (ending === undefined) {
    const accepted = 'a file named .csv or .xlsx';
    return fail([refuse('nameOther', file, { found: quoted(file), accepted })]);
  }
  if (bytes.length > FILE_BYTES_MAX) {
    const accepted = `at most ${FILE_BYTES_MAX} bytes`;
    return fail([refuse('tooLarge', file, { found: `${bytes.length} bytes`, accepted })]);
  }
  const content = contentOf(bytes);
  const wanted: Content = ending === 'csv' ? 'text' : 'archive';
  if (bytes.length > 0 && content !== wanted) {
    const found = WORDS[content];
    return fail([
      refuse('contentOther', file, { found, accepted: `.${ending}: ${WORDS[wanted]}` }),
    ]);
  }
  const read =
    bytes.length === 0 ? ok([]) : ending === 'csv' ? csvSheets(file, bytes) : readXlsx(file, bytes);
  if (!read.ok) return read;
  const filled = read.value.filter(isFilled);
  if (filled.length > 0) return ok(filled);
  const accepted = 'a table with headings';
  return fail([refuse('empty', file, { found: 'no filled cell', accepted })]);
};
