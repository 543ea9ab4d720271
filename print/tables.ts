/** Ruled tables: a thick line under the head and round rows that nobody may miss. */

import type { ContentTable, CustomTableLayout, TableCell } from 'pdfmake/interfaces.js';
import { textWidth } from '#drawings';
import type { Column, Row, Table } from '#sheets';
import { heightOf, KEPT_END, KEPT_MOST, LEADING } from './room.ts';
import { textRuns, wordRuns } from './words.ts';

const TEXT_SIZE = 14;
/** Nothing hangs there: still to be read, but not first. */
const MUTED_SIZE = 12;
const HAIR = 0.5;
const THICK = 1.5;
const PAD_X = 4;
/** Between a number, or a column of sentences, and the words of the next column. */
const PAD_WORDS = 10;
const PROSE_SHARE = 0.4;
const PAD_Y = 1;
const HEAD_SIZE = 12;
const GREY = '#777';

/** Ruled above and below, but not at its sides. */
const UNPARTED: [boolean, boolean, boolean, boolean] = [false, true, false, true];

/** The unit behind its head, or beneath it where the column is only as wide as its numbers. */
const headCell = ({ head, unit, align }: Column, width: number): TableCell => {
  const joined = unit === undefined ? head : `${head}, ${unit}`;
  const fits = unit === undefined || textWidth(joined, HEAD_SIZE) <= width;
  return {
    text: fits
      ? textRuns(joined, { size: HEAD_SIZE })
      : textRuns(`${head}\n${unit}`, { size: HEAD_SIZE }),
    alignment: align,
    border: UNPARTED,
  };
};

const bodyCells = (row: Row, columns: readonly Column[]): TableCell[] => {
  const size = row.isMuted === true ? MUTED_SIZE : TEXT_SIZE;
  if (row.isGroup === true) {
    const words = wordRuns(row.cells[0] ?? [], { size });
    const rest = columns.slice(1).map((): TableCell => ({}));
    return [{ text: words, colSpan: columns.length, border: UNPARTED }, ...rest];
  }
  return columns.map(
    ({ align }, index): TableCell => ({
      text: wordRuns(row.cells[index] ?? [], { size }),
      alignment: align,
    }),
  );
};

/** Two columns of whole sentences: a line of the one must not read on into the other. */
const isProse = (...columns: readonly (Column | undefined)[]): boolean =>
  columns.every((column) => column?.align === 'left' && column.share > PROSE_SHARE);

const paddingLeft = (columns: readonly Column[], index: number): number => {
  if (index === 0) return 0;
  const [before, column] = [columns[index - 1], columns[index]];
  const follows = before?.align === 'right' && column?.align === 'left';
  return follows || isProse(before, column) ? PAD_WORDS : PAD_X;
};

const paddingRight = (columns: readonly Column[], index: number): number =>
  index === columns.length - 1 ? 0 : PAD_X;

/** Between a column to write in and its neighbours; the table has no sides. */
const sideLine = (columns: readonly Column[], line: number): number => {
  const isInside = line > 0 && line < columns.length;
  const isWritten = columns[line]?.isWritten === true || columns[line - 1]?.isWritten === true;
  return isInside && isWritten ? HAIR : 0;
};

/** `heads` lines of the table are its head; a line below them belongs to the row above it. */
const layoutOf = (
  rows: readonly Row[],
  columns: readonly Column[],
  heads: number,
): CustomTableLayout => {
  const isThick = (line: number): boolean =>
    rows[line - heads]?.rule === 'thick' || rows[line - heads - 1]?.rule === 'thick';
  const isHead = (line: number): boolean => heads > 0 && line === heads;
  return {
    hLineWidth: (line) => {
      if (line === 0) return heads === 0 && isThick(line) ? THICK : 0;
      return isHead(line) || isThick(line) ? THICK : HAIR;
    },
    vLineWidth: (line) => sideLine(columns, line),
    vLineColor: () => GREY,
    hLineColor: (line) => (isHead(line) || isThick(line) ? 'black' : GREY),
    paddingLeft: (column) => paddingLeft(columns, column),
    paddingRight: (column) => paddingRight(columns, column),
    paddingTop: () => PAD_Y,
    paddingBottom: () => PAD_Y,
  };
};

/** The maker of the PDF adds the padding to a width, so that it is taken off before. */
const widthsOf = (columns: readonly Column[], width: number): number[] => {
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  return columns.map(({ share }, index) => {
    const padding = paddingLeft(columns, index) + paddingRight(columns, index);
    return (share / total) * width - padding - sideLine(columns, index);
  });
};

