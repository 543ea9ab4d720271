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

const NO_BREAK = '\u00a0';
const NO_BREAK_HYPHEN = '\u2011';

/** A code is typed as it stands, so that no line ends within it. */
const CODE = /\b([0-9A-Z]{4})-([0-9A-Z]{4})\b/g;

type Neighbours = { readonly before?: Inline | undefined; readonly after?: Inline | undefined };

const isSign = (inline: Inline | undefined, sign: 'blank' | 'box'): boolean =>
  typeof inline === 'object' && sign in inline;

/** A box stays with the word that it is ticked for, and a line with the one that it is for. */
const unbroken = (text: string, { before, after }: Neighbours): string => {
  const bound = isSign(before, 'box') ? text.replace(/^ /, NO_BREAK) : text;
  const led = isSign(after, 'blank') ? bound.replace(/ $/, NO_BREAK) : bound;
  return led.replace(CODE, `$1${NO_BREAK_HYPHEN}$2`);
};

const kept = (inline: Inline, neighbours: Neighbours): Inline => {
  if (typeof inline === 'string') return unbroken(inline, neighbours);
  return 'strong' in inline ? { strong: unbroken(inline.strong, neighbours) } : inline;
};

export const wordRuns = (words: Words, style: Style = {}): ContentText[] =>
  words.flatMap((inline, at) =>
    inlineRuns(kept(inline, { before: words[at - 1], after: words[at + 1] }), style),
  );
