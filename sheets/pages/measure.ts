/** How high a block will stand on paper, so that the drawing takes what the words leave. */
import { textWidth } from '#drawings';
import type { Inline, Words } from '../sheet.ts';

/** Points. Working text, notes on a card, and what one line of either takes. */
export const TEXT = { size: 14, line: 17.5 } as const;
export const NOTE = { size: 12, line: 15 } as const;

/** A blank is as wide as so many figures; a box as wide as three. */
const FIGURE = '0';
/** Print breaks a little earlier than the table of letters says: it kerns, and hangs no space. */
const SLACK = 0.985;

type Piece = { readonly text: string; readonly weight: 'plain' | 'strong' };

const pieceOf = (inline: Inline): Piece => {
  if (typeof inline === 'string') return { text: inline, weight: 'plain' };
  if ('strong' in inline) return { text: inline.strong, weight: 'strong' };
  if ('blank' in inline) return { text: FIGURE.repeat(inline.blank), weight: 'plain' };
  return { text: FIGURE.repeat(3), weight: 'plain' };
};

/** Widths of the words between spaces, where one word may change its weight half way. */
const wordWidths = (words: Words, size: number): readonly number[] =>
  words.map(pieceOf).reduce<readonly number[]>(
    (widths, { text, weight }) =>
      text.split(' ').reduce((done, word, index) => {
        const width = textWidth(word, size, { weight });
        const last = done.at(-1);
        return index === 0 && last !== undefined
          ? [...done.slice(0, -1), last + width]
          : [...done, width];
      }, widths),
    [],
  );

const lineCount = (words: Words, size: number, room: number): number => {
  const space = textWidth(' ', size);
  let lines = 1;
  let used = 0;
  for (const width of wordWidths(words, size)) {
    if (used > 0 && used + space + width > room) {
      lines += 1;
      used = width;
    } else {
      used += used > 0 ? space + width : width;
    }
  }
  return lines;
};

export const heightOfWords = (
  words: Words,
  { size, line }: { readonly size: number; readonly line: number },
  width: number,
): number => lineCount(words, size, width * SLACK) * line;
