/** Opening a call: on which documents, what is known and what is not, and who leads it. */
import { useState } from 'react';
import { openingOf } from '#call';
import type { HouseState } from '#state';
import { told } from '#texts';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { LIVE_PLACE, OVERVIEW_PLACE } from '../call/places.ts';
import { useCall } from '../call/use-call.ts';
import { Notice } from '../frame/notice.tsx';
import { TextField } from '../house-found/choice-field.tsx';
import { NOBODY, nameOnDevice, rememberName } from '../keeping/name-on-device.ts';
import { useTell, useTellCount, useVoice } from '../language/use-tell.ts';
import { deviceId } from '../live/device-key.ts';
import { useSession } from '../people/session.ts';
import { useAct } from '../people/use-act.tsx';
import { useWork, type Work } from '../reckoning/use-work.ts';
import { openCall } from './ask-call.ts';
import type { OpenDesk } from './use-desk.ts';

export const OpenPage = ({ open }: { readonly open: OpenDesk | null }) => {
  const tell = useTell();
  const { now } = useCall();
  return (
    <>
      <h1>{tell('Open a call')}</h1>
      <Cautions />
      {open === null ? (
        <Opening isKnown={now !== null} />
      ) : (
        <p>
          {tell('A call on {show} is open already.', { show: open.call.show })}{' '}
          <Link to={OVERVIEW_PLACE}>{tell('Its overview')}</Link>{' '}
          <Link to={LIVE_PLACE}>{tell('Your post')}</Link>
        </p>
      )}
    </>
  );
};

const Cautions = () => {
  const tell = useTell();
  return (
    <ul className="call-lines">
      <li>
        {tell(
          'It advises and records. It stops no rope, holds no weight and certifies nothing: ' +
            'hardware and people do that, and your own rules and competent persons come first.',
        )}
      </li>
      <li>
        {tell('It is for scenery and equipment. People are flown by specialists, not by this.')}
      </li>
      <li>{tell('Have the printed sheets at every post before the first step.')}</li>
    </ul>
  );
};

/** Before anything is opened: the state as it will be taken, judged by the clock of now. */
const noRecord = ({ house, kept }: Work): HouseState => ({
  ...{ houseId: String(kept.house.document['id']), demo: house.demo, at: '', by: '' },
  ...{ sets: {}, galleries: {}, remarks: [] },
});

const Opening = ({ isKnown }: { readonly isKnown: boolean }) => {
  const work = useWork();
  const tell = useTell();
  return (
    <>
      {isKnown ? null : <p role="status">{tell('Asking the server whether a call is open …')}</p>}
      <Documents work={work} />
      <WhatIsKnown work={work} />
      <OpenForm work={work} isKnown={isKnown} />
    </>
  );
};

const Documents = ({ work: { kept, house, show } }: { readonly work: Work }) => {
  const tell = useTell();
  const lines = [
    tell('House: {name}, revision {revision}', {
      name: house.name,
      revision: kept.house.server.revision,
    }),
    tell('Show: {name}, revision {revision}', {
      name: show.name,
      revision: kept.show.server.revision,
    }),
    kept.state === null
      ? tell('No record of how the sets stand: every one is unknown until it is found.')
      : tell('How the sets stand: record of {by}, revision {revision}', {
          by: String(kept.state.document['by']),
          revision: kept.state.server.revision,
        }),
  ];
  return (
    <section className="call-part" aria-labelledby="call-documents">
      <h2 id="call-documents">{tell('It rests on')}</h2>
      <ul className="call-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p className="quiet">
        {tell('While it is open the call is the record of how the sets stand, and no document.')}
      </p>
    </section>
  );
};

const WhatIsKnown = ({ work }: { readonly work: Work }) => {
  const tell = useTell();
  const tellCount = useTellCount();
  const voice = useVoice();
  const { house, state } = work;
  const { sets, galleries } = openingOf({ house, state: state ?? noRecord(work) }, Date.now());
  const all = Object.entries(sets);
  const unknown = all.filter(([, { standing }]) => standing === null);
  const old = all.filter(
    ([, { standing, knowledge }]) => standing !== null && knowledge.basis === 'carriedOver',
  );
  const fresh = all.length - unknown.length - old.length;
  const uncounted = house.galleries.filter(({ id }) => galleries[id]?.countedMs == null);
  return (
    <section className="call-part" aria-labelledby="call-known">
      <h2 id="call-known">{tell('What is known')}</h2>
      <ul className="call-lines">
        <li>{tellCount(fresh, ['{count} set is known', '{count} sets are known'])}</li>
        <li>
          {old.length === 0
            ? tell('No set is carried over from an older record.')
            : tell('Carried over from an older record, count before you rely on it: {sets}', {
                sets: old.map(([id]) => id).join(', '),
              })}
        </li>
        {uncounted.map(({ id, name }) => (
          <li key={id}>{tell('Loose bricks not counted: {gallery}', { gallery: name })}</li>
        ))}
      </ul>
      <details open={unknown.length <= FEW}>
        <summary>
          {tellCount(unknown.length, ['{count} set is NOT known', '{count} sets are NOT known'])}
        </summary>
        <ul className="call-lines">
          {unknown.map(([id, { doubt }]) => (
            <li key={id}>
              {tell('Set {id}: not known is {needs}', {
                id,
                needs: doubt === null ? tell('anything') : told(voice, doubt),
              })}
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
};

/** More is a list that one opens. */
const FEW = 6;

type FormProps = { readonly work: Work; readonly isKnown: boolean };

const OpenForm = ({ work: { kept }, isKnown }: FormProps) => {
  const tell = useTell();
  const session = useSession();
  const { isBusy, act, said } = useAct();
  const here = nameOnDevice();
  const [name, setName] = useState(here === NOBODY ? '' : here);
  const isPerson = session?.kind === 'person';
  const who = isPerson ? (session.name ?? '') : name.trim();
  const open = (): void => {
    if (!isPerson) rememberName(who);
    void act(async () => {
      const answer = await openCall({
        house: kept.house.id,
        show: kept.show.id,
        state: kept.state?.id ?? null,
        device: deviceId(),
        name: who,
      });
      if (answer.ok) go(OVERVIEW_PLACE);
      return answer;
    });
  };
  return (
    <form
      className="call-form"
      aria-labelledby="call-leads"
      onSubmit={(event) => {
        event.preventDefault();
        open();
      }}
    >
      <h2 id="call-leads">{tell('Who leads it')}</h2>
      <p>
        {tell(
          'Whoever opens it stands as head flyman on this device until somebody else takes the ' +
            'post. It needs the sign-off of a lead or a head flyman.',
        )}
      </p>
      {isPerson ? (
        <p>{tell('Signed in as {name}.', { name: who })}</p>
      ) : (
        <div className="found-fields">
          <TextField label={tell('Your name')} value={name} onType={setName} />
        </div>
      )}
      {isPerson ? null : <NobodySignedIn />}
      <p className="buttons">
        <button type="submit" disabled={isBusy || who === '' || !isKnown}>
          {tell('Open the call as head flyman')}
        </button>
        {who === '' ? <span role="status">{tell('Still to say: your name.')}</span> : null}
      </p>
      {said}
    </form>
  );
};

const NobodySignedIn = () => {
  const tell = useTell();
  return (
    <Notice degree="caution" title={tell('nobody is signed in')}>
      <p>
        {tell(
          'Two devices without sign-in count as one person: a second person goes on paper, by ' +
            'name. With people who sign in the record knows who is who.',
        )}
      </p>
    </Notice>
  );
};
