/**
 * The batten from the house, for the people on the deck who tie things to it: everything at its
 * true place across the stage, with its distance from the centre line. Heights are not to scale.
 */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { formatLength, metres } from '#quantities';
import { phrase } from '#texts';
import { emptyDrawing } from './empty-drawing.ts';
import type { HangingItem } from './hanging-points.ts';
import { hangingItems, placesOf } from './hanging-points.ts';
import { textWidth } from './lettering.ts';
import { inRows } from './rows.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing, Shape } from './shape.ts';
import { circle, group, lettering, line, rect } from './shape.ts';
import type { TextBlock } from './text-block.ts';
import { textBlock } from './text-block.ts';

export type FrontOptions = {
  readonly width: number;
  readonly letter: number;
};

type FrontFrame = {
  readonly xOf: (acrossM: number) => number;
  readonly perMetre: number;
  readonly leftM: number;
  readonly rightM: number;
  readonly letter: number;
  readonly width: number;
};

const PIPE = 6;
/** A line of the drawing, in letter sizes. */
const ROW = 1.3;
const MARGIN_LETTERS = 2.2;

/** Distance from the centre line without its side: the side is where it stands on the drawing. */
export const fromCentre = (acrossM: number, house: House): string =>
  formatLength(metres(Math.abs(acrossM)), house);

const frameOf = (
  { left, right }: { left: number; right: number },
  { width, letter }: FrontOptions,
): FrontFrame => {
  const margin = letter * MARGIN_LETTERS;
  const halfM = Math.max(Math.abs(left), Math.abs(right));
  const perMetre = (width - 2 * margin) / (2 * halfM);
  return {
    xOf: (acrossM) => width / 2 + acrossM * perMetre,
    perMetre,
    leftM: left,
    rightM: right,
    letter,
    width,
  };
};

type Tier = { readonly shapes: readonly Shape[]; readonly height: number };

/** Distances in as few rows as they need, each with a hair line to its place. */
const distanceTier = (
  places: readonly number[],
  frame: FrontFrame,
  house: House,
  { top, pen }: { top: number; pen: 'ink' | 'ink2' },
): Tier => {
  const { letter, xOf } = frame;
  const labels = places.map((acrossM) => {
    const words = fromCentre(acrossM, house);
    return { words, x: xOf(acrossM), width: textWidth(words, letter) + letter * 0.5 };
  });
  const rows = inRows(labels.map(({ x, width }) => ({ from: x - width / 2, to: x + width / 2 })));
  const count = Math.max(0, ...rows.map((row) => row + 1));
  const placed = labels.map((label, index) => ({
    ...label,
    y: top + letter * (1 + ROW * (rows[index] ?? 0)),
  }));
  const hairs = placed.map(({ x, y }) =>
    line(x, top - letter * 0.4, x, y - letter * 0.8, { stroke: 'line', weight: 'hair' }),
  );
  // On paper of their own, so that neither the centre line nor a hair runs through the figures.
  const figures = placed.flatMap(({ words, x, y, width }) => {
    const across = width - letter * 0.3;
    return [
      rect(x - across / 2, y - letter * 0.85, across, letter, { fill: 'paper' }),
      lettering(x, y, words, letter, { anchor: 'middle', pen }),
    ];
  });
  return { shapes: [...hairs, ...figures], height: count * ROW * letter + letter * 0.3 };
};

/** The letters of what hangs at single places, in rows where they would touch. */
const tagTier = (items: readonly HangingItem[], frame: FrontFrame, top: number): Tier => {
  const { letter, xOf } = frame;
  const radius = letter * 0.72;
  const marks = items.flatMap((item) =>
    placesOf(item).map((acrossM) => ({ tag: item.tag, x: xOf(acrossM) })),
  );
  const rows = inRows(marks.map(({ x }) => ({ from: x - radius - 1, to: x + radius + 1 })));
  const count = Math.max(0, ...rows.map((row) => row + 1));
  const step = radius * 2 + 3;
  const shapes = marks.flatMap(({ tag, x }, index) => {
    const y = top + radius + 2 + step * (rows[index] ?? 0);
    return [
      line(x, top - 2, x, y, { stroke: 'ink', weight: 'thin' }),
      circle(x, y, radius, { stroke: 'ink', weight: 'mid', fill: 'paper' }),
      lettering(x, y + letter * 0.33, tag, letter, { anchor: 'middle', weight: 'strong' }),
    ];
  });
  return { shapes, height: count * step + 4 };
};

const sizeWords = ({ item, tag }: HangingItem, house: House): readonly string[] => {
  const { drop, pick } = item;
  const tall = drop.known
    ? drop.value === 0
      ? []
      : [phrase(house, '{length} tall', { length: formatLength(drop.value, house) })]
    : [phrase(house, 'height not given')];
  const picks = pick.known
    ? pick.value === 0
      ? phrase(house, 'tied direct')
      : phrase(house, 'picks {length}', { length: formatLength(pick.value, house) })
    : phrase(house, 'pick length not given');
  return [`${tag}  ${item.name}`, [...tall, picks].join(', ')];
};

type Piece = { readonly item: HangingItem; readonly fromM: number; readonly toM: number };

/** Pieces that have a width of their own: spread ones, and those with a height to show. */
const piecesOf = (items: readonly HangingItem[], frame: FrontFrame): readonly Piece[] =>
  items.flatMap((item) => {
    if (item.span !== null) return [{ item, fromM: item.span.from, toM: item.span.to }];
    const places = placesOf(item);
    const first = places[0];
    const last = places.at(-1);
    if (first === undefined || last === undefined) {
      return [{ item, fromM: frame.leftM, toM: frame.rightM }];
    }
    return first === last || item.item.takeoff.by === 'units'
      ? []
      : [{ item, fromM: first, toM: last }];
  });

