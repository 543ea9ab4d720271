/** Writing a note: what, about one set or the house. It may wait; that it does is said. */
import { type FormEvent, useId, useState } from 'react';
import { useTell } from '../language/use-tell.ts';
import { useOutcomeWords } from './outcome-words.ts';
import { live, useLive } from './use-live.ts';

const NOTE_MAX = 4000;

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
    // Where the house is not heard it waits: then when it was written is this device's word.
    const writtenMs = standing.is === 'live' ? null : Date.now();
    const payload = { text: trimmed, writtenMs };
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
