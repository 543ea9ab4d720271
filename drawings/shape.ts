/**
 * A drawing as plain shapes on paper: no browser, no pixels, no colours. x runs to the right and y
 * runs down, in units of the drawing: one unit is a CSS pixel on a screen and a point on paper.
 * Styles say what a line means; the medium decides how wide it is and what ink it takes.
 */

/** Inks and pencils. Blue points, ochre says look first, red says that nothing holds it. */
export type Pen = 'ink' | 'ink2' | 'line' | 'rule' | 'solid' | 'paper' | 'blue' | 'red' | 'ochre';

/** Thick: cut by the section. Mid: outline of a thing. Thin: rope. Hair: dimension, ruling. */
export type Weight = 'hair' | 'thin' | 'mid' | 'thick' | 'curve' | 'pencil';

/** Other: another position of the same thing. Plan: not there yet. Centre: datum or zero. */
export type Dash = 'hidden' | 'other' | 'plan' | 'centre';

/**
 * Lock: held by the lock. Cut: building. Hands: their reach; they move and do not hold. Closed: a
 * zone with a marshal at its edge and nobody in it.
 */
export type Hatch = 'lock' | 'cut' | 'notHeld' | 'planned' | 'closed' | 'hands';

/** What a shape of the house is, for files that keep such things apart. */
export type Thing =
  | 'battens'
  | 'liftLines'
  | 'blocks'
  | 'arbors'
  | 'scenery'
  | 'galleries'
  | 'wells'
  | 'bays'
  | 'zones'
  | 'traps'
  | 'seats';

export type Style = {
  readonly stroke?: Pen;
  /** Hair where it is not said. A number is a width in units that grows with the drawing: signs. */
  readonly weight?: Weight | number;
  readonly dash?: Dash;
  readonly fill?: Pen;
  /** Laid over the fill. */
  readonly hatch?: Hatch;
  /** Building, or a sign, where it is not said. */
  readonly thing?: Thing;
};

export type Point = { readonly x: number; readonly y: number };

export type Line = Style & {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
};

export type Polyline = Style & {
  readonly kind: 'polyline';
  readonly points: readonly Point[];
  readonly closed: boolean;
};

/** SVG path data, absolute commands only; for signs with curves in them. */
export type Path = Style & { readonly kind: 'path'; readonly d: string };

export type Rect = Style & {
  readonly kind: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

export type Circle = Style & {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
};

export type Anchor = 'start' | 'middle' | 'end';

/** Head 100 %, text 92 %, narrow 80 % of the face's width; paper has two widths for the three. */
export type LetterWidth = 'head' | 'text' | 'narrow';

export type Lettering = {
  readonly kind: 'text';
  readonly x: number;
  /** The base line. */
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly anchor: Anchor;
  readonly weight: 'plain' | 'strong';
  readonly width: LetterWidth;
  readonly pen: Pen;
  /** Turned a quarter to the left: it reads upward. Only on the wall and among fanned names. */
  readonly turned: boolean;
  /** An edge of paper round the letters, where a hatch or a line lies beneath. */
  readonly backed: boolean;
};

export type Group = {
  readonly kind: 'group';
  readonly at: Point;
  readonly scale: number;
  readonly shapes: readonly Shape[];
  /** What the group shows, by a stable name: `curve`, `now`, `jump`; for tests and for taps. */
  readonly part?: string;
};

export type Shape = Line | Polyline | Path | Rect | Circle | Lettering | Group;

export type Drawing = {
  readonly width: number;
  readonly height: number;
  /** What it shows, in words, for those who cannot see it. */
  readonly title: string;
  readonly shapes: readonly Shape[];
};

export const point = (x: number, y: number): Point => ({ x, y });

export const line = (
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  style: Style = { stroke: 'ink' },
): Line => ({ kind: 'line', from: point(x1, y1), to: point(x2, y2), ...style });

export const polyline = (points: readonly Point[], style: Style, closed = false): Polyline => ({
  kind: 'polyline',
  points,
  closed,
  ...style,
});

export const polygon = (points: readonly Point[], style: Style): Polyline =>
  polyline(points, style, true);

export const path = (d: string, style: Style): Path => ({ kind: 'path', d, ...style });

export const rect = (x: number, y: number, width: number, height: number, style: Style): Rect => ({
  kind: 'rect',
  x,
  y,
  width,
  height,
  ...style,
});

export const circle = (x: number, y: number, radius: number, style: Style): Circle => ({
  kind: 'circle',
  x,
  y,
  radius,
  ...style,
});

export type LetterStyle = Partial<Omit<Lettering, 'kind' | 'x' | 'y' | 'text' | 'size'>>;

export const lettering = (
  x: number,
  y: number,
  text: string,
  size: number,
  style: LetterStyle = {},
): Lettering => ({
  kind: 'text',
  x,
  y,
  text,
  size,
  anchor: 'start',
  weight: 'plain',
  width: 'narrow',
  pen: 'ink',
  turned: false,
  backed: false,
  ...style,
});

export const group = (
  shapes: readonly Shape[],
  { at = point(0, 0), scale = 1, part }: { at?: Point; scale?: number; part?: string } = {},
): Group => ({ kind: 'group', at, scale, shapes, ...(part === undefined ? {} : { part }) });
