/**
 * Moving among the cells of a grid as in a sheet. What is a row and what is a cell is read from the
 * page, so that the rows of an opened set lie between the others without anybody counting.
 */
const CELL = '[data-cell]';
const ROW = '[data-row]';

const rowOf = (cell: Element): Element | null => cell.closest(ROW);

/** A column that is hidden is passed over. */
export const isShown = (cell: Element): boolean => cell.getClientRects().length > 0;

const cellsOf = (row: Element): readonly HTMLElement[] =>
  [...row.querySelectorAll<HTMLElement>(CELL)].filter(
    (cell) => rowOf(cell) === row && isShown(cell),
  );

const rowsOf = (cell: Element): readonly Element[] => [
  ...(cell.closest('[data-grid]')?.querySelectorAll(ROW) ?? []),
];

/** Without the heads of the columns. */
const bodyRowsOf = (cell: Element): readonly Element[] =>
  rowsOf(cell).filter((row) => row.closest('thead') === null);

/** The first of these rows in which there is a cell to go to; to measure them all takes long. */
const firstCells = (rows: readonly Element[]): readonly HTMLElement[] => {
  for (const row of rows) {
    const cells = cellsOf(row);
    if (cells.length > 0) return cells;
  }
  return [];
};

/** Columns begin together; a wide cell would lead the eye astray by its middle. */
const startOf = (cell: Element): number => cell.getBoundingClientRect().left;

const nearest = (cells: readonly HTMLElement[], to: Element): HTMLElement | undefined => {
  const start = startOf(to);
  const distance = (cell: Element): number => Math.abs(startOf(cell) - start);
  return cells.toSorted((one, other) => distance(one) - distance(other))[0];
};

const acrossRows = (cell: HTMLElement, step: 1 | -1): HTMLElement | undefined => {
  const own = rowOf(cell);
  // Mostly the next row stands beside, and need not be looked for among all.
  const beside = step > 0 ? own?.nextElementSibling : own?.previousElementSibling;
  if (beside?.matches(ROW)) {
    const cells = cellsOf(beside);
    if (cells.length > 0) return nearest(cells, cell);
  }
  const rows = rowsOf(cell);
  const here = rows.indexOf(own ?? cell);
  if (here < 0) return undefined;
  const ahead = step > 0 ? rows.slice(here + 1) : rows.slice(0, here).reverse();
  return nearest(firstCells(ahead), cell);
};

const alongRow = (cell: HTMLElement, step: 1 | -1): HTMLElement | undefined => {
  const cells = ownCells(cell);
  return cells[cells.indexOf(cell) + step];
};

export type Way = 'up' | 'down' | 'left' | 'right' | 'first' | 'last' | 'top' | 'bottom';

const ownCells = (cell: HTMLElement): readonly HTMLElement[] => {
  const row = rowOf(cell);
  return row === null ? [] : cellsOf(row);
};

const WAYS: Readonly<Record<Way, (cell: HTMLElement) => HTMLElement | undefined>> = {
  up: (cell) => acrossRows(cell, -1),
  down: (cell) => acrossRows(cell, 1),
  left: (cell) => alongRow(cell, -1),
  right: (cell) => alongRow(cell, 1),
  first: (cell) => ownCells(cell)[0],
  last: (cell) => ownCells(cell).at(-1),
  top: (cell) => nearest(firstCells(bodyRowsOf(cell)), cell),
  bottom: (cell) => nearest(firstCells(bodyRowsOf(cell).toReversed()), cell),
};

/** Focuses the neighbour; false where there is none that way. */
export const moveFrom = (cell: HTMLElement, way: Way): boolean => {
  const next = WAYS[way](cell);
  next?.focus();
  return next !== undefined;
};

const KEYS: Readonly<Record<string, Way>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
  Home: 'first',
  End: 'last',
};

/** Which way a key leads. Tab goes along the row, and at its end out of the grid. */
export const wayOf = (event: {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
}): Way | null => {
  const isFar = event.ctrlKey || event.metaKey;
  if (event.key === 'Tab') return event.shiftKey ? 'left' : 'right';
  if (isFar && event.key === 'Home') return 'top';
  if (isFar && event.key === 'End') return 'bottom';
  return isFar ? null : (KEYS[event.key] ?? null);
};
