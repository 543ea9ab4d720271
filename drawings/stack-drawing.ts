/** The arbor's stack brick by brick: what an eye at the gallery should find there. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { formatLength, formatMass, kilograms, metres } from '#quantities';
import { phrase } from '#texts';
import type { Box } from './boxes.ts';
import { emptyDrawing } from './empty-drawing.ts';
import { linesOfText } from './lettering.ts';
import { suspensionSentence } from './no-arbor.ts';
import type { PlateBand, PlateStack } from './plates.ts';
import { platesOf, runsOf } from './plates.ts';
import type { Drawing, Shape } from './shape.ts';
import { group, line, rect } from './shape.ts';
import { textBlock } from './text-block.ts';

export type StackOptions = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  /** The plan's stack, or the one that was recorded on the arbor. */
  readonly of: 'plan' | 'record';
};

type StackFrame = {
  /** The rods are drawn broken: at the scale of the whole rod the plates would run together. */
  readonly isBroken: boolean;
  readonly yOf: (heightM: number) => number;
  readonly centreX: number;
  readonly brickWidth: number;
  readonly rodTop: number;
  readonly panY: number;
};

const PAN = 5;
const MARGIN = 4;
const COLLAR = 5;

/** Below this many units a plate is a line among lines. */
const LEAST_PLATE = 3.2;
/** Share of the height that a stack takes when the rods above it are broken off. */
const BROKEN_SHARE = 0.74;

const frameOf = (
  { heightM, plates }: PlateStack,
  rodM: number | null,
  { width, height }: StackOptions,
): StackFrame => {
  const panY = height - MARGIN - PAN;
  const room = panY - MARGIN - 2 * COLLAR;
  const wholeM = Math.max(rodM ?? 0, heightM, 0.1);
  const thinnestM = Math.min(...plates.map(({ thicknessM }) => thicknessM));
  const isBroken =
    heightM > 0 && heightM < BROKEN_SHARE * wholeM && (room / wholeM) * thinnestM < LEAST_PLATE;
  const perMetre = isBroken ? (room * BROKEN_SHARE) / heightM : room / wholeM;
  const brickWidth = Math.min(78, width * 0.3);
  const rodTop = rodM === null || isBroken ? MARGIN : panY - rodM * perMetre;
  return {
    isBroken,
    yOf: (heightAboveM) => panY - heightAboveM * perMetre,
    centreX: brickWidth * 0.66,
    brickWidth,
    rodTop,
    panY,
  };
};

/** Two short strokes across a line: a part of it is left out. */
const breakMark = (x: number, y: number): readonly Shape[] => {
  const outline = { stroke: 'ink', weight: 'thin' } as const;
  return [
    rect(x - 4, y - 1.5, 8, 3, { fill: 'paper' }),
    line(x - 4, y, x + 4, y - 3, outline),
    line(x - 4, y + 3, x + 4, y, outline),
  ];
};

const carriageShapes = (frame: StackFrame): readonly Shape[] => {
  const { centreX, brickWidth, rodTop, panY, isBroken } = frame;
  const rod = brickWidth * 0.42;
  const breaks = isBroken
    ? [centreX - rod, centreX + rod].flatMap((x) => breakMark(x, rodTop + 5))
    : [];
  const outline = { stroke: 'ink', weight: 'mid' } as const;
  return [
    line(centreX - rod, rodTop, centreX - rod, panY, outline),
    line(centreX + rod, rodTop, centreX + rod, panY, outline),
    rect(centreX - brickWidth * 0.63, panY, brickWidth * 1.26, PAN, { fill: 'solid' }),
    ...breaks,
  ];
};

const plateShapes = ({ plates }: PlateStack, frame: StackFrame): readonly Shape[] => {
  const { yOf, centreX, brickWidth } = frame;
  return plates.map(({ look, width, bottomM, thicknessM }) => {
    const top = yOf(bottomM + thicknessM);
    const across = brickWidth * width;
    const box: Box = { x: centreX - across / 2, y: top, width: across, height: yOf(bottomM) - top };
    // A hair of paper between solid plates, so that they can be counted.
    const gap = Math.min(1, box.height * 0.2);
    const weight = box.height < LEAST_PLATE ? 'hair' : 'thin';
    const style =
      look === 'outlined'
        ? ({ stroke: 'ink', weight, fill: 'paper' } as const)
        : ({ fill: 'solid' } as const);
    return rect(box.x, box.y + gap / 2, box.width, box.height - gap, style);
  });
};

const collarShapes = ({ heightM }: PlateStack, frame: StackFrame): readonly Shape[] => {
  const { yOf, centreX, brickWidth } = frame;
  const y = yOf(heightM) - COLLAR - 2;
  const half = brickWidth * 0.36;
  return [rect(centreX - half, y, 2 * half, COLLAR - 1, { fill: 'solid' })];
};

export const countWords = (counts: PlateBand['counts'], house: House): string =>
  counts
    .map(({ kind, count }) => {
      const name = house.brickKinds.find(({ id }) => id === kind)?.name ?? kind;
      return `${count} ${name}`;
    })
    .join(', ');

