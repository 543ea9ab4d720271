/** Words of a sheet: plain, strong, a line to write on, a box to tick. */

import type { Inline, Words } from '#sheets';
import { useTell } from '../language/use-tell.ts';
import { keyAt } from './key-at.ts';

/** A letter of the text face is about so many ems wide. */
const LETTER_EM = 0.55;

const InlineView = ({ inline }: { readonly inline: Inline }) => {
  const tell = useTell();
  if (typeof inline === 'string') return inline;
  if ('strong' in inline) return <strong>{inline.strong}</strong>;
  if ('blank' in inline) {
    const width = `${inline.blank * LETTER_EM}em`;
    return (
      <span
        className="leaf-blank"
        role="img"
        aria-label={tell('line to write on')}
        style={{ width }}
      />
    );
  }
  return <span className="leaf-box" role="img" aria-label={tell('box to tick')} />;
};

/** The words of a sheet never change in place, so their order names them. */
export const WordsView = ({ words }: { readonly words: Words }) =>
  words.map((inline, index) => <InlineView key={keyAt(index)} inline={inline} />);
