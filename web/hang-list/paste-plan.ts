/**
 * Where each cell of a pasted text goes, and which cells are not understood. Nothing is dropped
 * unsaid: a cell over a column that is worked out must be blank, or say what stands there.
 */
import type { House } from '#house';
import { unreachable } from '#outcome';
import { decimalMarkOf, parseQuantity } from '#quantities';
import { HANG_FAMILIES } from '#show';
import { phrase, told, type Voice } from '#texts';
import type { Cells } from '../grid/clip-text.ts';
import type { Place } from '../grid/selection.ts';
import { readTyped } from '../grid/typed-marks.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { cellText, type Telling } from './cell-text.ts';
import { type Column, headWords, isTyped, type TypedColumn } from './columns.ts';
import { familyWords } from './row-words.ts';
import type { RowEdit } from './sheet-edits.ts';

/** A cell that was not understood: where it would go, what it said, what could stand there. */
export type CellFault = {
  /** "row 3, set 5, in trim" */
  readonly where: string;
  readonly found: string;
  readonly accepted: string;
};

export type PastePlan =
  | { readonly ok: true; readonly edits: readonly RowEdit[] }
  | { readonly ok: false; readonly faults: readonly CellFault[] };

export type Sheet = {
  /** All sets of the house, in rail order. */
  readonly sets: readonly SetReckoning[];
  /** Those that are shown, in the order in which they are. */
  readonly rows: readonly string[];
  readonly columns: readonly Column[];
  readonly telling: Telling;
};

type Judged = { readonly text: string } | { readonly found: string; readonly accepted: string };

/** Longer texts are told by their beginning: a fault is a line, not a page. */
const FOUND_LETTERS = 60;

export const shortened = (text: string): string =>
  text.length > FOUND_LETTERS ? `“${text.slice(0, FOUND_LETTERS)} …”` : `“${text}”`;

const found = (text: string, voice: Voice): string =>
  text === '' ? phrase(voice, 'nothing') : shortened(text);

const judgeLength = (text: string, house: House): Judged => {
  if (text === '') return { text };
  const mark = decimalMarkOf(house);
  const read = readTyped('length', text, mark);
  const refused = (accepted: string): Judged => ({
    found: found(text, house),
    accepted: told(house, accepted),
  });
  if (!read.ok) return refused(read.error.accepted);
  const judged = parseQuantity('length', read.value);
  return judged.ok ? { text: read.value } : refused(judged.error.accepted);
};

/** By its word in a document, or as the list reads in the language of the device. */
const judgeKind = (text: string, house: House): Judged => {
  const asked = text.toLowerCase();
  const family = HANG_FAMILIES.find(
    (each) => each === asked || familyWords(each, house).toLowerCase() === asked,
  );
  return family !== undefined
    ? { text: family === asked ? text : family }
    : {
        found: found(text, house),
        accepted: phrase(house, '{kinds} or {last}', {
          kinds: HANG_FAMILIES.slice(0, -1)
            .map((each) => (house.tongue === undefined ? each : familyWords(each, house)))
            .join(', '),
          last: house.tongue === undefined ? 'other' : familyWords('other', house),
        }),
      };
};

const judgeName = (text: string, house: House): Judged =>
  text === ''
    ? {
        found: found(text, house),
        accepted: phrase(
          house,
          'a name. To leave a set empty, take its whole row and press Delete',
        ),
      }
    : { text };

const judgeTyped = (column: TypedColumn, text: string, house: House): Judged => {
  switch (column) {
    case 'item':
      return judgeName(text, house);
    case 'kind':
      return judgeKind(text, house);
    case 'in':
    case 'out':
    case 'depth':
      return judgeLength(text, house);
    default:
      return unreachable(column);
  }
};

/** Null where the cell says what stands there already. */
const judgeCell = (
  each: SetReckoning,
  column: Column,
  text: string,
  telling: Telling,
): Judged | null => {
  const now = cellText(each, column, telling);
  if (text === now) return null;
  if (isTyped(column)) return judgeTyped(column, text, telling.house);
  if (text === '') return null;
  const { house } = telling;
  const stands = found(now, house);
  return {
    found: found(text, house),
    accepted:
      column === 'set'
        ? phrase(house, '{stands}, the set of this row', { stands })
        : phrase(house, 'nothing, or {stands}: this column is not typed into', { stands }),
  };
};

type Row = { readonly number: number; readonly cells: readonly string[]; readonly set: string };

type RowAnswer = { readonly edit: RowEdit | null; readonly faults: readonly CellFault[] };

const whereIn = ({ number, set }: Row, column: Column, house: House): string =>
  phrase(house, 'row {number}, set {set}, {head}', { number, set, head: headWords(column, house) });

