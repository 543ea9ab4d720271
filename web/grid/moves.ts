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

const rowsOf = (cell: Element): readonly Element[] => {
  const grid = cell.closest('[data-grid]');
  if (grid === null) return [];
  return [...grid.querySelectorAll(ROW)].filter((row) => cellsOf(row).length > 0);
};

/** Columns begin together; a wide cell would lead the eye astray by its middle. */
const startOf = (cell: Element): number => cell.getBoundingClientRect().left;

const nearest = (cells: readonly HTMLElement[], to: Element): HTMLElement | undefined => {
  const start = startOf(to);
  const distance = (cell: Element): number => Math.abs(startOf(cell) - start);
  return cells.toSorted((one, other) => distance(one) - distance(other))[0];
};

const acrossRows = (cell: HTMLElement, step: 1 | -1): HTMLElement | undefined => {
  const rows = rowsOf(cell);
  const here = rows.findIndex((row) => row.contains(cell) && row === rowOf(cell));
  const row = here < 0 ? undefined : rows[here + step];
  return row && nearest(cellsOf(row), cell);
};

const alongRow = (cell: HTMLElement, step: 1 | -1): HTMLElement | undefined => {
  const row = rowOf(cell);
  const cells = row === null ? [] : cellsOf(row);
  return cells[cells.indexOf(cell) + step];
};

export type Way = 'up' | 'down' | 'left' | 'right' | 'first' | 'last' | 'top' | 'bottom';

const target = (cell: HTMLElement, way: Way): HTMLElement | undefined => {
  const row = rowOf(cell);
  const own = row === null ? [] : cellsOf(row);
  const rows = rowsOf(cell).filter((each) => each.closest('thead') === null);
  const edge = way === 'top' ? rows[0] : rows.at(-1);
  const ways: Readonly<Record<Way, () => HTMLElement | undefined>> = {
    up: () => acrossRows(cell, -1),
    down: () => acrossRows(cell, 1),
    left: () => alongRow(cell, -1),
    right: () => alongRow(cell, 1),
    first: () => own[0],
    last: () => own.at(-1),
    top: () => edge && nearest(cellsOf(edge), cell),
    bottom: () => edge && nearest(cellsOf(edge), cell),
  };
  return ways[way]();
};

/** Focuses the neighbour; false where there is none that way. */
export const moveFrom = (cell: HTMLElement, way: Way): boolean => {
  const next = target(cell, way);
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
