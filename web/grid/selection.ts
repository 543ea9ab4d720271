/** Several cells of a sheet: from one to another, in whatever order rows and columns are shown. */

/** A cell by its row and its column, both by name, so that sorting moves the choice along. */
export type Place = { readonly row: string; readonly column: string };

/** From the cell in hand to the other corner. */
export type Selection = { readonly from: Place; readonly to: Place };

/** The sheet as it is shown. Its first column heads the rows: from there whole rows are meant. */
export type Shown = { readonly rows: readonly string[]; readonly columns: readonly string[] };

export type Range = Shown & { readonly isWholeRows: boolean };

const between = (list: readonly string[], one: string, other: string): readonly string[] => {
  const ends = [list.indexOf(one), list.indexOf(other)];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  return low < 0 ? [] : list.slice(low, high + 1);
};

/** The cells of the choice; null where a corner is no longer shown. */
export const rangeOf = ({ from, to }: Selection, shown: Shown): Range | null => {
  const [first = '', last = ''] = [shown.columns[0], shown.columns.at(-1)];
  const isWholeRows = from.column === first;
  const rows = between(shown.rows, from.row, to.row);
  const columns = isWholeRows
    ? between(shown.columns, first, last)
    : between(shown.columns, from.column, to.column);
  return rows.length === 0 || columns.length === 0 ? null : { rows, columns, isWholeRows };
};

export const isOneCell = ({ rows, columns }: Shown): boolean =>
  rows.length === 1 && columns.length === 1;

const STEPS: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

const stepped = (list: readonly string[], from: string, by: number, isFar: boolean): string => {
  if (by === 0) return from;
  const edge = by < 0 ? 0 : list.length - 1;
  const next = isFar ? edge : list.indexOf(from) + by;
  return list[Math.min(Math.max(next, 0), list.length - 1)] ?? from;
};

/** The choice with its other corner moved by an arrow key, or as far as it goes. */
export const extended = (
  { from, to }: Selection,
  shown: Shown,
  key: { readonly key: string; readonly isFar: boolean },
): Selection | null => {
  const step = STEPS[key.key];
  if (step === undefined) return null;
  const [down, right] = step;
  return {
    from,
    to: {
      row: stepped(shown.rows, to.row, down, key.isFar),
      column: stepped(shown.columns, to.column, right, key.isFar),
    },
  };
};

/** The rows of the choice as a whole. */
export const wholeRows = ({ from, to }: Selection, { columns }: Shown): Selection => ({
  from: { row: from.row, column: columns[0] ?? from.column },
  to: { row: to.row, column: columns.at(-1) ?? to.column },
});

export const wholeSheet = ({ rows, columns }: Shown): Selection | null => {
  const [top, bottom, left, right] = [rows[0], rows.at(-1), columns[0], columns.at(-1)];
  if (top === undefined || bottom === undefined) return null;
  if (left === undefined || right === undefined) return null;
  return { from: { row: top, column: left }, to: { row: bottom, column: right } };
};
