/** A hatched frame with its word: what is in it was planned or asked, and never recorded. */
import { type ReactNode, useId } from 'react';

type FrameProps = {
  readonly word: 'PLANNED' | 'WHAT IF';
  readonly title: string;
  readonly note?: string | null;
  readonly children: ReactNode;
};

export const PlannedFrame = ({ word, title, note = null, children }: FrameProps) => {
  const id = useId();
  return (
    <section className="planned-frame" aria-labelledby={id}>
      <header>
        <h2 id={id}>
          <span className="frame-word">{word}</span> {title}
        </h2>
        {note === null ? null : <p className="quiet frame-note">{note}</p>}
      </header>
      {children}
    </section>
  );
};
