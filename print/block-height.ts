/** How high blocks will stand at the most, for what is kept on one page. */
import { unreachable } from '#outcome';
import type { Block } from '#sheets';
import { heightOf, LEADING } from './room.ts';
import { tableHeight } from './tables.ts';

const HEADING = 16 * LEADING + 6;
const TEXT_SIZE = 14;
const INK_ROW = 22;
/** Frames, marks and gaps of a notice, and its heading on two lines. */
const NOTICE_EDGES = 70;

const blockHeight = (block: Block, width: number): number => {
  switch (block.kind) {
    case 'heading':
      return heightOf([block.text], 16, width) + HEADING;
    case 'text':
      return heightOf(block.words, TEXT_SIZE, width) + 4;
    case 'notice':
      return heightOf(block.words, TEXT_SIZE, width - 70) + NOTICE_EDGES;
    case 'drawing':
      return block.drawing.height + 4;
    case 'table':
      return tableHeight(block, width);
    case 'list':
    case 'proofs':
      return block.items.reduce(
        (sum, item) => sum + heightOf(item, TEXT_SIZE, width) + 2,
        TEXT_SIZE * LEADING + 14,
      );
    case 'inkLines':
      return (block.count + 1) * INK_ROW;
    case 'columns':
    case 'tickets':
      return Number.POSITIVE_INFINITY;
    default:
      return unreachable(block);
  }
};

export const blocksHeight = (blocks: readonly Block[], width: number): number =>
  blocks.reduce((sum, block) => sum + blockHeight(block, width), 0);
