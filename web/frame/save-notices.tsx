/** What a person must decide about saving: whose version, or what the server refused. */
import { lazy, Suspense } from 'react';
import { sayMoment } from '#sheets';
import { message } from '#texts';
import type { Kept } from '../keeping/kept.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { Notice } from './notice.tsx';
import { RefusalsWithPlace } from './refusals.tsx';

const ContestView = lazy(async () => ({
  default: (await import('../documents/contest-view.tsx')).ContestView,
}));

const CONTESTED = {
  house: message('the house was saved by somebody else'),
  show: message('the show was saved by somebody else'),
  state: message('the state was saved by somebody else'),
} as const;

const NOT_SAVED = {
  house: message('the house was not saved'),
  show: message('the show was not saved'),
  state: message('the state was not saved'),
} as const;

const Conflict = ({ kept }: { readonly kept: Kept }) => {
  const tell = useTell();
  const voice = useVoice();
  const keeper = useKeeper();
  if (kept.save.is !== 'conflict') return null;
  const { revision, savedBy, savedAt, why } = kept.save.theirs;
  return (
    <Notice degree="caution" title={tell(CONTESTED[kept.kind])}>
      <p role="alert">
        {tell('Revision {revision} by {savedBy}, {at}', {
          revision,
          savedBy,
          at: sayMoment(savedAt, voice),
        })}
        {why === '' ? '' : `: ${why}`}
        {tell(
          '. Your edits are on this device and not saved. Nothing is merged by itself. Whatever ' +
            'you choose, theirs stays in the history and undo keeps yours.',
        )}
      </p>
      <Suspense fallback={<p>{tell('Fetching what differs …')}</p>}>
        <ContestView kept={kept} />
      </Suspense>
      <p className="buttons">
        <button type="button" onClick={() => keeper.keepMine(kept.id)}>
          {tell('Save mine as revision {revision}', { revision: revision + 1 })}
        </button>
        <button type="button" onClick={() => keeper.takeTheirs(kept.id)}>
          {tell('Take theirs; undo brings mine back')}
        </button>
      </p>
    </Notice>
  );
};

const Refused = ({ kept }: { readonly kept: Kept }) => {
  const tell = useTell();
  const { save } = kept;
  if (save.is !== 'refused') return null;
  return (
    <Notice degree="caution" title={tell(NOT_SAVED[kept.kind])} isNews>
      <p>
        {tell('{title} Your edits are on this device; undo, or mend them here.', {
          title: save.title,
        })}
      </p>
      <RefusalsWithPlace refusals={save.refusals} />
    </Notice>
  );
};

const Held = ({ kept }: { readonly kept: Kept }) => {
  const tell = useTell();
  const keeper = useKeeper();
  if (kept.save.is !== 'held') return null;
  return (
    <Notice degree="caution" title={tell('how things stand was not recorded')} isNews>
      <p>
        {tell(
          'The server did not answer, so it is not known whether this is in the record: {why}. ' +
            'It is on this device and is not sent by itself, as the house may be different by ' +
            'now. Look whether it is still so, then send it or drop it.',
          { why: kept.why },
        )}
      </p>
      <p className="buttons">
        <button type="button" onClick={() => keeper.sendHeld(kept.id)}>
          {tell('It is still so: send it')}
        </button>
        <button type="button" onClick={() => void keeper.dropHeld(kept.id)}>
          {tell('Drop it; show what the server has')}
        </button>
      </p>
    </Notice>
  );
};

export const SaveNotices = ({ documents }: { readonly documents: readonly (Kept | null)[] }) =>
  documents.map((kept) =>
    kept === null ? null : (
      <div key={kept.id} className="save-notice">
        <Conflict kept={kept} />
        <Held kept={kept} />
        <Refused kept={kept} />
      </div>
    ),
  );
