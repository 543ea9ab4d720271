/** Documents that were set aside: by whom, when and why, and the way back. */
import { useState } from 'react';
import { sayMoment } from '#sheets';
import { Notice } from '../frame/notice.tsx';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { type Aside, askAside, shelve } from '../keeping/server.ts';
import { useKeeper, useKeeperState } from '../keeping/use-keeper.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useAsked } from './asked.ts';
import { RevisionsLink } from './revisions-link.tsx';
import { kindWords } from './shelf-of.ts';
import { faultWords, type Tell } from './tell.ts';

export const AsideList = ({ onTell }: { readonly onTell: Tell }) => {
  const tell = useTell();
  const voice = useVoice();
  const keeper = useKeeper();
  const state = useKeeperState();
  const [isBusy, setBusy] = useState(false);
  // The list is asked for again whenever a document comes into use or leaves it.
  const inUse = state.phase === 'open' ? Object.keys(state.documents).join(' ') : '';
  const asked = useAsked(inUse, askAside);
  const takeBack = async ({ id, name }: Aside): Promise<void> => {
    setBusy(true);
    try {
      const refusals = await shelve(id, { aside: false, by: nameOnDevice(), why: 'taken back' });
      if (refusals.length > 0) {
        onTell({ words: tell('{name} was not taken back', { name }), refusals });
      } else {
        onTell({ words: tell('{name} is taken back, with all its revisions.', { name }) });
        await keeper.refresh();
      }
    } catch (fault) {
      onTell({ words: faultWords(voice, fault), refusals: [] });
    } finally {
      setBusy(false);
    }
  };
  if (asked.is === 'failed') {
    return (
      <Notice degree="caution" title={tell('what was set aside is not known')}>
        <p>{asked.title}</p>
        <p className="buttons">
          <button type="button" onClick={asked.again}>
            {tell('Ask again')}
          </button>
        </p>
      </Notice>
    );
  }
  if (asked.is !== 'here' || asked.value.length === 0) return null;
  return (
    <section className="house-shelf" aria-label={tell('Set aside')}>
      <h2>{tell('Set aside')}</h2>
      <ul className="document-list">
        {asked.value.map((aside) => (
          <AsideRow
            key={aside.id}
            aside={aside}
            isBusy={isBusy}
            onTakeBack={() => void takeBack(aside)}
          />
        ))}
      </ul>
    </section>
  );
};

type RowProps = {
  readonly aside: Aside;
  readonly isBusy: boolean;
  readonly onTakeBack: () => void;
};

const AsideRow = ({ aside, isBusy, onTakeBack }: RowProps) => {
  const tell = useTell();
  const voice = useVoice();
  return (
    <li className="document-row">
      <div>
        <h3>
          {aside.name} <span className="open-word">{kindWords(aside.kind, voice)}</span>
        </h3>
        <span className="document-facts">
          {tell('set aside {at} by {by}', {
            at: sayMoment(aside.asideAt, voice),
            by: aside.asideBy,
          })}
          {aside.asideWhy === '' ? '' : `: ${aside.asideWhy}`}
          {tell('; revision {revision}', { revision: aside.revision })}
        </span>
      </div>
      <div className="document-acts">
        <RevisionsLink id={aside.id} name={aside.name} />
        <button type="button" disabled={isBusy} onClick={onTakeBack}>
          {tell('Take back')}
          <span className="only-said"> {aside.name}</span>
        </button>
      </div>
    </li>
  );
};
