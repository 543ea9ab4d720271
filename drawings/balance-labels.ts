/** Words on the curve, each where it covers neither the curve nor other words. */

import type { Jump } from '#balance';
import type { House } from '#house';
import { phrase } from '#texts';
import type { BalanceFrame } from './balance-frame.ts';
import { curvePoint } from './balance-line.ts';
import type { OpenRegion } from './balance-regions.ts';
import type { BalanceSubject, Stretch } from './balance-subject.ts';
import type { Box } from './boxes.ts';
import { boxesAlong, freeBox, isFree } from './boxes.ts';
import { glyphAt } from './glyphs.ts';
import { jumpWords } from './jump-words.ts';
import { heightWords, imbalanceWords, loadWords, roughHeightWords } from './printed.ts';
import type { Point, Shape } from './shape.ts';
import { circle, group, line, rect } from './shape.ts';
import type { BlockLine, TextBlock } from './text-block.ts';
import { LEADING, textBlock } from './text-block.ts';
import { heavySide, tradeWord } from './trade-words.ts';

/** Labels as they are placed, one after the other, each keeping clear of those before. */
export type Placed = { readonly shapes: readonly Shape[]; readonly taken: readonly Box[] };

export const CLEARANCE = 4;

/** What no word may lie on: the curve, its jumps and its marks. */
export const curveBoxes = (
  frame: BalanceFrame,
  { stretches, curve }: BalanceSubject,
): readonly Box[] => [
  ...stretches.flatMap(({ fromM, toM, from, to }) =>
    boxesAlong(curvePoint(frame, from.valueN, fromM), curvePoint(frame, to.valueN, toM), CLEARANCE),
  ),
  ...curve.jumps.flatMap(({ height, below, above }) =>
    boxesAlong(curvePoint(frame, below, height), curvePoint(frame, above, height), CLEARANCE),
  ),
];

/** Places round a point or a span, the nearest first. */
export const placesRound = (
  { left, right, y }: { readonly left: number; readonly right: number; readonly y: number },
  { width, height }: { readonly width: number; readonly height: number },
  field: Box,
): readonly Box[] => {
  const gap = 8;
  const middle = (left + right - width) / 2;
  const xs = [
    field.x + gap / 2,
    middle,
    left - width - gap,
    right + gap,
    field.x + field.width - width - gap / 2,
  ];
  const ys = [0, 1, 2, 3, 4, 5].flatMap((step) => [
    y - (gap + height) - (step * height) / 2,
    y + gap + (step * height) / 2,
  ]);
  return [
    ...ys.flatMap((top) => xs.map((x) => ({ x, y: top, width, height }))),
    { x: left - width - gap, y: y - height / 2, width, height },
    { x: right + gap, y: y - height / 2, width, height },
  ];
};

const placed = (before: Placed, box: Box, shapes: readonly Shape[]): Placed => ({
  shapes: [...before.shapes, ...shapes],
  taken: [...before.taken, box],
});

const GRID = 5;

/** Every place in the field, the nearest to a jump first. */
const placesInField = (
  span: { readonly left: number; readonly right: number; readonly y: number },
  { width, height }: { readonly width: number; readonly height: number },
  field: Box,
): readonly Box[] => {
  const across = Math.max(0, Math.floor((field.width - width) / GRID) + 1);
  const down = Math.max(0, Math.floor((field.height - height) / GRID) + 1);
  const awayOf = (box: Box): number => {
    const { from, to } = nearestOn(box, span);
    return Math.hypot(to.x - from.x, to.y - from.y);
  };
  return Array.from({ length: across * down }, (_, index) => ({
    x: field.x + (index % across) * GRID,
    y: field.y + Math.floor(index / across) * GRID,
    width,
    height,
  })).toSorted((one, other) => awayOf(one) - awayOf(other));
};

/** The ends of the shortest line between a box and a level span. */
const nearestOn = (
  box: Box,
  { left, right, y }: { readonly left: number; readonly right: number; readonly y: number },
): { readonly from: Point; readonly to: Point } => {
  const toX = Math.min(Math.max(box.x + box.width / 2, left), right);
  const fromX = Math.min(Math.max(toX, box.x), box.x + box.width);
  return {
    from: { x: fromX, y: Math.min(Math.max(y, box.y), box.y + box.height) },
    to: { x: Math.min(Math.max(fromX, left), right), y },
  };
};

