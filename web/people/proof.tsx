/** Who is there, asked anew: the passphrase or PIN of the person who is signed in. */
import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { useTell, useVoice } from '../language/use-tell.ts';
import { askPeople } from './ask-people.ts';
import { Field, Said } from './field.tsx';
import { againstWords } from './words.ts';
import './people.css';

type ProofProps = {
  /** Why it is asked. */
  readonly why: string;
  readonly onProved: () => void;
  readonly onLeave: () => void;
};

/** A device may lie about unattended, so what counts as a person's word asks who is there. */
export const Proof = ({ why, onProved, onLeave }: ProofProps) => {
  const tell = useTell();
  const voice = useVoice();
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const [secret, setSecret] = useState('');
  const [words, setWords] = useState('');
  // It stands in the way of what the person asked for, so the next key goes into it.
  useEffect(() => form.current?.querySelector('input')?.focus(), []);
  const prove = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    // Nothing but figures is a PIN: no passphrase is taken that has so few different signs.
    const asked = /^\d{6,12}$/.test(secret) ? { pin: secret } : { passphrase: secret };
    try {
      const answer = await askPeople('POST', '/api/session/proof', asked);
      if (answer.ok) onProved();
      else setWords(againstWords(answer.against, voice));
    } catch {
      setWords(tell('The server was not reached. Nothing was done.'));
    }
  };
  return (
    <form
      ref={form}
      className="people-form proof"
      aria-describedby={id}
      onSubmit={(event) => void prove(event)}
    >
      <p id={id}>{why}</p>
      <Field
        label={tell('Your passphrase or PIN')}
        type="password"
        autoComplete="current-password"
        max={200}
        value={secret}
        onChange={setSecret}
      />
      <Said words={words} isBad />
      <p className="buttons">
        <button type="submit">{tell('Go on')}</button>
        <button type="button" onClick={onLeave}>
          {tell('Leave it')}
        </button>
      </p>
    </form>
  );
};
