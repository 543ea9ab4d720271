/**
 * Signs on a grid of 24, drawn as little sections of a set: a line over a head block, the arbor
 * square, the batten round. No sign means "good". The word stands beside it everywhere but on the
 * wall.
 */

import type { House } from '#house';
import { unreachable } from '#outcome';
import { phrase } from '#texts';
import type { Drawing, Group, Pen, Shape, Style } from './shape.ts';
import { circle, group, line, path, point, rect } from './shape.ts';
import { tradeWord } from './trade-words.ts';

export const GLYPH_NAMES = [
  'battenHeavy',
  'arborHeavy',
  'inBalance',
  'unknown',
  'stale',
  'stop',
  'lock',
  'bullLine',
  'resting',
  'deadHung',
  'lockedOut',
  'movingOut',
  'movingIn',
  'zoneClosed',
  'counted',
  'pullTested',
  'caution',
  'danger',
] as const;

export type GlyphName = (typeof GLYPH_NAMES)[number];

export const GLYPH_GRID = 24;
const STROKE = 1.75;

const pens = (pen: Pen) => {
  const outline = (weight: number = STROKE): Style => ({ stroke: pen, weight });
  return { outline, filled: { fill: pen } satisfies Style };
};

/** The three states of balance share one section: arbor, line over the block, batten. */
const balanceSign = (name: 'battenHeavy' | 'arborHeavy' | 'inBalance', pen: Pen): Shape[] => {
  const { outline, filled } = pens(pen);
  switch (name) {
    case 'battenHeavy':
      return [
        path('M6 8V3.5H18V15', outline()),
        rect(3, 8, 6, 7, outline()),
        circle(18, 18.5, 4.2, filled),
      ];
    case 'arborHeavy':
      return [
        path('M6 13V3.5H18V7', outline()),
        rect(2, 12.5, 8, 10, filled),
        circle(18, 10, 3, outline()),
      ];
    case 'inBalance':
      return [
        path('M6 11V3.5H18V11', outline()),
        rect(3, 11, 6, 7, outline()),
        circle(18, 14.5, 3.4, outline()),
        line(1.5, 21.5, 22.5, 21.5, outline()),
      ];
    default:
      return unreachable(name);
  }
};

const mirroredAcross = (shape: Shape): Shape => {
  switch (shape.kind) {
    case 'rect':
      return { ...shape, x: GLYPH_GRID - shape.x - shape.width };
    case 'circle':
      return { ...shape, x: GLYPH_GRID - shape.x };
    case 'path':
      return { ...shape, d: shape.d.replace('M6', 'M18').replace('H18', 'H6') };
    case 'line':
    case 'polyline':
    case 'text':
    case 'group':
      return shape;
    default:
      return unreachable(shape);
  }
};

const holdSign = (
  name: 'stop' | 'lock' | 'bullLine' | 'resting' | 'deadHung',
  pen: Pen,
): Shape[] => {
  const { outline, filled } = pens(pen);
  switch (name) {
    case 'stop':
      return [
        circle(12, 8, 4.2, outline()),
        line(2, 14.5, 22, 14.5, outline(3.4)),
        path('M4 21.5L8 16.5M10 21.5L14 16.5M16 21.5L20 16.5', outline(1.4)),
      ];
    case 'lock':
      return [
        line(12, 1, 12, 23, outline(2.2)),
        path('M1.5 5.5L10 12L1.5 18.5ZM22.5 5.5L14 12L22.5 18.5Z', filled),
      ];
    case 'bullLine':
      return [
        circle(6.5, 6, 4, outline(1.9)),
        line(9.2, 9, 16.4, 17.2, outline(2)),
        circle(17.6, 17.6, 2.1, outline(1.6)),
        line(11.5, 21.6, 23.5, 21.6, outline(3.2)),
      ];
    case 'resting':
      return [
        path('M7.5 17V4.5H16.5V17', outline()),
        line(2, 18.3, 22, 18.3, outline(2.6)),
        path('M12 1V4.5M4 23L7 19.6M10.5 23L13.5 19.6M17 23L20 19.6', outline(1.4)),
      ];
    case 'deadHung':
      return [
        line(2, 5, 22, 5, outline(3)),
        path('M4 3.6L6.5 1M10 3.6L12.5 1M16 3.6L18.5 1', outline(1.3)),
        path('M7 6V17M17 6V17', outline(3)),
        line(2, 18.5, 22, 18.5, outline(3.4)),
      ];
    default:
      return unreachable(name);
  }
};

/** Drawn still: nothing on a screen blinks. */
const callSign = (name: 'movingOut' | 'movingIn' | 'zoneClosed', pen: Pen): Shape[] => {
  const { outline } = pens(pen);
  switch (name) {
    case 'movingOut':
      return [
        path('M5 8.5L12 2.5L19 8.5M5 14L12 8L19 14', outline(2.2)),
        circle(12, 19, 3.4, outline(1.9)),
      ];
    case 'movingIn':
      return [
        path('M5 15.5L12 21.5L19 15.5M5 10L12 16L19 10', outline(2.2)),
        circle(12, 5, 3.4, outline(1.9)),
      ];
    case 'zoneClosed':
      return [
        path('M2 7V2H7M17 2H22V7M22 17V22H17M7 22H2V17', outline(2.2)),
        path('M6.5 13L13 6.5M6.5 17.5L17.5 6.5M11 17.5L17.5 11', outline()),
      ];
    default:
      return unreachable(name);
  }
};

