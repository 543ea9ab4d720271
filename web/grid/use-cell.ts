/** A cell that is typed into: idle, or being edited; a refused text stays to be mended. */
import { type KeyboardEvent, useRef, useState } from 'react';
import type { Refusal } from '#outcome';
import { moveFrom, type Way } from './moves.ts';

export type CellEdit = {
  /** Null while idle. */
  readonly draft: string | null;
  readonly refusals: readonly Refusal[];
};

const IDLE: CellEdit = { draft: null, refusals: [] };

export type CellParts = {
  /** As it was written, to type on from. */
  readonly text: string;
  readonly take: (text: string) => readonly Refusal[];
};

const isLetter = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean =>
  key.length === 1 && !ctrlKey && !metaKey && !altKey && key !== ' ';

export const useCell = ({ text, take }: CellParts) => {
  const ref = useRef<HTMLTableCellElement>(null);
  const [edit, setEdit] = useState(IDLE);
  // While the focus leaves the field, what the field says of it is no news.
  const isLeaving = useRef<boolean>(false);

  const begin = (draft: string): void => setEdit({ draft, refusals: [] });
  /** Null leaves the focus alone. It goes first: a field that goes with the focus is costly. */
  const end = (way: Way | 'stay' | null): void => {
    const cell = ref.current;
    isLeaving.current = true;
    if (cell !== null && way !== null && (way === 'stay' || !moveFrom(cell, way))) cell.focus();
    isLeaving.current = false;
    setEdit(IDLE);
  };
  const commit = (draft: string, way: Way | 'stay' | null): void => {
    if (isLeaving.current) return;
    const refusals = draft === text ? [] : take(draft);
    if (refusals.length === 0) end(way);
    else setEdit({ draft, refusals });
  };

  const pressIdle = (event: KeyboardEvent): void => {
    if (event.target !== ref.current) return;
    const isDelete = event.key === 'Delete' || event.key === 'Backspace';
    if (event.key === 'Enter' || event.key === 'F2') begin(text);
    else if (isDelete) begin('');
    else if (isLetter(event)) begin(event.key);
    else return;
    event.preventDefault();
  };
  const pressEditing = (event: KeyboardEvent<HTMLInputElement | HTMLSelectElement>): void => {
    event.stopPropagation();
    const { key, shiftKey } = event;
    const { value } = event.currentTarget;
    if (key === 'Escape') end('stay');
    else if (key === 'Enter') commit(value, shiftKey ? 'up' : 'down');
    else if (key === 'Tab') commit(value, shiftKey ? 'left' : 'right');
    else return;
    event.preventDefault();
  };
  return { ref, edit, begin, end, commit, pressIdle, pressEditing };
};

export type Cell = ReturnType<typeof useCell>;

/** The field of a cell takes the keys as soon as it is there: a person has just asked for it. */
export const focusFirst = (field: HTMLElement | null): void => field?.focus();
