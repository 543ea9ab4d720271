/** Signing in, making the owner, and taking an invitation up. */
import { type FormEvent, useEffect, useState } from 'react';
import { rememberName } from '../keeping/name-on-device.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { askPeople, deviceLabel, type Offered } from './ask-people.ts';
import { Field, Part, Said } from './field.tsx';
import { type Session, useSession } from './session.ts';
import { useAct } from './use-act.tsx';
import { againstWords, ROLE_MEANINGS, ROLE_WORDS } from './words.ts';

/** Everything on the page is of who was signed in before, so it is loaded anew. */
const enter = (name: string, where = '/hang-list'): void => {
  rememberName(name);
  location.assign(where);
};

const sent = (submit: () => void) => (event: FormEvent) => {
  event.preventDefault();
  submit();
};

export const SignIn = () => {
  const tell = useTell();
  const session = useSession();
  if (session === null) return <p role="status">{tell('Asking who is signed in …')}</p>;
  return (
    <>
      {session.hasOwner ? null : (
        <p className="people-lead">
          {tell(
            'This house has no owner yet. Its owner is made at the machine on which the server ' +
              'runs, with the code that it printed when it was started.',
          )}
        </p>
      )}
      {session.byPin.map((person) => (
        <ByPin key={person.id} person={person} />
      ))}
      {session.hasOwner ? <ByName /> : null}
    </>
  );
};

const ByPin = ({ person }: { readonly person: Session['byPin'][number] }) => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const [pin, setPin] = useState('');
  const go = () =>
    act(async () => {
      const answer = await askPeople('POST', '/api/session/by-pin', { person: person.id, pin });
      setPin('');
      if (answer.ok) enter(person.name);
      return answer;
    });
  return (
    <Part title={person.name}>
      <form className="people-form" onSubmit={sent(() => void go())}>
        <Field
          label={tell('PIN')}
          type="password"
          isFigures
          max={12}
          value={pin}
          onChange={setPin}
        />
        {said}
        <p className="buttons">
          <button type="submit" disabled={isBusy || pin === ''}>
            {tell('Sign in by PIN')}
          </button>
        </p>
      </form>
    </Part>
  );
};

const ByName = () => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const [name, setName] = useState('');
  const [passphrase, setPassphrase] = useState('');
  const go = () =>
    act(async () => {
      const asked = { name, passphrase, device: deviceLabel() };
      const answer = await askPeople<{ name: string }>('POST', '/api/session', asked);
      if (answer.ok) enter(answer.value.name);
      return answer;
    });
  return (
    <Part title={tell('By name and passphrase')}>
      <form className="people-form" onSubmit={sent(() => void go())}>
        <Field label={tell('Your name')} autoComplete="username" value={name} onChange={setName} />
        <Field
          label={tell('Your passphrase')}
          type="password"
          autoComplete="current-password"
          max={200}
          value={passphrase}
          onChange={setPassphrase}
        />
        {said}
        <p className="buttons">
          <button type="submit" disabled={isBusy}>
            {isBusy ? tell('Signing in …') : tell('Sign in')}
          </button>
        </p>
      </form>
    </Part>
  );
};

type NewSecretsProps = {
  readonly act: string;
  readonly name: string;
  readonly onName: ((name: string) => void) | null;
  readonly isBusy: boolean;
  readonly onDone: (passphrase: string) => void;
};

/** A name and a passphrase typed once, and shown where a person wants to see it. */
const NewSecrets = ({ act, name, onName, isBusy, onDone }: NewSecretsProps) => {
  const tell = useTell();
  const [passphrase, setPassphrase] = useState('');
  const [isShown, setShown] = useState(false);
  return (
    <form className="people-form" onSubmit={sent(() => onDone(passphrase))}>
      {onName === null ? null : (
        <Field
          label={tell('Your name')}
          autoComplete="username"
          value={name}
          onChange={onName}
          note={tell('As colleagues know you; it stands by what you save and sign.')}
        />
      )}
      <Field
        label={tell('A passphrase')}
        type={isShown ? 'text' : 'password'}
        autoComplete="new-password"
        max={200}
        value={passphrase}
        onChange={setPassphrase}
        note={tell(
          'At least 12 characters; best some words that do not belong together. Nobody else ' +
            'can read it.',
        )}
      />
      <label className="people-tick">
        <input type="checkbox" checked={isShown} onChange={() => setShown(!isShown)} />
        {tell('Show what I type')}
      </label>
      <p className="buttons">
        <button type="submit" disabled={isBusy}>
          {act}
        </button>
      </p>
    </form>
  );
};

