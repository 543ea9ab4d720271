/** Two revisions of one document apart: in words, and on the drawing. */
import { useMemo } from 'react';
import { sayDifference } from '#differences';
import { Notice } from '../frame/notice.tsx';
import type { Open } from '../keeping/kept.ts';
import { askRevision, type Stored } from '../keeping/server.ts';
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
  const { id, older, newer } = props;
  const asked = useAsked(`${id} ${older} ${newer}`, () =>
    Promise.all([askRevision(id, older), askRevision(id, newer)]),
  );
  if (asked.is === 'waiting') return <p className="empty-words">Fetching both revisions …</p>;
  if (asked.is === 'failed') {
    return (
      <Notice degree="caution" title="a revision was not fetched" isNews>
        <p>{asked.title}</p>
        <p className="buttons">
          <button type="button" onClick={asked.again}>
            Ask again
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
  const voice = useTradeVoice(open, after.document);
  const groups = useMemo(
    () => sayDifference(before.document, after.document, voice),
    [before, after, voice],
  );
  const lines = groups.reduce((sum, group) => sum + group.lines.length, 0);
  return (
    <section className="difference" aria-label={`From revision ${older} to revision ${newer}`}>
      <h2>
        From revision {older} to revision {newer}: {lines === 0 ? 'no' : lines}{' '}
        {lines === 1 ? 'place differs' : 'places differ'}
      </h2>
      <Said groups={groups} empty="Both say the same in every place." />
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
