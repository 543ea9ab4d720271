/** The blocks of a sheet as the maker of the PDF takes them, for a body of one width. */

import type { Content, Margins, TableCell } from 'pdfmake/interfaces.js';
import { unreachable } from '#outcome';
import type { Block, Columns, InkLines, List, Paragraph, Proofs, Tickets, Words } from '#sheets';
import { blocksHeight } from './block-height.ts';
import { noticeContent } from './notices.ts';
import { heightOf, KEPT_MOST } from './room.ts';
import { svgOf } from './svg-of.ts';
import { tableContent } from './tables.ts';
import { textRuns, wordRuns } from './words.ts';

const TEXT_SIZE = 14;
const NOTE_SIZE = 12;
const HEADING_SIZE = 16;
const EDGE_SIZE = 11;
const GUTTER = 16;
const INK_ROW = 22;
const INITIALS = 84;

const rule = (width: number, weight: number): Content => ({
  canvas: [{ type: 'line', x1: 0, y1: 0, x2: width, y2: 0, lineWidth: weight }],
});

const proofsContent = ({ items }: Proofs, width: number): Content => ({
  stack: [
    rule(width, 1.2),
    {
      stack: items.map((item): Content => ({ text: wordRuns(item), margin: [0, 2, 0, 0] })),
    },
    { ...(rule(width, 1.2) as object), margin: [0, 3, 0, 4] } as Content,
  ],
});

const inkContent = ({ count, words = ['Ink corrections', 'initials'] }: InkLines): Content => {
  const [corrections, initials] = words;
  const cell = (words: string, isRuled: boolean): TableCell => ({
    text: textRuns(words, { size: EDGE_SIZE }),
    border: [false, false, false, isRuled],
  });
  const line = (index: number): TableCell[] => [
    cell(index === 0 ? corrections : ' ', true),
    cell(' ', false),
    cell(index === 0 ? initials : ' ', true),
  ];
  return {
    table: {
      widths: ['*', 6, INITIALS],
      heights: INK_ROW - 3,
      body: Array.from({ length: count }, (_, index) => line(index)),
      dontBreakRows: true,
    },
    layout: {
      hLineWidth: () => 0.8,
      vLineWidth: () => 0,
      paddingTop: () => 1,
      paddingBottom: () => 1,
      paddingLeft: () => 0,
    },
    unbreakable: true,
  };
};

const columnsContent = ({ shares, columns }: Columns, width: number): Content => {
  const room = width - GUTTER * (shares.length - 1);
  return {
    columns: columns.map((blocks, index) => {
      const own = room * (shares[index] ?? 1 / shares.length);
      return { stack: blocks.map((block) => blockContent(block, own)), width: own };
    }),
    columnGap: GUTTER,
    margin: [0, 0, 0, 4],
  };
};

const CUT_LINE = 0.8;
const CUT = { length: 4, space: 4 } as const;
const TICKET_PAD = 8;

const ticketsContent = ({ perRow, tickets }: Tickets, width: number): Content => {
  const own = (width - CUT_LINE * (perRow + 1)) / perRow - 2 * TICKET_PAD;
  const isKept = tickets.every((blocks) => blocksHeight(blocks, own) <= KEPT_MOST);
  const cells = tickets.map(
    (blocks): TableCell => ({ stack: blocks.map((block) => blockContent(block, own)) }),
  );
  const rows = Array.from({ length: Math.ceil(cells.length / perRow) }, (_, row) =>
    Array.from({ length: perRow }, (__, column) => cells[row * perRow + column] ?? {}),
  );
  return {
    table: { widths: Array.from({ length: perRow }, () => own), body: rows, dontBreakRows: isKept },
    layout: {
      hLineWidth: () => CUT_LINE,
      vLineWidth: () => CUT_LINE,
      hLineStyle: () => ({ dash: CUT }),
      vLineStyle: () => ({ dash: CUT }),
      paddingLeft: () => TICKET_PAD,
      paddingRight: () => TICKET_PAD,
      paddingTop: () => 5,
      paddingBottom: () => 5,
    },
  };
};

/** A sentence that goes over two pages is read wrong: one that has room on a page stays whole. */
const keptText = (
  words: Words,
  size: number,
  { width, margin }: { readonly width: number; readonly margin: Margins },
): Content => {
  const text: Content = { text: wordRuns(words, { size }), margin };
  return heightOf(words, size, width) > KEPT_MOST ? text : { stack: [text], unbreakable: true };
};

/** The heading goes with the first item, wherever that has to go. */
const listContent = ({ heading, items }: List, width: number): Content => {
  const [first, ...others] = items.map((item) =>
    keptText(item, TEXT_SIZE, { width, margin: [0, 2, 0, 0] }),
  );
  const head: Content = { text: textRuns(heading, { bold: true }) };
  const isKept = heightOf(items[0] ?? [], TEXT_SIZE, width) <= KEPT_MOST;
  return {
    stack: [first === undefined ? head : { stack: [head, first], unbreakable: isKept }, ...others],
    margin: [0, 4, 0, 6],
  };
};

const sizeOf = ({ isNote, isEdge }: Paragraph): number => {
  if (isEdge === true) return EDGE_SIZE;
  return isNote === true ? NOTE_SIZE : TEXT_SIZE;
};

/** One block; drawings come at their own size, which was made for this width. */
export const blockContent = (block: Block, width: number): Content => {
  switch (block.kind) {
    case 'heading':
      return {
        text: textRuns(block.text, { face: 'Wide', bold: true, size: HEADING_SIZE }),
        margin: [0, 4, 0, 2],
      };
    case 'text':
      return keptText(block.words, sizeOf(block), { width, margin: [0, 0, 0, 4] });
    case 'notice':
      return noticeContent(block);
    case 'drawing':
      return { svg: svgOf(block.drawing), width: block.drawing.width, margin: [0, 0, 0, 4] };
    case 'table':
      return tableContent(block, width);
    case 'list':
      return listContent(block, width);
    case 'proofs':
      return proofsContent(block, width);
    case 'inkLines':
      return inkContent(block);
    case 'columns':
      return columnsContent(block, width);
    case 'tickets':
      return ticketsContent(block, width);
    default:
      return unreachable(block);
  }
};

/** How many blocks from `start` stay on one page with the heading that stands there. */
const keptFrom = (blocks: readonly Block[], start: number, width: number): number => {
  if (blocks[start]?.kind !== 'heading') return 1;
  const after = blocks.slice(start + 1);
  const stop = after.findIndex(({ kind }) => kind === 'heading' || kind === 'inkLines');
  const most = 1 + (stop === -1 ? after.length : stop);
  const fits = (count: number): boolean =>
    blocksHeight(blocks.slice(start, start + count), width) <= KEPT_MOST;
  return Array.from({ length: most }, (_, index) => most - index).find(fits) ?? 1;
};

/** All blocks of a sheet; a heading is never left at the foot of a page. */
export const bodyContents = (blocks: readonly Block[], width: number): Content[] => {
  const contents: Content[] = [];
  for (let start = 0; start < blocks.length; ) {
    const count = keptFrom(blocks, start, width);
    const stack = blocks.slice(start, start + count).map((block) => blockContent(block, width));
    contents.push({ stack, unbreakable: count > 1 });
    start += count;
  }
  return contents;
};
