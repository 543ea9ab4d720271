/** A sheet made a little tighter, so that its words keep their size and the page holds them. */
import { type Drawing, group } from '#drawings';
import { unreachable } from '#outcome';
import type { Block, Sheet } from '#sheets';

/** How often a sheet has given way: its drawings drawn smaller, its ink lines left out. */
export type Tightness = { readonly drawings: number; readonly ink: number };

export const LOOSE: Tightness = { drawings: 0, ink: 0 };

/** Each step takes so much off; below the last the lettering would be too small to read. */
const STEP = 0.95;
const MOST_STEPS = 8;
/** Some lines for corrections there must be, on a page of their own if need be. */
const LEAST_INK = 2;

const shrunkDrawing = ({ width, height, title, shapes }: Drawing, factor: number): Drawing => ({
  width: width * factor,
  height: height * factor,
  title,
  shapes: [group(shapes, { scale: factor })],
});

const tightBlock = (block: Block, { drawings, ink }: Tightness): Block => {
  switch (block.kind) {
    case 'drawing':
      return { ...block, drawing: shrunkDrawing(block.drawing, STEP ** drawings) };
    case 'inkLines':
      return { ...block, count: block.count - ink };
    case 'columns':
      return {
        ...block,
        columns: block.columns.map((column) =>
          column.map((each) => tightBlock(each, { drawings, ink })),
        ),
      };
    case 'heading':
    case 'text':
    case 'notice':
    case 'table':
    case 'list':
    case 'proofs':
    case 'tickets':
      return block;
    default:
      return unreachable(block);
  }
};

export const tightened = (sheet: Sheet, tightness: Tightness): Sheet =>
  tightness === LOOSE
    ? sheet
    : { ...sheet, blocks: sheet.blocks.map((block) => tightBlock(block, tightness)) };

/** Pages of the sheet as it now is, and as it was before it gave way. */
export type Pages = { readonly now: number; readonly loose: number };

const inkCount = ({ blocks }: Sheet): number => {
  const last = blocks.at(-1);
  return last?.kind === 'inkLines' ? last.count : 0;
};

/**
 * The next thing to try, or null where the sheet is well as it is. A balance card hangs at the
 * arbor and is one page: its drawings give way for that. Elsewhere some ink lines are left out
 * where that spares a page. What does not help in the end is not done at all.
 */
export const nextTightness = (
  sheet: Sheet,
  { drawings, ink }: Tightness,
  { now, loose }: Pages,
): Tightness | null => {
  if (now === 1) return null;
  if (sheet.kind === 'balance-card') {
    return drawings < MOST_STEPS ? { drawings: drawings + 1, ink } : LOOSE;
  }
  if (ink > 0) return now < loose ? null : LOOSE;
  const spare = inkCount(sheet) - LEAST_INK;
  return spare > 0 ? { drawings, ink: spare } : null;
};
