/** How much room words take in print, for what must be decided before they are laid. */
import { textWidth } from '#drawings';
import type { Inline, Words } from '#sheets';

type Style = NonNullable<Parameters<typeof textWidth>[2]>;

/** A line of text takes a quarter more than its size: the face's own leading. */
export const LEADING = 1.25;

/**
 * Points that may be kept together on one page. Far less than any page has (A4 on its side, 409),
 * since pdfmake loses the end of what does not fit, and these heights are found beforehand.
 */
export const KEPT_MOST = 260;

/** With these the end of a group is still kept, so that no page begins with its total alone. */
export const KEPT_END = 330;

/** Lines of a text in a width. A word wider than that is broken, as the printer breaks it. */
export const linesIn = (text: string, size: number, width: number, style: Style = {}): number => {
  const space = textWidth(' ', size, style);
  let lines = 1;
  let taken = 0;
  for (const word of text.split(' ')) {
    const own = textWidth(word, size, style);
    if (taken > 0 && taken + space + own > width) {
      lines += 1;
      taken = 0;
    }
    const broken = Math.max(1, Math.ceil(own / width)) - 1;
    lines += broken;
    taken += (taken > 0 ? space : 0) + own - broken * width;
  }
  return lines;
};

const BLANK_LETTER = '0';

const inlineText = (inline: Inline): string => {
  if (typeof inline === 'string') return inline;
  if ('strong' in inline) return inline.strong;
  return BLANK_LETTER.repeat('blank' in inline ? inline.blank : 2);
};

/** Never less than what the words take: all of them as wide as if they were strong. */
export const heightOf = (words: Words, size: number, width: number): number =>
  linesIn(words.map(inlineText).join(''), size, width, { weight: 'strong' }) * size * LEADING;
