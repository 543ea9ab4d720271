/** The frame of what is not real, round every page of it. */

import type { Content, ContextPageSize } from 'pdfmake/interfaces.js';
import { type Drawing, lettering, rect, textWidth } from '#drawings';
import { svgOf } from './svg-of.ts';

const FRAME_EDGE = 12;
const FRAME_WIDTH = 8;
const WORD_SIZE = 11;

/** Diagonal hatch round the page with its word on it: not real, whatever it says inside. */
const frameDrawing = (words: string, { width, height }: ContextPageSize): Drawing => {
  const [across, down] = [width - 2 * FRAME_EDGE, height - 2 * FRAME_EDGE];
  const band = { hatch: 'cut' } as const;
  const wordWidth = textWidth(words, WORD_SIZE, { weight: 'strong' }) + 20;
  const bands = [
    rect(FRAME_EDGE, FRAME_EDGE, across, FRAME_WIDTH, band),
    rect(FRAME_EDGE, height - FRAME_EDGE - FRAME_WIDTH, across, FRAME_WIDTH, band),
    rect(FRAME_EDGE, FRAME_EDGE + FRAME_WIDTH, FRAME_WIDTH, down - 2 * FRAME_WIDTH, band),
    rect(
      width - FRAME_EDGE - FRAME_WIDTH,
      FRAME_EDGE + FRAME_WIDTH,
      FRAME_WIDTH,
      down - 2 * FRAME_WIDTH,
      band,
    ),
  ];
  return {
    width,
    height,
    title: words,
    shapes: [
      ...bands,
      rect((width - wordWidth) / 2, FRAME_EDGE - 3, wordWidth, FRAME_WIDTH + 6, {
        fill: 'paper',
        stroke: 'ink',
        weight: 'thin',
      }),
      lettering(width / 2, FRAME_EDGE + FRAME_WIDTH, words, WORD_SIZE, {
        anchor: 'middle',
        weight: 'strong',
      }),
    ],
  };
};

export const frameContent = (words: string, size: ContextPageSize): Content => ({
  svg: svgOf(frameDrawing(words, size)),
  width: size.width,
  absolutePosition: { x: 0, y: 0 },
});
