/** A sheet as plain cells. What a program would work out or has altered is marked, and not text. */
import { type Refusal, refusal } from '#outcome';
import { REFUSALS, type RefusalName } from './refusal-codes.ts';

export type Cell = {
  /** `number` is bare; `date` and `error` are what a spreadsheet program made of the cell. */
  readonly is: 'text' | 'number' | 'formula' | 'date' | 'error';
  readonly text: string;
};

export type Sheet = {
  readonly name: string;
  /** From the first row on; rows may be of different length. */
  readonly rows: readonly (readonly Cell[])[];
};

/** A table as it goes out: text only, the headings in the first row. */
export type TextTable = {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
};

export const textCell = (text: string): Cell => ({ is: 'text', text });

export const BLANK: Cell = textCell('');

const LETTERS = 26;

/** 0 is A, 25 is Z, 26 is AA. */
export const columnName = (column: number): string => {
  const letter = String.fromCharCode(65 + (column % LETTERS));
  return column < LETTERS ? letter : columnName(Math.floor(column / LETTERS) - 1) + letter;
};

/** `Schedule!C7`; row and column count from 0. */
export const cellName = (sheet: string, row: number, column: number): string =>
  `${sheet}!${columnName(column)}${row + 1}`;

export const refuse = (
  name: RefusalName,
  where: string,
  words: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, where, words);

const FOUND_MAX = 60;

/** A text as it is named in a refusal, never longer than a line. */
export const quoted = (text: string): string =>
  JSON.stringify(text.length <= FOUND_MAX ? text : `${text.slice(0, FOUND_MAX - 1)}…`);
