/** A row of the form: what is asked and why on the left, its fields, and what was not taken. */
import { type ReactNode, useId } from 'react';
import type { Refusal } from '#outcome';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { useTell } from '../language/use-tell.ts';

type FrameProps = {
  readonly label: string;
  /** What the document says of the field. */
  readonly about: string;
  readonly missing: string | null;
  readonly refusals: readonly Refusal[];
  readonly row: object;
  readonly className?: string;
  readonly children: ReactNode;
};

const bare = (words: string): string => words.replace(/\.$/, '').toLowerCase();

export const RowFrame = ({
  label,
  about,
  missing,
  refusals,
  row,
  className = '',
  children,
}: FrameProps) => {
  const tell = useTell();
  const id = useId();
  // What only says the label again is no help.
  const help = bare(about) === bare(label) ? '' : about;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row
    <div role="group" aria-labelledby={id} className={`entry-row ${className}`} {...row}>
      <div className="entry-label">
        <b id={id}>{label}</b>
        {help === '' ? null : <span className="entry-about">{help}</span>}
      </div>
      <div className="entry-fields">{children}</div>
      {missing === null ? null : (
        <p className="entry-note" role="status">
          {tell('Not kept yet: still to say {missing}. Escape leaves it as it was.', { missing })}
        </p>
      )}
      {refusals.length === 0 ? null : (
        <div className="entry-note">
          <Notice degree="caution" title={tell('not taken, nothing changed')} isNews>
            <RefusalsWithPlace refusals={refusals} />
            <p>{tell('Escape leaves it as it was.')}</p>
          </Notice>
        </div>
      )}
    </div>
  );
};