/** Further off than this and the eye needs a line to find what the words are about. */
const LEADER_FROM = 14;

/** On paper of its own, so that no hatch runs through the words. */
const onPaper = (block: TextBlock, box: Box): readonly Shape[] => [
  rect(box.x - 1, box.y, box.width + 2, box.height, { fill: 'paper' }),
  ...block.at(box),
];

/** What a jump brings, clear of the curve and of all other words, in the widest shape that fits. */
export const jumpLabel = (before: Placed, jump: Jump, context: LabelContext): Placed => {
  const { frame, subject, house } = context;
  const { height, below, above } = jump;
  const { field, letter } = frame;
  const [one, other] = [frame.xOf(below), frame.xOf(above)];
  const span = { left: Math.min(one, other), right: Math.max(one, other), y: frame.yOf(height) };
  const tries = jumpWords(jump, subject, house).flatMap((lines) => {
    const block = textBlock(lines, letter);
    const size = sizeOf(block);
    const near = placesRound(span, size, field);
    return [...near, ...placesInField(span, size, field)].map((box) => ({ block, box }));
  });
  const places = tries.map(({ box }) => box);
  const box = freeBox(places, before.taken, field);
  const chosen = tries.find((each) => each.box === box);
  if (box === undefined || chosen === undefined) return before;
  const { from, to } = nearestOn(box, span);
  const isFar = Math.hypot(to.x - from.x, to.y - from.y) > LEADER_FROM;
  const leader = line(from.x, from.y, to.x, to.y, { stroke: 'ink', weight: 'hair' });
  return placed(before, box, [...(isFar ? [leader] : []), ...onPaper(chosen.block, box)]);
};

const spanWords = (region: OpenRegion, frame: BalanceFrame, house: House): string => {
  const { fromM, toM, crossesAt } = region;
  const low = crossesAt.includes(fromM)
    ? phrase(house, 'about {roughHeight}', {
        roughHeight: roughHeightWords(house, fromM, 'down'),
      })
    : heightWords(house, fromM);
  const high = crossesAt.includes(toM)
    ? phrase(house, 'about {roughHeight}', {
        roughHeight: roughHeightWords(house, toM, 'up'),
      })
    : heightWords(house, toM);
  const isFromLow = fromM <= frame.lowM;
  const isToHigh = toM >= frame.highM;
  if (isFromLow && isToHigh) return phrase(house, 'over the whole travel');
  if (isFromLow) return phrase(house, 'below {high}', { high });
  return isToHigh
    ? phrase(house, 'above {low}', { low })
    : phrase(house, '{low} to {high}', { low, high });
};

const sizeWords = ({ mostN, leastN, crossesAt }: OpenRegion, house: House): string => {
  const [most, least] = [loadWords(house, mostN), loadWords(house, leastN)];
  if (crossesAt.length > 0) return phrase(house, 'up to {most}', { most });
  return most === least
    ? most
    : phrase(house, '{most} to {least}', { most: most.replace(/[^\d.,]+$/, ''), least });
};

type LabelContext = {
  readonly frame: BalanceFrame;
  readonly subject: BalanceSubject;
  readonly house: House;
};

/** The words of a region on two long lines or on four short ones. */
const regionLines = (
  region: OpenRegion,
  { frame, subject, house }: LabelContext,
  isWide: boolean,
): readonly BlockLine[] => {
  const bricks = tradeWord(house, 'bricks');
  const load =
    subject.load === 'show'
      ? phrase(house, 'all {bricks} on,', { bricks })
      : phrase(house, 'pipe weight only,');
  const span = `${spanWords(region, frame, house)}:`;
  const size = sizeWords(region, house);
  const side = heavySide(house, region.side);
  const lines = isWide ? [`${load} ${span}`, `${size} ${side}`] : [load, span, size, side];
  return lines.map((text) => ({ text }));
};

