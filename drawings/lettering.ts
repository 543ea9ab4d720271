/** How much room words take, so that labels can be placed before anything is drawn. */
import { HEAD_PLAIN, HEAD_STRONG, NARROW_PLAIN, NARROW_STRONG } from './letter-widths.ts';
import type { Lettering, LetterWidth } from './shape.ts';

type Face = { readonly weight?: Lettering['weight']; readonly width?: LetterWidth };

const FIRST = ' '.charCodeAt(0);
const NO_BREAK_SPACE = '\u00A0';
/** A letter outside the table is taken as wide as a capital H. */
const UNLISTED = 'H'.charCodeAt(0) - FIRST;

const widthsOf = ({ weight = 'plain', width = 'narrow' }: Face): readonly number[] => {
  if (width === 'head') return weight === 'strong' ? HEAD_STRONG : HEAD_PLAIN;
  return weight === 'strong' ? NARROW_STRONG : NARROW_PLAIN;
};

/**
 * Width of one line of text in units of the drawing. On a screen the letters run a little
 * narrower than this, never wider.
 */
export const textWidth = (text: string, size: number, face: Face = {}): number => {
  const widths = widthsOf(face);
  const thousandths = [...text.replaceAll(NO_BREAK_SPACE, ' ')].reduce(
    (sum, letter) => sum + (widths[letter.charCodeAt(0) - FIRST] ?? widths[UNLISTED] ?? 0),
    0,
  );
  return (thousandths / 1000) * size;
};

/** As much of the text as fits, with three points where it is cut. */
export const cutTo = (text: string, room: number, size: number): string => {
  if (textWidth(text, size) <= room) return text;
  const letters = [...text];
  while (letters.length > 1 && textWidth(`${letters.join('')}…`, size) > room) letters.pop();
  return `${letters.join('').trimEnd()}…`;
};

/** A word that is wider than `room`, in pieces with hyphens; other languages have long words. */
export const piecesOfWord = (word: string, size: number, room: number): readonly string[] => {
  if (textWidth(word, size) <= room) return [word];
  const letters = [...word];
  let fits = letters.length - 2;
  while (fits > 1 && textWidth(`${letters.slice(0, fits).join('')}-`, size) > room) fits -= 1;
  if (fits < 2) return [word];
  const rest = letters.slice(fits).join('');
  return [`${letters.slice(0, fits).join('')}-`, ...piecesOfWord(rest, size, room)];
};

/** Text broken at its spaces into lines no wider than `room`; a word too long stands alone. */
export const linesOfText = (
  text: string,
  size: number,
  room: number,
  face: Face = {},
): readonly string[] =>
  text.split(' ').reduce<readonly string[]>((lines, word) => {
    const last = lines.at(-1);
    if (last === undefined) return [word];
    const joined = `${last} ${word}`;
    return textWidth(joined, size, face) <= room
      ? [...lines.slice(0, -1), joined]
      : [...lines, word];
  }, []);
