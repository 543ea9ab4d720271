/**
 * The wall along the top of every screen: the record of every set, and the way to each. It never
 * shows a plan.
 */

import { memo, useEffect, useMemo, useRef, useState } from 'react';
import type { SetAssessment } from '#assessment';
import { type WallColumn, wallDrawing } from '#drawings';
import type { House } from '#house';
import type { Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { go, useAddress } from '../address/use-address.ts';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useWidth } from '../drawing/use-width.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { CallWallLater } from './call-wall-later.tsx';
import { WallKey } from './wall-key.tsx';
import { useWallSets } from './wall-sets.ts';
import { useWallSize, type WallSize } from './wall-size.ts';
import { WallTable } from './wall-table.tsx';

type WallProps = {
  readonly setInHand: string | null;
  readonly onTake: (set: string) => void;
};

/** Where an arrow, Home or End leads from a set; null for other keys. */
const stepFrom = (key: string, order: readonly string[], from: number): string | null => {
  const place = { ArrowLeft: from - 1, ArrowRight: from + 1, Home: 0, End: order.length - 1 }[key];
  if (place === undefined) return null;
  return order[Math.min(order.length - 1, Math.max(0, place))] ?? null;
};

const PAUSE_MS = 900;

/** Letters typed one after the other are one set number, until the hand pauses. */
const useTypedSet = (order: readonly string[]) => {
  const typed = useRef({ text: '', atMs: 0 });
  return (key: string, nowMs: number): string | null => {
    const text = nowMs - typed.current.atMs < PAUSE_MS ? typed.current.text + key : key;
    typed.current = { text, atMs: nowMs };
    return order.find((id) => id.toLowerCase() === text.toLowerCase()) ?? null;
  };
};

/** Brings the set in hand to the middle, without moving the page up or down. */
const useCentred = (setInHand: string | null, columnWidth: number) => {
  const scroller = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const box = scroller.current;
    if (box === null || setInHand === null || columnWidth === 0) return;
    const column = box.querySelector<HTMLElement>(`[data-set="${CSS.escape(setInHand)}"]`);
    if (column === null || box.scrollWidth <= box.clientWidth) return;
    box.scrollLeft = column.offsetLeft - (box.clientWidth - column.offsetWidth) / 2;
  }, [setInHand, columnWidth]);
  return scroller;
};

const WIDEST = 56;

/** A small house has room for wider columns; a large one scrolls. */
const useRoomyColumns = (size: WallSize, room: number, count: number): WallSize => {
  const { columnWidth, margin } = size;
  const fair = count === 0 ? columnWidth : Math.floor((room - margin) / count);
  const roomy = Math.max(columnWidth, Math.min(WIDEST, fair));
  return useMemo(() => ({ ...size, columnWidth: roomy }), [size, roomy]);
};

/** Columns drawn before, so that an edit of one set draws one column; new ones when all change. */
const useColumnsDrawn = (house: House, nowMs: number, size: WallSize) =>
  // biome-ignore lint/correctness/useExhaustiveDependencies: a change of these makes all anew
  useMemo(() => new WeakMap<SetAssessment, WallColumn>(), [house, nowMs, size]);

/** Where a set chosen on the wall opens: on the screen that is about one set, if one is open. */
type Way = 'set' | 'order' | 'live';

const wayOf = ({ kind }: Place): Way => (kind === 'order' || kind === 'live' ? kind : 'set');

const placeFor = (set: string, kind: Way): Place => {
  if (kind === 'live') return { kind, path: ['set', set] };
  return kind === 'order' ? { kind, set, job: null, from: null } : { kind: 'set', set };
};

/** Of which the wall changes the set and nothing else. */
const isOfSet = (place: Place): boolean =>
  place.kind === 'live' ? place.path[0] === 'set' : place.kind === 'set' || place.kind === 'order';

type ColumnProps = {
  readonly column: ReturnType<typeof wallDrawing>['columns'][number];
  readonly way: Way;
  readonly isInHand: boolean;
  readonly isEntry: boolean;
};

