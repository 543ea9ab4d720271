/** What is done with one document: copied, renamed, set aside. Each asks what it needs first. */
import { type ReactNode, useState } from 'react';
import { message } from '#texts';
import { addressNow, goToAddress } from '../address/use-address.ts';
import type { Kept, Open } from '../keeping/kept.ts';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { shelve } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { against } from './judged.ts';
import { CopyShow } from './new-documents.tsx';
import { RevisionsLink } from './revisions-link.tsx';
import { nameOf } from './shelf-of.ts';
import { type ActProps, faultWords, type Tell } from './tell.ts';
import { WhyForm } from './why-form.tsx';

type ActsProps = {
  readonly kept: Kept;
  readonly open: Open;
  readonly onTell: Tell;
  /** The way into it, first of all. */
  readonly children?: ReactNode;
};

type Act = 'copy' | 'rename' | 'aside';

const ACTS: readonly (readonly [Act, string])[] = [
  ['copy', message('Copy')],
  ['rename', message('Rename')],
  ['aside', message('Set aside')],
];

export const DocumentActs = ({ kept, open, onTell, children }: ActsProps) => {
  const tell = useTell();
  const [act, setAct] = useState<Act | null>(null);
  const name = nameOf(kept);
  const leave = (): void => setAct(null);
  const props = { kept, open, onTell, onLeave: leave };
  return (
    <>
      <div className="document-acts">
        {children}
        <RevisionsLink id={kept.id} name={name} />
        {ACTS.filter(([each]) => each !== 'copy' || kept.kind === 'show').map(([each, words]) => (
          <button
            key={each}
            type="button"
            aria-expanded={act === each}
            onClick={() => setAct(act === each ? null : each)}
          >
            {tell(words)}
            <span className="only-said"> {name}</span>
          </button>
        ))}
      </div>
      {act === null ? null : (
        <div className="document-form">
          {act === 'copy' ? <CopyShow {...props} /> : null}
          {act === 'rename' ? <Rename {...props} /> : null}
          {act === 'aside' ? <SetAside {...props} /> : null}
        </div>
      )}
    </>
  );
};

const Rename = ({ kept, open, onTell, onLeave }: ActProps) => {
  const tell = useTell();
  const keeper = useKeeper();
  const old = nameOf(kept);
  return (
    <WhyForm
      label={tell('New name')}
      act={tell('Rename it')}
      first={old}
      max={80}
      onLeave={onLeave}
      onDone={(name) => {
        const next = { ...kept.document, name };
        const refusals = against(open, kept.kind, next);
        if (refusals.length > 0) {
          onTell({ words: tell('{name} was not renamed', { name: old }), refusals });
          return;
        }
        keeper.edit(kept.id, next, `renamed, was ${old}`);
        onTell({
          words: tell('Renamed: {name}, was {old}. Undo brings the old name back.', { name, old }),
        });
        onLeave();
      }}
    />
  );
};

/** An address that asks for what is set aside would lead nowhere. */
const leaveView = ({ kind, document }: Kept): void => {
  const now = addressNow();
  const id = String(document['id']);
  if ((kind === 'show' ? now.show : now.house) !== id) return;
  const house = kind === 'show' ? now.house : null;
  goToAddress({ ...now, house, show: null }, { replace: true });
};

const SetAside = ({ kept, onTell, onLeave }: ActProps) => {
  const tell = useTell();
  const voice = useVoice();
  const keeper = useKeeper();
  const [isBusy, setBusy] = useState(false);
  const name = nameOf(kept);
  if (kept.save.is !== 'saved') {
    return (
      <p>
        {tell('{name} has edits that are not saved. It can be set aside when they are.', { name })}
      </p>
    );
  }
  const setAside = async (why: string): Promise<void> => {
    setBusy(true);
    try {
      const refusals = await shelve(kept.id, { aside: true, by: nameOnDevice(), why });
      if (refusals.length > 0) {
        onTell({ words: tell('{name} was not set aside', { name }), refusals });
      } else {
        onTell({
          words: tell('{name} is set aside. It is in the list below, and can be taken back.', {
            name,
          }),
        });
        leaveView(kept);
        await keeper.refresh();
      }
    } catch (fault) {
      onTell({ words: faultWords(voice, fault), refusals: [] });
    } finally {
      setBusy(false);
      onLeave();
    }
  };
  return (
    <WhyForm
      label={tell('Why it is set aside')}
      act={tell('Set it aside')}
      isBusy={isBusy}
      onLeave={onLeave}
      onDone={(why) => void setAside(why)}
    >
      <p className="quiet">
        {tell('It leaves the lists, keeps every revision, and can be taken back at any time.')}
      </p>
    </WhyForm>
  );
};
