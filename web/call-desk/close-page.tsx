/** Closing a call: what is not as planned, what is in doubt, and what the record will say after. */
import { useState } from 'react';
import { phrase, type Voice } from '#texts';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { Notice } from '../frame/notice.tsx';
import { TextField } from '../house-found/choice-field.tsx';
import { keeper } from '../keeping/use-keeper.ts';
import { useTell, useTellCount, useVoice } from '../language/use-tell.ts';
import { useAct } from '../people/use-act.tsx';
import { closeCall } from './ask-call.ts';
import { type HowOtherwise, type Leaves, leavesOf } from './closing.ts';
import { setPlace } from './desk-parts.ts';
import { nameOfPiece } from './set-on-desk.ts';
import { SheetLinks } from './sheet-links.tsx';
import type { OpenDesk } from './use-desk.ts';

export const ClosePage = ({ open }: { readonly open: OpenDesk }) => {
  const tell = useTell();
  const { now, work } = open;
  const leaves = leavesOf(now, work.sets);
  return (
    <>
      <h1>{tell('Close the call')}</h1>
      <Open open={open} leaves={leaves} />
      <Otherwise open={open} leaves={leaves} />
      <Doubts leaves={leaves} />
      <Record leaves={leaves} />
      <CloseForm isLive={open.isLive} />
    </>
  );
};

const SetLinks = ({ ids }: { readonly ids: readonly string[] }) => (
  <span className="call-links">
    {ids.map((id) => (
      <Link key={id} to={setPlace(id)}>
        {id}
      </Link>
    ))}
  </span>
);

type LineProps = { readonly words: string; readonly ids: readonly string[] };

/** Nothing where there is nothing to say. */
const Line = ({ words, ids }: LineProps) =>
  ids.length === 0 ? null : (
    <li>
      {words} <SetLinks ids={ids} />
    </li>
  );

type PartProps = { readonly open: OpenDesk; readonly leaves: Leaves };

/** What a head flyman ends before the call is: none of it goes on by itself. */
const Open = ({ open: { now }, leaves }: PartProps) => {
  const tell = useTell();
  const zones = now.zones.map(({ set }) => set);
  const isAny = [leaves.unheld, leaves.underWay, zones, now.stops].some((list) => list.length > 0);
  if (!isAny) return null;
  return (
    <Notice
      degree={leaves.unheld.length > 0 ? 'danger' : 'caution'}
      title={tell('end this before you close')}
    >
      <ul className="call-lines">
        <Line words={tell('Not held, sets:')} ids={leaves.unheld} />
        <Line words={tell('Leave is out or asked for, sets:')} ids={leaves.underWay} />
        <Line words={tell('Zones still closed, sets:')} ids={zones} />
        {now.stops.length === 0 ? null : <li>{tell('STOP stands and is not lifted.')}</li>}
      </ul>
    </Notice>
  );
};

const otherwiseWords = (
  how: HowOtherwise,
  nameOf: (piece: string) => string,
  voice: Voice,
): string => {
  switch (how.is) {
    case 'plates':
      return phrase(voice, '{on} plates on, {byShow} by the show', {
        on: how.on,
        byShow: how.byShow,
      });
    case 'pieces':
      return phrase(voice, 'by the show and not on it: {pieces}', {
        pieces: how.missing.map(nameOf).join(', '),
      });
    case 'notInShow':
      return phrase(voice, 'on it and not in the show: {pieces}', {
        pieces: how.pieces.map(nameOf).join(', '),
      });
    default:
      return '';
  }
};

const Otherwise = ({ open: { work }, leaves }: PartProps) => {
  const tell = useTell();
  const voice = useVoice();
  return (
    <section className="call-part" aria-labelledby="close-otherwise">
      <h2 id="close-otherwise">{tell('Not as the show plans it')}</h2>
      {leaves.otherwise.length === 0 ? <p>{tell('No set that is known.')}</p> : null}
      <ul className="call-lines">
        {leaves.otherwise.map(({ id, how }) => {
          const each = work.sets.find((set) => set.id === id);
          const nameOf = each === undefined ? (piece: string) => piece : nameOfPiece(each);
          return (
            <li key={id}>
              <SetLinks ids={[id]} /> {otherwiseWords(how, nameOf, voice)}
            </li>
          );
        })}
        <Line words={tell('With a tag:')} ids={leaves.tagged} />
        <Line words={tell('Held by something besides the lock:')} ids={leaves.restrained} />
      </ul>
    </section>
  );
};

const Doubts = ({ leaves }: { readonly leaves: Leaves }) => {
  const tell = useTell();
  return (
    <section className="call-part" aria-labelledby="close-doubt">
      <h2 id="close-doubt">{tell('In doubt')}</h2>
      <ul className="call-lines">
        <Line words={tell('UNKNOWN:')} ids={leaves.unknown} />
        <Line words={tell('Rope lock in doubt:')} ids={leaves.lockDoubted} />
        <Line words={tell('Notes of paper that nobody has settled:')} ids={leaves.withNotes} />
      </ul>
      {[leaves.unknown, leaves.lockDoubted, leaves.withNotes].every((ids) => ids.length === 0) ? (
        <p>{tell('Nothing.')}</p>
      ) : null}
    </section>
  );
};

const Record = ({ leaves }: { readonly leaves: Leaves }) => {
  const tell = useTell();
  const tellCount = useTellCount();
  return (
    <section className="call-part" aria-labelledby="close-record">
      <h2 id="close-record">{tell('What the record will say')}</h2>
      <ul className="call-lines">
        <li>
          {tellCount(leaves.known.length, [
            '{count} set as it stands now, with who counted it and when',
            '{count} sets as they stand now, with who counted each and when',
          ])}
        </li>
        <li>
          {tellCount(leaves.unknown.length, [
            '{count} set as unknown, whatever was known before the call',
            '{count} sets as unknown, whatever was known before the call',
          ])}
        </li>
        <li>{tell('The loose bricks of each gallery as they are counted now.')}</li>
      </ul>
      <p>{tell('To print before you close, from the same record:')}</p>
      <SheetLinks />
    </section>
  );
};

const CloseForm = ({ isLive }: { readonly isLive: boolean }) => {
  const tell = useTell();
  const { isBusy, act, said } = useAct();
  const [words, setWords] = useState('');
  const close = (): void =>
    void act(async () => {
      const answer = await closeCall(words.trim());
      if (answer.ok) {
        // The record of how the sets stand is a document again, and newer than that of this page.
        await keeper.refresh();
        go({ kind: 'live', path: ['open'] });
      }
      return answer;
    });
  return (
    <form
      className="call-form"
      aria-labelledby="close-words"
      onSubmit={(event) => {
        event.preventDefault();
        close();
      }}
    >
      <h2 id="close-words">{tell('To whoever comes next')}</h2>
      <div className="found-fields">
        <TextField
          label={tell('In your words')}
          value={words}
          hint={tell('or empty')}
          onType={setWords}
        />
      </div>
      <p className="buttons">
        <button type="submit" disabled={isBusy || !isLive}>
          {tell('Close the call and write the record')}
        </button>
        <span role="status">
          {isLive ? '' : tell('Not live: a call is closed where the house is heard.')}
        </span>
      </p>
      {said}
    </form>
  );
};
