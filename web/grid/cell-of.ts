/** What marks a cell as one of a sheet with named columns, in which several can be chosen. */
export const cellOf = (column: string | undefined) =>
  column === undefined ? {} : { 'data-col': column, role: 'gridcell' };
