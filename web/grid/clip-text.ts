/**
 * Text of cells on its way from and to other programs: rows on lines, cells parted by tabs, which
 * every spreadsheet gives and takes, and a plain HTML table beside it.
 */

import { marked, unmarked } from '#exchange';

/**
 * Largest text that is read: 500 rows of 16 columns with 25 characters each, four times what a
 * house of 120 sets fills. Splitting it takes a few milliseconds, so that no paste holds the page.
 */
export const PASTE_CHARACTERS_MAX = 200_000;

/** Four houses of 120 sets one below the other; more is another sheet that was copied whole. */
export const PASTE_ROWS_MAX = 500;

/** Four times the columns of the hang list: room for a foreign sheet that has more. */
export const PASTE_COLUMNS_MAX = 64;

export type Cells = readonly (readonly string[])[];

export type ClipAnswer =
  | { readonly ok: true; readonly cells: Cells }
  | { readonly ok: false; readonly found: string; readonly accepted: string };

const quoted = (text: string): string =>
  /[\t\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** A text that itself begins like a quoted one is told apart by its doubled marks. */
const field = (text: string): string => {
  const safe = marked(text);
  return safe.startsWith('"') ? `"${safe.replaceAll('"', '""')}"` : quoted(safe);
};

export const textOfCells = (cells: Cells): string =>
  cells.map((row) => row.map(field).join('\t')).join('\r\n');

const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** No styles and no classes: the other program has its own. */
export const htmlOfCells = (cells: Cells): string => {
  const rows = cells.map((row) => {
    const inner = row.map((text) => `<td>${escaped(marked(text))}</td>`).join('');
    return `<tr>${inner}</tr>`;
  });
  return `<table><tbody>${rows.join('')}</tbody></table>`;
};

type Taken = { readonly text: string; readonly next: number };

const ENDS = new Set(['\t', '\n', '\r']);

/**
 * A field in marks, from its opening mark. Null where the marks are the text's own: some programs
 * give a text that begins with a mark as it is, so marks count only where they hold something that
 * needed them, and where the closing one ends the field.
 */
const takeQuoted = (text: string, from: number): Taken | null => {
  let inner = '';
  let index = from + 1;
  let isNeeded = false;
  while (index < text.length) {
    const letter = text.charAt(index);
    if (letter !== '"') {
      isNeeded ||= ENDS.has(letter);
      inner += letter;
      index += 1;
    } else if (text[index + 1] === '"') {
      isNeeded = true;
      inner += '"';
      index += 2;
    } else {
      const after = text[index + 1];
      const isEnd = after === undefined || ENDS.has(after);
      return isEnd && isNeeded ? { text: inner, next: index + 1 } : null;
    }
  }
  return null;
};

const takePlain = (text: string, from: number): Taken => {
  let next = from;
  while (next < text.length && !ENDS.has(text.charAt(next))) next += 1;
  return { text: text.slice(from, next), next };
};

/** A cell of the list is one line, and its apostrophe was only for the way. */
const cleaned = (text: string): string =>
  unmarked(text.replaceAll(/[\t\n\r]+/g, ' ').replaceAll('\u00a0', ' ')).trim();

const tooLong = (found: string, accepted: string): ClipAnswer => ({ ok: false, found, accepted });

const rowsOf = (text: string): string[][] => {
  const rows: string[][] = [[]];
  let index = 0;
  while (index <= text.length) {
    const marked = text[index] === '"' ? takeQuoted(text, index) : null;
    const taken = marked ?? takePlain(text, index);
    rows.at(-1)?.push(cleaned(taken.text));
    const end = text[taken.next];
    if (end === undefined) return rows;
    if (end !== '\t') rows.push([]);
    // What begins at the start of each turn is a field, so this ends with the text.
    index = taken.next + (end === '\r' && text[taken.next + 1] === '\n' ? 2 : 1);
  }
  return rows;
};

const isBlank = (row: readonly string[] | undefined): boolean =>
  row?.every((text) => text === '') ?? false;

/** Blank rows at the end are the line end that spreadsheets put there, not rows. */
const withoutBlankEnd = (rows: readonly string[][]): Cells => {
  const last = rows.findLastIndex((row) => !isBlank(row));
  return rows.slice(0, last + 1);
};

/** The cells of a copied text; refused whole where it is larger than any hang list. */
export const cellsOfText = (text: string): ClipAnswer => {
  if (text.length > PASTE_CHARACTERS_MAX) {
    return tooLong(
      `a text of ${text.length} characters`,
      `at most ${PASTE_CHARACTERS_MAX}: copy only the cells that belong here`,
    );
  }
  const rows = rowsOf(text);
  const cells = rows.length === 1 ? rows : withoutBlankEnd(rows);
  if (cells.length > PASTE_ROWS_MAX) {
    return tooLong(`${cells.length} rows`, `at most ${PASTE_ROWS_MAX} rows`);
  }
  const columns = Math.max(0, ...cells.map((row) => row.length));
  return columns > PASTE_COLUMNS_MAX
    ? tooLong(`${columns} columns`, `at most ${PASTE_COLUMNS_MAX} columns`)
    : { ok: true, cells };
};

/** Whether a text is more than one cell, so that a field for one cell cannot take it. */
export const isManyCells = (text: string): boolean => /[\t\n\r]/.test(text.replace(/\r?\n$/, ''));
