/**
 * The stack of an arbor while bricks are handled: what lies there, what of this step is done, the
 * brick that is next, and those that are planned. It is no record of what will lie there.
 */
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { StackRun } from '#state';
import { phrase } from '#texts';
import { emptyDrawing } from './empty-drawing.ts';
import { type Plate, platesOf } from './plates.ts';
import type { Drawing, Shape, Style } from './shape.ts';
import { group, lettering, line, polygon, rect } from './shape.ts';

export type WorkStackOptions = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  /** Words at the side; on a phone they stand beside the drawing. */
  readonly isLabelled: boolean;
};

export type WorkStack = {
  readonly set: string;
  /** Before the step. */
  readonly before: readonly StackRun[];
  /** The stack when all of the step is done. */
  readonly after: readonly StackRun[];
  readonly act: 'add' | 'remove';
  readonly count: number;
  /** Bricks of the step that were counted so far. */
  readonly done: number;
  /** Height of the next and of the last brick above the floor of the gallery, in words. */
  readonly nextAt: string | null;
  readonly lastAt: string | null;
};

const PAN = 5;
const MARGIN = 4;
const GAP = 0.8;

type Frame = {
  readonly yOf: (heightM: number) => number;
  readonly centreX: number;
  readonly brickWidth: number;
  readonly panY: number;
  readonly width: number;
};

/** Room above the last plate, for the hand that puts one there. */
const ROOM_ABOVE = 1.35;
/** Of the height of a letter, on the average and rather more than less. */
const LETTER_WIDE = 0.5;
const POINTER = 20;

/** A height that lost its first figure would be read as another: the words come first. */
const centreOf = (
  { nextAt, lastAt }: WorkStack,
  house: House,
  { width, letter }: WorkStackOptions,
  brickWidth: number,
): number => {
  const words = [phrase(house, 'next'), phrase(house, 'last'), nextAt ?? '', lastAt ?? ''];
  const longest = Math.max(...words.map((text) => text.length));
  const room = longest * letter * LETTER_WIDE + POINTER + brickWidth * 0.62;
  return Math.max(room, Math.min(width / 2, room * 1.1));
};

const frameOf = (
  heightM: number,
  work: WorkStack,
  house: House,
  options: WorkStackOptions,
): Frame => {
  const { width, height, isLabelled } = options;
  const panY = height - MARGIN - PAN;
  const perMetre = (panY - MARGIN) / Math.max(0.2, heightM * ROOM_ABOVE);
  const brickWidth = isLabelled ? Math.min(56, width * 0.3) : Math.min(100, width * 0.68);
  return {
    yOf: (atM) => panY - atM * perMetre,
    centreX: isLabelled ? centreOf(work, house, options, brickWidth) : width / 2,
    brickWidth,
    panY,
    width,
  };
};

type Standing = 'there' | 'done' | 'next' | 'toCome' | 'gone';

/** How the plate with this number from the bottom stands, by what was counted so far. */
const standingOf = (at: number, total: number, work: WorkStack): Standing => {
  const first = total - work.count;
  if (at < first) return 'there';
  if (work.act === 'add') {
    const ofStep = at - first;
    if (ofStep < work.done) return 'done';
    return ofStep === work.done ? 'next' : 'toCome';
  }
  const ofStep = total - 1 - at;
  if (ofStep < work.done) return 'gone';
  return ofStep === work.done ? 'next' : 'toCome';
};

const styleOf = (standing: Standing, plate: Plate): Style => {
  switch (standing) {
    case 'there':
      return plate.look === 'outlined'
        ? { stroke: 'ink', weight: 'thin', fill: 'paper' }
        : { fill: 'solid' };
    case 'done':
      return { fill: 'solid' };
    case 'next':
      return { stroke: 'blue', weight: 'pencil', fill: 'paper' };
    case 'toCome':
      return { stroke: 'ink2', weight: 'thin', dash: 'plan', fill: 'paper', hatch: 'planned' };
    case 'gone':
      return { stroke: 'line', weight: 'hair', dash: 'plan' };
    default:
      return unreachable(standing);
  }
};

type Laid = { readonly plate: Plate; readonly standing: Standing };

/** Spreader plates go with the brick that they lie on. */
const laidPlates = (plates: readonly Plate[], work: WorkStack): readonly Laid[] => {
  const total = plates.filter(({ look }) => look !== 'spreader').length;
  let at = -1;
  return plates.map((plate) => {
    if (plate.look !== 'spreader') at += 1;
    const own = standingOf(at, total, work);
    const standing = plate.look === 'spreader' && own === 'next' ? 'toCome' : own;
    return { plate, standing };
  });
};

const plateShape = (
  { plate, standing }: Laid,
  { yOf, centreX, brickWidth }: Frame,
): readonly Shape[] => {
  const across = brickWidth * plate.width * (standing === 'next' ? 1.04 : 1);
  const top = yOf(plate.bottomM + plate.thicknessM);
  const tall = yOf(plate.bottomM) - top;
  const style = styleOf(standing, plate);
  return [rect(centreX - across / 2, top + GAP / 2, across, Math.max(1, tall - GAP), style)];
};

const carriage = ({ centreX, brickWidth, panY }: Frame): readonly Shape[] => {
  const rod = brickWidth * 0.45;
  const outline = { stroke: 'ink', weight: 'mid' } as const;
  return [
    line(centreX - rod, MARGIN, centreX - rod, panY, outline),
    line(centreX + rod, MARGIN, centreX + rod, panY, outline),
    rect(centreX - brickWidth * 0.6, panY, brickWidth * 1.2, PAN, { fill: 'solid' }),
  ];
};

