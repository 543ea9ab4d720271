/** Documents from a file or an archive, beside those that are here, and which of them to take. */
import { useMemo, useState } from 'react';
import type { Refusal } from '#outcome';
import { sayMoment } from '#sheets';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import type { Keeper } from '../keeping/keeper.ts';
import type { Kept } from '../keeping/kept.ts';
import { useKeeper, useKeeperState } from '../keeping/use-keeper.ts';
import { useWork } from '../reckoning/use-work.ts';
import {
  inPlaceOf,
  leftBehind,
  mayReplace,
  type Standing,
  standingOf,
} from './document-standing.ts';
import type { Found, ReadDocument } from './file-reading.ts';
import { shownText } from './shown-text.ts';

type FoundDocuments = Extract<Found, { readonly is: 'documents' | 'archive' }>;
type Documents = Readonly<Record<string, Kept>>;
type NotTaken = {
  readonly id: string;
  readonly why: string;
  readonly refusals: readonly Refusal[];
};
type Outcome = { readonly words: string; readonly notTaken: readonly NotTaken[] };

const NO_OUTCOME: Outcome = { words: '', notTaken: [] };
const NO_DOCUMENTS: Documents = {};

/** One that is here becomes its next revision, which undo takes back; another begins anew. */
const takeOne = async (
  one: ReadDocument,
  here: Documents,
  { keeper, what }: { readonly keeper: Keeper; readonly what: string },
): Promise<NotTaken | null> => {
  if (here[one.id] !== undefined) {
    keeper.edit(one.id, one.raw, what);
    return null;
  }
  const answer = await keeper.add(one.id, one.kind, one.raw, what);
  if (answer.outcome === 'saved') return null;
  if (answer.outcome === 'refused') {
    return { id: one.id, why: answer.title, refusals: answer.refusals };
  }
  const stale = 'Another of this name is kept already, perhaps set aside.';
  const why = answer.outcome === 'stale' ? stale : 'The server was not reached.';
  return { id: one.id, why, refusals: [] };
};

const useTaking = (file: string, here: Documents) => {
  const keeper = useKeeper();
  const [outcome, setOutcome] = useState(NO_OUTCOME);
  const take = async (documents: readonly ReadDocument[]): Promise<void> => {
    const notTaken: NotTaken[] = [];
    for (const one of documents) {
      const of = one.revision === null ? '' : `, its revision ${one.revision}`;
      const fault = await takeOne(one, here, { keeper, what: `brought in ${file}${of}` });
      if (fault !== null) notTaken.push(fault);
    }
    const count = documents.length - notTaken.length;
    setOutcome({ words: `${count} of ${documents.length} taken.`, notTaken });
  };
  return { outcome, take };
};

export const DocumentsStep = ({ found }: { readonly found: FoundDocuments }) => {
  const state = useKeeperState();
  const here = state.phase === 'open' ? state.documents : NO_DOCUMENTS;
  const file = shownText(found.file);
  const { outcome, take } = useTaking(found.file, here);
  const { kept } = useWork();
  const [meant, setMeant] = useState<ReadonlySet<string>>(() => new Set());
  const standings = useMemo(
    () =>
      found.documents.map((own): Row => {
        const name = String(kept.show.document['name'] ?? '');
        const mayBe = mayReplace(own, kept.show, here) ? name : null;
        const one = mayBe !== null && meant.has(own.id) ? inPlaceOf(own, kept.show) : own;
        return { own, one, mayBe, standing: standingOf(one, here) };
      }),
    [found, here, meant, kept.show],
  );
  const [ticked, setTicked] = useState<ReadonlySet<string>>(() => new Set());
  const open = standings.filter(({ standing }) => standing.is !== 'same');
  const chosen = open.filter(({ own }) => ticked.has(own.id)).map(({ one }) => one);
  const behind = useMemo(() => leftBehind(chosen, here), [chosen, here]);
  const toggle = (id: string, isOn: boolean): void => setTicked(withOr(ticked, id, isOn));
  return (
    <section aria-labelledby="documents-step" className="found-step">
      <h2 id="documents-step">{file}</h2>
      <p role="status">{foundWords(found)}</p>
      {found.is === 'archive' ? <LeftOut leftOut={found.leftOut} /> : null}
      <StandingTable
        standings={standings}
        ticked={ticked}
        onTick={toggle}
        onMean={(id, isMeant) => setMeant(withOr(meant, id, isMeant))}
      />
      {behind.length === 0 ? null : (
        <Notice degree="caution" title="something here would no longer be understood" isNews>
          <p>Beside that house: {behind.map((name) => shownText(name)).join(', ')}.</p>
        </Notice>
      )}
      <p className="buttons">
        <button type="button" disabled={chosen.length === 0} onClick={() => void take(chosen)}>
          Take what is ticked
        </button>
        {open.length < 2 ? null : (
          <button type="button" onClick={() => setTicked(new Set(open.map(({ own }) => own.id)))}>
            Tick all {open.length} that differ
          </button>
        )}
      </p>
      <p role="status">{outcome.words}</p>
      {outcome.notTaken.map(({ id, why, refusals }) => (
        <Notice key={id} degree="caution" title={`${id} was not taken`} isNews>
          <p>{why}</p>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      ))}
    </section>
  );
};

