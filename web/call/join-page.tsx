/** Joining a call with the code of a post: typed, or from the address behind a QR. */

import { type FormEvent, useEffect, useId, useState } from 'react';
import type { PostId } from '#state';
import { message, phrase, type Voice } from '#texts';
import { go } from '../address/use-address.ts';
import { NOBODY, nameOnDevice, rememberName } from '../keeping/name-on-device.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { deviceId } from '../live/device-key.ts';
import { type Against, type Answer, askPeople } from '../people/ask-people.ts';
import { useSession } from '../people/session.ts';
import { againstWords } from '../people/words.ts';
import { postPlace } from './places.ts';
import { StopBar } from './stop-bar.tsx';
import { useCall } from './use-call.ts';
import { WordsField } from './words-field.tsx';

type Joined = { readonly post: PostId };

const join = (code: string, name: string): Promise<Answer<Joined>> =>
  askPeople('POST', '/api/call/join', { code, device: deviceId(), name });

const AGAINST: Readonly<Record<string, string>> = {
  'SRV-014': message('No call is open. The head flyman opens one, and gives a new code.'),
  'SRV-017': message(
    'You are not signed off for this post. Be signed off, or let the head flyman answer for you.',
  ),
  'SRV-016': message('You hold a post beside which this one is another person’s.'),
  'SRV-019': message('This device is known in the call as that of somebody else. Take another.'),
  'ACC-019': message('This code is not good: it was used, is too old, or is of another call.'),
};

const whyWords = (against: Against, voice: Voice): string => {
  const own = AGAINST[against.code ?? ''];
  return own === undefined ? againstWords(against, voice) : phrase(voice, own);
};

/** What stands after the sign #, which no browser sends on and no log keeps. */
const codeOfAddress = (): string => location.hash.slice(1);

const useName = () => {
  const session = useSession();
  const [typed, setTyped] = useState(() => (nameOnDevice() === NOBODY ? '' : nameOnDevice()));
  const signedIn = session?.kind === 'person' ? session.name : undefined;
  return { isSignedIn: signedIn !== undefined, name: signedIn ?? typed, typed, setTyped };
};

/** The code and whoever gives it; what stood against it, in words. */
const useJoining = () => {
  const tell = useTell();
  const voice = useVoice();
  const [code, setCode] = useState(codeOfAddress);
  const [isBusy, setBusy] = useState(false);
  const [words, setWords] = useState('');
  const who = useName();
  // A code is good once; it does not stay in the address of a device that lies about.
  useEffect(() => {
    if (location.hash !== '') history.replaceState(null, '', location.pathname + location.search);
  }, []);
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setBusy(true);
    if (!who.isSignedIn) rememberName(who.name);
    try {
      const answer = await join(code.trim(), who.name.trim());
      if (answer.ok) go(postPlace(answer.value.post), { replace: true });
      else setWords(whyWords(answer.against, voice));
    } catch {
      setWords(tell('The server was not reached. Nothing was done.'));
    }
    setBusy(false);
  };
  const isWhole = !isBusy && code.trim() !== '' && who.name.trim() !== '';
  return { ...who, code, setCode, words, send, isWhole };
};

const JoinForm = () => {
  const tell = useTell();
  const { code, setCode, words, send, isWhole, ...who } = useJoining();
  return (
    <form className="join" onSubmit={(event) => void send(event)}>
      <WordsField label={tell('Code of the post')} value={code} onChange={setCode} max={40} />
      {who.isSignedIn ? (
        <p>{tell('Signed in on this device: {name}.', { name: who.name })}</p>
      ) : (
        <WordsField
          label={tell('Your name')}
          value={who.typed}
          onChange={who.setTyped}
          max={80}
          autoComplete="name"
        />
      )}
      <button type="submit" className="plain next" disabled={!isWhole}>
        <b>{tell('Take the post')}</b>
      </button>
      <p role="status">{words}</p>
    </form>
  );
};

export const JoinPage = () => {
  const tell = useTell();
  const id = useId();
  const { now, isLive } = useCall();
  return (
    <div className="own-posts">
      <section aria-labelledby={`${id}-head`}>
        <h1 id={`${id}-head`}>{tell('Join the call')}</h1>
        <JoinForm />
        <p>
          {tell(
            'The head flyman, or whoever is signed off for the post, makes a code on the page of ' +
              'the posts. It is good once and for a short time.',
          )}
        </p>
      </section>
      <StopBar now={now} post={null} isLive={isLive} />
    </div>
  );
};
