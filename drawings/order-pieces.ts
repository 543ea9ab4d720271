/** What hangs on a set in the middle of an order: aloft, on its rest, in a heap, or on steel. */
import type { SetAssessment } from '#assessment';
import { unreachable } from '#outcome';
import type { ItemPhase, Standing } from '#state';
import { type HangingItem, hangingItems, placesOf } from './hanging-points.ts';
import { boxBetween, levelLine, type OrderFrame } from './order-frame.ts';
import type { Shape, Style } from './shape.ts';
import { group, line, path, rect } from './shape.ts';

type Sides = { readonly left: number; readonly right: number };

const LEAST = 4;
const UNIT = 5;

const sidesOf = (item: HangingItem, { xOf, battenM }: OrderFrame): Sides => {
  const places = placesOf(item);
  const left = xOf(item.span?.from ?? places[0] ?? battenM.left);
  const right = xOf(item.span?.to ?? places.at(-1) ?? battenM.right);
  return right - left >= LEAST
    ? { left, right }
    : { left: left - LEAST / 2, right: left + LEAST / 2 };
};

type Extent = { readonly topM: number; readonly dropM: number };

const extentOf = ({ item }: HangingItem, battenM: number): Extent => {
  const pickM = item.pick.known ? item.pick.value : 0;
  return { topM: Math.max(0, battenM - pickM), dropM: item.drop.known ? item.drop.value : 0 };
};

const INK: Style = { stroke: 'ink', weight: 'thin' };

/** A heap of cloth or cable: the more of it lies, the higher. */
const heap = ({ left, right }: Sides, { deckY }: OrderFrame, share: number): Shape => {
  const rise = 3 + 7 * Math.min(1, Math.max(0, share));
  const third = (right - left) / 3;
  return group(
    [
      path(
        `M${left} ${deckY}C${left + third / 3} ${deckY - rise} ${left + third} ${deckY - rise} ` +
          `${left + third * 1.5} ${deckY - rise * 0.8}C${right - third} ${deckY - rise * 1.1} ` +
          `${right - third / 3} ${deckY - rise} ${right} ${deckY}Z`,
        { fill: 'solid' },
      ),
    ],
    { part: 'heap' },
  );
};

/** Two blocks under its foot: something carries it. */
const restBlocks = ({ left, right }: Sides, y: number): Shape =>
  group(
    [left, right - UNIT].map((x) => rect(x, y - 4, UNIT, 4, { fill: 'ink' })),
    { part: 'rest' },
  );

const clothShapes = (sides: Sides, { topM, dropM }: Extent, frame: OrderFrame) => {
  const hangsM = Math.min(topM, dropM);
  const lying = dropM > 0 ? (dropM - hangsM) / dropM : 0;
  const { left, right } = sides;
  const hanging = boxBetween(
    { x: left, y: frame.y(topM) },
    { x: right, y: frame.y(topM - hangsM) },
    { stroke: 'ink', weight: 'thin', hatch: 'lock' },
  );
  return [hanging, ...(lying > 0 ? [heap(sides, frame, lying)] : [])];
};

/** Built pieces: outlined with a diagonal; what would lie under the deck leans shorter on it. */
const builtShapes = ({ left, right }: Sides, { topM, dropM }: Extent, frame: OrderFrame) => {
  const [top, foot] = [frame.y(topM), frame.y(Math.max(0, topM - dropM))];
  const style = { stroke: 'ink', weight: 'mid', fill: 'paper' } as const;
  return [
    boxBetween({ x: left, y: top }, { x: right, y: foot }, style),
    line(left, foot, right, top, INK),
    ...(topM <= dropM ? [restBlocks({ left, right }, frame.deckY)] : []),
  ];
};

const unitShapes = (item: HangingItem, { topM, dropM }: Extent, frame: OrderFrame) => {
  const tall = Math.max(UNIT, frame.y(topM - dropM) - frame.y(topM));
  const places = [...placesOf(item), ...(item.span === null ? [] : [item.span.from, item.span.to])];
  return places.map((acrossM) =>
    rect(frame.xOf(acrossM) - UNIT / 2, frame.y(topM), UNIT, tall, { ...INK, fill: 'paper' }),
  );
};

