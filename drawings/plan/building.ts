/** What does not fly, from above: walls, wells, galleries, traps, and what is kept free. */
import type { House } from '#house';
import type { FieldScale } from '../field-view.ts';
import { textWidth } from '../lettering.ts';
import { stageDepth } from '../section/building.ts';
import { lettering, line, rect, type Shape, type Style } from '../shape.ts';

/** Half of what is drawn across the stage, m: the longest pipe, the opening, the arbors. */
export const halfWidth = ({ stage, lineSets }: House): number =>
  Math.max(
    3,
    ...lineSets.flatMap(({ batten: { left, right } }) =>
      [left, right].flatMap((end) => (end.known ? [Math.abs(end.value)] : [])),
    ),
    stage.openingWidth.known ? stage.openingWidth.value / 2 : 0,
    stage.operatingX.known ? Math.abs(stage.operatingX.value) : 0,
  );

const LIMIT: Style = { stroke: 'ink2', weight: 'thin', dash: 'hidden', thing: 'zones' };
const CUT = 9;

const acrossWhole = (house: House, x?: readonly [number, number]): readonly [number, number] =>
  x ?? [-halfWidth(house), halfWidth(house)];

export const boxOf = (
  x: readonly [number, number],
  y: readonly [number, number],
  scale: FieldScale,
  style: Style,
): Shape => {
  const [left, right] = [scale.xOf(x[0]), scale.xOf(x[1])];
  const [top, bottom] = [scale.yOf(y[1]), scale.yOf(y[0])];
  return rect(left, top, right - left, bottom - top, style);
};

const wallShapes = (house: House, scale: FieldScale): readonly Shape[] => {
  const half = halfWidth(house);
  const { openingWidth, backWall } = house.stage;
  const thick: Style = { stroke: 'ink', weight: 'thick' };
  const y = scale.yOf(0);
  const [left, right] = [scale.xOf(-half), scale.xOf(half)];
  const edge = openingWidth.known ? openingWidth.value / 2 : null;
  const plaster: Style = { stroke: 'line', weight: 'thin', dash: 'centre' };
  const piers =
    edge === null
      ? []
      : [[left, scale.xOf(-edge)] as const, [scale.xOf(edge), right] as const].flatMap(
          ([from, to]) => [
            rect(from, y, to - from, CUT, { hatch: 'cut' }),
            line(from, y, to, y, thick),
          ],
        );
  const back = backWall.known ? scale.yOf(backWall.value) : null;
  return [
    line(left, y, right, y, plaster),
    ...piers,
    ...(back === null
      ? []
      : [
          rect(left, back - CUT, right - left, CUT, { hatch: 'cut' }),
          line(left, back, right, back, thick),
        ]),
    line(scale.xOf(0), y + CUT, scale.xOf(0), back ?? 0, plaster),
  ];
};

/**
 * Whether names of small places can be read beside each other; on a phone they come by zooming.
 * Wells stand some 1.4 m apart, and the three letters of a name are half again as wide as high.
 */
export const isLettered = ({ perMetre }: FieldScale, letter: number): boolean =>
  perMetre >= letter * 1.05;

/** Lettering of a place, where there is room for it. */
const nameOf = (
  at: { readonly x: number; readonly y: number },
  name: string,
  { scale, letter, anchor }: { scale: FieldScale; letter: number; anchor: 'start' | 'middle' },
): readonly Shape[] =>
  isLettered(scale, letter)
    ? [
        // Battens run through it, and an edge round each letter alone leaves them across the word.
        rect(
          at.x - 2 - (anchor === 'middle' ? textWidth(name, letter) / 2 : 0),
          at.y - letter * 0.82,
          textWidth(name, letter) + 4,
          letter * 1.02,
          { fill: 'paper' },
        ),
        lettering(at.x, at.y, name, letter, { anchor, pen: 'ink2', backed: true }),
      ]
    : [];

const wellShapes = (house: House, scale: FieldScale, letter: number): readonly Shape[] => {
  const { toY } = stageDepth(house);
  return house.loftWells.flatMap(({ id, x, width }) => [
    boxOf([x - width / 2, x + width / 2], [0, toY], scale, {
      stroke: 'rule',
      weight: 'hair',
      thing: 'wells',
    }),
    ...nameOf({ x: scale.xOf(x), y: scale.yOf(toY) - CUT - 4 }, id, {
      scale,
      letter,
      anchor: 'middle',
    }),
  ]);
};

/** Galleries along the wall of the arbors: their width is known, their place is that wall's. */
const galleryShapes = (house: House, scale: FieldScale, letter: number): readonly Shape[] => {
  const { operatingX, operatingSide } = house.stage;
  if (!operatingX.known) return [];
  const x = operatingX.value as number;
  const inward = operatingSide === 'stageRight' ? 1 : -1;
  const { toY } = stageDepth(house);
  const widest = house.galleries
    .flatMap(({ width, name }) => (width.known ? [{ widthM: width.value as number, name }] : []))
    .toSorted((one, other) => other.widthM - one.widthM)[0];
  const wall = line(scale.xOf(x), scale.yOf(0), scale.xOf(x), scale.yOf(toY), {
    stroke: 'ink',
    weight: 'mid',
  });
  if (widest === undefined) return [wall];
  const edge = x + inward * widest.widthM;
  return [
    wall,
    boxOf([Math.min(x, edge), Math.max(x, edge)], [0, toY], scale, {
      stroke: 'line',
      weight: 'thin',
      thing: 'galleries',
    }),
    lettering(
      scale.xOf((x + edge) / 2) + letter * 0.34,
      scale.yOf(0) - letter,
      'galleries',
      letter,
      {
        turned: true,
        pen: 'ink2',
        backed: true,
      },
    ),
  ];
};

export const keptFree = (house: House, scale: FieldScale, letter: number): readonly Shape[] => [
  ...house.keepOuts.flatMap(({ name, x, y }) => {
    // A band over the whole stage is a height, and the section has it.
    if (y === undefined) return [];
    const across = acrossWhole(house, x);
    const middle = scale.xOf((across[0] + across[1]) / 2);
    return [
      boxOf(across, y, scale, LIMIT),
      ...nameOf({ x: middle, y: scale.yOf((y[0] + y[1]) / 2) + letter * 0.34 }, name, {
        scale,
        letter,
        anchor: 'middle',
      }),
    ];
  }),
  ...house.openings.flatMap(({ name, x, y }) => {
    const across = acrossWhole(house, x);
    return [
      boxOf(across, y, scale, { stroke: 'ink', weight: 'mid', thing: 'traps' }),
      ...nameOf({ x: scale.xOf(across[0]) + 4, y: scale.yOf(y[0]) - 4 }, name, {
        scale,
        letter,
        anchor: 'start',
      }),
    ];
  }),
];

export const planBuilding = (house: House, scale: FieldScale, letter: number): readonly Shape[] => [
  ...wellShapes(house, scale, letter),
  ...galleryShapes(house, scale, letter),
  ...wallShapes(house, scale),
];
