/** A printed code, typed: whether the paper in the hand still says what the program says. */

import { type FormEvent, useId, useState } from 'react';
import { answerCode, type CodeAnswer, type SheetContext } from '#sheets';
import { message } from '#texts';
import { useTell } from '../language/use-tell.ts';

const WORDS: Readonly<Record<CodeAnswer, string>> = {
  current: message('current: this sheet, printed now, would say the same.'),
  superseded: message('superseded: do not work by it. Something that it depends on has changed.'),
  'no such sheet': message('no such sheet in this show.'),
};

type QuestionProps = { readonly context: SheetContext; readonly id: string };

export const CodeQuestion = ({ context, id }: QuestionProps) => {
  const tell = useTell();
  const field = useId();
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState<string | null>(null);
  const ask = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(typed.trim());
  };
  const answer = asked === null || asked === '' ? null : answerCode(context, id, asked);
  return (
    <form className="leaf-code" onSubmit={ask}>
      <label htmlFor={field}>{tell('Code on the printed sheet')}</label>
      <input
        id={field}
        value={typed}
        maxLength={20}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        onChange={({ target }) => {
          setTyped(target.value);
          setAsked(null);
        }}
      />
      <button type="submit">{tell('Current or superseded?')}</button>
      <p role="status">
        {asked === '' ? tell('Type the eight letters at the foot of the sheet.') : null}
        {answer === null ? null : (
          <>
            {asked}: <strong>{tell(WORDS[answer])}</strong>
          </>
        )}
      </p>
    </form>
  );
};
