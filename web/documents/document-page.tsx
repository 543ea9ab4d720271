/** The revisions of one document: who, when, why; two of them apart; and the way back to one. */
import { useId, useState } from 'react';
import { sayMoment } from '#sheets';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { Notice } from '../frame/notice.tsx';
import { saveWords } from '../frame/save-word.tsx';
import type { Open } from '../keeping/kept.ts';
import { askRevisions, type Summary } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useAsked } from './asked.ts';
import { DifferenceOfTwo } from './difference-of-two.tsx';
import { Restore } from './restore.tsx';
import { type DocumentsPlace, revisionsOf } from './shelf-of.ts';
import { WhyForm } from './why-form.tsx';

type PageProps = {
  readonly id: string;
  readonly place: DocumentsPlace;
  readonly open: Open;
};

export const DocumentPage = ({ id, place, open }: PageProps) => {
  const tell = useTell();
  const voice = useVoice();
  const kept = open.documents[id] ?? null;
  const asked = useAsked(`${id} ${kept?.server.revision ?? 0}`, () => askRevisions(id));
  return (
    <>
      <div className="page-head">
        <h1>{kept === null ? tell('Revisions of {id}', { id }) : revisionsOf(kept, voice)}</h1>
        <p className="quiet">
          <Link to={{ kind: 'documents', document: null, older: null, newer: null }}>
            {tell('All documents')}
          </Link>
        </p>
      </div>
      {kept === null ? (
        <Notice degree="note" title={tell('It is not in use: set aside, or not in this database.')}>
          <p>{tell('Its revisions can be read; to work on it, take it back first.')}</p>
        </Notice>
      ) : null}
      {kept === null || kept.save.is === 'saved' ? null : (
        <p role="status">
          {tell('Edits of this page are {saved}; they are not in the list yet.', {
            saved: saveWords(kept, voice),
          })}
        </p>
      )}
      {asked.is === 'waiting' ? (
        <p className="empty-words">{tell('Fetching the revisions …')}</p>
      ) : null}
      {asked.is === 'failed' ? (
        <Notice degree="caution" title={tell('the revisions were not fetched')} isNews>
          <p>{asked.title}</p>
          <p className="buttons">
            <button type="button" onClick={asked.again}>
              {tell('Ask again')}
            </button>
          </p>
        </Notice>
      ) : null}
      {asked.is === 'here' ? (
        <Revisions id={id} place={place} open={open} revisions={asked.value} />
      ) : null}
    </>
  );
};

type RevisionsProps = PageProps & { readonly revisions: readonly Summary[] };

/** The two that are compared: what the address says, or the newest and the one before it. */
const chosenOf = (place: DocumentsPlace, revisions: readonly Summary[]) => {
  const has = (revision: number | null) => revisions.some((each) => each.revision === revision);
  const newest = revisions[0]?.revision ?? 1;
  const newer = has(place.newer) ? (place.newer ?? newest) : newest;
  const older = has(place.older) ? (place.older ?? newer) : Math.max(1, newer - 1);
  return { newer, older };
};

const Revisions = ({ id, place, open, revisions }: RevisionsProps) => {
  const tell = useTell();
  const [restoring, setRestoring] = useState<number | null>(null);
  const kept = open.documents[id] ?? null;
  const { newer, older } = chosenOf(place, revisions);
  return (
    <>
      {kept === null ? null : <Remark id={id} />}
      <RevisionList
        id={id}
        revisions={revisions}
        compared={older === newer ? [] : [older, newer]}
        onRestore={kept === null ? null : setRestoring}
      />
      {kept === null || restoring === null ? null : (
        <Restore
          key={restoring}
          kept={kept}
          open={open}
          revision={restoring}
          onLeave={() => setRestoring(null)}
        />
      )}
      {revisions.length < 2 ? (
        <p className="empty-words">
          {tell('There is one revision so far, and nothing to compare it with.')}
        </p>
      ) : (
        <>
          <PairChoice id={id} revisions={revisions} older={older} newer={newer} />
          <DifferenceOfTwo
            key={`${older} ${newer}`}
            id={id}
            open={open}
            older={older}
            newer={newer}
            newest={revisions[0]?.revision ?? newer}
          />
        </>
      )}
    </>
  );
};

/** Written on the edits that wait, or on what is there now as a revision of its own. */
const Remark = ({ id }: { readonly id: string }) => {
  const tell = useTell();
  const keeper = useKeeper();
  return (
    <WhyForm
      label={tell('Remark on what is there now, to find it by')}
      act={tell('Write the remark')}
      max={200}
      onDone={(words) => keeper.remark(id, words)}
    />
  );
};

