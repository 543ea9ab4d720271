/** A drawing as SVG for paper, in the registered faces. */
import { type Drawing, drawingToSvg, PAPER_PALETTE } from '#drawings';
import { printable } from './fonts.ts';

export const svgOf = (drawing: Drawing): string =>
  printable(
    drawingToSvg(drawing, {
      palette: PAPER_PALETTE,
      medium: 'paper',
      face: ({ width }) => (width === 'head' ? 'Wide' : 'Narrow'),
    }),
  );
