/** The list itself with what stands above it: rows as they are looked at, and cells chosen. */

import {
  type FocusEvent,
  memo,
  type RefObject,
  useCallback,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { tradeWord } from '#drawings';
import type { Basis, House } from '#house';
import { phrase } from '#texts';
import { isTyping } from '../frame/is-typing.ts';
import { GridArea } from '../grid/grid-area.tsx';
import { isOneCell, type Range, type Shown } from '../grid/selection.ts';
import { useSelection } from '../grid/use-selection.ts';
import { at } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useRow } from '../reckoning/rows-ahead.ts';
import { useWork } from '../reckoning/use-work.ts';
import type { Telling } from './cell-text.ts';
import { type Column, headWords, isColumn } from './columns.ts';
import { columnTracks, GRID } from './grid-layout.ts';
import { HangListHead } from './hang-list-head.tsx';
import { OpenedRow } from './opened-row.tsx';
import { PasteBox } from './paste-box.tsx';
import { isFound } from './row-filter.ts';
import { type RowProps, SetRow } from './set-row.tsx';
import { SheetBar } from './sheet-bar.tsx';
import { SheetOutcome } from './sheet-outcome.tsx';
import { columnsShown, rowsShown, seenWords } from './sheet-view.ts';
import { type Acts, rangeWords, useSheetActs } from './use-sheet-acts.ts';
import { useSheetView, type ViewOfSheet } from './use-sheet-view.ts';

/** The slices reach three times the lock, so that what is held takes the middle third. */
const edgeOf = ({ rules }: House): number =>
  rules.lockLimit.known ? 3 * rules.lockLimit.value : 667;

export type SheetProps = {
  readonly setInHand: string | null;
  readonly onTake: (set: string) => void;
};

const setAt = ({ target }: FocusEvent): string | null =>
  target.closest<HTMLElement>('[data-set]')?.dataset['set'] ?? null;

/** A list of names, the same one as long as the names are. */
const useSameList = (list: readonly string[]): readonly string[] => {
  const key = list.join('\n');
  return useMemo(() => (key === '' ? [] : key.split('\n')), [key]);
};

const useOpened = () => {
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const toggle = useCallback((set: string) => {
    setOpened((before) => {
      const after = new Set(before);
      if (!after.delete(set)) after.add(set);
      return after;
    });
  }, []);
  return [opened, toggle] as const;
};

type GridProps = SheetProps & {
  readonly rows: readonly SetReckoning[];
  readonly railOrder: readonly string[];
  readonly looking: ViewOfSheet;
};

type SetRowsProps = RowProps & { readonly given: Basis | null; readonly columns: number };

/** A set with what is opened beneath it, as an edit has just made it. */
const SetRows = memo(({ each, isOpen, given, columns, ...row }: SetRowsProps) => {
  const live = useRow(each);
  const isOpened = isOpen && live.set.hang !== null;
  return (
    <>
      <SetRow each={live} {...row} isOpen={isOpened} />
      {isOpened ? (
        <OpenedRow each={live} house={row.house} given={given} columns={columns} over={row.over} />
      ) : null}
    </>
  );
});
SetRows.displayName = 'SetRows';

const HangGrid = ({ setInHand, onTake, rows, railOrder, looking }: GridProps) => {
  const { house, nowMs, documents } = useWork();
  const [opened, toggle] = useOpened();
  const given = at(documents.show, ['given', 'basis']);
  const row = { house, nowMs, railOrder, edgeN: edgeOf(house), onOpen: toggle };
  const { hidden, view, sortBy } = looking;
  const columns = columnsShown(hidden);
  return (
    <table
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: it is typed into
      role="grid"
      aria-label={tradeWord(house, 'schedule')}
      aria-multiselectable="true"
      data-hidden={[...hidden].join(' ')}
      style={columnTracks(columns)}
      onFocus={(event) => {
        const set = setAt(event);
        if (set !== null && set !== setInHand) onTake(set);
      }}
    >
      <HangListHead house={house} sort={view.sort} onSort={sortBy} />
      <tbody {...GRID.rows}>
        {rows.map((each, at) => (
          <SetRows
            key={each.id}
            each={each}
            {...row}
            isOpen={opened.has(each.id)}
            isInHand={each.id === setInHand}
            over={rows.length - at}
            given={typeof given === 'string' ? (given as Basis) : null}
            columns={columns.length}
          />
        ))}
      </tbody>
    </table>
  );
};

type SheetKeys = {
  readonly area: RefObject<HTMLDivElement | null>;
  readonly field: RefObject<HTMLInputElement | null>;
  readonly acts: Acts;
  readonly isClearing: () => boolean;
  readonly toRail: () => void;
};