/** Lamps and blocks hang at places of their own; a wide thing without a height is a bar. */
const isUnits = (item: HangingItem): boolean =>
  item.item.takeoff.by === 'units' || (item.span === null && !item.item.drop.known);

const hungShapes = (item: HangingItem, battenM: number, frame: OrderFrame): readonly Shape[] => {
  const sides = sidesOf(item, frame);
  const extent = extentOf(item, battenM);
  const picks =
    battenM > extent.topM
      ? [sides.left, sides.right].map((x) =>
          line(x, frame.y(battenM), x, frame.y(extent.topM), INK),
        )
      : [];
  switch (item.item.kind) {
    case 'cloth':
      return [...picks, ...clothShapes(sides, extent, frame)];
    case 'tipping':
    case 'standing':
      return [...picks, ...builtShapes(sides, extent, frame)];
    case 'clear':
      if (isUnits(item)) return unitShapes(item, extent, frame);
      return extent.dropM > 0 ? [...picks, ...builtShapes(sides, extent, frame)] : [];
    case 'loom':
    case 'deckLoom':
      return [];
    default:
      return unreachable(item.item.kind);
  }
};

/** Tied on and lying: loose ties down to it. */
const slackShapes = (item: HangingItem, battenM: number, frame: OrderFrame): readonly Shape[] => {
  const sides = sidesOf(item, frame);
  const { deckY } = frame;
  const y = frame.y(battenM);
  const ties = [sides.left + LEAST, sides.right - LEAST].map((x) =>
    path(`M${x} ${y}C${x - 5} ${(y + deckY) / 2} ${x + 5} ${(y + deckY) / 2} ${x} ${deckY - 3}`, {
      ...INK,
      dash: 'hidden',
    }),
  );
  return [...ties, heap(sides, frame, 0.3)];
};

/** Beside the batten: there, and not on it. */
const besideShape = (item: HangingItem, frame: OrderFrame): Shape => {
  const { left, right } = sidesOf(item, frame);
  return rect(left, frame.deckY - 5, right - left, 5, {
    stroke: 'ink2',
    weight: 'thin',
    dash: 'plan',
  });
};

const shapesOf = (
  item: HangingItem,
  phase: ItemPhase,
  standing: Standing,
  frame: OrderFrame,
): readonly Shape[] => {
  switch (phase) {
    case 'away':
      return [];
    case 'beside':
      return [besideShape(item, frame)];
    case 'attachedSlack':
      return slackShapes(item, standing.height, frame);
    case 'attachedResting': {
      const { topM, dropM } = extentOf(item, standing.height);
      const foot = frame.y(Math.max(0, topM - dropM));
      return [
        ...hungShapes(item, standing.height, frame),
        restBlocks(sidesOf(item, frame), Math.min(frame.deckY, foot + 4)),
      ];
    }
    case 'flying':
    case 'heldElsewhere':
      return hungShapes(item, standing.height, frame);
    default:
      return unreachable(phase);
  }
};

export const pieceShapes = (
  set: SetAssessment,
  standing: Standing,
  frame: OrderFrame,
): readonly Shape[] =>
  hangingItems(set).flatMap((item) => {
    const phase = standing.items[item.item.id] ?? 'away';
    const shapes = shapesOf(item, phase, standing, frame);
    return shapes.length === 0 ? [] : [group(shapes, { part: `item ${item.item.id}` })];
  });

/** The pipe in front of all that hangs on it. */
export const battenShape = (frame: OrderFrame, { height }: Pick<Standing, 'height'>): Shape =>
  group(
    [
      levelLine(frame, height, [frame.xOf(frame.battenM.left), frame.xOf(frame.battenM.right)], {
        stroke: 'ink',
        weight: 'thick',
      }),
    ],
    { part: 'batten' },
  );