type Span = { readonly topM: number; readonly bottomM: number };

const spanOf = (laid: readonly Laid[], of: readonly Standing[]): Span | null => {
  const some = laid.filter(({ standing }) => of.includes(standing)).map(({ plate }) => plate);
  const [first] = some;
  const last = some.at(-1);
  if (first === undefined || last === undefined) return null;
  return { bottomM: first.bottomM, topM: last.bottomM + last.thicknessM };
};

/** On two lines where one is too narrow, broken at the space after which the less is left. */
const inTwo = (text: string, room: number, letter: number): readonly string[] => {
  const at = text.length * letter * LETTER_WIDE <= room ? -1 : text.lastIndexOf(' ');
  return at < 0 ? [text] : [text.slice(0, at), text.slice(at + 1)];
};

const bracket = (
  { topM, bottomM }: Span,
  words: { readonly text: string; readonly isStrong: boolean },
  { yOf, centreX, brickWidth, width }: Frame,
  letter: number,
): readonly Shape[] => {
  const x = centreX + brickWidth * 0.68;
  const [top, bottom] = [yOf(topM) + 1, yOf(bottomM) - 1];
  const hair = { stroke: 'ink', weight: 'thin' } as const;
  const lines = inTwo(words.text, width - x - 8, letter);
  const first = (top + bottom) / 2 + letter * (0.35 - 0.525 * (lines.length - 1));
  const weight = words.isStrong ? 'strong' : 'plain';
  return [
    line(x, top, x, bottom, hair),
    line(x - 5, top, x, top, hair),
    line(x - 5, bottom, x, bottom, hair),
    ...lines.map((text, at) =>
      lettering(x + 8, first + at * letter * 1.05, text, letter, { weight }),
    ),
  ];
};

/** What is counted, and what is to come, at a bracket each. */
const sideWords = (
  laid: readonly Laid[],
  work: WorkStack,
  house: House,
  frame: Frame,
  letter: number,
): readonly Shape[] => {
  const isAdd = work.act === 'add';
  const done = spanOf(laid, ['done', 'gone']);
  const toCome = spanOf(laid, ['next', 'toCome']);
  const left = work.count - work.done;
  const doneWords = isAdd
    ? phrase(house, '{count} on', { count: work.done })
    : phrase(house, '{count} off', { count: work.done });
  return [
    ...(done === null ? [] : bracket(done, { text: doneWords, isStrong: true }, frame, letter)),
    ...(toCome === null
      ? []
      : bracket(
          toCome,
          { text: phrase(house, '{count} to come', { count: left }), isStrong: false },
          frame,
          letter,
        )),
  ];
};

const nextMark = (
  laid: readonly Laid[],
  { nextAt, lastAt }: WorkStack,
  house: House,
  { yOf, centreX, brickWidth }: Frame,
  letter: number,
): readonly Shape[] => {
  const next = spanOf(laid, ['next']);
  if (next === null) return [];
  const y = yOf((next.topM + next.bottomM) / 2);
  const tip = centreX - brickWidth * 0.62;
  const words = { anchor: 'end', pen: 'blue' } as const;
  const x = tip - POINTER;
  const last = spanOf(laid, ['next', 'toCome']);
  const lastY = last === null ? y : Math.min(yOf(last.topM), y - letter * 2.4);
  return [
    polygon(
      [
        { x: tip, y },
        { x: tip - 14, y: y - 8 },
        { x: tip - 14, y: y + 8 },
      ],
      { fill: 'blue' },
    ),
    lettering(x, y + letter * 0.1, phrase(house, 'next'), letter, { ...words, weight: 'strong' }),
    ...(nextAt === null ? [] : [lettering(x, y + letter * 1.15, nextAt, letter, words)]),
    ...(lastAt === null || lastAt === nextAt
      ? []
      : [
          lettering(x, lastY - letter * 0.2, phrase(house, 'last'), letter, {
            anchor: 'end',
            pen: 'ink2',
          }),
          lettering(x, lastY + letter * 0.85, lastAt, letter, { anchor: 'end', pen: 'ink2' }),
        ]),
  ];
};

/** Every plate at its thickness; what is counted is filled, the next blue, the rest dashed. */
export const workStackDrawing = (
  work: WorkStack,
  house: House,
  options: WorkStackOptions,
): Drawing => {
  const { width, height, letter, isLabelled } = options;
  const names = { set: work.set, done: work.done, count: work.count };
  const title =
    work.act === 'add'
      ? phrase(house, 'Stack on the arbor of set {set}: {done} of {count} plates on', names)
      : phrase(house, 'Stack on the arbor of set {set}: {done} of {count} plates off', names);
  // What is taken off is drawn where it lay.
  const stack = platesOf(work.act === 'add' ? work.after : work.before, house);
  if (stack === null) {
    return emptyDrawing(title, phrase(house, 'A thickness is not known.'), {
      width,
      height,
      letter,
    });
  }
  const frame = frameOf(stack.heightM, work, house, options);
  const laid = laidPlates(stack.plates, work);
  return {
    width,
    height,
    title,
    shapes: [
      ...carriage(frame),
      group(
        laid.flatMap((each) => plateShape(each, frame)),
        { part: 'plates' },
      ),
      ...(isLabelled ? sideWords(laid, work, house, frame, letter) : []),
      ...(isLabelled ? nextMark(laid, work, house, frame, letter) : []),
    ],
  };
};
