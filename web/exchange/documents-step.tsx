/** Documents from a file or an archive, beside those that are here, and which of them to take. */
import { useMemo, useState } from 'react';
import type { Refusal } from '#outcome';
import { sayMoment } from '#sheets';
import { message, phrase, type Voice } from '#texts';
import { FOLDED } from '../frame/folded-roles.ts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import type { Keeper } from '../keeping/keeper.ts';
import type { Kept } from '../keeping/kept.ts';
import { useKeeper, useKeeperState } from '../keeping/use-keeper.ts';
import { useTell, useTellCount, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import {
  behindWords,
  inPlaceOf,
  leftBehind,
  mayReplace,
  type Standing,
  standingOf,
} from './document-standing.ts';
import type { Found, ReadDocument } from './file-reading.ts';
import { sayGathered } from './say-gathered.ts';
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
  {
    keeper,
    what,
    voice,
  }: { readonly keeper: Keeper; readonly what: string; readonly voice: Voice },
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
  const why =
    answer.outcome === 'stale'
      ? phrase(voice, 'Another of this name is kept already, perhaps set aside.')
      : phrase(voice, 'The server was not reached.');
  return { id: one.id, why, refusals: [] };
};

const useTaking = (file: string, here: Documents) => {
  const voice = useVoice();
  const keeper = useKeeper();
  const [outcome, setOutcome] = useState(NO_OUTCOME);
  const take = async (documents: readonly ReadDocument[]): Promise<void> => {
    const notTaken: NotTaken[] = [];
    for (const one of documents) {
      const of = one.revision === null ? '' : `, its revision ${one.revision}`;
      const what = `brought in ${file}${of}`;
      const fault = await takeOne(one, here, { keeper, what, voice });
      if (fault !== null) notTaken.push(fault);
    }
    const count = documents.length - notTaken.length;
    setOutcome({
      words: phrase(voice, '{count} of {all} taken.', { count, all: documents.length }),
      notTaken,
    });
  };
  return { outcome, take };
};

export const DocumentsStep = ({ found }: { readonly found: FoundDocuments }) => {
  const tell = useTell();
  const voice = useVoice();
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
      <p role="status">{foundWords(found, voice)}</p>
      {found.is === 'archive' ? <LeftOut leftOut={found.leftOut} /> : null}
      <StandingTable
        standings={standings}
        ticked={ticked}
        onTick={toggle}
        onMean={(id, isMeant) => setMeant(withOr(meant, id, isMeant))}
      />
      <Behind documents={behind} />
      <p className="buttons">
        <button type="button" disabled={chosen.length === 0} onClick={() => void take(chosen)}>
          {tell('Take what is ticked')}
        </button>
        {open.length < 2 ? null : (
          <button type="button" onClick={() => setTicked(new Set(open.map(({ own }) => own.id)))}>
            {tell('Tick all {count} that differ', { count: open.length })}
          </button>
        )}
      </p>
      <p role="status">{outcome.words}</p>
      <NotTakenList notTaken={outcome.notTaken} />
    </section>
  );
};

const Behind = ({ documents }: { readonly documents: readonly Kept[] }) => {
  const tell = useTell();
  const voice = useVoice();
  if (documents.length === 0) return null;
  const names = documents.map((one) => shownText(behindWords(one, voice)));
  return (
    <Notice degree="caution" title={tell('something here would no longer be understood')} isNews>
      <p>{tell('Beside that house: {documents}.', { documents: names.join(', ') })}</p>
    </Notice>
  );
};

const NotTakenList = ({ notTaken }: Pick<Outcome, 'notTaken'>) => {
  const tell = useTell();
  return notTaken.map(({ id, why, refusals }) => (
    <Notice key={id} degree="caution" title={tell('{id} was not taken', { id })} isNews>
      <p>{why}</p>
      <RefusalsWithPlace refusals={refusals} />
    </Notice>
  ));
};

const withOr = (all: ReadonlySet<string>, id: string, isIn: boolean): ReadonlySet<string> => {
  const next = new Set(all);
  if (isIn) next.add(id);
  else next.delete(id);
  return next;
};

const foundWords = (found: FoundDocuments, voice: Voice): string => {
  if (found.is === 'documents') {
    const [one] = found.documents;
    return one === undefined
      ? phrase(voice, 'Nothing in it.')
      : phrase(voice, KIND_WORDS[one.kind]);
  }
  const { at, by, version } = found.made;
  return phrase(
    voice,
    'An archive of {at}, made by {by} with version {version}: {files} files, each as it was ' +
      'packed, {revisions} revisions of {documents} documents. The newest of each can be taken.',
    {
      at: sayMoment(at, voice),
      by: shownText(by),
      version: shownText(version),
      files: found.files,
      revisions: found.revisions,
      documents: found.documents.length,
    },
  );
};