/** True where a key was one of ours. */
const actOn = (event: KeyboardEvent, { area, field, acts, isClearing, toRail }: SheetKeys) => {
  const { key, target, altKey, shiftKey } = event;
  const isCommand = event.ctrlKey || event.metaKey;
  if (altKey || isTyping(target)) return false;
  const isInList = target instanceof Node && (area.current?.contains(target) ?? false);
  if (key === '/' && !isCommand) {
    field.current?.focus();
    field.current?.select();
  } else if (key === 'F8' && !isCommand) toRail();
  else if (isInList && isCommand && !shiftKey && key.toLowerCase() === 'd') acts.fill();
  else if (isInList && key === 'Delete' && isClearing()) acts.clear();
  else return false;
  return true;
};

/** Before the cells hear a key, since a letter begins one of them. */
const useSheetKeys = (keys: SheetKeys): void => {
  const now = useRef(keys);
  useEffect(() => {
    now.current = keys;
  });
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!actOn(event, now.current)) return;
      event.preventDefault();
      event.stopPropagation();
    };
    window.addEventListener('keydown', press, true);
    return () => window.removeEventListener('keydown', press, true);
  }, []);
};

const CLEARED_ALONE: readonly string[] = ['in', 'out', 'depth'];

const useFinding = (
  rows: readonly SetReckoning[],
  telling: Telling,
  focusRow: (set: string) => void,
  inHand: () => string | undefined,
) => ({
  found: (text: string): number => rows.filter((each) => isFound(each, text, telling)).length,
  onNext: (text: string, step: 1 | -1): void => {
    const here = rows.findIndex(({ id }) => id === inHand());
    const count = rows.length;
    for (let turn = 1; turn <= count; turn += 1) {
      const each = rows[(Math.max(here, step > 0 ? -1 : 0) + step * turn + 2 * count) % count];
      if (each !== undefined && isFound(each, text, telling)) {
        focusRow(each.id);
        return;
      }
    }
  },
});

/** Where a pasted text would begin. */
const firstWords = (range: Range | null, house: House): string | null => {
  const [row, column] = [range?.rows[0], range?.columns[0]];
  return row === undefined || column === undefined || !isColumn(column)
    ? null
    : phrase(house, 'set {row}, {head}', { row, head: headWords(column, house) });
};

/** All that the list is, from the work in view: rows, columns, what is chosen and what is done. */
const useSheet = () => {
  const { sets, house, nowMs } = useWork();
  const telling = useMemo(() => ({ house, nowMs }), [house, nowMs]);
  const looking = useSheetView(sets, telling);
  const field = useRef<HTMLInputElement>(null);
  const rows = rowsShown(looking.view, sets, telling);
  const railOrder = useSameList(sets.map(({ id }) => id));
  const ids = useSameList(rows.map(({ id }) => id));
  const columns: readonly Column[] = useMemo(() => columnsShown(looking.hidden), [looking.hidden]);
  const shown: Shown = useMemo(() => ({ rows: ids, columns }), [ids, columns]);
  const [choosing, handlers] = useSelection(shown);
  const sheet = { sets, rows: ids, columns, telling };
  const acts = useSheetActs({ sheet, railOrder, choosing });
  // Rows are emptied only where a person sees that they are chosen as a whole.
  const isClearing = (): boolean => {
    const column = choosing.inHand()?.column ?? '';
    return choosing.range === null ? CLEARED_ALONE.includes(column) : true;
  };
  useSheetKeys({ area: choosing.area, field, acts, isClearing, toRail: looking.toRail });
  const finding = useFinding(
    rows,
    telling,
    (row) => choosing.focus({ row, column: 'item' }),
    () => choosing.inHand()?.row,
  );
  return { sets, house, looking, field, rows, railOrder, choosing, handlers, acts, finding };
};

export const HangSheet = (props: SheetProps) => {
  const tell = useTell();
  const { sets, house, looking, field, rows, railOrder, ...sheet } = useSheet();
  const { choosing, handlers, acts, finding } = sheet;
  const [isPasting, setPasting] = useState(false);
  const onPasteBox = useCallback(() => setPasting((before) => !before), []);
  const toHand = (): void => choosing.focus(choosing.inHand());
  const { range } = choosing;
  return (
    <>
      <SheetBar
        house={house}
        looking={looking}
        acts={acts}
        choosing={choosing}
        field={field}
        {...finding}
        onBack={toHand}
        isPasting={isPasting}
        onPasteBox={onPasteBox}
      />
      {isPasting ? (
        <PasteBox
          from={firstWords(choosing.ask(), house)}
          onPaste={acts.paste}
          onClose={() => {
            setPasting(false);
            toHand();
          }}
        />
      ) : null}
      <SheetOutcome outcome={acts.outcome} />
      <p className="sheet-seen" role="status">
        {seenWords({ ...looking, shown: rows.length, total: sets.length, house })}
        {range === null || isOneCell(range)
          ? ''
          : tell(' Chosen: {rangeWords}.', { rangeWords: rangeWords(range, house) })}
      </p>
      <GridArea>
        <div
          ref={choosing.area}
          className="wide hang-list"
          onCopy={acts.onCopy}
          onPaste={acts.onPaste}
          {...handlers}
        >
          <HangGrid {...props} rows={rows} railOrder={railOrder} looking={looking} />
        </div>
      </GridArea>
    </>
  );
};
