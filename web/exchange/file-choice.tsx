/** A file chosen or dropped, or text pasted. Nothing is read before a person says so. */
import { type DragEvent, useId, useState } from 'react';
import { useTell } from '../language/use-tell.ts';
import type { Given } from './reader.ts';

const givenFile = (file: File): Given => ({
  name: file.name,
  size: file.size,
  bytes: () => file.arrayBuffer(),
});

const JSON_LIKE = /^\s*[{[]/;

const givenText = (text: string, name: string): Given => {
  const bytes = new TextEncoder().encode(text);
  return {
    name: JSON_LIKE.test(text) ? `${name}.json` : `${name}.csv`,
    size: bytes.length,
    bytes: () => Promise.resolve(bytes.buffer),
  };
};

type ChoiceProps = { readonly onGive: (given: Given) => void };

export const FileChoice = ({ onGive }: ChoiceProps) => {
  const tell = useTell();
  const id = useId();
  const [isOver, setOver] = useState(false);
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    const [file] = event.dataTransfer.files;
    if (file !== undefined) onGive(givenFile(file));
  };
  return (
    <section
      className={isOver ? 'file-choice over' : 'file-choice'}
      aria-label={tell('What to bring in')}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <div>
        <label htmlFor={id}>
          {tell('A file: table (.csv, .xlsx), document (.json) or archive (.zip)')}
        </label>
        <input
          id={id}
          type="file"
          accept=".csv,.xlsx,.json,.zip"
          onChange={({ target }) => {
            const file = target.files?.[0];
            if (file !== undefined) onGive(givenFile(file));
          }}
          // The same file may be chosen again once it was mended.
          onClick={({ currentTarget }) => {
            currentTarget.value = '';
          }}
        />
        <p className="quiet">{tell('It may also be dropped here. It stays on this machine.')}</p>
      </div>
      <PasteText onGive={onGive} />
    </section>
  );
};

const PasteText = ({ onGive }: ChoiceProps) => {
  const tell = useTell();
  const id = useId();
  const [text, setText] = useState('');
  return (
    <details className="paste-text">
      <summary>{tell('or paste text')}</summary>
      <label htmlFor={id}>{tell('A table with its headings, or a document as JSON')}</label>
      <textarea
        id={id}
        rows={6}
        value={text}
        spellCheck={false}
        onChange={({ target }) => setText(target.value)}
      />
      <p className="buttons">
        <button
          type="button"
          disabled={text.trim() === ''}
          onClick={() => onGive(givenText(text, tell('pasted text')))}
        >
          {tell('Read this text')}
        </button>
      </p>
    </details>
  );
};
