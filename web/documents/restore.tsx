/** Back to an old revision: what that changes is shown first, and it is saved as a new revision. */
import { useEffect, useMemo, useRef } from 'react';
import { sayDifference } from '#differences';
import { sayMoment } from '#sheets';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import type { Kept, Open } from '../keeping/kept.ts';
import { askRevision, type Stored } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useAsked } from './asked.ts';
import { against } from './judged.ts';
import { Said } from './said.tsx';
import { useTradeVoice } from './voice.ts';
import { WhyForm } from './why-form.tsx';

type RestoreProps = {
  readonly kept: Kept;
  readonly open: Open;
  readonly revision: number;
  readonly onLeave: () => void;
};

export const Restore = (props: RestoreProps) => {
  const { kept, revision, onLeave } = props;
  const tell = useTell();
  const head = useRef<HTMLHeadingElement>(null);
  const asked = useAsked(`${kept.id} ${revision}`, () => askRevision(kept.id, revision));
  useEffect(() => head.current?.focus(), []);
  return (
    <section className="restore" aria-label={tell('Restore revision {revision}', { revision })}>
      <h2 ref={head} tabIndex={-1}>
        {tell('Restore revision {revision}', { revision })}
      </h2>
      {asked.is === 'waiting' ? <p>{tell('Fetching it …')}</p> : null}
      {asked.is === 'failed' ? (
        <>
          <p role="status">{asked.title}</p>
          <p className="buttons">
            <button type="button" onClick={asked.again}>
              {tell('Ask again')}
            </button>
            <button type="button" onClick={onLeave}>
              {tell('Leave it')}
            </button>
          </p>
        </>
      ) : null}
      {asked.is === 'here' ? <Preview {...props} old={asked.value} /> : null}
    </section>
  );
};

const Preview = ({
  kept,
  open,
  revision,
  old,
  onLeave,
}: RestoreProps & { readonly old: Stored }) => {
  const tell = useTell();
  const spoken = useVoice();
  const keeper = useKeeper();
  const voice = useTradeVoice(open, kept.document);
  const groups = useMemo(
    () => sayDifference(kept.document, old.document, voice),
    [kept.document, old, voice],
  );
  const refusals = useMemo(() => against(open, kept.kind, old.document), [open, kept.kind, old]);
  const leave = (
    <p className="buttons">
      <button type="button" onClick={onLeave}>
        {tell('Leave it')}
      </button>
    </p>
  );
  return (
    <>
      <p>
        {tell(
          'Saved {at} by {savedBy}. Its content becomes the next revision; everything since ' +
            'stays in the history, and undo brings it back.',
          { at: sayMoment(old.savedAt, spoken), savedBy: old.savedBy },
        )}
      </p>
      <h3>{tell('What that changes of what is there now')}</h3>
      <Said groups={groups} empty={tell('Nothing: it says the same as what is there now.')} />
      {refusals.length === 0 ? null : (
        <Notice
          degree="caution"
          title={tell('it does not fit the other documents as they are now')}
        >
          <p>{tell('Nothing is restored. What stands against it:')}</p>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
      {groups.length === 0 || refusals.length > 0 ? (
        leave
      ) : (
        <WhyForm
          label={tell('Why it is restored')}
          act={tell('Restore revision {revision}', { revision })}
          onLeave={onLeave}
          onDone={(why) => {
            keeper.edit(kept.id, old.document, `revision ${revision} restored: ${why}`);
            onLeave();
          }}
        />
      )}
    </>
  );
};
