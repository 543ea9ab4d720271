import { useState } from 'react';
import { PASTE_CHARACTERS_MAX } from '../grid/clip-text.ts';
import { focusFirst } from '../grid/use-cell.ts';
import { useTell } from '../language/use-tell.ts';

type PasteBoxProps = {
  /** "set 5, item"; null where no cell is in hand. */
  readonly from: string | null;
  /** False where it was not taken, so that the text stays to be mended. */
  readonly onPaste: (text: string) => boolean;
  readonly onClose: () => void;
};

/** For a screen without keys, where a browser pastes into a field and nowhere else. */
export const PasteBox = ({ from, onPaste, onClose }: PasteBoxProps) => {
  const tell = useTell();
  const [text, setText] = useState('');
  return (
    <section className="paste-box" aria-label={tell('Paste cells')}>
      <label>
        <span className="label">
          {tell('Cells copied from a spreadsheet, with the unit at every measure')}
        </span>
        <textarea
          ref={focusFirst}
          value={text}
          rows={4}
          maxLength={PASTE_CHARACTERS_MAX + 1}
          onChange={({ target }) => setText(target.value)}
          spellCheck={false}
        />
      </label>
      <p className="buttons">
        <button
          type="button"
          disabled={text === '' || from === null}
          onClick={() => {
            if (onPaste(text)) onClose();
          }}
        >
          {from === null
            ? tell('Choose the first cell in the list')
            : tell('Put it in from {from}', { from })}
        </button>
        <button type="button" onClick={onClose}>
          {tell('Close')}
        </button>
      </p>
    </section>
  );
};
