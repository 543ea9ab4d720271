import { memo } from 'react';
import { type GlyphName, glyph, type Pen } from '#drawings';
import { DrawingView } from './drawing-view.tsx';

type GlyphProps = {
  readonly name: GlyphName;
  readonly size?: number;
  readonly pen?: Pen;
  /** Where the arbors run at stage left, arbor and batten change places. */
  readonly mirrored?: boolean;
};

/** One sign. Its word always stands beside it, so it says nothing itself. */
export const Glyph = memo(({ name, size = 24, pen, mirrored = false }: GlyphProps) => {
  const drawing = glyph(name, { mirrored, ...(pen === undefined ? {} : { pen }) });
  return (
    <span className="glyph" style={{ width: size, height: size }}>
      <DrawingView drawing={drawing} silent />
    </span>
  );
});
Glyph.displayName = 'Glyph';
