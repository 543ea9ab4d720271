/** Three degrees, told apart by frame, mark and word; none of them by colour. */

import type { Content, ContentTable, CustomTableLayout } from 'pdfmake/interfaces.js';
import { type Drawing, glyph } from '#drawings';
import { unreachable } from '#outcome';
import type { Notice } from '#sheets';
import { svgOf } from './svg-of.ts';
import { textRuns, wordRuns } from './words.ts';

const HEADING = { plain: 14, note: 18, caution: 18, danger: 18 } as const;
const MARK = 28;
const DASH = { dash: { length: 6, space: 3 } } as const;

const frame = (width: number, padding: number, isDashed = false): CustomTableLayout => ({
  hLineWidth: () => width,
  vLineWidth: () => width,
  ...(isDashed ? { hLineStyle: () => DASH, vLineStyle: () => DASH } : {}),
  paddingLeft: () => padding,
  paddingRight: () => padding,
  paddingTop: () => padding * 0.6,
  paddingBottom: () => padding * 0.6,
});

const boxed = (inside: Content, layout: CustomTableLayout): ContentTable => ({
  table: { widths: ['*'], body: [[inside]] },
  layout,
});

const wordsOf = ({ degree, heading, words }: Notice): Content[] => [
  { text: textRuns(heading, { face: 'Wide', bold: true, size: HEADING[degree] }) },
  ...(words.length === 0 ? [] : [{ text: wordRuns(words) }]),
];

const marked = (mark: Drawing, notice: Notice): Content => ({
  columns: [
    { svg: svgOf(mark), width: MARK, fit: [MARK, MARK], margin: [0, 4, 0, 0] },
    { stack: wordsOf(notice), width: '*' },
  ],
  columnGap: 12,
});

/** Between the rule of the header and one of its own: what a card is not. */
const plainNotice = (notice: Notice): ContentTable => ({
  table: { widths: ['*'], body: [[{ stack: wordsOf(notice), alignment: 'center' }]] },
  layout: {
    hLineWidth: (line) => (line === 0 ? 0 : 1.5),
    vLineWidth: () => 0,
    paddingTop: () => 2,
    paddingBottom: () => 2,
  },
});

const framed = (notice: Notice): ContentTable => {
  const { degree } = notice;
  switch (degree) {
    case 'plain':
      return plainNotice(notice);
    case 'note':
      return boxed({ stack: wordsOf(notice) }, frame(0.8, 8));
    case 'caution':
      return boxed(marked(glyph('caution'), notice), frame(1, 8, true));
    case 'danger':
      return boxed(boxed(marked(glyph('danger'), notice), frame(2.5, 8)), frame(0.8, 2));
    default:
      return unreachable(degree);
  }
};

export const noticeContent = (notice: Notice): Content => ({
  ...framed(notice),
  margin: [0, 0, 0, 6],
});
