/** What a person must decide about saving: whose version, or what the server refused. */
import { lazy, Suspense } from 'react';
import { sayMoment } from '#sheets';
import type { Kept } from '../keeping/kept.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { Notice } from './notice.tsx';
import { RefusalsWithPlace } from './refusals.tsx';

const ContestView = lazy(async () => ({
  default: (await import('../documents/contest-view.tsx')).ContestView,
}));

const Conflict = ({ kept }: { readonly kept: Kept }) => {
  const keeper = useKeeper();
  if (kept.save.is !== 'conflict') return null;
  const { revision, savedBy, savedAt, why } = kept.save.theirs;
  return (
    <Notice degree="caution" title={`the ${kept.kind} was saved by somebody else`}>
      <p role="alert">
        Revision {revision} by {savedBy}, {sayMoment(savedAt)}
        {why === '' ? '' : `: ${why}`}. Your edits are on this device and not saved. Nothing is
        merged by itself. Whatever you choose, theirs stays in the history and undo keeps yours.
      </p>
      <Suspense fallback={<p>Fetching what differs …</p>}>
        <ContestView kept={kept} />
      </Suspense>
      <p className="buttons">
        <button type="button" onClick={() => keeper.keepMine(kept.id)}>
          Save mine as revision {revision + 1}
        </button>
        <button type="button" onClick={() => keeper.takeTheirs(kept.id)}>
          Take theirs; undo brings mine back
        </button>
      </p>
    </Notice>
  );
};

const Refused = ({ kept }: { readonly kept: Kept }) => {
  const { save } = kept;
  if (save.is !== 'refused') return null;
  return (
    <Notice degree="caution" title={`the ${kept.kind} was not saved`} isNews>
      <p>{save.title} Your edits are on this device; undo, or mend them here.</p>
      <RefusalsWithPlace refusals={save.refusals} />
    </Notice>
  );
};

export const SaveNotices = ({ documents }: { readonly documents: readonly (Kept | null)[] }) =>
  documents.map((kept) =>
    kept === null ? null : (
      <div key={kept.id}>
        <Conflict kept={kept} />
        <Refused kept={kept} />
      </div>
    ),
  );