type ListProps = {
  readonly id: string;
  readonly revisions: readonly Summary[];
  readonly compared: readonly number[];
  readonly onRestore: ((revision: number) => void) | null;
};

const RevisionList = ({ id, revisions, compared, onRestore }: ListProps) => {
  const tell = useTell();
  const [onlyNamed, setOnlyNamed] = useState(false);
  const named = revisions.filter(({ remark }) => remark !== '');
  const shown = onlyNamed ? named : revisions;
  return (
    <section className="revisions" aria-label={tell('Revisions')}>
      <label className="tick">
        <input
          type="checkbox"
          checked={onlyNamed}
          onChange={({ target }) => setOnlyNamed(target.checked)}
        />
        {tell('Only those with a remark, {count} of {all}', {
          count: named.length,
          all: revisions.length,
        })}
      </label>
      {shown.length === 0 ? (
        <p className="quiet">{tell('No revision has a remark yet.')}</p>
      ) : (
        <ol className="document-list revision-list" aria-label={tell('Newest first')}>
          {shown.map((each) => (
            <RevisionRow
              key={each.revision}
              id={id}
              saved={each}
              isCompared={compared.includes(each.revision)}
              onRestore={each.revision === revisions[0]?.revision ? null : onRestore}
            />
          ))}
        </ol>
      )}
    </section>
  );
};

type RowProps = {
  readonly id: string;
  readonly saved: Summary;
  readonly isCompared: boolean;
  readonly onRestore: ((revision: number) => void) | null;
};

const RevisionRow = ({ id, saved, isCompared, onRestore }: RowProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { revision, savedAt, savedBy, why, remark } = saved;
  return (
    <li className={isCompared ? 'document-row here' : 'document-row'}>
      <div>
        <h3>
          {tell('Revision {revision}', { revision })}
          {isCompared ? <span className="open-word">{tell('compared')}</span> : null}
        </h3>
        <span className="document-facts">
          {tell('{at} by {savedBy}', { at: sayMoment(savedAt, voice), savedBy })}
          {why === '' ? '' : `: ${why}`}
          {remark === '' ? null : (
            <span className="document-remark">{tell('Remark: {remark}', { remark })}</span>
          )}
        </span>
      </div>
      <div className="document-acts">
        {revision === 1 ? null : (
          <Link to={{ kind: 'documents', document: id, older: revision - 1, newer: revision }}>
            {tell('What it changed')}
            <span className="only-said">{tell(', revision {revision}', { revision })}</span>
          </Link>
        )}
        {onRestore === null ? null : (
          <button type="button" onClick={() => onRestore(revision)}>
            {tell('Restore')}
            <span className="only-said">{tell(' revision {revision}', { revision })}</span>
          </button>
        )}
      </div>
    </li>
  );
};

type PairProps = {
  readonly id: string;
  readonly revisions: readonly Summary[];
  readonly older: number;
  readonly newer: number;
};

const PairChoice = ({ id, revisions, older, newer }: PairProps) => {
  const tell = useTell();
  const take = (pair: { readonly older: number; readonly newer: number }): void =>
    go({ kind: 'documents', document: id, ...pair }, { replace: true });
  return (
    <div className="pair-choice">
      <RevisionChoice
        label={tell('Show what changed from')}
        revisions={revisions}
        chosen={older}
        onChoose={(revision) => take({ older: revision, newer })}
      />
      <RevisionChoice
        label={tell('to')}
        revisions={revisions}
        chosen={newer}
        onChoose={(revision) => take({ older, newer: revision })}
      />
    </div>
  );
};

type ChoiceProps = {
  readonly label: string;
  readonly revisions: readonly Summary[];
  readonly chosen: number;
  readonly onChoose: (revision: number) => void;
};

const RevisionChoice = ({ label, revisions, chosen, onChoose }: ChoiceProps) => {
  const tell = useTell();
  const voice = useVoice();
  const id = useId();
  return (
    <div className="why-field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={chosen} onChange={({ target }) => onChoose(Number(target.value))}>
        {revisions.map(({ revision, savedBy, savedAt, remark }) => (
          <option key={revision} value={revision}>
            {tell('revision {revision}, {at}, {savedBy}', {
              revision,
              at: sayMoment(savedAt, voice),
              savedBy,
            })}
            {remark === '' ? '' : `: ${remark}`}
          </option>
        ))}
      </select>
    </div>
  );
};
