/** A hatched frame with its word: what is in it was planned or asked, and never recorded. */
import { type ReactNode, useId } from 'react';
import { message } from '#texts';
import { useTell } from '../language/use-tell.ts';

type FrameProps = {
  readonly word: 'PLANNED' | 'WHAT IF' | 'DRILL';
  readonly title: string;
  readonly note?: string | null;
  readonly children: ReactNode;
};

const WORDS = {
  PLANNED: message('PLANNED'),
  'WHAT IF': message('WHAT IF'),
  DRILL: message('DRILL'),
} as const;

export const PlannedFrame = ({ word, title, note = null, children }: FrameProps) => {
  const id = useId();
  const tell = useTell();
  return (
    <section className="planned-frame" aria-labelledby={id}>
      <header>
        <h2 id={id}>
          <span className="frame-word">{tell(WORDS[word])}</span> {title}
        </h2>
        {note === null ? null : <p className="quiet frame-note">{note}</p>}
      </header>
      {children}
    </section>
  );
};
