/** Saying that a set is not known any more, and that its rope lock is not to be trusted. */
import { useState } from 'react';
import { message } from '#texts';
import { useSay } from '../call/use-say.ts';
import { ChoiceField, TextField } from '../house-found/choice-field.tsx';
import { useTell } from '../language/use-tell.ts';
import { CallForm } from './call-form.tsx';
import type { SetOnDesk } from './set-on-desk.ts';

/** As people say it; they are a record, and stand in it in the words of who chose them. */
const DOUBTS = [
  message('touched by another crew'),
  message('something moved on it'),
  message('a count is in doubt'),
  message('left without a word'),
] as const;

export const DoubtForm = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const saying = useSay();
  const { id, isLive } = desk;
  const [chosen, choose] = useState('');
  const [words, setWords] = useState('');
  const why = words.trim() === '' ? chosen : words.trim();
  const send = (): void => {
    saying.say({ kind: 'set doubted', set: id, payload: { why } });
    choose('');
    setWords('');
  };
  return (
    <CallForm
      title={tell('Doubt it: nobody knows how set {id} stands', { id })}
      about={tell(
        'It is UNKNOWN from then on: only finding it, closing zones and measuring go on.',
      )}
      missing={why === '' ? [message('why')] : []}
      saying={saying}
      isLive={isLive}
      button={tell('It is not known any more')}
      onSend={send}
    >
      <div className="found-fields">
        <ChoiceField
          label={tell('Why')}
          value={chosen}
          none={tell('not said')}
          choices={DOUBTS.map((each) => [tell(each), tell(each)] as const)}
          onChoose={choose}
        />
        <TextField label={tell('or in your words')} value={words} onType={setWords} />
      </div>
    </CallForm>
  );
};

const LOCK_DOUBTS = [
  message('the rope is wet'),
  message('the rope is oily'),
  message('the lock slipped'),
] as const;

export const LockForm = ({ desk }: { readonly desk: SetOnDesk }) => {
  const tell = useTell();
  const saying = useSay();
  const { id, set, isLive } = desk;
  const [chosen, choose] = useState('');
  const [words, setWords] = useState('');
  const why = words.trim() === '' ? chosen : words.trim();
  const say = (said: string | null): void => {
    saying.say({ kind: 'lock doubted', set: id, payload: { why: said } });
    choose('');
    setWords('');
  };
  return (
    <CallForm
      title={tell('The rope lock of set {id}', { id })}
      about={
        set.lockDoubt === null
          ? tell('A lock in doubt holds nothing in any figure from then on.')
          : tell('In doubt: {why}. It holds nothing in any figure.', { why: set.lockDoubt })
      }
      missing={why === '' ? [message('why')] : []}
      saying={saying}
      isLive={isLive}
      button={tell('The lock is in doubt')}
      onSend={() => say(why)}
    >
      <div className="found-fields">
        <ChoiceField
          label={tell('Why')}
          value={chosen}
          none={tell('not said')}
          choices={LOCK_DOUBTS.map((each) => [tell(each), tell(each)] as const)}
          onChoose={choose}
        />
        <TextField label={tell('or in your words')} value={words} onType={setWords} />
      </div>
      {set.lockDoubt === null ? null : (
        <p className="buttons">
          <button type="button" disabled={!isLive || saying.isPending} onClick={() => say(null)}>
            {tell('I have tried the lock: it holds')}
          </button>
        </p>
      )}
    </CallForm>
  );
};
