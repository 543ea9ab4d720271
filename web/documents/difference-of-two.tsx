/** Two revisions of one document apart: in words, and on the drawing. */
import { useMemo } from 'react';
import { sayDifference } from '#differences';
import { Notice } from '../frame/notice.tsx';
import type { Open } from '../keeping/kept.ts';
import { askRevision, type Stored } from '../keeping/server.ts';
import { useTell, useTellCount } from '../language/use-tell.ts';
import { useAsked } from './asked.ts';
import { DifferenceDrawing } from './difference-drawing.tsx';
import { Said } from './said.tsx';
import { useTradeVoice } from './voice.ts';

type TwoProps = {
  readonly id: string;
  readonly open: Open;
  readonly older: number;
  readonly newer: number;
  readonly newest: number;
};

export const DifferenceOfTwo = (props: TwoProps) => {
  const tell = useTell();
  const { id, older, newer } = props;
  const asked = useAsked(`${id} ${older} ${newer}`, () =>
    Promise.all([askRevision(id, older), askRevision(id, newer)]),
  );
  if (asked.is === 'waiting') {
    return <p className="empty-words">{tell('Fetching both revisions …')}</p>;
  }
  if (asked.is === 'failed') {
    return (
      <Notice degree="caution" title={tell('a revision was not fetched')} isNews>
        <p>{asked.title}</p>
        <p className="buttons">
          <button type="button" onClick={asked.again}>
            {tell('Ask again')}
          </button>
        </p>
      </Notice>
    );
  }
  const [before, after] = asked.value;
  return <Apart {...props} before={before} after={after} />;
};

type ApartProps = TwoProps & { readonly before: Stored; readonly after: Stored };

const Apart = ({ open, older, newer, newest, before, after }: ApartProps) => {
  const tell = useTell();
  const tellCount = useTellCount();
  const voice = useTradeVoice(open, after.document);
  const groups = useMemo(
    () => sayDifference(before.document, after.document, voice),
    [before, after, voice],
  );
  const lines = groups.reduce((sum, group) => sum + group.lines.length, 0);
  return (
    <section
      className="difference"
      aria-label={tell('From revision {older} to revision {newer}', { older, newer })}
    >
      <h2>
        {lines === 0
          ? tell('From revision {older} to revision {newer}: no places differ', { older, newer })
          : tellCount(
              lines,
              [
                'From revision {older} to revision {newer}: {count} place differs',
                'From revision {older} to revision {newer}: {count} places differ',
              ],
              { older, newer },
            )}
      </h2>
      <Said groups={groups} empty={tell('Both say the same in every place.')} />
      <DifferenceDrawing
        open={open}
        kind={after.kind}
        pair={{ before: before.document, after: after.document }}
        groups={groups}
        names={{ older, newer, newest }}
      />
    </section>
  );
};
