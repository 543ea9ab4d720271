/** What is done to several cells at once: each act is one edit, which one undo takes back. */
import { type ClipboardEvent, useState } from 'react';
import type { Refusal } from '#outcome';
import { isTyping } from '../frame/is-typing.ts';
import { cellsOfText, htmlOfCells, isManyCells, textOfCells } from '../grid/clip-text.ts';
import { isOneCell, type Range } from '../grid/selection.ts';
import type { Choosing } from '../grid/use-selection.ts';
import type { JsonObject } from '../keeping/json.ts';
import { type Editing, useEditing } from '../reckoning/use-work.ts';
import { cellText } from './cell-text.ts';
import { headWords, isColumn, isTyped } from './columns.ts';
import {
  type CellFault,
  fillOf,
  fillPlan,
  type PastePlan,
  pastePlan,
  type Sheet,
  spreadOver,
} from './paste-plan.ts';
import {
  clearing,
  isClearable,
  placeOfRefusal,
  type RowEdit,
  withoutHangs,
  withRows,
} from './sheet-edits.ts';

/** What an act came to: a sentence, or why nothing was changed. */
export type Outcome =
  | { readonly kind: 'done'; readonly words: string }
  | { readonly kind: 'refused'; readonly title: string; readonly faults: readonly CellFault[] };

