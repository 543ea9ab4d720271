/** The sets on both sides of the one in hand, as they stand: who slipped by one sees it. */

import { useMemo } from 'react';
import type { CallDocuments } from '#call';
import { wallDrawing, wallSigns } from '#drawings';
import type { HouseNow } from '#state';
import { CallWallSets } from '../call-desk/wall-of-call.ts';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useTell } from '../language/use-tell.ts';

/** A set on which nothing happened is not worked out again. */
const SETS = new CallWallSets();
const BESIDE = 2;
const SIZE = { columnWidth: 45, height: 214, letter: 14, margin: 0, nowMs: null } as const;

type StripProps = {
  readonly set: string;
  readonly now: HouseNow;
  readonly documents: CallDocuments;
};

export const WallStrip = ({ set, now, documents }: StripProps) => {
  const tell = useTell();
  const { house } = documents;
  const columns = useMemo(() => {
    const all = SETS.of(documents, now);
    const at = all.findIndex(({ lineSet }) => lineSet.id === set);
    const sets = all.slice(Math.max(0, at - BESIDE), at + BESIDE + 1);
    const signs = (each: (typeof sets)[number]) => SETS.signs(each) ?? wallSigns(each, house, null);
    return wallDrawing({ sets }, house, { ...SIZE, chosen: set, signs }).columns;
  }, [documents, now, set, house]);
  return (
    <ul className="wall-strip" aria-label={tell('The wall beside it')}>
      {columns.map(({ set: id, drawing }) => (
        <li key={id}>
          <DrawingView drawing={drawing} />
        </li>
      ))}
    </ul>
  );
};
