import { type ReactNode, useMemo } from 'react';
import type { Drawing } from '#drawings';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useWidth } from '../drawing/use-width.ts';

type MeasuredProps = {
  readonly title: string;
  readonly className: string;
  /** Drawn again at every width, never shrunk. Must be the same function while nothing changed. */
  readonly draw: (width: number) => Drawing;
  readonly children?: ReactNode;
};

const LEAST_WIDTH = 120;

export const Measured = ({ title, className, draw, children }: MeasuredProps) => {
  const [ref, width] = useWidth<HTMLDivElement>();
  const drawing = useMemo(() => (width < LEAST_WIDTH ? null : draw(width)), [draw, width]);
  return (
    <figure className={className}>
      <figcaption>
        <h2>{title}</h2>
      </figcaption>
      <div ref={ref} className="drawn">
        {drawing === null ? null : <DrawingView drawing={drawing} />}
      </div>
      {children}
    </figure>
  );
};
