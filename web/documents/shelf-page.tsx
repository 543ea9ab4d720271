/** Houses with their shows: what is open, at which revision, saved by whom, when and why. */
import { useState } from 'react';
import { sayMoment } from '#sheets';
import { Link } from '../address/link.tsx';
import { useAddress } from '../address/use-address.ts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { saveWords } from '../frame/save-word.tsx';
import type { Kept, Open } from '../keeping/kept.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { AsideList } from './aside-list.tsx';
import { DocumentActs } from './document-acts.tsx';
import { NewHouse, NewShow } from './new-documents.tsx';
import { RevisionsLink } from './revisions-link.tsx';
import { type HouseShelf, nameOf, shelvesOf, withoutHouse } from './shelf-of.ts';
import type { Outcome, Tell } from './tell.ts';

const idOf = ({ document }: Kept): string => String(document['id']);

/** Who saved it last, when and why. */
const Saved = ({ kept }: { readonly kept: Kept }) => {
  const tell = useTell();
  const voice = useVoice();
  const { revision, savedBy, savedAt, why, remark } = kept.server;
  return (
    <span className="document-facts">
      {tell('revision {revision}, {at} by {savedBy}', {
        revision,
        at: sayMoment(savedAt, voice),
        savedBy,
      })}
      {why === '' ? '' : `: ${why}`}
      {remark === '' ? null : (
        <span className="document-remark">{tell('Remark: {remark}', { remark })}</span>
      )}
      {kept.save.is === 'saved' ? null : <b>{saveWords(kept, voice)}</b>}
    </span>
  );
};

type RowProps = {
  readonly kept: Kept;
  readonly house: Kept;
  readonly isOpen: boolean;
  readonly open: Open;
  readonly onTell: Tell;
};

const ShowRow = ({ kept, house, isOpen, open, onTell }: RowProps) => {
  const tell = useTell();
  return (
    <li className="document-row">
      <div>
        <h3>
          {nameOf(kept)} {isOpen ? <span className="open-word">{tell('open')}</span> : null}
        </h3>
        <Saved kept={kept} />
      </div>
      <DocumentActs kept={kept} open={open} onTell={onTell}>
        <Link to={{ kind: 'hangList' }} among={{ house: idOf(house), show: idOf(kept) }}>
          {tell('Open')}
          <span className="only-said"> {nameOf(kept)}</span>
        </Link>
      </DocumentActs>
    </li>
  );
};

const RecordRow = ({ record }: { readonly record: Kept }) => {
  const tell = useTell();
  return (
    <li className="document-row">
      <div>
        <h3>{tell('Record of how the sets stand')}</h3>
        <Saved kept={record} />
      </div>
      <div className="document-acts">
        <RevisionsLink id={record.id} name={tell('the record')} />
      </div>
    </li>
  );
};

type ShelfProps = {
  readonly shelf: HouseShelf;
  readonly open: Open;
  readonly shown: { readonly house: string | null; readonly show: string | null };
  readonly onTell: Tell;
};

const Shelf = ({ shelf, open, shown, onTell }: ShelfProps) => {
  const tell = useTell();
  const { house, shows, record } = shelf;
  const name = nameOf(house);
  return (
    <section className="house-shelf" aria-label={name}>
      <div className="document-row house-row">
        <div>
          <h2>{name}</h2>
          <Saved kept={house} />
        </div>
        <DocumentActs kept={house} open={open} onTell={onTell}>
          {shows.length === 0 ? null : (
            <Link
              to={{ kind: 'house', part: 'section', at: null }}
              among={{ house: idOf(house), show: null }}
            >
              {tell('Open the house')}
              <span className="only-said"> {name}</span>
            </Link>
          )}
        </DocumentActs>
      </div>
      <ul className="document-list" aria-label={tell('Shows in {name}', { name })}>
        {shows.map((show) => (
          <ShowRow
            key={show.id}
            kept={show}
            house={house}
            isOpen={idOf(house) === shown.house && idOf(show) === shown.show}
            open={open}
            onTell={onTell}
          />
        ))}
        {record === null ? null : <RecordRow record={record} />}
      </ul>
      {shows.length === 0 ? (
        <p className="quiet document-none">
          {tell('No show is in this house yet; a house is opened with a show in it.')}
        </p>
      ) : null}
      <NewShow house={house} open={open} onTell={onTell} />
    </section>
  );
};

