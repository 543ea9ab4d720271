/** Writing a note: what, about one set or the house. It may wait; that it does is said. */
import { type FormEvent, useId, useState } from 'react';
import type { Outcome } from '#events';
import { unreachable } from '#outcome';
import { message } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { refusalWords } from './refusal-words.ts';
import { live, useLive } from './use-live.ts';

const NOTE_MAX = 4000;

const NOT_SENT = {
  notLive: message('Not done: this device is not live. Nothing was recorded.'),
  tooMany: message('Not kept: too many wait to be sent. Find out first why the server is away.'),
  buildTooOld: message('Not recorded: this page is too old for the server. Load it anew.'),
  notAllowed: message('Not recorded: you may not do this, or are not signed in.'),
  notUnderstood: message('Not recorded: the server did not understand it.'),
} as const;

export const useOutcomeWords = (): ((outcome: Outcome) => string) => {
  const tell = useTell();
  return (outcome) => {
    switch (outcome.outcome) {
      case 'accepted':
        return tell('Recorded, event {seq}.', { seq: outcome.seqs.at(-1) ?? '' });
      case 'refused':
        return tell('Not recorded ({code}): {words}', {
          code: outcome.code,
          words: tell(refusalWords(outcome.code, outcome.words)),
        });
      case 'notSent':
        return tell(NOT_SENT[outcome.why]);
      default:
        return unreachable(outcome);
    }
  };
};

export const NoteForm = ({ target }: { readonly target: string }) => {
  const tell = useTell();
  const say = useOutcomeWords();
  const id = useId();
  const [text, setText] = useState('');
  const [given, setGiven] = useState<string | null>(null);
  const { outcomes, standing } = useLive();
  const outcome = given === null ? undefined : outcomes[given];
  const write = (event: FormEvent): void => {
    event.preventDefault();
    const trimmed = text.trim();
    if (trimmed === '') return;
    const payload = { text: trimmed, writtenMs: Date.now() };
    setGiven(live.give({ kind: 'note written', target, payload, seen: null }));
    setText('');
  };
  return (
    <form onSubmit={write}>
      <label htmlFor={id}>{tell('Note')}</label>
      <textarea
        id={id}
        value={text}
        maxLength={NOTE_MAX}
        onChange={({ target: box }) => setText(box.value)}
      />
      <p className="buttons">
        <button type="submit" disabled={text.trim() === ''}>
          {standing.is === 'live' ? tell('Write the note') : tell('Write; it waits on this device')}
        </button>
        <span role="status">{outcome === undefined ? '' : say(outcome)}</span>
      </p>
    </form>
  );
};
