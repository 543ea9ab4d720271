/** Shapes of a drawing as entities of DXF R12, on layers by what a thing is. */
import { unreachable } from '#outcome';
import type { Dash, Lettering, Point, Shape, Style, Thing } from '../shape.ts';
import { point } from '../shape.ts';
import { dxfText } from './dxf-text.ts';
import { runsOfPath } from './path-points.ts';

/** A group code with its value; the two lines of which all of DXF is made. */
export type Pair = readonly [number, string | number];

/** Our own names; R12 takes capitals, digits, `_`, `-` and `$`. */
export const LAYERS = [
  'BUILDING',
  'GALLERIES',
  'WELLS',
  'BAYS',
  'ZONES',
  'TRAPS',
  'SEATS',
  'BLOCKS',
  'LIFT_LINES',
  'BATTENS',
  'ARBORS',
  'SCENERY',
  'DIMENSIONS',
  'NAMES',
  'TEXT',
  'FRAME',
] as const;

export type Layer = (typeof LAYERS)[number];

const OF_THING: Readonly<Record<Thing, Layer>> = {
  battens: 'BATTENS',
  liftLines: 'LIFT_LINES',
  blocks: 'BLOCKS',
  arbors: 'ARBORS',
  scenery: 'SCENERY',
  galleries: 'GALLERIES',
  wells: 'WELLS',
  bays: 'BAYS',
  zones: 'ZONES',
  traps: 'TRAPS',
  seats: 'SEATS',
};

const OF_PART: Readonly<Record<string, Layer>> = {
  building: 'BUILDING',
  names: 'NAMES',
  measures: 'DIMENSIONS',
  frame: 'FRAME',
  title: 'TEXT',
};

export const LINE_TYPES: Readonly<Record<Dash, string>> = {
  hidden: 'HIDDEN',
  other: 'OTHER',
  plan: 'PLANNED',
  centre: 'CENTRE',
};

/** From a shape's own place to the model, with what holds for all below a group. */
export type Frame = {
  readonly place: (at: Point) => Point;
  /** Units of the model for a unit of the drawing. */
  readonly perUnit: number;
  readonly digits: number;
  readonly layer: Layer | null;
};

const figure = (value: number, { digits }: Frame): string => {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? (0).toFixed(digits) : text;
};

const placed = (codes: readonly [number, number, number], at: Point, frame: Frame): Pair[] => {
  const { x, y } = frame.place(at);
  const [cx, cy, cz] = codes;
  return [
    [cx, figure(x, frame)],
    [cy, figure(y, frame)],
    [cz, figure(0, frame)],
  ];
};

const AT = [10, 20, 30] as const;

const headOf = (kind: string, style: Style, { layer }: Frame): Pair[] => [
  [0, kind],
  [8, (style.thing === undefined ? undefined : OF_THING[style.thing]) ?? layer ?? 'BUILDING'],
  ...(style.dash === undefined ? [] : [[6, LINE_TYPES[style.dash]] satisfies Pair]),
];

/** A shape of paper colour only hides what is under it; a file has nothing to hide. */
const isDrawn = ({ stroke, fill, hatch }: Style): boolean =>
  stroke !== undefined || hatch !== undefined || (fill !== undefined && fill !== 'paper');

const polylineOf = (
  points: readonly Point[],
  closed: boolean,
  style: Style,
  frame: Frame,
): Pair[] => {
  const head = headOf('POLYLINE', style, frame);
  const layer = head[1] ?? [8, 'BUILDING'];
  const flat = figure(0, frame);
  return [
    ...head,
    [66, 1],
    [10, flat],
    [20, flat],
    [30, flat],
    [70, closed ? 1 : 0],
    ...points.flatMap((at): Pair[] => [[0, 'VERTEX'], layer, ...placed(AT, at, frame)]),
    [0, 'SEQEND'],
    layer,
  ];
};

/** Height of capitals as a part of the size of a face (the face of this program). */
const CAPITALS = 0.7;

const ACROSS = { start: 0, middle: 1, end: 2 } as const;

const textOf = (text: Lettering, frame: Frame): Pair[] => {
  const at: Point = point(text.x, text.y);
  const layer = frame.layer === null || frame.layer === 'BUILDING' ? 'TEXT' : frame.layer;
  return [
    [0, 'TEXT'],
    [8, layer],
    ...placed(AT, at, frame),
    [40, figure(text.size * CAPITALS * frame.perUnit, frame)],
    [1, dxfText(text.text)],
    ...(text.turned ? [[50, '90.0'] satisfies Pair] : []),
    [72, ACROSS[text.anchor]],
    ...(text.anchor === 'start' ? [] : placed([11, 21, 31], at, frame)),
  ];
};

const cornersOf = (x: number, y: number, width: number, height: number): readonly Point[] => [
  point(x, y),
  point(x + width, y),
  point(x + width, y + height),
  point(x, y + height),
];

const layerBelow = (part: string | undefined, frame: Frame): Layer | null => {
  if (part === undefined) return frame.layer;
  return OF_PART[part] ?? (part.startsWith('set ') ? 'SCENERY' : frame.layer);
};

const entitiesOfShape = (shape: Shape, frame: Frame): readonly Pair[] => {
  if (shape.kind !== 'group' && shape.kind !== 'text' && !isDrawn(shape)) return [];
  switch (shape.kind) {
    case 'line':
      return [
        ...headOf('LINE', shape, frame),
        ...placed(AT, shape.from, frame),
        ...placed([11, 21, 31], shape.to, frame),
      ];
    case 'polyline':
      return polylineOf(shape.points, shape.closed, shape, frame);
    case 'path':
      return runsOfPath(shape.d).flatMap(({ points, closed }) =>
        polylineOf(points, closed, shape, frame),
      );
    case 'rect': {
      const { x, y, width, height } = shape;
      return polylineOf(cornersOf(x, y, width, height), true, shape, frame);
    }
    case 'circle':
      return [
        ...headOf('CIRCLE', shape, frame),
        ...placed(AT, point(shape.x, shape.y), frame),
        [40, figure(shape.radius * frame.perUnit, frame)],
      ];
    case 'text':
      return textOf(shape, frame);
    case 'group': {
      const { at, scale } = shape;
      return entitiesOf(shape.shapes, {
        ...frame,
        place: ({ x, y }) => frame.place(point(at.x + x * scale, at.y + y * scale)),
        perUnit: frame.perUnit * scale,
        layer: layerBelow(shape.part, frame),
      });
    }
    default:
      return unreachable(shape);
  }
};

export const entitiesOf = (shapes: readonly Shape[], frame: Frame): readonly Pair[] =>
  shapes.flatMap((shape) => entitiesOfShape(shape, frame));