const KIND_WORDS = {
  house: message('It is a house.'),
  show: message('It is a show.'),
  state: message('It is a record of how sets stand.'),
} as const;

const LeftOut = ({
  leftOut,
}: {
  readonly leftOut: readonly { readonly what: string; readonly why: string }[];
}) => {
  const voice = useVoice();
  const said = (text: string): string => shownText(sayGathered(voice, text));
  return leftOut.length === 0 ? null : (
    <p>
      {phrase(voice, 'Not in it: {list}.', {
        list: leftOut.map(({ what, why }) => `${said(what)} (${said(why)})`).join('; '),
      })}
    </p>
  );
};

const nameWords = ({ kind, name, raw }: ReadDocument, voice: Voice): string =>
  kind === 'state' && voice.tongue !== undefined
    ? phrase(voice, 'How the sets of {house} stand', { house: String(raw['house'] ?? '') })
    : name;

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

const StandingTable = ({ standings, ...props }: TableProps) => {
  const tell = useTell();
  return (
    <table {...FOLDED.table} className="plain standing-table stacked">
      <caption>{tell('Beside what is here')}</caption>
      <thead {...FOLDED.rows}>
        <tr {...FOLDED.row}>
          <th {...FOLDED.columnHead} scope="col">
            {tell('Document')}
          </th>
          <th {...FOLDED.columnHead} scope="col">
            {tell('Here')}
          </th>
          <th {...FOLDED.columnHead} scope="col">
            {tell('Take')}
          </th>
        </tr>
      </thead>
      <tbody {...FOLDED.rows}>
        {standings.map((row) => (
          <StandingRow key={row.own.id} row={row} {...props} />
        ))}
      </tbody>
    </table>
  );
};

type RowProps = Omit<TableProps, 'standings'> & { readonly row: Row };

const StandingRow = ({ row, ticked, onTick, onMean }: RowProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { own, one, standing, mayBe } = row;
  const name = shownText(nameWords(own, voice));
  return (
    <tr {...FOLDED.row}>
      <th {...FOLDED.rowHead} scope="row">
        {name}
        <small>
          {' '}
          {own.id}
          {own.revision === null ? '' : tell(', revision {revision}', { revision: own.revision })}
        </small>
      </th>
      <td {...FOLDED.cell}>
        <StandingWords standing={standing} />
        {own.isChecked ? null : (
          <p className="caution-word">
            {tell('Its house is not here, so it was not checked against it.')}
          </p>
        )}
      </td>
      <td {...FOLDED.cell}>
        {mayBe === null ? null : (
          <select
            aria-label={tell('{name} is meant as', { name })}
            value={one === own ? 'new' : 'next'}
            onChange={({ target }) => onMean(own.id, target.value === 'next')}
          >
            <option value="new">{tell('a document of its own')}</option>
            <option value="next">
              {tell('{name}, its next revision', { name: shownText(mayBe) })}
            </option>
          </select>
        )}
        {standing.is === 'same' ? (
          <span className="quiet">{tell('nothing to take')}</span>
        ) : (
          <label className="tick">
            <input
              type="checkbox"
              checked={ticked.has(own.id)}
              onChange={({ target }) => onTick(own.id, target.checked)}
            />
            <span className="only-said">{name} </span>
            {standing.is === 'new' ? tell('as a new document') : tell('as the next revision')}
          </label>
        )}
      </td>
    </tr>
  );
};

const SHOWN_MAX = 40;

const valueWords = (value: unknown, voice: Voice): string =>
  value === undefined ? phrase(voice, 'nothing') : shownText(JSON.stringify(value), 90);

const StandingWords = ({ standing }: { readonly standing: Standing }) => {
  const tell = useTell();
  const tellCount = useTellCount();
  const voice = useVoice();
  if (standing.is === 'same') return tell('the same');
  if (standing.is === 'new') return tell('not here yet');
  const { changes } = standing;
  return (
    <details>
      <summary>{tellCount(changes.length, ['one place differs', '{count} places differ'])}</summary>
      <dl className="difference">
        {changes.slice(0, SHOWN_MAX).map(({ path, before, after }) => (
          <div key={path}>
            <dt>{shownText(path, 90)}</dt>
            <dd>
              {tell('{before}, then {after}', {
                before: valueWords(before, voice),
                after: valueWords(after, voice),
              })}
            </dd>
          </div>
        ))}
      </dl>
      {changes.length > SHOWN_MAX ? (
        <p>{tell('{count} more.', { count: changes.length - SHOWN_MAX })}</p>
      ) : null}
    </details>
  );
};
