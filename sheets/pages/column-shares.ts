/** Widths of the columns of a table from what stands in them, so that no number is ever broken. */
import { textWidth } from '#drawings';
import type { Column, Inline, Row, Table } from '../sheet.ts';
import { NOTE, TEXT } from './measure.ts';

/** Points left and right of the words of a cell; more between a number and words behind it. */
const PADDING = 9;
const AFTER_NUMBER = 15;
const inlineWidth = (inline: Inline): number => {
  if (typeof inline === 'string') return textWidth(inline, TEXT.size);
  return 'strong' in inline ? textWidth(inline.strong, TEXT.size, { weight: 'strong' }) : 0;
};

const cellWidth = (row: Row, index: number): number =>
  row.isGroup === true
    ? 0
    : (row.cells[index] ?? []).reduce((sum, inline) => sum + inlineWidth(inline), 0);

const headWidth = ({ head, unit }: Column): number =>
  Math.max(textWidth(head, NOTE.size), textWidth(unit ?? '', NOTE.size));

const paddingOf = (table: Table, index: number): number =>
  table.columns[index]?.align === 'left' && table.columns[index - 1]?.align === 'right'
    ? AFTER_NUMBER
    : PADDING;

/** What a column takes when nothing in it is broken. */
const naturalWidth = (table: Table, index: number): number => {
  const column = table.columns[index];
  if (column === undefined) return 0;
  const cells = table.rows.map((row) => cellWidth(row, index));
  return Math.max(headWidth(column), ...cells) + paddingOf(table, index);
};

const widestWord = (inline: Inline): number => {
  if (typeof inline !== 'string' && !('strong' in inline)) return 0;
  const [text, weight] =
    typeof inline === 'string' ? [inline, 'plain' as const] : [inline.strong, 'strong' as const];
  return Math.max(...text.split(' ').map((word) => textWidth(word, TEXT.size, { weight })));
};

/** What a column of words takes when every line holds one word. */
const leastWidth = (table: Table, index: number): number => {
  const column = table.columns[index];
  if (column === undefined) return 0;
  const cells = table.rows.map((row) =>
    row.isGroup === true ? 0 : Math.max(0, ...(row.cells[index] ?? []).map(widestWord)),
  );
  return Math.max(headWidth(column), ...cells) + paddingOf(table, index);
};

/** Spare width for those that wish for little first; who wishes for most takes what is left. */
const granted = (wishes: readonly number[], spare: number): readonly number[] => {
  const order = wishes
    .map((_, index) => index)
    .toSorted((one, other) => (wishes[one] ?? 0) - (wishes[other] ?? 0));
  const grants = wishes.map(() => 0);
  let left = spare;
  for (const index of order) {
    const grant = Math.min(wishes[index] ?? 0, left);
    grants[index] = grant;
    left -= grant;
  }
  return grants;
};

/**
 * The table with shares for a width in points: numbers take what they need, columns to write in
 * keep the share they were given, and words take their longest word and share the rest.
 */
export const fitted = (table: Table, width: number): Table => {
  const isWords = ({ align, isWritten }: Column): boolean => align === 'left' && isWritten !== true;
  const least = table.columns.map((column, index) => {
    if (column.isWritten === true) return column.share * width;
    return isWords(column) ? leastWidth(table, index) : naturalWidth(table, index);
  });
  const wishes = table.columns.map((column, index) =>
    isWords(column) ? naturalWidth(table, index) - (least[index] ?? 0) : 0,
  );
  const taken = least.reduce((sum, each) => sum + each, 0);
  const grants = granted(wishes, Math.max(0, width - taken));
  const columns = table.columns.map((column, index): Column => {
    const points = (least[index] ?? 0) + (grants[index] ?? 0);
    return { ...column, share: points / width };
  });
  return { ...table, columns };
};