const ROW_EDGES = 2 * PAD_Y + THICK;

const rowHeight = ({ cells, isGroup }: Row, widths: readonly number[]): number => {
  const whole = widths.reduce((sum, each) => sum + each, 0);
  const heights = cells.map((cell, index) =>
    heightOf(cell, TEXT_SIZE, isGroup === true ? whole : (widths[index] ?? whole)),
  );
  return Math.max(TEXT_SIZE * LEADING, ...heights) + ROW_EDGES;
};

/** What a table will stand high at the most, with a head of two lines. */
export const tableHeight = ({ rows, columns }: Table, width: number): number => {
  const widths = widthsOf(columns, width);
  return rows.reduce((sum, row) => sum + rowHeight(row, widths), 2 * HEAD_SIZE * LEADING + 10);
};

const rowsTable = (
  rows: readonly Row[],
  columns: readonly Column[],
  { width, hasHead }: { readonly width: number; readonly hasHead: boolean },
): ContentTable => {
  const widths = widthsOf(columns, width);
  const heads = hasHead
    ? [columns.map((column, index) => headCell(column, widths[index] ?? width))]
    : [];
  // What may not break must fit on a page, or its end would be lost.
  const areKept = rows.every((row) => rowHeight(row, widths) <= KEPT_MOST);
  return {
    table: {
      ...(hasHead ? { headerRows: 1 } : {}),
      ...(hasHead && areKept && rows.length > 0 ? { keepWithHeaderRows: 1 } : {}),
      dontBreakRows: areKept,
      widths,
      body: [...heads, ...rows.map((row) => bodyCells(row, columns))],
    },
    layout: layoutOf(rows, columns, hasHead ? 1 : 0),
  };
};

/** What is left of a group from one of its rows on. */
const toEnd = (rows: readonly Row[], heights: readonly number[], from: number): number => {
  const next = rows.findIndex(({ isGroup }, at) => at > from && isGroup === true);
  const rest = heights.slice(from, next === -1 ? undefined : next);
  return rest.reduce((sum, each) => sum + each, 0);
};

/** Rows from one group row to the next; a tall group in pieces, each under its name. */
const groupsOf = (rows: readonly Row[], widths: readonly number[]): readonly (readonly Row[])[] => {
  const groups: Row[][] = [];
  let name: Row | null = null;
  let height = 0;
  const heights = rows.map((row) => rowHeight(row, widths));
  for (const [at, row] of rows.entries()) {
    const own = heights[at] ?? 0;
    if (row.isGroup === true) {
      groups.push([row]);
      name = row;
      height = own;
    } else if (
      groups.length === 0 ||
      (height + own > KEPT_MOST && height + toEnd(rows, heights, at) > KEPT_END)
    ) {
      groups.push(name === null ? [row] : [continued(name), row]);
      height = own + (name === null ? 0 : rowHeight(name, widths));
    } else {
      groups.at(-1)?.push(row);
      height += own;
    }
  }
  return groups;
};

const continued = (name: Row): Row => ({
  ...name,
  cells: [[...(name.cells[0] ?? []), ', continued']],
});

const GROUP_GAP = 7;

/** Each group is one row of an outer table, so that no page parts it; the head comes again. */
const groupedTable = ({ columns, rows }: Table, width: number): ContentTable => {
  const widths = widthsOf(columns, width);
  const groups = groupsOf(rows, widths);
  const areKept = rows.every((row) => rowHeight(row, widths) <= KEPT_MOST / 2);
  return {
    table: {
      headerRows: 1,
      ...(areKept ? { keepWithHeaderRows: 1 } : {}),
      dontBreakRows: areKept,
      widths: [width],
      body: [
        [rowsTable([], columns, { width, hasHead: true })],
        ...groups.map((group): TableCell[] => [
          {
            ...rowsTable(group, columns, { width, hasHead: false }),
            margin: [0, 0, 0, GROUP_GAP],
          },
        ]),
      ],
    },
    layout: {
      hLineWidth: () => 0,
      vLineWidth: () => 0,
      paddingLeft: () => 0,
      paddingRight: () => 0,
      paddingTop: () => 0,
      paddingBottom: () => 0,
    },
  };
};

export const tableContent = (table: Table, width: number): ContentTable => ({
  ...(table.rows.some(({ isGroup }) => isGroup === true)
    ? groupedTable(table, width)
    : rowsTable(table.rows, table.columns, { width, hasHead: true })),
  margin: [0, 0, 0, 6],
});
