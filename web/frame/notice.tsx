/** The three degrees: a note has neither mark nor frame; the other two differ in shape and word. */
import type { ReactNode } from 'react';
import { message } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';

type NoticeProps = {
  readonly degree: 'note' | 'caution' | 'danger';
  /** What it is about; stands behind the word of its degree. */
  readonly title: string;
  /** A thing that appears while a person works is spoken; one that stood there is not. */
  readonly isNews?: boolean;
  readonly children?: ReactNode;
};

const WORDS = { note: '', caution: message('Caution'), danger: message('Danger') } as const;

export const Notice = ({ degree, title, isNews = false, children }: NoticeProps) => {
  const tell = useTell();
  return (
    <div className={`notice ${degree}`} role={isNews ? 'alert' : undefined}>
      {degree === 'note' ? null : <Glyph name={degree} />}
      <div>
        <p>
          <strong className="degree">
            {degree === 'note' ? '' : tell(WORDS[degree])}
            {degree === 'note' ? title : `: ${title}`}
          </strong>
        </p>
        {children}
      </div>
    </div>
  );
};
