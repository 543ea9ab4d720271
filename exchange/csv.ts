/** CSV (RFC 4180) out and in. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { cellFault } from './cell-limits.ts';
import { marked, unmarked } from './formula-mark.ts';
import { type Cell, cellName, refuse, type Sheet, type TextTable, textCell } from './sheet.ts';

const cellOut = (text: string): string => {
  const safe = marked(text);
  return /[",;\t\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

const BYTE_ORDER_MARK = '\uFEFF';

/** With a byte order mark, without which spreadsheet programs garble all that is not ASCII. */
export const writeCsv = (table: TextTable): string =>
  BYTE_ORDER_MARK + table.rows.map((row) => `${row.map(cellOut).join(',')}\r\n`).join('');

const DELIMITERS = [',', ';', '\t'] as const;

/** What stands most often between the headings, outside of quotes. */
export const delimiterOf = (text: string): string => {
  const counts = new Map<string, number>(DELIMITERS.map((one) => [one, 0]));
  let isQuoted = false;
  for (const sign of text) {
    if (sign === '"') isQuoted = !isQuoted;
    else if (!isQuoted && (sign === '\n' || sign === '\r')) break;
    else if (!isQuoted && counts.has(sign)) counts.set(sign, (counts.get(sign) ?? 0) + 1);
  }
  return [...counts].reduce((most, one) => (one[1] > most[1] ? one : most))[0];
};

type Taken = { readonly text: string; readonly next: number };
type Fault = { readonly name: 'quoteOpen' | 'quoteInside' };

const quotedCell = (text: string, from: number): Taken | Fault => {
  let at = from + 1;
  let words = '';
  for (;;) {
    const end = text.indexOf('"', at);
    if (end < 0) return { name: 'quoteOpen' };
    words += text.slice(at, end);
    if (text[end + 1] !== '"') return { text: words, next: end + 1 };
    words += '"';
    at = end + 2;
  }
};

const plainCell = (text: string, from: number, delimiter: string): Taken | Fault => {
  let at = from;
  while (at < text.length && text[at] !== delimiter && !/[\r\n]/.test(text[at] ?? '')) at += 1;
  const words = text.slice(from, at);
  return words.includes('"') ? { name: 'quoteInside' } : { text: words, next: at };
};

const lineEnd = (text: string, at: number): number => {
  if (text.startsWith('\r\n', at)) return 2;
  return text[at] === '\r' || text[at] === '\n' ? 1 : 0;
};

const ACCEPTED: Readonly<Record<Fault['name'], string>> = {
  quoteOpen: 'a second quote at the end of the cell',
  quoteInside: 'quotes around the whole cell, and each quote inside written twice',
};

export const readCsv = (name: string, text: string): Result<Sheet, readonly Refusal[]> => {
  const delimiter = delimiterOf(text);
  const rows: Cell[][] = [];
  let row: Cell[] = [];
  let at = 0;
  while (at < text.length) {
    const where = cellName(name, rows.length, row.length);
    const taken = text[at] === '"' ? quotedCell(text, at) : plainCell(text, at, delimiter);
    if ('name' in taken) {
      return fail([
        refuse(taken.name, where, { found: 'a quote', accepted: ACCEPTED[taken.name] }),
      ]);
    }
    const fault = cellFault(where, {
      row: rows.length,
      column: row.length,
      characters: taken.text.length,
    });
    if (fault !== null) return fail([fault]);
    row.push(textCell(unmarked(taken.text)));
    at = taken.next;
    const ends = lineEnd(text, at);
    if (text[at] === delimiter) {
      at += 1;
      if (at === text.length) row.push(textCell(''));
    } else if (ends > 0 || at === text.length) {
      rows.push(row);
      row = [];
      at += ends;
    } else {
      const accepted = ACCEPTED.quoteInside;
      return fail([refuse('quoteInside', where, { found: 'text after a quote', accepted })]);
    }
  }
  if (row.length > 0) rows.push(row);
  return ok({ name, rows });
};