export const MakeOwner = () => {
  const tell = useTell();
  const session = useSession();
  const { act, isBusy, said } = useAct();
  const [name, setName] = useState('');
  const [typed, setTyped] = useState<string | null>(null);
  const code = typed ?? session?.ownerCode ?? '';
  const make = (passphrase: string) =>
    act(async () => {
      const asked = { code, name, passphrase, device: deviceLabel() };
      const answer = await askPeople('POST', '/api/people/owner', asked);
      if (answer.ok) enter(name, '/people');
      return answer;
    });
  return (
    <Part title={tell('Who owns this house')}>
      <p className="people-lead">
        {tell(
          'The owner lets others in and says what each may do. From then on everybody signs in, ' +
            'on this machine too, unless the owner keeps it open.',
        )}
      </p>
      <div className="people-form">
        <Field
          label={tell('Code of this start')}
          value={code}
          max={20}
          onChange={setTyped}
          note={
            session?.ownerCode === undefined
              ? tell('The server printed it when it was started.')
              : tell('The same that the server printed when it was started. It is good once.')
          }
        />
      </div>
      <NewSecrets
        act={tell('Make me the owner')}
        name={name}
        onName={setName}
        isBusy={isBusy}
        onDone={(passphrase) => void make(passphrase)}
      />
      {said}
    </Part>
  );
};

/** Behind the sign of the fragment, so that it is sent to no server and stands in no log. */
const tokenInAddress = (): string => location.hash.slice(1);

export const Join = () => {
  const tell = useTell();
  const voice = useVoice();
  const { act, isBusy, said } = useAct();
  const [token] = useState(tokenInAddress);
  const [offered, setOffered] = useState<Offered | null>(null);
  const [against, setAgainst] = useState('');
  const [name, setName] = useState('');
  useEffect(() => {
    askPeople<Offered>('POST', '/api/invitation', { token: token === '' ? 'none' : token })
      .then((answer) => {
        if (answer.ok) setOffered(answer.value);
        else setAgainst(againstWords(answer.against, voice));
      })
      .catch(() => setAgainst(tell('The server was not reached. Nothing was done.')));
  }, [token, voice, tell]);
  if (offered === null) {
    return against === '' ? (
      <p role="status">{tell('Looking at the invitation …')}</p>
    ) : (
      <Said words={against} isBad />
    );
  }
  const { role, isNewPassphrase } = offered;
  const join = (passphrase: string) =>
    act(async () => {
      const own = isNewPassphrase ? offered.name : name;
      const asked = { token, name: own, passphrase, device: deviceLabel() };
      const answer = await askPeople('POST', '/api/invitation/join', asked);
      if (answer.ok) enter(own);
      return answer;
    });
  return (
    <Part
      title={
        isNewPassphrase
          ? tell('A new passphrase for {name}', { name: offered.name })
          : tell('You are invited')
      }
    >
      {isNewPassphrase ? null : (
        <p className="people-lead">
          {tell('Your role is {role}: {meaning}.', {
            role: tell(ROLE_WORDS[role]),
            meaning: tell(ROLE_MEANINGS[role]),
          })}
        </p>
      )}
      <NewSecrets
        act={isNewPassphrase ? tell('Take this passphrase') : tell('Join')}
        name={name}
        onName={isNewPassphrase ? null : setName}
        isBusy={isBusy}
        onDone={(passphrase) => void join(passphrase)}
      />
      {said}
    </Part>
  );
};
