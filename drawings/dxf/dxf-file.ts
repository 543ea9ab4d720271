/**
 * A drawing as DXF, release 12 (AC1009), the form that every program for drawings reads. Units of
 * the model are the real house's: a section has metres upstage along x and heights along y, a plan
 * has the stage's own x and y; z is 0 throughout.
 *
 * Source: the DXF Reference of its publisher, from memory; read back by an independent reader in
 * the tests. R12 has no `$INSUNITS`, so the unit stands in a comment, in the drawing's own words,
 * and in the name of the file.
 */

import { message } from '#texts';
import type { DrawingFile } from '../files/drawing-file.ts';
import { POINTS_A_METRE } from '../files/drawing-file.ts';
import { DASHES } from '../pens.ts';
import { type Dash, point } from '../shape.ts';
import { entitiesOf, type Frame, LAYERS, LINE_TYPES, type Pair } from './dxf-entities.ts';
import { dxfText } from './dxf-text.ts';

export const DXF_UNITS = ['mm', 'inch'] as const;
export type DxfUnit = (typeof DXF_UNITS)[number];

/** A hundredth of a millimetre, in either unit. */
const OF: Readonly<Record<DxfUnit, { perMetre: number; digits: number; words: string }>> = {
  mm: { perMetre: 1000, digits: 2, words: message('millimetres') },
  inch: { perMetre: 1 / 0.0254, digits: 4, words: message('inches') },
};

export const unitWordsOf = (unit: DxfUnit): string => OF[unit].words;

const section = (name: string, ...inside: readonly Pair[]): readonly Pair[] => [
  [0, 'SECTION'],
  [2, name],
  ...inside,
  [0, 'ENDSEC'],
];

const table = (name: string, count: number, inside: readonly Pair[]): readonly Pair[] => [
  [0, 'TABLE'],
  [2, name],
  [70, count],
  ...inside,
  [0, 'ENDTAB'],
];

const lineType = (name: string, lengths: readonly number[]): readonly Pair[] => [
  [0, 'LTYPE'],
  [2, name],
  [70, 0],
  [3, name],
  [72, 65],
  [73, lengths.length],
  [40, lengths.reduce((sum, each) => sum + each, 0).toFixed(3)],
  // Every second length is a gap, which is written below zero.
  ...lengths.map((each, at): Pair => [49, (at % 2 === 0 ? each : -each).toFixed(3)]),
];

const lineTypes = (perUnit: number): readonly Pair[] =>
  Object.entries(LINE_TYPES).flatMap(([dash, name]) =>
    lineType(
      name,
      DASHES[dash as Dash].split(' ').map((each) => Number(each) * perUnit),
    ),
  );

/** Black or white, as the program's own paper is; grey for what only measures. */
const COLOURS = { own: 7, grey: 8 } as const;
const GREY = new Set<string>(['WELLS', 'BAYS', 'DIMENSIONS', 'GALLERIES']);

const layers = (): readonly Pair[] =>
  LAYERS.flatMap((name): Pair[] => [
    [0, 'LAYER'],
    [2, name],
    [70, 0],
    [62, GREY.has(name) ? COLOURS.grey : COLOURS.own],
    [6, 'CONTINUOUS'],
  ]);

const STYLE: readonly Pair[] = [
  [0, 'STYLE'],
  [2, 'STANDARD'],
  [70, 0],
  [40, '0.0'],
  [41, '1.0'],
  [50, '0.0'],
  [71, 0],
  [42, '1.0'],
  [3, 'txt'],
  [4, ''],
];

const pairText = ([code, value]: Pair): string => `${String(code).padStart(3)}\r\n${value}\r\n`;

const frameOf = ({ scale, zero }: DrawingFile, unit: DxfUnit): Frame => {
  const { perMetre, digits } = OF[unit];
  const perUnit = (scale / POINTS_A_METRE) * perMetre;
  return {
    place: ({ x, y }) => point((x - zero.x) * perUnit, (zero.y - y) * perUnit),
    perUnit,
    digits,
    layer: null,
  };
};

export const dxfFile = (file: DrawingFile, unit: DxfUnit): string => {
  const frame = frameOf(file, unit);
  const { width, height, shapes, title } = file.drawing;
  const [low, high] = [frame.place(point(0, height)), frame.place(point(width, 0))];
  const corner = (x: number, y: number): readonly Pair[] => [
    [10, x.toFixed(2)],
    [20, y.toFixed(2)],
  ];
  const pairs: readonly Pair[] = [
    [999, dxfText(title)],
    [999, `Units of the drawing: ${unitWordsOf(unit)}`],
    ...section(
      'HEADER',
      [9, '$ACADVER'],
      [1, 'AC1009'],
      [9, '$EXTMIN'],
      ...corner(low.x, low.y),
      [30, '0.0'],
      [9, '$EXTMAX'],
      ...corner(high.x, high.y),
      [30, '0.0'],
      [9, '$LIMMIN'],
      ...corner(low.x, low.y),
      [9, '$LIMMAX'],
      ...corner(high.x, high.y),
      [9, '$LTSCALE'],
      [40, '1.0'],
    ),
    ...section(
      'TABLES',
      ...table('LTYPE', 5, [...lineType('CONTINUOUS', []), ...lineTypes(frame.perUnit)]),
      ...table('LAYER', LAYERS.length, layers()),
      ...table('STYLE', 1, STYLE),
    ),
    ...section('BLOCKS'),
    ...section('ENTITIES', ...entitiesOf(shapes, frame)),
    [0, 'EOF'],
  ];
  return pairs.map(pairText).join('');
};
