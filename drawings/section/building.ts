/** What does not fly: deck, walls, grid, blocks, galleries, and where nothing may be. */

import type { Eye, House, KeepOut } from '#house';
import { phrase } from '#texts';
import type { FieldScale } from '../field-view.ts';
import { linesOfText, textWidth } from '../lettering.ts';
import { circle, lettering, line, rect, type Shape, type Style } from '../shape.ts';
import { tradeWord } from '../trade-words.ts';

/** Hatched paper beside a line of cut building; how thick the wall is nobody has told. */
const CUT = 9;

type Across = { readonly fromY: number; readonly toY: number };

/** From the plaster line to the back wall; to the last set where the wall was not surveyed. */
export const stageDepth = ({ stage, lineSets }: House): Across => {
  const last = Math.max(1, ...lineSets.flatMap(({ y }) => (y.known ? [y.value as number] : [])));
  return { fromY: 0, toY: stage.backWall.known ? stage.backWall.value : last + 1 };
};

/** Height of the highest thing of the house that was surveyed, m. */
export const houseTop = ({ stage, galleries, lineSets }: House): number => {
  const known = [
    stage.gridHeight,
    stage.headBlockHeight,
    stage.loftBlockHeight,
    stage.openingHeight,
  ]
    .concat(galleries.map(({ floor }) => floor))
    .concat(lineSets.map(({ highStop }) => highStop.height))
    .flatMap((height) => (height.known ? [height.value as number] : []));
  return Math.max(6, ...known);
};

/** The deck with its traps open, cut by the section. */
const deckShapes = (house: House, scale: FieldScale): readonly Shape[] => {
  const { toY } = stageDepth(house);
  const holes = house.openings
    .flatMap(({ y }) => (y[0] >= 0 ? [{ from: y[0] as number, to: y[1] as number }] : []))
    .toSorted((one, other) => one.from - other.from);
  const ends = [0, ...holes.flatMap(({ from, to }) => [from, to]), toY];
  const deckY = scale.yOf(0);
  return ends.flatMap((from, index) => {
    const to = ends[index + 1];
    if (index % 2 === 1 || to === undefined) return [];
    const [left, right] = [scale.xOf(from), scale.xOf(to)];
    return [
      rect(left, deckY, right - left, CUT, { hatch: 'cut' }),
      line(left, deckY, right, deckY, { stroke: 'ink', weight: 'thick' }),
    ];
  });
};

/** A name that the edge of the paper would cut is left out: the plan has it, and the wider view. */
const openingNames = (house: House, scale: FieldScale, letter: number): readonly Shape[] =>
  house.openings.flatMap(({ name, y }) => {
    const x = scale.xOf((y[0] + y[1]) / 2);
    const half = textWidth(name, letter) / 2;
    if (x < half || x > scale.width - half) return [];
    const pen = 'ink2';
    return lettering(x, scale.yOf(0) + CUT + letter, name, letter, { anchor: 'middle', pen });
  });

const wallShapes = (house: House, scale: FieldScale): readonly Shape[] => {
  const { backWall, openingHeight } = house.stage;
  const top = scale.yOf(houseTop(house));
  const thick: Style = { stroke: 'ink', weight: 'thick' };
  const plaster = scale.xOf(0);
  const lintel = openingHeight.known ? scale.yOf(openingHeight.value) : null;
  const back = scale.xOf(backWall.known ? backWall.value : 0);
  return [
    line(plaster, scale.yOf(0), plaster, lintel ?? top, {
      stroke: 'line',
      weight: 'thin',
      dash: 'centre',
    }),
    ...(lintel === null
      ? []
      : [
          rect(plaster - CUT, top, CUT, lintel - top, { hatch: 'cut' }),
          line(plaster, top, plaster, lintel, thick),
          line(plaster - CUT, lintel, plaster, lintel, thick),
        ]),
    ...(backWall.known
      ? [
          rect(back, top, CUT, scale.yOf(0) - top, { hatch: 'cut' }),
          line(back, top, back, scale.yOf(0), thick),
        ]
      : []),
  ];
};

/** Lines across the stage house, beyond the section or cut by it. */
const levelShapes = (house: House, scale: FieldScale): readonly Shape[] => {
  const { fromY, toY } = stageDepth(house);
  const across = (heightM: number, style: Style): Shape =>
    line(scale.xOf(fromY), scale.yOf(heightM), scale.xOf(toY), scale.yOf(heightM), style);
  const { gridHeight, loftBlockHeight } = house.stage;
  const floors = [...house.galleries, ...house.rails].flatMap(({ floor }) =>
    floor.known && floor.value > 0 ? [floor.value as number] : [],
  );
  return [
    ...floors.map((floorM) =>
      across(floorM, { stroke: 'line', weight: 'thin', thing: 'galleries' }),
    ),
    ...(loftBlockHeight.known
      ? [across(loftBlockHeight.value, { stroke: 'ink', weight: 'mid' })]
      : []),
    ...(gridHeight.known ? [across(gridHeight.value, { stroke: 'ink', weight: 'thick' })] : []),
  ];
};

