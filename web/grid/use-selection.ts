/**
 * Choosing several cells: with Shift and arrows, with Shift and a click, by drawing the mouse over
 * them, and on a screen that is touched by two taps while choosing is switched on. The choice is
 * painted on the page, not handed to each cell: a sheet of 120 rows draws none of them again.
 */
import {
  type DragEvent,
  type FocusEvent,
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  type RefObject,
  useCallback,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { isTyping } from '../frame/is-typing.ts';
import {
  extended,
  type Place,
  type Range,
  rangeOf,
  type Selection,
  type Shown,
  wholeRows,
  wholeSheet,
} from './selection.ts';

const COLUMN = '[data-col]';
const ROW = '[data-set]';

const placeOf = (target: EventTarget | null): Place | null => {
  const cell = target instanceof Element ? target.closest<HTMLElement>(COLUMN) : null;
  const row = cell?.closest<HTMLElement>(ROW)?.dataset['set'];
  const column = cell?.dataset['col'];
  return row === undefined || column === undefined ? null : { row, column };
};

const isSame = (one: Place, other: Place): boolean =>
  one.row === other.row && one.column === other.column;

const cellsIn = (area: HTMLElement): readonly (readonly [Place, HTMLElement])[] =>
  [...area.querySelectorAll<HTMLElement>(ROW)].flatMap((row) =>
    [...row.children].flatMap((cell) => {
      const place = placeOf(cell);
      return place !== null && cell instanceof HTMLElement ? [[place, cell] as const] : [];
    }),
  );

const cellAt = (area: HTMLElement | null, place: Place): HTMLElement | null =>
  (area === null ? [] : cellsIn(area)).find(([each]) => isSame(each, place))?.[1] ?? null;

/** Only what changes is touched. */
const paint = (area: HTMLElement, range: Range | null): void => {
  const [rows, columns] = [new Set(range?.rows), new Set(range?.columns)];
  for (const [{ row, column }, cell] of cellsIn(area)) {
    const isChosen = rows.has(row) && columns.has(column);
    if (isChosen) cell.setAttribute('aria-selected', 'true');
    else if (cell.hasAttribute('aria-selected')) cell.removeAttribute('aria-selected');
  }
};

const stop = (event: KeyboardEvent | MouseEvent): void => {
  event.preventDefault();
  event.stopPropagation();
};

/** What the keys make of a choice; undefined where the key is about something else. */
const byKey = (event: KeyboardEvent, base: Selection, shown: Shown): Selection | undefined => {
  const isFar = event.ctrlKey || event.metaKey;
  if (event.altKey) return undefined;
  if (isFar && event.key.toLowerCase() === 'a') return wholeSheet(shown) ?? undefined;
  if (!event.shiftKey) return undefined;
  if (event.key === ' ') return wholeRows(base, shown);
  return extended(base, shown, { key: event.key, isFar }) ?? undefined;
};

export type Choosing = {
  readonly range: Range | null;
  /** What a command is about: the cells chosen, or the one in hand. */
  readonly ask: () => Range | null;
  readonly focus: (place: Place | null) => void;
  readonly inHand: () => Place | null;
  /** Whether taps choose instead of typing. */
  readonly isPicking: boolean;
  readonly pick: (isPicking: boolean) => void;
  readonly area: RefObject<HTMLDivElement | null>;
};

type Handlers = {
  readonly onKeyDownCapture: (event: KeyboardEvent) => void;
  readonly onMouseDownCapture: (event: MouseEvent) => void;
  readonly onClickCapture: (event: MouseEvent) => void;
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerOver: (event: PointerEvent) => void;
  readonly onDragStart: (event: DragEvent) => void;
  readonly onFocus: (event: FocusEvent) => void;
};

type Choice = {
  readonly shown: Shown;
  readonly selection: Selection | null;
  readonly choose: (selection: Selection | null) => void;
  readonly area: RefObject<HTMLDivElement | null>;
  readonly hand: RefObject<Place | null>;
  readonly isPicking: boolean;
};

const baseOf = ({ selection }: Choice, place: Place): Selection =>
  selection ?? { from: place, to: place };

const press = (event: KeyboardEvent, choice: Choice): void => {
  const { shown, selection, choose, area } = choice;
  const place = isTyping(event.target) ? null : placeOf(event.target);
  if (place === null) return;
  const next = byKey(event, baseOf(choice, place), shown);
  if (next !== undefined) {
    choose(next);
    cellAt(area.current, next.to)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  } else if (event.key === 'Escape' && selection !== null) choose(null);
  else return;
  stop(event);
};

/** The cell in hand keeps the focus while another one is clicked to. */
const holdFocus = (event: MouseEvent, { hand }: Choice): void => {
  const isExtending = event.shiftKey && hand.current !== null && !isTyping(event.target);
  if (isExtending && placeOf(event.target) !== null) event.preventDefault();
};

const click = (event: MouseEvent, choice: Choice): void => {
  const { choose, hand, isPicking } = choice;
  const place = isTyping(event.target) ? null : placeOf(event.target);
  if (place === null) return;
  if (event.shiftKey && hand.current !== null) {
    choose({ from: baseOf(choice, hand.current).from, to: place });
  } else if (isPicking) {
    const { from } = baseOf(choice, place);
    hand.current = from;
    choose({ from, to: place });
  } else return;
  stop(event);
};

const enter = ({ target }: FocusEvent, { selection, choose, hand, isPicking }: Choice): void => {
  const place = placeOf(target);
  if (place === null || isPicking) return;
  hand.current = place;
  if (selection !== null && !isSame(selection.from, place)) choose(null);
};

/** After every drawing: a cell that was made anew in the meantime is not painted yet. */
const usePainted = (area: RefObject<HTMLDivElement | null>, range: Range | null): void => {
  const painted = useRef<Range | null>(null);
  useEffect(() => {
    if (area.current === null || (range === null && painted.current === null)) return;
    paint(area.current, range);
    painted.current = range;
  });
};

const focusIn = (area: HTMLElement | null, place: Place | null): void => {
  const cell = place === null ? null : cellAt(area, place);
  const isItself = cell?.matches('[data-cell]') ?? false;
  (isItself ? cell : cell?.querySelector<HTMLElement>('[data-cell]'))?.focus();
};

export const useSelection = (shown: Shown): readonly [Choosing, Handlers] => {
  const area = useRef<HTMLDivElement>(null);
  const hand = useRef<Place | null>(null);
  const [selection, choose] = useState<Selection | null>(null);
  const [isPicking, setPicking] = useState(false);
  const range = useMemo(
    () => (selection === null ? null : rangeOf(selection, shown)),
    [selection, shown],
  );
  usePainted(area, range);
  const drag = useDrag(area, choose);
  const choice: Choice = { shown, selection, choose, area, hand, isPicking };
  const ask = (): Range | null => {
    const place = hand.current;
    return range ?? (place === null ? null : rangeOf({ from: place, to: place }, shown));
  };
  const pick = useCallback((next: boolean): void => {
    setPicking(next);
    if (next) choose(null);
  }, []);
  const focus = (place: Place | null): void => focusIn(area.current, place);
  const inHand = (): Place | null => hand.current;
  return [
    { range, ask, focus, inHand, isPicking, pick, area },
    {
      onKeyDownCapture: (event) => press(event, choice),
      onMouseDownCapture: (event) => holdFocus(event, choice),
      onClickCapture: (event) => click(event, choice),
      onFocus: (event) => enter(event, choice),
      ...drag,
    },
  ];
};

/** A mouse that is drawn over cells chooses them; a finger scrolls, so it has taps instead. */
const useDrag = (
  area: RefObject<HTMLDivElement | null>,
  choose: (selection: Selection) => void,
) => {
  const from = useRef<Place | null>(null);
  useEffect(() => {
    const end = (): void => {
      from.current = null;
      if (area.current !== null) delete area.current.dataset['dragging'];
    };
    window.addEventListener('pointerup', end);
    return () => window.removeEventListener('pointerup', end);
  }, [area]);
  const onPointerDown = ({ pointerType, button, shiftKey, target }: PointerEvent): void => {
    const isOurs = pointerType === 'mouse' && button === 0 && !shiftKey && !isTyping(target);
    from.current = isOurs ? placeOf(target) : null;
  };
  const onPointerOver = ({ buttons, target }: PointerEvent): void => {
    const [start, place] = [from.current, placeOf(target)];
    if (start === null || place === null || buttons !== 1) return;
    const isBegun = area.current?.dataset['dragging'] === '';
    if (!isBegun && isSame(start, place)) return;
    if (area.current !== null) area.current.dataset['dragging'] = '';
    window.getSelection()?.removeAllRanges();
    choose({ from: start, to: place });
  };
  const onDragStart = (event: DragEvent): void => {
    if (placeOf(event.target) !== null) event.preventDefault();
  };
  return { onPointerDown, onPointerOver, onDragStart };
};
