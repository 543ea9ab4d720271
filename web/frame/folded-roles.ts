/**
 * Roles of a table that folds on a narrow screen (`folds`, `folds-early`, `stacked`). There its
 * parts are laid out as blocks, and a browser may then no longer tell a reader of the screen that
 * they are a table; a role that is written down is kept.
 */
export const FOLDED = {
  table: { role: 'table' },
  rows: { role: 'rowgroup' },
  row: { role: 'row' },
  columnHead: { role: 'columnheader' },
  rowHead: { role: 'rowheader' },
  cell: { role: 'cell' },
} as const;
