/** What is done to several cells at once: each act is one edit, which one undo takes back. */
import { type ClipboardEvent, useContext, useMemo, useState } from 'react';
import type { Refusal } from '#outcome';
import { ENGLISH, message, phrase, phraseCount, told, type Voice } from '#texts';
import { isTyping } from '../frame/is-typing.ts';
import { cellsOfText, htmlOfCells, isManyCells, textOfCells } from '../grid/clip-text.ts';
import { isOneCell, type Range } from '../grid/selection.ts';
import { useSameActs } from '../grid/use-same-acts.ts';
import type { Choosing } from '../grid/use-selection.ts';
import type { JsonObject } from '../keeping/json.ts';
import { RowsAheadContext } from '../reckoning/rows-ahead.ts';
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

const rowsWords = (count: number, voice: Voice): string =>
  phraseCount(voice, count, ['{count} row', '{count} rows']);

const cellsIn = (edits: readonly RowEdit[]): number =>
  edits.reduce((total, { texts }) => total + Object.keys(texts).length, 0);

const setsWords = (rows: readonly string[], voice: Voice): string =>
  rows.length === 1
    ? phrase(voice, 'set {id}', { id: rows[0] ?? '' })
    : phrase(voice, 'sets {from} to {to}', { from: rows[0] ?? '', to: rows.at(-1) ?? '' });

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

const NOT_DONE = {
  pasted: message('not pasted, nothing changed'),
  filled: message('not filled, nothing changed'),
  emptied: message('not emptied, nothing changed'),
  cleared: message('not cleared, nothing changed'),
} as const;

type Verb = keyof typeof NOT_DONE;

const voiceOf = ({ sheet }: Desk): Voice => sheet.telling.house;

const refuse = (desk: Desk, verb: Verb, faults: readonly CellFault[]): false => {
  const title = phrase(voiceOf(desk), NOT_DONE[verb]);
  desk.tell({ kind: 'refused', title, faults });
  return false;
};

/** What was done, as it is said; a record of it is in English, for all who read it later. */
type Deed = { readonly what: (voice: Voice) => string; readonly verb: Verb };

/** One write, one reading of the result, one step back. */
const change = (
  desk: Desk,
  edits: readonly RowEdit[],
  write: (show: JsonObject) => JsonObject,
  { what, verb }: Deed,
): boolean => {
  let next: JsonObject = {};
  const refusals = desk.editing.change({
    what: what(ENGLISH),
    write: (show) => {
      next = write(show);
      return next;
    },
  });
  if (refusals.length === 0) return true;
  return refuse(desk, verb, refusals.map(faultOf(next, edits, desk.sheet)));
};

const take = (desk: Desk, plan: PastePlan, deed: Deed): boolean => {
  const voice = voiceOf(desk);
  if (!plan.ok) return refuse(desk, deed.verb, plan.faults);
  const { edits } = plan;
  if (edits.length === 0) {
    done(
      desk,
      phrase(voice, 'Nothing to change: the cells say that already ({what}).', {
        what: deed.what(voice),
      }),
    );
    return true;
  }
  const isTaken = change(desk, edits, (show) => withRows(show, edits, desk.railOrder), deed);
  if (isTaken) {
    const words = phraseCount(
      voice,
      cellsIn(edits),
      [
        '{what}: 1 cell changed. One undo takes it back.',
        '{what}: {count} cells changed. One undo takes it back.',
      ],
      { what: capital(deed.what(voice)) },
    );
    done(desk, words);
  }
  return isTaken;
};

const paste = (desk: Desk, text: string): boolean => {
  const { sheet, choosing } = desk;
  const range = choosing.ask();
  const anchor = anchorOf(range);
  const read = cellsOfText(text);
  if (range === null || anchor === null) return false;
  if (!read.ok) {
    const where = phrase(voiceOf(desk), 'the whole text');
    const [wasFound, accepted] = [read.found, read.accepted].map((each) =>
      told(voiceOf(desk), each),
    );
    return refuse(desk, 'pasted', [{ where, found: wasFound ?? '', accepted: accepted ?? '' }]);
  }
  const cells = isOneCell(range) ? read.cells : spreadOver(read.cells, range);
  const head = isColumn(anchor.column) ? headWords(anchor.column, sheet.telling.house) : '';
  const what = (voice: Voice): string =>
    phrase(voice, 'pasted {rows} from set {set}, {head}', {
      rows: rowsWords(cells.length, voice),
      set: anchor.row,
      head,
    });
  return take(desk, pastePlan(cells, anchor, sheet), { what, verb: 'pasted' });
};

