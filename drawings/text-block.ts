/** A few lines of lettering that stay together, with the room they take. */
import type { Box } from './boxes.ts';
import { textWidth } from './lettering.ts';
import type { Anchor, Lettering, Pen } from './shape.ts';
import { lettering } from './shape.ts';

export type BlockLine = { readonly text: string; readonly strong?: boolean };

export type TextBlock = {
  readonly width: number;
  readonly height: number;
  /** The lines with the top left corner of the block at (x, y). */
  readonly at: (box: Pick<Box, 'x' | 'y'>) => readonly Lettering[];
};

/** Line to line, and from the top of a line to its base line, as shares of the letter size. */
export const LEADING = 1.2;
const ASCENT = 0.92;

const weightOf = ({ strong = false }: BlockLine): Lettering['weight'] =>
  strong ? 'strong' : 'plain';

export const textBlock = (
  lines: readonly BlockLine[],
  letter: number,
  {
    anchor = 'start',
    pen = 'ink',
    backed = true,
  }: { readonly anchor?: Anchor; readonly pen?: Pen; readonly backed?: boolean } = {},
): TextBlock => {
  const width = Math.max(
    0,
    ...lines.map((each) => textWidth(each.text, letter, { weight: weightOf(each) })),
  );
  const shift = { start: 0, middle: width / 2, end: width }[anchor];
  return {
    width,
    height: lines.length * letter * LEADING,
    at: ({ x, y }) =>
      lines.map((each, index) =>
        lettering(x + shift, y + letter * (ASCENT + index * LEADING), each.text, letter, {
          anchor,
          pen,
          backed,
          weight: weightOf(each),
        }),
      ),
  };
};
