/**
 * A drawing as an SVG file: sizes in millimetres of paper, inks of paper, no scripts, no styles
 * from elsewhere. Words carry the room that they take, so that another face does not run over.
 */
import { PAPER_PALETTE } from '../pens.ts';
import { escaped, svgBody } from '../svg.ts';
import { type DrawingFile, MM_A_POINT } from './drawing-file.ts';

/** Names of faces in the order in which they are asked for; the last is in every program. */
const FACES = "'Encode Sans Semi Condensed', 'Encode Sans', 'Noto Sans', Arial, sans-serif";

const millimetres = (points: number): string => `${Number((points * MM_A_POINT).toFixed(3))}`;

export const svgFile = ({ drawing, scale }: DrawingFile): string => {
  const [width, height] = [millimetres(drawing.width), millimetres(drawing.height)];
  const body = svgBody(drawing, {
    palette: PAPER_PALETTE,
    medium: 'paper',
    face: () => FACES,
    isFile: true,
  });
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" \
viewBox="0 0 ${width} ${height}">
<title>${escaped(drawing.title)}</title>
<desc>One unit is a millimetre of paper; the scale is 1:${scale}.</desc>
<rect width="${width}" height="${height}" fill="${PAPER_PALETTE.paper}"/>
<g transform="scale(${MM_A_POINT.toFixed(6)})">${body}</g>
</svg>
`;
};