const fill = (desk: Desk): void => {
  const range = desk.choosing.ask();
  const planned = range === null ? null : fillOf(range, desk.sheet);
  if (planned === null || planned.columns.length === 0) {
    done(
      desk,
      phrase(
        voiceOf(desk),
        'Nothing to fill: choose cells that are typed into, below another row.',
      ),
    );
    return;
  }
  const what = (voice: Voice): string =>
    phrase(voice, 'filled set {from} down into {sets}', {
      from: planned.from,
      sets: setsWords(planned.into, voice),
    });
  take(desk, fillPlan(planned, desk.sheet), { what, verb: 'filled' });
};

const empty = (desk: Desk, hung: readonly string[]): void => {
  const what = (said: Voice): string =>
    phrase(said, 'left {sets} empty in this show', { sets: setsWords(hung, said) });
  const isTaken = change(desk, [], (show) => withoutHangs(show, hung), { what, verb: 'emptied' });
  if (isTaken) {
    const voice = voiceOf(desk);
    const words = phraseCount(
      voice,
      hung.length,
      [
        '{what}: 1 row emptied. One undo brings it back.',
        '{what}: {count} rows emptied. One undo brings it back.',
      ],
      { what: capital(what(voice)) },
    );
    done(desk, words);
  }
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
    const what = (voice: Voice): string =>
      phrase(voice, 'cleared {sets}', { sets: setsWords(range.rows, voice) });
    take(desk, { ok: true, edits }, { what, verb: 'cleared' });
  } else {
    done(
      desk,
      phrase(
        voiceOf(desk),
        'Nothing to clear here: heights and depths are cleared, whole rows are emptied.',
      ),
    );
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
  const voice = voiceOf(desk);
  done(desk, phrase(voice, 'Copied {range}.', { range: rangeWords(range, voice) }));
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
    done(
      desk,
      phrase(voiceOf(desk), 'This browser let nothing be copied by a button; its own keys may.'),
    );
  }
};

export const useSheetActs = (parts: ActParts): Acts => {
  const editing = useEditing();
  const [outcome, tell] = useState<Outcome | null>(null);
  const rows = useContext(RowsAheadContext);
  // Asked when something is done: a row may be newer than the page that this was drawn with.
  const desk = (): Desk => {
    const { sheet } = parts;
    return { ...parts, sheet: { ...sheet, sets: rows.over(sheet.sets) }, editing, tell };
  };
  const acts = useSameActs({
    onCopy: (event: ClipboardEvent) => copyInto(desk(), event),
    onPaste: (event: ClipboardEvent) => pasteFrom(desk(), event),
    copy: () => copyByButton(desk()),
    paste: (text: string) => paste(desk(), text),
    fill: () => fill(desk()),
    clear: () => clear(desk()),
  });
  return useMemo(() => ({ outcome, ...acts }), [outcome, acts]);
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const anchorOf = (range: Range | null) => {
  const [row, column] = [range?.rows[0], range?.columns[0]];
  return row === undefined || column === undefined ? null : { row, column };
};

export const rangeWords = ({ rows, columns, isWholeRows }: Range, voice: Voice): string => {
  const sets = setsWords(rows, voice);
  return isWholeRows
    ? phraseCount(voice, rows.length, ['{count} whole row, {sets}', '{count} whole rows, {sets}'], {
        sets,
      })
    : phrase(voice, '{rows} by {columns}, {sets}', {
        rows: rowsWords(rows.length, voice),
        columns: phraseCount(voice, columns.length, ['{count} column', '{count} columns']),
        sets,
      });
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
    const { house } = telling;
    const where =
      place === null
        ? path
        : phrase(house, 'set {set}, {head}', {
            set: place.set,
            head: headWords(place.column, house),
          });
    return { where, found: told(house, found), accepted: told(house, accepted) };
  };
