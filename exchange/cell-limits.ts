import type { Refusal } from '#outcome';
import { CELL_CHARACTERS_MAX, COLUMNS_MAX, ROWS_MAX } from './limits.ts';
import { refuse } from './sheet.ts';

export type CellAt = { readonly row: number; readonly column: number; readonly characters: number };

/** Why a cell has no place in a table that we read; row and column count from 0. */
export const cellFault = (where: string, { row, column, characters }: CellAt): Refusal | null => {
  if (row >= ROWS_MAX) {
    const accepted = `at most ${ROWS_MAX} rows`;
    return refuse('tooManyRows', where, { found: `row ${row + 1}`, accepted });
  }
  if (column >= COLUMNS_MAX) {
    const accepted = `at most ${COLUMNS_MAX} columns`;
    return refuse('tooManyColumns', where, { found: `column ${column + 1}`, accepted });
  }
  if (characters <= CELL_CHARACTERS_MAX) return null;
  const accepted = `at most ${CELL_CHARACTERS_MAX} characters`;
  return refuse('cellTooLong', where, { found: `${characters} characters`, accepted });
};