const LIMIT: Style = { stroke: 'ink2', weight: 'thin', dash: 'hidden', thing: 'zones' };

/** Between lettering and a wall, or the edge of the paper. */
const GAP = 4;

type LabelPlace = {
  readonly middle: number;
  readonly low: number;
  readonly most: number;
  readonly letter: number;
};

const labelShapes = (
  lines: readonly string[],
  { middle, low, most, letter }: LabelPlace,
): readonly Shape[] => {
  const widest = Math.max(...lines.map((text) => textWidth(text, letter)));
  const x = Math.min(middle, most - widest / 2);
  const tall = letter * (1.3 + 1.1 * (lines.length - 1));
  // A space at the upper edge of the paper is named below it, and not beyond the edge.
  const foot = low > 0 ? Math.max(low, tall) : low;
  return lines.map((text, row) =>
    lettering(x, foot - letter * (0.4 + 1.1 * (lines.length - 1 - row)), text, letter, {
      anchor: 'middle',
      pen: 'ink2',
      backed: true,
    }),
  );
};

/** A space that is kept free at some places across the stage, or at all of them. */
const keepOutShapes = (
  { name, y, z }: KeepOut,
  house: House,
  { scale, letter }: { readonly scale: FieldScale; readonly letter: number },
): readonly Shape[] => {
  const depth = stageDepth(house);
  const [from, to] = y ?? [depth.fromY, depth.toY];
  const top = z?.[1] ?? Math.max(houseTop(house), (z?.[0] ?? 0) + 1);
  const bottom = z?.[0] ?? 0;
  const [left, right] = [scale.xOf(from), scale.xOf(to)];
  const [high, low] = [scale.yOf(top), scale.yOf(bottom)];
  const isBand = y === undefined;
  const box = isBand
    ? line(left, low, right, low, LIMIT)
    : rect(left, high, right - left, low - high, LIMIT);
  // A band over the whole depth is named beside the drawing, with the heights.
  if (isBand) return [box];
  const isUpright = right - left < 4 * letter && low - high > textWidth(name, letter) + letter;
  const middle = (left + right) / 2;
  const label = isUpright
    ? [
        lettering(middle + letter * 0.34, Math.max(low, high) - letter * 0.6, name, letter, {
          turned: true,
          pen: 'ink2',
          backed: true,
        }),
      ]
    : labelShapes(linesOfText(name, letter, right - left), {
        middle,
        low,
        // Words wider than their space do not run into the wall beside it.
        most: scale.xOf(depth.toY) - GAP,
        letter,
      });
  return [box, ...label];
};

const EYE = 3.5;

/** An eye out in the auditorium is not lettered over the strip of heights. */
const isInSight =
  ({ xOf, yOf, width, height }: FieldScale) =>
  ({ y, z }: Eye): boolean => {
    const [x, down] = [xOf(y), yOf(z)];
    return x >= 0 && x <= width && down >= 0 && down <= height;
  };

/** Where somebody sits who must not see what is not for them. */
const eyeShapes = (house: House, scale: FieldScale, letter: number): readonly Shape[] =>
  house.eyes.filter(isInSight(scale)).flatMap(({ name, y, z }) => {
    const half = textWidth(name, letter) / 2 + GAP;
    const x = Math.max(half, Math.min(scale.xOf(y), scale.width - half));
    return [
      circle(scale.xOf(y), scale.yOf(z), EYE, { fill: 'solid', thing: 'seats' }),
      lettering(x, scale.yOf(z) - letter * 0.6, name, letter, { anchor: 'middle', backed: true }),
    ];
  });

export const buildingShapes = (
  house: House,
  scale: FieldScale,
  letter: number,
): readonly Shape[] => [
  ...levelShapes(house, scale),
  ...house.keepOuts.flatMap((each) => keepOutShapes(each, house, { scale, letter })),
  ...wallShapes(house, scale),
  ...deckShapes(house, scale),
  ...openingNames(house, scale, letter),
  ...eyeShapes(house, scale, letter),
];

/** Heights that are named beside the drawing, from the deck up. */
export const namedHeights = (
  house: House,
): readonly { readonly name: string; readonly heightM: number }[] => {
  const { gridHeight, loftBlockHeight } = house.stage;
  const of = (name: string, height: { readonly known: boolean; readonly value?: number }) =>
    height.known && height.value !== undefined ? [{ name, heightM: height.value }] : [];
  return [
    { name: tradeWord(house, 'deck'), heightM: 0 },
    ...[...house.rails, ...house.galleries]
      .flatMap(({ name, floor }) => of(name, floor))
      .filter(({ heightM }) => heightM > 0),
    ...house.keepOuts.flatMap(({ name, y, z }) => {
      const lowM = z?.[0] ?? null;
      return y === undefined && lowM !== null ? [{ name, heightM: lowM as number }] : [];
    }),
    ...of(phrase(house, 'loft blocks'), loftBlockHeight),
    ...of(phrase(house, 'grid'), gridHeight),
  ].toSorted((one, other) => one.heightM - other.heightM);
};
