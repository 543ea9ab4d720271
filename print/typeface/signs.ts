/** Two signs that the face has not: a box to tick, and a line to write on without gaps. */
import type { Glyph } from './glyphs.ts';

/** Ballot box: what a reader copies out of the file, too. */
export const BOX = '\u2610';
/** Low line: so many of them make one line. */
export const LINE = '_';

type Corner = readonly [x: number, y: number];

/** Straight contours as a simple glyph: every point on the curve, every step in two bytes. */
const straightGlyph = (contours: readonly (readonly Corner[])[], advance: number): Glyph => {
  const corners = contours.flat();
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  const ends = contours.map((_, index) => contours.slice(0, index + 1).flat().length - 1);
  const steps = (values: readonly number[]): readonly number[] =>
    values.map((value, index) => value - (values[index - 1] ?? 0));
  const words = [contours.length, ...box, ...ends, 0];
  const places = [...steps(xs), ...steps(ys)];
  const outline = Buffer.alloc(words.length * 2 + corners.length + places.length * 2);
  words.forEach((word, index) => {
    outline.writeInt16BE(word, index * 2);
  });
  outline.fill(1, words.length * 2, words.length * 2 + corners.length);
  places.forEach((step, index) => {
    outline.writeInt16BE(step, words.length * 2 + corners.length + index * 2);
  });
  return { outline, advance, bearing: box[0] ?? 0 };
};

/** Corners from the lower left, clockwise, which is filled; the other way round is left open. */
const square = (left: number, bottom: number, width: number, height: number): Corner[] => [
  [left, bottom],
  [left, bottom + height],
  [left + width, bottom + height],
  [left + width, bottom],
];

const EDGE = 80;
const SIDE = 1480;
const STROKE = 130;

/** A little taller than a capital, so that a tick stays inside it. */
export const boxGlyph = (): Glyph =>
  straightGlyph(
    [
      square(EDGE, -EDGE, SIDE, SIDE),
      square(EDGE + STROKE, STROKE - EDGE, SIDE - 2 * STROKE, SIDE - 2 * STROKE).toReversed(),
    ],
    SIDE + 2 * EDGE,
  );

const LINE_BOTTOM = -260;
const LINE_WEIGHT = 90;

/** As wide as one figure, from edge to edge. */
export const lineGlyph = (advance: number): Glyph =>
  straightGlyph([square(0, LINE_BOTTOM, advance, LINE_WEIGHT)], advance);