const recordSign = (
  name: 'unknown' | 'stale' | 'lockedOut' | 'counted' | 'pullTested' | 'caution' | 'danger',
  pen: Pen,
): Shape[] => {
  const { outline, filled } = pens(pen);
  switch (name) {
    case 'unknown':
      return [
        rect(2.5, 2.5, 19, 19, { ...outline(), dash: 'plan' }),
        path('M8.6 9.2C8.6 5.2 15.4 5.2 15.4 9.2C15.4 11.8 12 11.6 12 14.6', outline(2.2)),
        rect(10.7, 16.6, 2.6, 2.6, filled),
      ];
    case 'stale':
      return [
        path('M4 2.5H20V17.5L17.3 21L14.7 17.5L12 21L9.3 17.5L6.7 21L4 17.5Z', outline()),
        path('M7.5 7.5H16.5M7.5 12H12.5', outline()),
      ];
    case 'lockedOut':
      return [
        path('M4.5 7.5L9 2H15L19.5 7.5V22H4.5Z', outline()),
        circle(12, 6, 1.6, filled),
        path('M8 11L16 19M16 11L8 19', outline(2.2)),
      ];
    case 'counted':
      return [
        path('M4 5V19M9 5V19M14 5V19M19 5V19', outline(2)),
        line(1.5, 16.5, 22.5, 7.5, outline(2)),
      ];
    case 'pullTested':
      return [
        path('M8 3V21M16 3V21', outline(2)),
        path('M3.5 9L8 3L12.3 9M11.7 15L16 21L20.5 15', outline()),
      ];
    case 'caution':
      return [
        path('M12 1.8L22.2 12L12 22.2L1.8 12Z', outline(1.9)),
        line(12, 7, 12, 13.2, outline(2.2)),
        rect(10.8, 15, 2.4, 2.4, filled),
      ];
    case 'danger':
      return [path('M1.5 2.5H22.5L12 22.5Z', filled)];
    default:
      return unreachable(name);
  }
};

const shapesOf = (name: GlyphName, pen: Pen, isMirrored: boolean): readonly Shape[] => {
  switch (name) {
    case 'battenHeavy':
    case 'arborHeavy':
    case 'inBalance': {
      const shapes = balanceSign(name, pen);
      return isMirrored ? shapes.map(mirroredAcross) : shapes;
    }
    case 'stop':
    case 'lock':
    case 'bullLine':
    case 'resting':
    case 'deadHung':
      return holdSign(name, pen);
    case 'movingOut':
    case 'movingIn':
    case 'zoneClosed':
      return callSign(name, pen);
    case 'unknown':
    case 'stale':
    case 'lockedOut':
    case 'counted':
    case 'pullTested':
    case 'caution':
    case 'danger':
      return recordSign(name, pen);
    default:
      return unreachable(name);
  }
};

export type GlyphOptions = {
  readonly pen?: Pen;
  /** Arbor to the right: the operating side is stage left, seen from the house. */
  readonly mirrored?: boolean;
};

const penOf = (name: GlyphName, pen: Pen | undefined): Pen => {
  if (pen !== undefined) return pen;
  if (name === 'danger') return 'red';
  return name === 'caution' ? 'ochre' : 'ink';
};

/** One sign alone, 24 by 24. */
export const glyph = (name: GlyphName, { pen, mirrored = false }: GlyphOptions = {}): Drawing => ({
  width: GLYPH_GRID,
  height: GLYPH_GRID,
  title: name,
  shapes: shapesOf(name, penOf(name, pen), mirrored),
});

/** One sign inside another drawing, its corner at (x, y), `size` units wide. */
export const glyphAt = (
  name: GlyphName,
  x: number,
  y: number,
  size: number,
  { pen, mirrored = false }: GlyphOptions = {},
): Group =>
  group(shapesOf(name, penOf(name, pen), mirrored), {
    at: point(x, y),
    scale: size / GLYPH_GRID,
    part: name,
  });

/** The word that stands beside a sign. */
export const glyphWord = (house: Pick<House, 'words'>, name: GlyphName): string => {
  switch (name) {
    case 'battenHeavy':
      return tradeWord(house, 'battenHeavy');
    case 'arborHeavy':
      return tradeWord(house, 'arborHeavy');
    case 'inBalance':
      return phrase(house, 'in balance, pull-tested');
    case 'unknown':
      return 'unknown';
    case 'stale':
      return phrase(house, 'stale');
    case 'stop':
      return phrase(house, 'held by stop');
    case 'lock':
      return phrase(house, 'held by lock');
    case 'bullLine':
      return phrase(house, 'held by bull line');
    case 'resting':
      return phrase(house, 'resting on the deck');
    case 'deadHung':
      return tradeWord(house, 'deadHung');
    case 'lockedOut':
      return phrase(house, 'locked out');
    case 'movingOut':
      return phrase(house, 'moving out');
    case 'movingIn':
      return phrase(house, 'moving in');
    case 'zoneClosed':
      return phrase(house, 'zone closed');
    case 'counted':
      return phrase(house, 'counted');
    case 'pullTested':
      return phrase(house, 'pull-tested');
    case 'caution':
      return phrase(house, 'Caution');
    case 'danger':
      return phrase(house, 'Not held');
    default:
      return unreachable(name);
  }
};
