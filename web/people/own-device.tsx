/** What a person does about themselves: devices, PIN, another passphrase, signing out. */
import { type FormEvent, useState } from 'react';
import { useTell } from '../language/use-tell.ts';
import { askPeople } from './ask-people.ts';
import { Devices } from './devices.tsx';
import { Field, Part } from './field.tsx';
import { askSession, useSession } from './session.ts';
import { useAct } from './use-act.tsx';

const sent = (submit: () => void) => (event: FormEvent) => {
  event.preventDefault();
  submit();
};

export const OwnDevice = () => {
  const tell = useTell();
  const session = useSession();
  if (session === null) return <p role="status">{tell('Asking who is signed in …')}</p>;
  if (session.kind !== 'person') {
    return <p className="people-lead">{tell('Nobody is signed in on this device.')}</p>;
  }
  const signOut = async (): Promise<void> => {
    await askPeople('DELETE', '/api/session').catch(() => undefined);
    // Who comes after reads nothing of what was read before, with the server or without it.
    await import('../offline/copy-store.ts')
      .then(({ forgetCopies }) => forgetCopies())
      .catch(() => undefined);
    location.assign('/people/sign-in');
  };
  return (
    <>
      <Part title={session.name ?? ''}>
        <p className="buttons">
          <button type="button" onClick={() => void signOut()}>
            {tell('Sign out on this device')}
          </button>
        </p>
      </Part>
      <Part title={tell('Devices signed in as you')}>
        <Devices />
      </Part>
      <Pin hasPin={session.byPin.some(({ id }) => id === session.id)} />
      <Passphrase />
    </>
  );
};

const Pin = ({ hasPin }: { readonly hasPin: boolean }) => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const [pin, setPin] = useState('');
  const set = () =>
    act(async () => {
      const answer = await askPeople('PUT', '/api/session/pin', { pin });
      if (answer.ok) setPin('');
      await askSession();
      return answer;
    }, tell('From now on this PIN is enough on this device.'));
  const drop = () =>
    act(async () => {
      const answer = await askPeople('DELETE', '/api/session/pin');
      await askSession();
      return answer;
    }, tell('There is no PIN on this device any more.'));
  return (
    <Part title={tell('PIN on this device')}>
      <p>
        {hasPin
          ? tell('You have a PIN on this device.')
          : tell('You have no PIN on this device. It is quicker with gloves than a passphrase.')}
      </p>
      <form className="people-form" onSubmit={sent(() => void set())}>
        <Field
          label={tell('A new PIN')}
          type="password"
          isFigures
          max={12}
          value={pin}
          onChange={setPin}
          note={tell('6 to 12 figures. After five wrong ones it asks for the passphrase.')}
        />
        <p className="buttons">
          <button type="submit" disabled={isBusy}>
            {tell('Set the PIN')}
          </button>
          {hasPin ? (
            <button type="button" disabled={isBusy} onClick={() => void drop()}>
              {tell('Take the PIN off')}
            </button>
          ) : null}
        </p>
      </form>
      {said}
    </Part>
  );
};

const Passphrase = () => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const [now, setNow] = useState('');
  const [next, setNext] = useState('');
  const change = () =>
    act(async () => {
      const answer = await askPeople('PUT', '/api/session/passphrase', { now, next });
      if (answer.ok) {
        setNow('');
        setNext('');
      }
      return answer;
    }, tell('The passphrase is changed. Your other devices are signed out.'));
  return (
    <Part title={tell('Another passphrase')}>
      <form className="people-form" onSubmit={sent(() => void change())}>
        <Field
          label={tell('The passphrase until now')}
          type="password"
          autoComplete="current-password"
          max={200}
          value={now}
          onChange={setNow}
        />
        <Field
          label={tell('The new passphrase')}
          type="password"
          autoComplete="new-password"
          max={200}
          value={next}
          onChange={setNext}
          note={tell('At least 12 characters; best some words that do not belong together.')}
        />
        <p className="buttons">
          <button type="submit" disabled={isBusy}>
            {tell('Change it')}
          </button>
        </p>
      </form>
      {said}
    </Part>
  );
};
