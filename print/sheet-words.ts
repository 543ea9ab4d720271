/** Every word that a sheet brings, block by block, for the tests of this room. */
import type { Drawing, Shape } from '#drawings';
import { unreachable } from '#outcome';
import type { Block, Inline, Sheet, Words } from '#sheets';

const bare = (text: string): string => text.replace(/\s/g, '');

const inlineWords = (inline: Inline): string => {
  if (typeof inline === 'string') return inline;
  if ('strong' in inline) return inline.strong;
  return 'blank' in inline ? '_'.repeat(inline.blank) : '\u2610';
};

const wordsOf = (words: Words): string => words.map(inlineWords).join('');

const shapeWords = (shapes: readonly Shape[]): readonly string[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return shapeWords(shape.shapes);
    return shape.kind === 'text' ? [shape.text] : [];
  });

const drawingWords = ({ shapes }: Drawing): readonly string[] => shapeWords(shapes);

const blockWords = (block: Block): readonly string[] => {
  switch (block.kind) {
    case 'heading':
      return [block.text];
    case 'text':
      return [wordsOf(block.words)];
    case 'notice':
      return [block.heading, wordsOf(block.words)];
    case 'drawing':
      return drawingWords(block.drawing);
    case 'table':
      return [
        ...block.columns.flatMap(({ head, unit }) => [head, unit ?? '']),
        ...block.rows.flatMap(({ cells, isGroup }) =>
          (isGroup === true ? cells.slice(0, 1) : cells).map(wordsOf),
        ),
      ];
    case 'list':
      return [block.heading, ...block.items.map(wordsOf)];
    case 'proofs':
      return block.items.map(wordsOf);
    case 'inkLines':
      return [];
    case 'columns':
      return block.columns.flat().flatMap(blockWords);
    case 'tickets':
      return block.tickets.flat().flatMap(blockWords);
    default:
      return unreachable(block);
  }
};

export const bodyWords = ({ blocks }: Sheet): readonly string[] =>
  blocks.flatMap(blockWords).map(bare);

/** What every page of the sheet must carry. */
export const edgeWords = ({
  title,
  number,
  name,
  beside,
  facts,
  footer,
  frame,
}: Sheet): readonly string[] =>
  [
    title,
    number ?? '',
    name,
    beside ?? '',
    ...facts.flatMap(({ term, value }) => [term, value]),
    footer.voidIf,
    footer.code,
    ...footer.cautions,
    frame ?? '',
  ].map(bare);
