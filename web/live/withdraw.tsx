/**
 * A note or a sign-off that was wrong is withdrawn, with a reason. Nothing is taken out: it stands
 * where it stood, with who withdrew it and why. Never queued, as a sign-off is not.
 */
import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import type { EventOf } from '#events';
import { useTell, useVoice } from '../language/use-tell.ts';
import { Proof } from '../people/proof.tsx';
import { sayServerTime } from './say-standing.ts';
import type { SaidHere } from './server.ts';
import { type Given, useGiven } from './use-given.ts';
import { useLive } from './use-live.ts';

const WHY_MAX = 400;

type WithdrawProps = {
  readonly event: EventOf<'note written'> | EventOf<'signed'>;
  readonly withdrawal: EventOf<'withdrawn'> | null;
  /** What has happened on its target last. */
  readonly seen: number | null;
  readonly said: SaidHere | null;
  /** Id of the words that it is about. */
  readonly about: string;
};

export const Withdraw = ({ event, withdrawal, seen, said, about }: WithdrawProps) => {
  const tell = useTell();
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  if (withdrawal !== null) {
    return <Withdrawn withdrawal={withdrawal} said={said} wasOpen={isOpen} />;
  }
  if (said?.maySign !== true || seen === null) return null;
  const leave = (): void => {
    setOpen(false);
    opener.current?.focus();
  };
  return (
    <>
      <p>
        <button
          ref={opener}
          type="button"
          className="as-words"
          aria-describedby={about}
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          {tell('Withdraw …')}
        </button>
      </p>
      {isOpen ? <WithdrawForm event={event} seen={seen} onLeave={leave} /> : null}
    </>
  );
};

type WithdrawnProps = {
  readonly withdrawal: EventOf<'withdrawn'>;
  readonly said: SaidHere | null;
  /** The form stood here: who works by keys goes on from here. */
  readonly wasOpen: boolean;
};

const Withdrawn = ({ withdrawal, said, wasOpen }: WithdrawnProps) => {
  const tell = useTell();
  const voice = useVoice();
  const words = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (wasOpen) words.current?.focus();
  }, [wasOpen]);
  const { by, atMs, payload } = withdrawal;
  return (
    <p ref={words} className="void" tabIndex={wasOpen ? -1 : undefined}>
      {tell('Withdrawn by {by}, {when}: {why}', {
        by: by === null ? tell('this machine') : (said?.names[by] ?? by),
        when: sayServerTime(atMs, Date.now(), voice),
        why: payload.why,
      })}
    </p>
  );
};

type FormProps = {
  readonly event: WithdrawProps['event'];
  readonly seen: number;
  readonly onLeave: () => void;
};

const WithdrawForm = ({ event, seen, onLeave }: FormProps) => {
  const tell = useTell();
  const id = useId();
  const box = useRef<HTMLTextAreaElement>(null);
  const [why, setWhy] = useState('');
  const [isProved, setProved] = useState(false);
  const { standing } = useLive();
  const given = useGiven();
  const isLive = standing.is === 'live';
  const isReady = isLive && why.trim() !== '' && !given.isPending;
  useEffect(() => box.current?.focus(), []);
  const ended = (proved: boolean): void => {
    given.forget();
    setProved(proved);
    box.current?.focus();
  };
  const withdraw = (submitted: FormEvent): void => {
    submitted.preventDefault();
    if (!isReady) return;
    setProved(false);
    const payload = { seq: event.seq, event: event.id, why: why.trim() };
    given.give({ kind: 'withdrawn', target: event.target, payload, seen });
  };
  return (
    <>
      <form onSubmit={withdraw}>
        <label htmlFor={id}>{tell('Why it is withdrawn')}</label>
        <textarea
          ref={box}
          id={id}
          value={why}
          maxLength={WHY_MAX}
          required
          onChange={({ target }) => setWhy(target.value)}
        />
        <p className="quiet">
          {tell('It stays where it stands, and beside it who withdrew it and why.')}
        </p>
        <p className="buttons">
          <button type="submit" disabled={!isReady}>
            {tell('Withdraw it')}
          </button>
          <button type="button" onClick={onLeave}>
            {tell('Leave it')}
          </button>
          <span role="status">
            {isLive ? '' : tell('Not live: nothing can be withdrawn now.')}
            {isProved ? tell('It is you. Withdraw it within a minute.') : ''}
            {given.wantsProof ? '' : given.words}
          </span>
        </p>
      </form>
      <WithdrawProof given={given} onEnd={ended} />
    </>
  );
};

type WithdrawProofProps = {
  readonly given: Given;
  readonly onEnd: (isProved: boolean) => void;
};

const WithdrawProof = ({ given, onEnd }: WithdrawProofProps) => {
  const tell = useTell();
  return given.wantsProof ? (
    <Proof
      why={tell(
        'To withdraw is a person’s word: it needs your PIN or passphrase within the last minute. ' +
          'Give it, then withdraw.',
      )}
      onProved={() => onEnd(true)}
      onLeave={() => onEnd(false)}
    />
  ) : null;
};
