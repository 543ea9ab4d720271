/** A drawing that cannot be made yet: its datum line, and one sentence of what to enter. */
import { phrase, told, type Voice } from '#texts';
import { linesOfText } from './lettering.ts';
import type { Drawing } from './shape.ts';
import { line } from './shape.ts';
import { textBlock } from './text-block.ts';

const MARGIN = 8;

export const emptyDrawing = (
  title: string,
  sentence: string,
  { width, height, letter }: Record<'width' | 'height' | 'letter', number>,
): Drawing => {
  const lines = linesOfText(sentence, letter, width - 2 * MARGIN);
  const block = textBlock(
    lines.map((text) => ({ text })),
    letter,
  );
  const foot = height - MARGIN;
  return {
    width,
    height,
    title: `${title}: ${sentence}`,
    shapes: [
      line(0, foot, width, foot, { stroke: 'line', weight: 'thin', dash: 'centre' }),
      ...block.at({ x: MARGIN, y: MARGIN }),
    ],
  };
};

/** "Needs the mass of Border 1 and the low stop." */
export const needsSentence = (needs: readonly string[], voice: Voice): string =>
  needs.length === 0
    ? phrase(voice, 'Nothing to draw.')
    : phrase(voice, 'Cannot be drawn without: {needs}.', {
        needs: told(voice, needs.join('; ')),
      });