const centreOf = (frame: BalanceFrame, region: OpenRegion, limitN: number): Point => {
  const { side, mostN, fromM, toM } = region;
  return curvePoint(frame, (side * (mostN + limitN)) / 2, (fromM + toM) / 2);
};

/** A leader from the box to what it speaks of, where the box could not lie on it. */
const leaderTo = (box: Box, { x, y }: Point): readonly Shape[] => {
  const isInside = x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;
  if (isInside) return [];
  const startX = Math.min(Math.max(x, box.x), box.x + box.width);
  const startY = Math.min(Math.max(y, box.y), box.y + box.height);
  return [line(startX, startY, x, y, { stroke: 'red', weight: 'thin' })];
};

type RegionBox = {
  readonly body: TextBlock;
  readonly size: { readonly width: number; readonly height: number };
};

const regionBox = (
  region: OpenRegion,
  context: LabelContext,
  isWide: boolean,
  headWidth: number,
): RegionBox => {
  const { letter } = context.frame;
  const pad = letter * 0.5;
  const body = textBlock(regionLines(region, context, isWide), letter, { backed: false });
  const width = Math.max(body.width, headWidth) + 2 * pad;
  return { body, size: { width, height: body.height + letter * LEADING + 2 * pad } };
};

/** On the region itself if it has room, whichever shape fits; else beside it with a leader. */
const placeRegion = (
  boxes: readonly RegionBox[],
  centre: Point,
  taken: readonly Box[],
  field: Box,
): { readonly box: Box; readonly body: TextBlock } | undefined => {
  const span = { left: centre.x, right: centre.x };
  const onIt = boxes.flatMap(({ size }) =>
    [0, -0.5, 0.5].map((step) => ({
      x: centre.x - size.width / 2,
      y: centre.y - size.height / 2 + (step * size.height) / 2,
      ...size,
    })),
  );
  const beside = boxes.flatMap(({ size }) => [
    ...placesRound({ ...span, y: centre.y }, size, field),
    ...placesRound({ ...span, y: centre.y + size.height }, size, field),
  ]);
  const box = freeBox([...onIt, ...beside], taken, field);
  const chosen = boxes.find(({ size }) => size.width === box?.width && size.height === box.height);
  return box === undefined || chosen === undefined ? undefined : { box, body: chosen.body };
};

/** "Not held" in its box: wedge, words, and how much at most and at least. */
export const regionLabel = (
  before: Placed,
  region: OpenRegion,
  context: LabelContext & { readonly limitN: number },
): Placed => {
  const { frame, limitN } = context;
  const { letter, field } = frame;
  const pad = letter * 0.5;
  const wedge = letter * 1.1;
  const head = textBlock([{ text: phrase(context.house, 'Not held'), strong: true }], letter, {
    pen: 'red',
    backed: false,
  });
  const boxes = [true, false].map((isWide) =>
    regionBox(region, context, isWide, head.width + wedge + pad),
  );
  const centre = centreOf(frame, region, limitN);
  const found = placeRegion(boxes, centre, before.taken, field);
  if (found === undefined) return before;
  const { box, body } = found;
  const edge = { stroke: 'red', weight: 'thick', fill: 'paper' } as const;
  return placed(before, box, [
    ...leaderTo(box, centre),
    group(
      [
        rect(box.x, box.y, box.width, box.height, edge),
        glyphAt('danger', box.x + pad, box.y + pad, wedge),
        ...head.at({ x: box.x + pad + wedge + pad / 2, y: box.y + pad }),
        ...body.at({ x: box.x + pad, y: box.y + pad + letter * LEADING }),
      ],
      { part: 'not held label' },
    ),
  ]);
};

const ROOT_RADIUS = 3;