type Outline = {
  readonly piece: Piece;
  readonly block: TextBlock;
  readonly left: number;
  readonly right: number;
  /** Left edge of the words: inside the outline where they fit, else beside it. */
  readonly wordsX: number;
  readonly from: number;
  readonly to: number;
};

const outlineOf = (piece: Piece, frame: FrontFrame, house: House): Outline => {
  const { letter, xOf, width } = frame;
  const block = textBlock(
    sizeWords(piece.item, house).map((text, index) => ({ text, strong: index === 0 })),
    letter,
    { backed: false },
  );
  const [left, right] = [xOf(piece.fromM), xOf(piece.toM)];
  const gap = letter * 0.5;
  if (block.width + 2 * gap <= right - left) {
    const wordsX = (left + right - block.width) / 2;
    return { piece, block, left, right, wordsX, from: left, to: right };
  }
  const fitsRight = right + gap + block.width <= width;
  const wordsX = fitsRight ? right + gap : left - gap - block.width;
  return {
    piece,
    block,
    left,
    right,
    wordsX,
    from: Math.min(left, wordsX),
    to: Math.max(right, wordsX + block.width) + gap,
  };
};

const pieceTier = (
  pieces: readonly Piece[],
  frame: FrontFrame,
  house: House,
  top: number,
): Tier => {
  const { letter } = frame;
  const outlines = pieces.map((piece) => outlineOf(piece, frame, house));
  const rows = inRows(outlines);
  const count = Math.max(0, ...rows.map((row) => row + 1));
  const rowHeight = letter * 3.2;
  const shapes = outlines.flatMap(({ piece, block, left, right, wordsX }, index) => {
    const y = top + 2 + rowHeight * (rows[index] ?? 0);
    const isPlaced = piece.item.span !== null || placesOf(piece.item).length > 0;
    return [
      rect(left, y, right - left, rowHeight - letter * 0.5, {
        stroke: 'ink',
        weight: 'mid',
        fill: 'paper',
        ...(isPlaced ? {} : { dash: 'hidden' }),
      }),
      ...block.at({ x: wordsX, y: y + letter * 0.12 }),
    ];
  });
  return { shapes, height: count * rowHeight + 2 };
};

const battenShapes = (frame: FrontFrame, y: number): readonly Shape[] => [
  rect(frame.xOf(frame.leftM), y, (frame.rightM - frame.leftM) * frame.perMetre, PIPE, {
    stroke: 'ink',
    weight: 'mid',
    fill: 'paper',
  }),
];

const liftLineShapes = (
  lineXs: readonly number[],
  frame: FrontFrame,
  battenY: number,
): readonly Shape[] =>
  lineXs.flatMap((acrossM) => {
    const x = frame.xOf(acrossM);
    return [
      line(x, battenY - frame.letter * 1.5, x, battenY, { stroke: 'ink', weight: 'mid' }),
      circle(x, battenY + PIPE / 2, 2.4, { fill: 'solid' }),
    ];
  });

const sideShapes = (frame: FrontFrame, y: number, house: House): readonly Shape[] => {
  const style = { pen: 'ink2' } as const;
  return [
    lettering(0, y, phrase(house, 'stage right'), frame.letter, style),
    lettering(frame.width, y, phrase(house, 'stage left'), frame.letter, {
      ...style,
      anchor: 'end',
    }),
    lettering(frame.width / 2, y, phrase(house, 'centre line'), frame.letter, {
      ...style,
      anchor: 'middle',
    }),
  ];
};

/** The batten from the house with lift lines, picks and units at true x, and their distances. */
export const battenFrontDrawing = (
  set: SetAssessment,
  house: House,
  options: FrontOptions,
): Drawing => {
  const { width, letter } = options;
  const { batten, lineXs, id } = set.lineSet;
  const title = phrase(house, 'batten of set {id} from the house', { id });
  if (!batten.left.known || !batten.right.known) {
    const sentence = phrase(house, 'The ends of the batten are not given.');
    return emptyDrawing(title, sentence, { ...options, height: letter * 4 });
  }
  const frame = frameOf({ left: batten.left.value, right: batten.right.value }, options);
  const items = hangingItems(set);
  const lines = distanceTier(lineXs ?? [], frame, house, { top: letter * 1.6, pen: 'ink2' });
  const battenY = letter * 1.6 + lines.height + letter * 1.5;
  const below = battenY + PIPE + letter * 0.5;
  const places = [...new Set(items.flatMap(placesOf))].toSorted((one, other) => one - other);
  const distances = distanceTier(places, frame, house, { top: below, pen: 'ink' });
  const tags = tagTier(items, frame, below + distances.height);
  const pieceTop = below + distances.height + tags.height;
  const pieces = pieceTier(piecesOf(items, frame), frame, house, pieceTop);
  const foot = pieceTop + pieces.height;
  const height = foot + letter * 1.9;
  const scale = phrase(house, 'across to scale, heights not to scale');
  return {
    width,
    height,
    title,
    shapes: [
      line(width / 2, letter * 1.2, width / 2, foot, {
        stroke: 'line',
        weight: 'thin',
        dash: 'centre',
      }),
      ...sideShapes(frame, letter, house),
      ...lines.shapes,
      ...battenShapes(frame, battenY),
      ...liftLineShapes(lineXs ?? [], frame, battenY),
      group([...distances.shapes], { part: 'distances' }),
      ...tags.shapes,
      ...pieces.shapes,
      scaleBar({
        x: 0,
        y: foot + letter * 0.6,
        room: width / 4,
        perMetre: frame.perMetre,
        units: house.units,
        letter,
      }),
      lettering(width, foot + letter * 1.1, scale, letter, { anchor: 'end', pen: 'ink2' }),
    ],
  };
};