/** Mass of counted bricks, kg; null where a kind has none. */
export const massOfCounts = (counts: PlateBand['counts'], house: House): number | null =>
  counts.reduce<number | null>((sum, { kind, count }) => {
    const mass = house.brickKinds.find(({ id }) => id === kind)?.mass;
    return sum === null || mass === undefined || !mass.known ? null : sum + count * mass.value;
  }, 0);

const bandWords = ({ tag, counts }: PlateBand, house: House): readonly string[] => {
  const massKg = massOfCounts(counts, house);
  const style = house.units === 'customary' ? 'fine' : 'sheet';
  const mass =
    massKg === null
      ? phrase(house, 'mass not known')
      : formatMass(kilograms(massKg), house, { style });
  return tag === 'pipe'
    ? [phrase(house, '{mass}, pipe weight, stays', { mass })]
    : [phrase(house, '{mass}, show bricks', { mass })];
};

type LabelledBand = {
  readonly middle: number;
  readonly top: number;
  readonly bottom: number;
  readonly lines: readonly { readonly text: string; readonly strong?: boolean }[];
};

/** Words too long for the room beside the bracket go on in a line of their own. */
const brokenToRoom = (band: LabelledBand, letter: number, room: number): LabelledBand => ({
  ...band,
  lines: band.lines.flatMap(({ text, strong = false }) =>
    linesOfText(text, letter, room, { weight: strong ? 'strong' : 'plain' }).map((part) => ({
      text: part,
      strong,
    })),
  ),
});

/** Labels from the bottom up, each pushed above the one below it where they would touch. */
const stacked = (
  bands: readonly LabelledBand[],
  letter: number,
  floor: number,
): readonly (LabelledBand & { readonly y: number })[] =>
  bands.reduce<readonly (LabelledBand & { readonly y: number })[]>((done, band) => {
    const { height } = textBlock(band.lines, letter);
    const below = done.at(-1)?.y ?? floor;
    const y = Math.min(band.middle - height / 2, below - height - letter * 0.5);
    return [...done, { ...band, y }];
  }, []);

const bracketShapes = (
  bands: readonly LabelledBand[],
  { centreX, brickWidth }: StackFrame,
  { letter, height, width }: StackOptions,
): readonly Shape[] => {
  const x = centreX + brickWidth * 0.72;
  const words = x + letter * 0.9;
  const fitting = bands.map((band) => brokenToRoom(band, letter, width - words));
  const hair = { stroke: 'ink', weight: 'thin' } as const;
  return stacked(fitting, letter, height + letter * 0.5).flatMap(
    ({ lines, top, bottom, middle, y }) => {
      const block = textBlock(lines, letter);
      const tie = y + Math.min(block.height / 2, letter * 0.6);
      return [
        line(x, top, x, bottom, hair),
        line(x - 4, top, x, top, hair),
        line(x - 4, bottom, x, bottom, hair),
        line(x, middle, words - 3, tie, hair),
        ...block.at({ x: words, y }),
      ];
    },
  );
};

const labelled = (
  stack: PlateStack,
  rodM: number | null,
  house: House,
  frame: StackFrame,
): readonly LabelledBand[] => {
  const { yOf } = frame;
  const bands = stack.bands.map((band) => ({
    top: yOf(band.topM) + 1,
    bottom: yOf(band.bottomM) - 1,
    middle: yOf((band.topM + band.bottomM) / 2),
    lines: [
      { text: countWords(band.counts, house), strong: true },
      ...bandWords(band, house).map((text) => ({ text })),
    ],
  }));
  if (rodM === null) return bands;
  const freeM = rodM - stack.heightM;
  if (freeM <= 0) return bands;
  const free = formatLength(metres(freeM), house, {
    round: 'down',
    customaryLength: 'inches',
  });
  const top = frame.isBroken ? frame.rodTop : yOf(rodM);
  const bottom = yOf(stack.heightM) - COLLAR - 4;
  return [
    ...bands,
    {
      top,
      bottom,
      middle: (top + bottom) / 2,
      lines: [{ text: phrase(house, '{free} of rod free', { free }) }],
    },
  ];
};

/** Every plate on the arbor at its thickness, to the scale of the usable rod. */
export const stackDrawing = (set: SetAssessment, house: House, options: StackOptions): Drawing => {
  const { width, height } = options;
  const { id } = set.lineSet;
  const title =
    options.of === 'plan'
      ? phrase(house, 'Stack of set {id}, planned', { id })
      : phrase(house, 'Stack of set {id}, recorded', { id });
  const { arbor } = set.lineSet;
  if (arbor === null) return emptyDrawing(title, suspensionSentence(set.lineSet, house), options);
  const runs = runsOf(set, options.of);
  const stack = runs === null ? null : platesOf(runs, house);
  if (stack === null) {
    const why =
      runs === null
        ? phrase(house, 'The stack is not known.')
        : phrase(house, 'A thickness is not known.');
    return emptyDrawing(title, why, options);
  }
  const rodM = arbor.usableRod.known ? arbor.usableRod.value : null;
  const frame = frameOf(stack, rodM, options);
  return {
    width,
    height,
    title,
    shapes: [
      ...carriageShapes(frame),
      group(plateShapes(stack, frame), { part: 'plates' }),
      ...collarShapes(stack, frame),
      ...bracketShapes(labelled(stack, rodM, house, frame), frame, options),
    ],
  };
};
