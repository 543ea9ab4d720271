/** The numbers of a sheet for a spreadsheet; null where the sheet has no table. */

import { stringify } from 'csv-stringify/sync';
import type { Sheet } from '#sheets';

/**
 * One heading row, each number column with its unit in its heading, plain decimal points. Text
 * that a spreadsheet would run as a formula is defused with an apostrophe (a cell that begins with
 * =, +, -, @, tab or return). Every row says what it is from, since rows are copied apart. Lines
 * end with CRLF (RFC 4180, from memory); a byte order mark tells a spreadsheet that it is UTF-8.
 */
export const csvOf = ({ data, footer, frame, facts }: Sheet): string | null => {
  if (data === null) return null;
  const revision = facts.find(({ term }) => term === 'revision')?.value ?? '';
  const note = ['NOT AN ORDER OF WORK', ...(frame === null ? [] : [frame])].join('; ');
  const rows = data.rows.map((row) => [...row, revision, footer.code, note]);
  return stringify([[...data.columns, 'revision', 'sheet code', 'note'], ...rows], {
    escape_formulas: true,
    record_delimiter: 'windows',
    // A lone line feed ends a record for most readers; the maker of the CSV sees CRLF only.
    quoted_match: /[\r\n]/,
    bom: true,
  });
};
