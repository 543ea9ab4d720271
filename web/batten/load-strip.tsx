/** The loads under the pipe as one slider: a hand drags the nearest, the keys move the chosen. */
import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { flushSync } from 'react-dom';
import type { BattenLoadsDrawing } from '#drawings';
import { useTell } from '../language/use-tell.ts';
import { onStep, type Steps } from './what-if.ts';

export type Movable = {
  /** Its place among the loads of the state. */
  readonly index: number;
  readonly name: string;
  readonly x: number;
  readonly from: number;
  readonly to: number;
};

type Props = {
  readonly drawing: BattenLoadsDrawing;
  readonly loads: readonly Movable[];
  readonly chosen: Movable;
  readonly steps: Steps;
  readonly said: string;
  readonly onChoose: (index: number) => void;
  readonly onMove: (index: number, x: number) => void;
};

/** A finger that comes down further from every load than this has none in hand. */
const REACH_PX = 32;

const within = (x: number, { from, to }: Movable): number => Math.min(Math.max(x, from), to);

/** Where a key sends the load; null for a key that is none of ours. */
const placeByKey = (
  { key, shiftKey }: KeyboardEvent,
  { x, from, to }: Movable,
  { arrowM, fineM, pageM }: Steps,
): number | null => {
  const arrow = shiftKey ? fineM : arrowM;
  switch (key) {
    case 'ArrowLeft':
    case 'ArrowDown':
      return onStep(x - arrow, fineM);
    case 'ArrowRight':
    case 'ArrowUp':
      return onStep(x + arrow, fineM);
    case 'PageDown':
      return onStep(x - pageM, fineM);
    case 'PageUp':
      return onStep(x + pageM, fineM);
    case 'Home':
      return from;
    case 'End':
      return to;
    default:
      return null;
  }
};

/** Pointers report more often than the screen draws: the last place of a frame is drawn in it. */
const useOnceAFrame = (move: (index: number, x: number) => void) => {
  const latest = useRef(move);
  latest.current = move;
  const frame = useRef(0);
  const asked = useRef<{ readonly index: number; readonly x: number } | null>(null);
  useEffect(() => () => cancelAnimationFrame(frame.current), []);
  return (index: number, x: number): void => {
    const isWaiting = asked.current !== null;
    asked.current = { index, x };
    if (isWaiting) return;
    frame.current = requestAnimationFrame(() => {
      const wanted = asked.current;
      asked.current = null;
      if (wanted !== null) flushSync(() => latest.current(wanted.index, wanted.x));
    });
  };
};

export const LoadStrip = ({ drawing, loads, chosen, steps, said, onChoose, onMove }: Props) => {
  const tell = useTell();
  const { top, bottom } = drawing.loads;
  const moveInFrame = useOnceAFrame(onMove);
  const inHand = useRef<{ readonly load: Movable; readonly offPx: number } | null>(null);
  const pxOf = (event: PointerEvent): number =>
    event.clientX - event.currentTarget.getBoundingClientRect().left;
  const take = (event: PointerEvent): void => {
    const px = pxOf(event);
    const off = (load: Movable): number => Math.abs(drawing.xOf(load.x) - px);
    // The chosen one wins among neighbours that a finger cannot part.
    const nearest = [chosen, ...loads].reduce((best, load) =>
      off(load) < off(best) - 1 ? load : best,
    );
    if (off(nearest) > REACH_PX) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    inHand.current = { load: nearest, offPx: px - drawing.xOf(nearest.x) };
    onChoose(nearest.index);
  };
  const drag = (event: PointerEvent): void => {
    if (inHand.current === null) return;
    const { load, offPx } = inHand.current;
    const x = onStep(drawing.acrossOf(pxOf(event) - offPx), steps.fineM);
    moveInFrame(load.index, within(x, load));
  };
  const drop = (): void => {
    inHand.current = null;
  };
  const press = (event: KeyboardEvent): void => {
    const x = placeByKey(event, chosen, steps);
    if (x === null) return;
    event.preventDefault();
    onMove(chosen.index, within(x, chosen));
  };
  return (
    <div
      className="load-strip"
      role="slider"
      tabIndex={0}
      aria-label={tell('{name}: place along the batten', { name: chosen.name })}
      aria-valuemin={chosen.from}
      aria-valuemax={chosen.to}
      aria-valuenow={chosen.x}
      aria-valuetext={said}
      style={{ top, height: bottom - top }}
      onPointerDown={take}
      onPointerMove={drag}
      onPointerUp={drop}
      onPointerCancel={drop}
      onFocus={() => onChoose(chosen.index)}
      onKeyDown={press}
    >
      <span className="load-thumb" style={{ left: drawing.xOf(chosen.x) }} />
    </div>
  );
};
