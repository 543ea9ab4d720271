import { type FocusEvent, type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react';
import { isShown, moveFrom, wayOf } from './moves.ts';

const cellAt = (target: EventTarget | null): HTMLElement | null =>
  target instanceof HTMLElement && target.matches('[data-cell]') ? target : null;

/**
 * One stop for the Tab key; inside, arrows, Home, End and Tab move from cell to cell. Which cell is
 * the stop is written on the page, not kept in state: moving about draws nothing again.
 */
export const GridArea = ({ children }: { readonly children: ReactNode }) => {
  const area = useRef<HTMLDivElement>(null);
  const stop = useRef<HTMLElement | null>(null);
  const setStop = (cell: HTMLElement | null): void => {
    if (stop.current !== null) stop.current.tabIndex = -1;
    stop.current = cell;
    if (cell !== null) cell.tabIndex = 0;
  };
  useEffect(() => {
    // Asked when the page is laid out anyway: earlier, the question would lay it out once more.
    const frame = requestAnimationFrame(() => {
      if (stop.current?.isConnected && isShown(stop.current)) return;
      const cells = [...(area.current?.querySelectorAll<HTMLElement>('tbody [data-cell]') ?? [])];
      setStop(cells.find(isShown) ?? null);
    });
    return () => cancelAnimationFrame(frame);
  });
  const press = (event: KeyboardEvent): void => {
    const cell = cellAt(event.target);
    const way = cell && wayOf(event);
    if (cell === null || way === null || event.altKey) return;
    if (moveFrom(cell, way)) event.preventDefault();
  };
  const enter = (event: FocusEvent): void => {
    const cell = cellAt(event.target);
    if (cell !== null && cell !== stop.current) setStop(cell);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the cells inside take the keys
    <div ref={area} data-grid="" onKeyDown={press} onFocus={enter}>
      {children}
    </div>
  );
};