export const many = (count: number, one: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${one}s`;

const cellsIn = (edits: readonly RowEdit[]): number =>
  edits.reduce((total, { texts }) => total + Object.keys(texts).length, 0);

const setsWords = (rows: readonly string[]): string =>
  rows.length === 1 ? `set ${rows[0]}` : `sets ${rows[0]} to ${rows.at(-1)}`;

export type Acts = {
  readonly outcome: Outcome | null;
  readonly onCopy: (event: ClipboardEvent) => void;
  readonly onPaste: (event: ClipboardEvent) => void;
  readonly copy: () => void;
  readonly paste: (text: string) => boolean;
  readonly fill: () => void;
  readonly clear: () => void;
};

type ActParts = {
  readonly sheet: Sheet;
  readonly railOrder: readonly string[];
  readonly choosing: Choosing;
};

/** What every act needs: the list as it is, and where its outcome is told. */
type Desk = ActParts & {
  readonly editing: Editing;
  readonly tell: (outcome: Outcome) => void;
};

const done = ({ tell }: Desk, words: string): void => tell({ kind: 'done', words });

const refuse = ({ tell }: Desk, verb: string, faults: readonly CellFault[]): false => {
  tell({ kind: 'refused', title: `not ${verb}, nothing changed`, faults });
  return false;
};

/** What was done, and the word for not having done it. */
type Deed = { readonly what: string; readonly verb: string };

/** One write, one reading of the result, one step back. */
const change = (
  desk: Desk,
  edits: readonly RowEdit[],
  write: (show: JsonObject) => JsonObject,
  { what, verb }: Deed,
): boolean => {
  let next: JsonObject = {};
  const refusals = desk.editing.change({
    what,
    write: (show) => {
      next = write(show);
      return next;
    },
  });
  if (refusals.length === 0) return true;
  return refuse(desk, verb, refusals.map(faultOf(next, edits, desk.sheet)));
};

const take = (desk: Desk, plan: PastePlan, deed: Deed): boolean => {
  if (!plan.ok) return refuse(desk, deed.verb, plan.faults);
  const { edits } = plan;
  if (edits.length === 0) {
    done(desk, `Nothing to change: the cells say that already (${deed.what}).`);
    return true;
  }
  const isTaken = change(desk, edits, (show) => withRows(show, edits, desk.railOrder), deed);
  const cells = many(cellsIn(edits), 'cell');
  if (isTaken) done(desk, `${capital(deed.what)}: ${cells} changed. One undo takes it back.`);
  return isTaken;
};

const paste = (desk: Desk, text: string): boolean => {
  const { sheet, choosing } = desk;
  const range = choosing.ask();
  const anchor = anchorOf(range);
  const read = cellsOfText(text);
  if (range === null || anchor === null) return false;
  if (!read.ok) return refuse(desk, 'pasted', [{ where: 'the whole text', ...read }]);
  const cells = isOneCell(range) ? read.cells : spreadOver(read.cells, range);
  const head = isColumn(anchor.column) ? headWords(anchor.column, sheet.telling.house) : '';
  const what = `pasted ${many(cells.length, 'row')} from set ${anchor.row}, ${head}`;
  return take(desk, pastePlan(cells, anchor, sheet), { what, verb: 'pasted' });
};

const fill = (desk: Desk): void => {
  const range = desk.choosing.ask();
  const planned = range === null ? null : fillOf(range, desk.sheet);
  if (planned === null || planned.columns.length === 0) {
    done(desk, 'Nothing to fill: choose cells that are typed into, below another row.');
    return;
  }
  const what = `filled set ${planned.from} down into ${setsWords(planned.into)}`;
  take(desk, fillPlan(planned, desk.sheet), { what, verb: 'filled' });
};

const empty = (desk: Desk, hung: readonly string[]): void => {
  const what = `left ${setsWords(hung)} empty in this show`;
  const isTaken = change(desk, [], (show) => withoutHangs(show, hung), { what, verb: 'emptied' });
  const rows = many(hung.length, 'row');
  if (isTaken) done(desk, `${capital(what)}: ${rows} emptied. One undo brings it back.`);
};

const clear = (desk: Desk): void => {
  const range = desk.choosing.ask();
  if (range === null) return;
  const sets = desk.sheet.sets.filter(({ id }) => range.rows.includes(id));
  const hung = sets.filter(({ set }) => set.hang !== null).map(({ id }) => id);
  if (desk.choosing.range?.isWholeRows && hung.length > 0) {
    empty(desk, hung);
    return;
  }
  const columns = range.isWholeRows ? [] : range.columns.filter(isTyped).filter(isClearable);
  const edits = sets.flatMap((each) => clearing(each, columns) ?? []);
  if (edits.length > 0) {
    const what = `cleared ${setsWords(range.rows)}`;
    take(desk, { ok: true, edits }, { what, verb: 'cleared' });
  } else {
    done(desk, 'Nothing to clear here: heights and depths are cleared, whole rows are emptied.');
  }
};

const copyInto = (desk: Desk, event: ClipboardEvent): void => {
  const range = isTyping(event.target) ? null : desk.choosing.ask();
  const isWords = (window.getSelection()?.toString() ?? '') !== '';
  if (range === null || isWords) return;
  const cells = cellTexts(range, desk.sheet);
  event.clipboardData.setData('text/plain', textOfCells(cells));
  event.clipboardData.setData('text/html', htmlOfCells(cells));
  event.preventDefault();
  done(desk, `Copied ${rangeWords(range)}.`);
};

const pasteFrom = (desk: Desk, event: ClipboardEvent): void => {
  const text = event.clipboardData.getData('text/plain');
  if (text === '' || desk.choosing.ask() === null) return;
  const { target } = event;
  if (isTyping(target)) {
    if (!isManyCells(text)) return;
    // What was begun in the one cell gives way to the text that goes over several.
    target.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  }
  event.preventDefault();
  paste(desk, text);
};

/** Works where the clipboard itself is closed to a page, as on a network without certificates. */
const copyByButton = (desk: Desk): void => {
  const { choosing } = desk;
  choosing.focus(choosing.inHand() ?? anchorOf(choosing.ask()));
  if (!document.execCommand('copy')) {
    done(desk, 'This browser let nothing be copied by a button; its own keys may.');
  }
};

export const useSheetActs = (parts: ActParts): Acts => {
  const editing = useEditing();
  const [outcome, tell] = useState<Outcome | null>(null);
  const desk: Desk = { ...parts, editing, tell };
  return {
    outcome,
    onCopy: (event) => copyInto(desk, event),
    onPaste: (event) => pasteFrom(desk, event),
    copy: () => copyByButton(desk),
    paste: (text) => paste(desk, text),
    fill: () => fill(desk),
    clear: () => clear(desk),
  };
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const anchorOf = (range: Range | null) => {
  const [row, column] = [range?.rows[0], range?.columns[0]];
  return row === undefined || column === undefined ? null : { row, column };
};

export const rangeWords = ({ rows, columns, isWholeRows }: Range): string => {
  const size = isWholeRows
    ? many(rows.length, 'whole row')
    : `${many(rows.length, 'row')} by ${many(columns.length, 'column')}`;
  return `${size}, ${setsWords(rows)}`;
};

const cellTexts = ({ rows, columns }: Range, { sets, telling }: Sheet) => {
  const byId = new Map(sets.map((each) => [each.id, each]));
  return rows.map((row) =>
    columns.map((column) => {
      const each = byId.get(row);
      return each === undefined || !isColumn(column) ? '' : cellText(each, column, telling);
    }),
  );
};

const faultOf =
  (next: JsonObject, edits: readonly RowEdit[], { telling }: Sheet) =>
  ({ path, found, accepted }: Refusal): CellFault => {
    const place = placeOfRefusal(path, next, edits);
    const where =
      place === null ? path : `set ${place.set}, ${headWords(place.column, telling.house)}`;
    return { where, found, accepted };
  };