const withOr = (all: ReadonlySet<string>, id: string, isIn: boolean): ReadonlySet<string> => {
  const next = new Set(all);
  if (isIn) next.add(id);
  else next.delete(id);
  return next;
};

const foundWords = (found: FoundDocuments): string => {
  if (found.is === 'documents') {
    const [one] = found.documents;
    return one === undefined ? 'Nothing in it.' : `It is a ${KIND_WORDS[one.kind]}.`;
  }
  const { at, by, version } = found.made;
  return (
    `An archive of ${sayMoment(at)}, made by ${shownText(by)} with version ` +
    `${shownText(version)}: ` +
    `${found.files} files, each as it was packed, ${found.revisions} revisions of ` +
    `${found.documents.length} documents. The newest of each can be taken.`
  );
};

const KIND_WORDS = { house: 'house', show: 'show', state: 'record of how sets stand' } as const;

const LeftOut = ({
  leftOut,
}: {
  readonly leftOut: readonly { readonly what: string; readonly why: string }[];
}) =>
  leftOut.length === 0 ? null : (
    <p>
      Not in it:{' '}
      {leftOut.map(({ what, why }) => `${shownText(what)} (${shownText(why)})`).join('; ')}.
    </p>
  );

type Row = {
  /** As it was read; `one` is what it is meant as. */
  readonly own: ReadDocument;
  readonly one: ReadDocument;
  readonly standing: Standing;
  /** The name of the show in hand, where it may be meant as that. */
  readonly mayBe: string | null;
};

type TableProps = {
  readonly standings: readonly Row[];
  readonly ticked: ReadonlySet<string>;
  readonly onTick: (id: string, isOn: boolean) => void;
  readonly onMean: (id: string, isMeant: boolean) => void;
};

const StandingTable = ({ standings, ...props }: TableProps) => (
  <table className="plain standing-table stacked">
    <caption>Beside what is here</caption>
    <thead>
      <tr>
        <th scope="col">Document</th>
        <th scope="col">Here</th>
        <th scope="col">Take</th>
      </tr>
    </thead>
    <tbody>
      {standings.map((row) => (
        <StandingRow key={row.own.id} row={row} {...props} />
      ))}
    </tbody>
  </table>
);

type RowProps = Omit<TableProps, 'standings'> & { readonly row: Row };

const StandingRow = ({ row, ticked, onTick, onMean }: RowProps) => {
  const { own, one, standing, mayBe } = row;
  return (
    <tr>
      <th scope="row">
        {shownText(own.name)}
        <small>
          {' '}
          {own.id}
          {own.revision === null ? '' : `, revision ${own.revision}`}
        </small>
      </th>
      <td>
        <StandingWords standing={standing} />
        {own.isChecked ? null : (
          <p className="caution-word">Its house is not here, so it was not checked against it.</p>
        )}
      </td>
      <td>
        {mayBe === null ? null : (
          <select
            aria-label={`${shownText(own.name)} is meant as`}
            value={one === own ? 'new' : 'next'}
            onChange={({ target }) => onMean(own.id, target.value === 'next')}
          >
            <option value="new">a document of its own</option>
            <option value="next">{shownText(mayBe)}, its next revision</option>
          </select>
        )}
        {standing.is === 'same' ? (
          <span className="quiet">nothing to take</span>
        ) : (
          <label className="tick">
            <input
              type="checkbox"
              checked={ticked.has(own.id)}
              onChange={({ target }) => onTick(own.id, target.checked)}
            />
            <span className="only-said">{shownText(own.name)} </span>
            {standing.is === 'new' ? 'as a new document' : 'as the next revision'}
          </label>
        )}
      </td>
    </tr>
  );
};

const SHOWN_MAX = 40;

const valueWords = (value: unknown): string =>
  value === undefined ? 'nothing' : shownText(JSON.stringify(value), 90);

const StandingWords = ({ standing }: { readonly standing: Standing }) => {
  if (standing.is === 'same') return 'the same';
  if (standing.is === 'new') return 'not here yet';
  const { changes } = standing;
  return (
    <details>
      <summary>
        {changes.length === 1 ? 'one place differs' : `${changes.length} places differ`}
      </summary>
      <dl className="difference">
        {changes.slice(0, SHOWN_MAX).map(({ path, before, after }) => (
          <div key={path}>
            <dt>{shownText(path, 90)}</dt>
            <dd>
              {valueWords(before)}, then {valueWords(after)}
            </dd>
          </div>
        ))}
      </dl>
      {changes.length > SHOWN_MAX ? <p>{changes.length - SHOWN_MAX} more.</p> : null}
    </details>
  );
};