/** Where the figures come to nothing, and whether the set comes back there or runs. */
export const rootLabel = (
  before: Placed,
  root: { readonly height: number; readonly settles: boolean },
  { frame, house }: { frame: BalanceFrame; house: House },
): Placed => {
  const { x, y } = curvePoint(frame, 0, root.height);
  const dot = circle(x, y, ROOT_RADIUS, { fill: 'solid' });
  const block: TextBlock = textBlock(
    [
      {
        text: phrase(house, 'zero near {roughHeight}', {
          roughHeight: roughHeightWords(house, root.height),
        }),
      },
      { text: root.settles ? phrase(house, 'and settles') : phrase(house, 'and runs') },
    ],
    frame.letter,
    { pen: 'ink2' },
  );
  const { width, height } = block;
  const near = [-1, 1].flatMap((side) =>
    [0, -1, 1].map((step) => ({
      x: side < 0 ? x + frame.letter : x - frame.letter - width,
      y: y - height / 2 + (step * height) / 2,
      width,
      height,
    })),
  );
  const box = near.find((each) => isFree(each, before.taken, frame.field));
  return box === undefined
    ? { ...before, shapes: [...before.shapes, dot] }
    : placed(before, box, [dot, ...block.at(box)]);
};

/** Where a piece lies on the deck with its picks taut, deck and batten share it as they like. */
export const contactLabel = (
  before: Placed,
  { fromM, toM, from, to }: Stretch,
  { frame, house }: { frame: BalanceFrame; house: House },
): Placed => {
  const rise = frame.yOf(fromM) - frame.yOf(toM);
  if (from.highN <= from.lowN || rise < frame.letter) return before;
  const block = textBlock(
    [
      { text: phrase(house, 'rests on the deck:') },
      { text: phrase(house, 'anything between the lines') },
    ],
    frame.letter,
    { pen: 'ink2' },
  );
  const middleN = (from.lowN + from.highN + to.lowN + to.highN) / 4;
  const { x, y } = curvePoint(frame, middleN, (fromM + toM) / 2);
  const inside = { x: x - block.width / 2, y: y - block.height / 2, ...sizeOf(block) };
  const under = { left: x, right: x, y: frame.yOf(fromM) };
  const box = [inside, ...placesRound(under, block, frame.field)].find((each) =>
    isFree(each, before.taken, frame.field),
  );
  return box === undefined ? before : placed(before, box, block.at(box));
};

const sizeOf = ({ width, height }: TextBlock) => ({ width, height });

/** Where the set was last recorded, in blue pencil. Never on paper. */
export const nowLabel = (
  before: Placed,
  now: { readonly heightM: number; readonly lowN: number; readonly highN: number },
  { frame, house }: { frame: BalanceFrame; house: House },
): Placed => {
  const { heightM, lowN, highN } = now;
  const [one, other] = [curvePoint(frame, lowN, heightM), curvePoint(frame, highN, heightM)];
  const words =
    lowN === highN
      ? [phrase(house, 'Now {imbalance}', { imbalance: imbalanceWords(house, lowN) })]
      : [
          phrase(house, 'Now {imbalance}', { imbalance: imbalanceWords(house, lowN) }),
          phrase(house, 'to {imbalance}', { imbalance: imbalanceWords(house, highN) }),
        ];
  const block = textBlock(
    [...words, phrase(house, 'at {at}', { at: heightWords(house, heightM) })].map((text) => ({
      text,
      strong: true,
    })),
    frame.letter,
    { pen: 'blue' },
  );
  const [left, right] = [Math.min(one.x, other.x), Math.max(one.x, other.x)];
  const box = freeBox(
    placesRound({ left: left - 20, right: right + 20, y: one.y }, block, frame.field),
    before.taken,
    frame.field,
  );
  if (box === undefined) return before;
  const isLeft = box.x + box.width / 2 < left;
  const startX = isLeft ? Math.min(box.x + box.width, left - 30) : Math.max(box.x, right + 30);
  const tip = isLeft ? left : right;
  const back = isLeft ? -7 : 7;
  const pencil = { stroke: 'blue', weight: 'pencil' } as const;
  return placed(before, box, [
    group(
      [
        line(startX, one.y, tip, one.y, pencil),
        line(tip, one.y, tip + back, one.y - 4, pencil),
        line(tip, one.y, tip + back, one.y + 4, pencil),
        line(left, one.y, right, one.y, pencil),
        ...block.at(box),
      ],
      { part: 'now' },
    ),
  ]);
};
