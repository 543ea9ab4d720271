/** One line that a person writes, and one thing that is done with it. */
import { type FormEvent, type ReactNode, useId, useState } from 'react';
import { useTell } from '../language/use-tell.ts';

type WhyFormProps = {
  readonly label: string;
  readonly act: string;
  /** Whether the line may stay empty. */
  readonly mayBeEmpty?: boolean;
  readonly first?: string;
  readonly max?: number;
  readonly isBusy?: boolean;
  readonly onDone: (words: string) => void;
  readonly onLeave?: () => void;
  readonly children?: ReactNode;
};

export const WhyForm = (props: WhyFormProps) => {
  const { label, act, mayBeEmpty = false, first = '', max = 150, isBusy = false } = props;
  const { onDone, onLeave, children } = props;
  const tell = useTell();
  const id = useId();
  const [words, setWords] = useState(first);
  const isReady = (mayBeEmpty || words.trim() !== '') && !isBusy;
  const done = (event: FormEvent): void => {
    event.preventDefault();
    if (!isReady) return;
    onDone(words.trim());
    setWords(first);
  };
  return (
    <form className="why-form" onSubmit={done}>
      <div className="why-field">
        <label htmlFor={id}>{label}</label>
        <input
          id={id}
          value={words}
          maxLength={max}
          autoComplete="off"
          onChange={({ target }) => setWords(target.value)}
        />
      </div>
      {children}
      <p className="buttons">
        <button type="submit" disabled={!isReady}>
          {act}
        </button>
        {onLeave === undefined ? null : (
          <button type="button" onClick={onLeave}>
            {tell('Leave it')}
          </button>
        )}
      </p>
    </form>
  );
};
