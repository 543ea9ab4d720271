/** Sheets of the example houses, and how their words are read, for the tests of this room. */

import { unreachable } from '#outcome';
import { judge } from '#rules';
import {
  type Block,
  type Sheet,
  type SheetContext,
  sheetOf,
  type Table,
  type Words,
} from './index.ts';

/** What an example house prints, judged and stamped at one moment. */
export const exampleContext = (example: Omit<SheetContext, 'findings' | 'stamp'>): SheetContext => {
  const { house, show, state, assessment } = example;
  const nowMs = Date.parse('2026-11-25T18:55:00Z');
  return {
    ...example,
    findings: show === null ? [] : judge(house, show, state, assessment, { nowMs }),
    stamp: { revision: '4', printedAt: '2026-11-25T18:55:00+01:00', printedBy: 'TD' },
  };
};

export const mustMake = (context: SheetContext, id: string): Sheet => {
  const sheet = sheetOf(context, id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  return sheet;
};

export const textOf = (words: Words): string =>
  words
    .map((inline) => {
      if (typeof inline === 'string') return inline;
      return 'strong' in inline ? inline.strong : '';
    })
    .join('')
    .replaceAll('\u00A0', ' ');

export const tablesOf = ({ blocks }: Sheet): readonly Table[] =>
  blocks.flatMap((block) => (block.kind === 'table' ? [block] : []));

/** By the head of its first column. */
export const tableNamed = (sheet: Sheet, head: string): Table | undefined =>
  tablesOf(sheet).find(({ columns }) => columns[0]?.head === head);

export const rowsOf = (table: Table | undefined): readonly (readonly string[])[] =>
  (table?.rows ?? []).map(({ cells }) => cells.map(textOf));

const blockWords = (block: Block): string => {
  switch (block.kind) {
    case 'text':
      return textOf(block.words);
    case 'notice':
      return `${block.heading} ${textOf(block.words)}`;
    case 'heading':
      return block.text;
    case 'list':
      return [block.heading, ...block.items.map(textOf)].join('\n');
    case 'table':
      return rowsOf(block)
        .map((cells) => cells.join(' | '))
        .join('\n');
    case 'columns':
      return block.columns.flat().map(blockWords).join('\n');
    case 'drawing':
    case 'proofs':
    case 'inkLines':
    case 'tickets':
      return '';
    default:
      return unreachable(block);
  }
};

export const allWords = ({ blocks }: Sheet): string => blocks.map(blockWords).join('\n');
