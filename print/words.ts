/** Runs of words as the maker of the PDF takes them. */

import type { ContentText } from 'pdfmake/interfaces.js';
import type { Inline, Words } from '#sheets';
import { type Face, printable } from './fonts.ts';
import { BOX, LINE } from './typeface/signs.ts';

type Style = { readonly face?: Face; readonly bold?: boolean; readonly size?: number };

export const textRuns = (
  text: string,
  { face = 'Narrow', bold = false, size }: Style = {},
): ContentText[] => [
  {
    text: printable(text),
    bold,
    font: face,
    ...(size === undefined ? {} : { fontSize: size }),
  },
];

const inlineRuns = (inline: Inline, style: Style): ContentText[] => {
  if (typeof inline === 'string') return textRuns(inline, style);
  if ('strong' in inline) return textRuns(inline.strong, { ...style, bold: true });
  if ('blank' in inline) return textRuns(LINE.repeat(inline.blank), style);
  return textRuns(BOX, style);
};

export const wordRuns = (words: Words, style: Style = {}): ContentText[] =>
  words.flatMap((inline) => inlineRuns(inline, style));