const planRow = (
  row: Row,
  each: SetReckoning,
  columns: readonly Column[],
  telling: Telling,
): RowAnswer => {
  const { house } = telling;
  const texts: Partial<Record<TypedColumn, string>> = {};
  const faults: CellFault[] = [];
  row.cells.forEach((text, index) => {
    const column = columns[index];
    if (column === undefined) {
      if (text === '') return;
      const where = phrase(house, 'row {number}, set {set}, column {column} of the text', {
        number: row.number,
        set: row.set,
        column: index + 1,
      });
      const accepted = phrase(house, 'nothing: the list ends before');
      faults.push({ where, found: found(text, house), accepted });
      return;
    }
    const judged = judgeCell(each, column, text, telling);
    if (judged === null) return;
    if ('accepted' in judged) faults.push({ where: whereIn(row, column, house), ...judged });
    else if (isTyped(column)) texts[column] = judged.text;
  });
  const isNameless = each.set.hang === null && texts.item === undefined;
  const [orphan] = isNameless ? Object.entries(texts) : [];
  if (orphan !== undefined) {
    const where = whereIn(row, orphan[0] as Column, house);
    const accepted = phrase(house, 'nothing here until the empty set has a name under item');
    const fault = { where, found: found(orphan[1], house), accepted };
    return { edit: null, faults: [...faults, fault] };
  }
  return { edit: Object.keys(texts).length === 0 ? null : { each, texts }, faults };
};

/** From the column of set numbers each row goes to its own set, in whatever order it comes. */
const setsOf = (cells: Cells, anchor: Place, sheet: Sheet): readonly (string | CellFault)[] => {
  const first = sheet.rows.indexOf(anchor.row);
  const isNumbered = anchor.column === 'set';
  const seen = new Set<string>();
  const { house } = sheet.telling;
  const atSet = (number: number): string => phrase(house, 'row {number}, set', { number });
  return cells.map((row, index) => {
    const number = index + 1;
    const set = isNumbered ? (row[0] ?? '') : (sheet.rows[first + index] ?? '');
    if (!isNumbered) {
      if (set !== '') return set;
      const where = phrase(house, 'row {number}', { number });
      const accepted = phrase(house, 'nothing: the list ends above');
      return { where, found: found(row.join(' '), house), accepted };
    }
    if (!sheet.rows.includes(set)) {
      const isHidden = sheet.sets.some(({ id }) => id === set);
      const accepted = isHidden
        ? phrase(house, 'a set that is shown: this one is hidden by the filter')
        : phrase(house, 'the number of a set of this house');
      return { where: atSet(number), found: found(set, house), accepted };
    }
    const isAgain = seen.has(set);
    seen.add(set);
    if (!isAgain) return set;
    const accepted = phrase(house, 'each set once');
    return {
      where: atSet(number),
      found: phrase(house, 'set {set} a second time', { set }),
      accepted,
    };
  });
};

const isFault = (each: string | CellFault): each is CellFault => typeof each !== 'string';

/** The whole text laid over the sheet from one cell on. Faults are all named, or none is there. */
export const pastePlan = (cells: Cells, anchor: Place, sheet: Sheet): PastePlan => {
  const columns = sheet.columns.slice(sheet.columns.indexOf(anchor.column as Column));
  const byId = new Map(sheet.sets.map((each) => [each.id, each]));
  const answers = setsOf(cells, anchor, sheet).map((set, index): RowAnswer => {
    if (isFault(set)) return { edit: null, faults: [set] };
    const each = byId.get(set);
    const row = { number: index + 1, cells: cells[index] ?? [], set };
    return each === undefined
      ? { edit: null, faults: [] }
      : planRow(row, each, columns, sheet.telling);
  });
  const faults = answers.flatMap((answer) => answer.faults);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, edits: answers.flatMap(({ edit }) => (edit === null ? [] : [edit])) };
};

/** One copied cell over several takes them all, as in any sheet. */
export const spreadOver = (
  cells: Cells,
  range: { readonly rows: readonly string[]; readonly columns: readonly string[] },
): Cells => {
  const [[only, ...more] = [], ...rows] = cells;
  if (only === undefined || more.length > 0 || rows.length > 0) return cells;
  return range.rows.map(() => range.columns.map(() => only));
};

export type Fill = {
  readonly from: string;
  readonly into: readonly string[];
  readonly columns: readonly TypedColumn[];
};

/** The first row of several into the others; into one row alone, from the row above it. */
export const fillOf = (
  range: { readonly rows: readonly string[]; readonly columns: readonly string[] },
  sheet: Pick<Sheet, 'rows'>,
): Fill | null => {
  const [first, ...others] = range.rows;
  if (first === undefined) return null;
  const above = sheet.rows[sheet.rows.indexOf(first) - 1];
  const from = others.length > 0 ? first : above;
  if (from === undefined) return null;
  return {
    from,
    into: others.length > 0 ? others : [first],
    columns: range.columns.filter(isTyped),
  };
};

/** What a fill would type, judged like a pasted text. */
export const fillPlan = ({ from, into, columns }: Fill, sheet: Sheet): PastePlan => {
  const source = sheet.sets.find(({ id }) => id === from);
  const byId = new Map(sheet.sets.map((each) => [each.id, each]));
  if (source === undefined) return { ok: true, edits: [] };
  const cells = columns.map((column) => cellText(source, column, sheet.telling));
  const answers = into.flatMap((set, index): readonly RowAnswer[] => {
    const each = byId.get(set);
    const row = { number: index + 1, cells, set };
    return each === undefined ? [] : [planRow(row, each, columns, sheet.telling)];
  });
  const faults = answers.flatMap((answer) => answer.faults);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, edits: answers.flatMap(({ edit }) => (edit === null ? [] : [edit])) };
};
