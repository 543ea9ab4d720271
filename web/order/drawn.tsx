/** A drawing at the width that it finds, drawn again when that changes. */
import { useMemo } from 'react';
import type { Drawing } from '#drawings';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useWidth } from '../drawing/use-width.ts';

const LEAST_WIDTH = 120;

/** `draw` must be the same function while nothing changed. */
export const Drawn = ({ draw }: { readonly draw: (width: number) => Drawing }) => {
  const [ref, width] = useWidth<HTMLDivElement>();
  const drawing = useMemo(() => (width < LEAST_WIDTH ? null : draw(width)), [draw, width]);
  return (
    <div ref={ref} className="drawn">
      {drawing === null ? null : <DrawingView drawing={drawing} />}
    </div>
  );
};