/** What the address shows, or the first of all where it names none. */
const useShown = (open: Open) => {
  const { house, show } = useAddress();
  const shelves = Object.values(open.documents).filter(({ kind }) => kind === 'house');
  const first = shelves.find((each) => house === null || idOf(each) === house);
  const shownHouse = first === undefined ? null : idOf(first);
  const shows = Object.values(open.documents).filter(
    (each) => each.kind === 'show' && each.document['house'] === shownHouse,
  );
  const firstShow = shows.find((each) => show === null || idOf(each) === show);
  return { house: shownHouse, show: firstShow === undefined ? null : idOf(firstShow) };
};

const WaysInAndOut = () => {
  const tell = useTell();
  return (
    <nav className="ways" aria-label={tell('In and out')}>
      <Link to={{ kind: 'bringIn' }}>{tell('Bring in')}</Link>
      <Link to={{ kind: 'takeOut', at: null }}>{tell('Take out')}</Link>
    </nav>
  );
};

const OutcomeNotice = ({ outcome }: { readonly outcome: Outcome | null }) => (
  <div className="outcome" role="status">
    {outcome === null ? null : outcome.refusals === undefined ? (
      <p>{outcome.words}</p>
    ) : (
      <Notice degree="caution" title={outcome.words}>
        <RefusalsWithPlace refusals={outcome.refusals} />
      </Notice>
    )}
  </div>
);

/** When the show in view is set aside, another screen stands here a moment later. */
const STILL_NEWS_MS = 3000;
let last: { readonly outcome: Outcome; readonly atMs: number } | null = null;

const useOutcome = (): readonly [Outcome | null, Tell] => {
  const [outcome, setOutcome] = useState<Outcome | null>(() =>
    last !== null && Date.now() - last.atMs < STILL_NEWS_MS ? last.outcome : null,
  );
  const onTell: Tell = (told) => {
    last = { outcome: told, atMs: Date.now() };
    setOutcome(told);
  };
  return [outcome, onTell];
};

export const ShelfPage = ({ open }: { readonly open: Open }) => {
  const tell = useTell();
  const [outcome, onTell] = useOutcome();
  const shown = useShown(open);
  const strays = withoutHouse(open);
  return (
    <>
      <div className="page-head">
        <h1>{tell('Documents')}</h1>
        <p className="quiet">
          {open.databases.inHand === 'demo'
            ? tell('The demo database.')
            : tell('Your own database.')}{' '}
          {tell('Every save is a revision and none is ever rewritten.')}
        </p>
        <WaysInAndOut />
      </div>
      <OutcomeNotice outcome={outcome} />
      {shelvesOf(open).map((shelf) => (
        <Shelf key={shelf.house.id} shelf={shelf} open={open} shown={shown} onTell={onTell} />
      ))}
      {strays.length === 0 ? null : (
        <section className="house-shelf" aria-label={tell('Shows without a house')}>
          <h2>{tell('Shows whose house is not in this database')}</h2>
          <ul className="document-list">
            {strays.map((kept) => (
              <li key={kept.id} className="document-row">
                <div>
                  <h3>{nameOf(kept)}</h3>
                  <Saved kept={kept} />
                </div>
                <DocumentActs kept={kept} open={open} onTell={onTell} />
              </li>
            ))}
          </ul>
        </section>
      )}
      <NewHouse open={open} onTell={onTell} />
      <AsideList onTell={onTell} />
    </>
  );
};