const Column = memo(({ column, way, isInHand, isEntry }: ColumnProps) => (
  <li data-set={column.set} className={isInHand ? 'in-hand' : undefined}>
    <Link
      to={placeFor(column.set, way)}
      isHere={isInHand}
      name={column.name}
      tabIndex={isEntry ? 0 : -1}
    >
      <DrawingView drawing={column.drawing} silent />
    </Link>
  </li>
));
Column.displayName = 'Column';

/** The drawing in the room that there is, and whether it is of a call or of the record. */
const useDrawnWall = () => {
  const { house, nowMs } = useWork();
  const { sets, signs, isOfCall } = useWallSets();
  const [section, room] = useWidth<HTMLElement>();
  const size = useRoomyColumns(useWallSize(), room, sets.length);
  const columnsDrawn = useColumnsDrawn(house, nowMs, size);
  // biome-ignore lint/correctness/useExhaustiveDependencies: signs are new where sets are
  const wall = useMemo(() => {
    const kept = (set: SetAssessment) => columnsDrawn.get(set);
    const drawn = wallDrawing({ sets }, house, { ...size, nowMs, signs, kept });
    for (const [at, set] of sets.entries()) {
      const column = drawn.columns[at];
      if (column !== undefined) columnsDrawn.set(set, column);
    }
    return drawn;
  }, [sets, house, nowMs, size, columnsDrawn]);
  return { wall, size, section, isOfCall };
};

export const Wall = ({ setInHand, onTake }: WallProps) => {
  const tell = useTell();
  const { wall, size, section, isOfCall } = useDrawnWall();
  const { place } = useAddress();
  const order = wall.columns.map(({ set }) => set);
  const typedSet = useTypedSet(order);
  const scroller = useCentred(setInHand, size.columnWidth);
  const [entry] = order.includes(setInHand ?? '') ? [setInHand] : order;
  const take = (set: string): void => {
    onTake(set);
    if (isOfSet(place)) go(placeFor(set, wayOf(place)), { replace: true });
    scroller.current?.querySelector<HTMLElement>(`[data-set="${CSS.escape(set)}"] a`)?.focus();
  };
  const press = (event: React.KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const from = order.indexOf(setInHand ?? '');
    const isTyped = /^[a-z0-9]$/i.test(event.key);
    const set = isTyped
      ? typedSet(event.key, event.timeStamp)
      : stepFrom(event.key, order, Math.max(0, from));
    if (set === null) return;
    event.preventDefault();
    take(set);
  };
  if (order.length === 0) return <EmptyWall />;
  return (
    <section
      ref={section}
      className="wall"
      aria-label={
        isOfCall
          ? tell('The wall: every set as it stands in the call')
          : tell('The wall: every set as recorded')
      }
    >
      <div className="wall-scroller" ref={scroller}>
        <div className="wall-sheet" style={{ width: wall.frame.width, height: size.height }}>
          <DrawingView drawing={wall.frame} className="wall-frame" silent />
          <ol style={{ marginLeft: size.margin }} onKeyDown={press}>
            {wall.columns.map((column) => (
              <Column
                key={column.set}
                column={column}
                way={wayOf(place)}
                isInHand={column.set === setInHand}
                isEntry={column.set === entry}
              />
            ))}
          </ol>
        </div>
      </div>
      <CallWallLater />
      <WallFoot />
    </section>
  );
};

const EmptyWall = () => {
  const tell = useTell();
  return (
    <section className="wall" aria-label={tell('The wall')}>
      <p className="empty-words">
        {tell('No line sets are known yet, so there is no wall to look along.')}
      </p>
    </section>
  );
};

const WallFoot = () => {
  const tell = useTell();
  const [isOpen, setOpen] = useState(false);
  const [hasKey, showKey] = useState(false);
  return (
    <>
      <div className="wall-foot" data-key={hasKey ? 'shown' : undefined}>
        <WallKey />
        <button
          type="button"
          className="as-words wall-key-button"
          aria-expanded={hasKey}
          onClick={() => showKey(!hasKey)}
        >
          {tell('Signs on the wall')}
        </button>
        <button
          type="button"
          className="as-words"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          {isOpen ? tell('Hide the table') : tell('The wall as a table')}
        </button>
      </div>
      {isOpen ? <WallTable /> : null}
    </>
  );
};
