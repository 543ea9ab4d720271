/**
 * Section and plan on a paper of their own, to a scale that is told: for files that others open.
 * What is planned, and what is a demo, stands in a hatched frame with its word, as on a screen.
 */
import type { HouseMoment, SetAssessment } from '#assessment';
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { FieldScale, FieldView } from '../field-view.ts';
import { linesOfText, textWidth } from '../lettering.ts';
import { planParts, planStrips, planTitle, wholePlan } from '../plan/plan-drawing.ts';
import {
  sectionParts,
  sectionStrips,
  sectionTitle,
  wholeSection,
} from '../section/section-drawing.ts';
import { type Drawing, group, lettering, type Point, point, rect, type Shape } from '../shape.ts';

export type DrawingKind = 'section' | 'plan';

export type FileSubject = {
  readonly house: House;
  readonly sets: readonly SetAssessment[];
  readonly moment: HouseMoment;
};

export type FileOptions = {
  /** 50 is one to fifty. */
  readonly scale: number;
  /** What is shown, when it was made and by whom, line by line. */
  readonly lines: readonly string[];
  /** Arbors as outlines beyond; in a section only. */
  readonly arbors: boolean;
};

export type DrawingFile = {
  /** One unit is a point of the paper. */
  readonly drawing: Drawing;
  readonly scale: number;
  /** Where plaster line and deck, or plaster line and centre line, meet on the paper. */
  readonly zero: Point;
};

export const POINTS_A_METRE = 72 / 0.0254;
export const MM_A_POINT = 25.4 / 72;

const LETTER = 7.5;
const MARGIN = 30;
/** Width of the hatched band of a frame. */
const BAND = 8;
const LINE = LETTER * 1.35;

type Placed = {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly zero: Point;
};

const at = (x: number, y: number, { shapes }: Drawing, part?: string): Shape =>
  group(shapes, { at: point(x, y), ...(part === undefined ? {} : { part }) });

const sizeOf = ({ left, right, bottom, top }: FieldView, scale: number) => ({
  width: ((right - left) * POINTS_A_METRE) / scale,
  height: ((top - bottom) * POINTS_A_METRE) / scale,
});

const zeroOf = ({ xOf, yOf }: FieldScale, x: number, y: number): Point =>
  point(x + xOf(0), y + yOf(0));

/** Room beyond what is kept free and beyond the traps; a screen cuts them at its edge. */
const BEYOND_M = 0.6;

const highView = (house: House): FieldView => {
  const whole = wholeSection(house);
  const tops = house.keepOuts.flatMap(({ z }) => {
    const top = z?.[1] ?? null;
    return top === null ? [] : [top + BEYOND_M];
  });
  return { ...whole, top: Math.max(whole.top, ...tops) };
};

const deepView = (house: House): FieldView => {
  const whole = wholePlan(house);
  const feet = house.openings.map(({ y }) => y[0] - BEYOND_M);
  return { ...whole, bottom: Math.min(whole.bottom, ...feet) };
};

const section = (subject: FileSubject, { scale, arbors }: FileOptions): Placed => {
  const view = highView(subject.house);
  const size = sizeOf(view, scale);
  const strips = { ...sectionStrips(LETTER, 0), names: LETTER * 18, heights: LETTER * 8.5 };
  const parts = sectionParts(subject, { ...size, letter: LETTER, strips, view, arbors });
  return {
    title: sectionTitle(subject),
    width: strips.heights + size.width,
    height: strips.names + size.height + strips.upstage,
    shapes: [
      at(strips.heights, 0, parts.names, 'names'),
      at(0, strips.names, parts.heights, 'measures'),
      at(strips.heights, strips.names, parts.field),
      at(strips.heights, strips.names + size.height, parts.upstage, 'measures'),
    ],
    zero: zeroOf(parts.scale, strips.heights, strips.names),
  };
};

const plan = (subject: FileSubject, { scale }: FileOptions): Placed => {
  const view = deepView(subject.house);
  const size = sizeOf(view, scale);
  const strips = planStrips(LETTER);
  const parts = planParts(subject, { ...size, letter: LETTER, strips, view });
  return {
    title: planTitle(subject),
    width: strips.sets + size.width,
    height: size.height + strips.foot,
    shapes: [
      at(strips.sets, 0, parts.field),
      at(0, 0, parts.sets, 'names'),
      at(strips.sets, size.height, parts.foot, 'measures'),
    ],
    zero: zeroOf(parts.scale, strips.sets, 0),
  };
};

const placedOf = (kind: DrawingKind, subject: FileSubject, options: FileOptions): Placed => {
  switch (kind) {
    case 'section':
      return section(subject, options);
    case 'plan':
      return plan(subject, options);
    default:
      return unreachable(kind);
  }
};

/** What the frame says; null where the drawing shows a record of a real house. */
const frameWord = ({ house, moment }: FileSubject): string | null => {
  const words = [
    ...(house.demo ? ['DEMO: an invented house and show'] : []),
    ...(moment.is === 'planned' ? ['PLANNED'] : []),
  ];
  return words.length === 0 ? null : words.join(', ');
};

const frameShapes = (word: string, width: number, height: number): readonly Shape[] => {
  const hatch = { hatch: 'planned' } as const;
  const room = textWidth(word, LETTER * 1.2, { weight: 'strong', width: 'head' }) + 16;
  const edge = { stroke: 'ink', weight: 'thin' } as const;
  return [
    rect(0, 0, width, BAND, hatch),
    rect(0, height - BAND, width, BAND, hatch),
    rect(0, BAND, BAND, height - 2 * BAND, hatch),
    rect(width - BAND, BAND, BAND, height - 2 * BAND, hatch),
    rect(BAND, BAND, width - 2 * BAND, height - 2 * BAND, edge),
    rect((width - room) / 2, 0, room, LETTER * 2, { ...edge, fill: 'paper' }),
    lettering(width / 2, LETTER * 1.4, word, LETTER * 1.2, {
      anchor: 'middle',
      weight: 'strong',
      width: 'head',
    }),
  ];
};

const CAUTION =
  'Advises and records; certifies nothing. Local codes, the rules of the house and competent ' +
  'persons come first. Symbols of battens and blocks are not to size; their middles are.';

/** The drawing on its paper, with its title, scale and words below it. */
export const drawingFile = (
  kind: DrawingKind,
  subject: FileSubject,
  options: FileOptions,
): DrawingFile => {
  const { scale, lines } = options;
  const placed = placedOf(kind, subject, options);
  const width = placed.width + 2 * MARGIN;
  const said = [`Scale 1:${scale} when printed at 100 %; check it at the bar.`, ...lines, CAUTION];
  const small = said.flatMap((each) => linesOfText(each, LETTER, placed.width));
  const heads = linesOfText(placed.title, LETTER * 1.4, placed.width, {
    weight: 'strong',
    width: 'head',
  });
  const foot = MARGIN + placed.height + LINE * 2;
  const height = foot + LINE * 1.5 * heads.length + LINE * small.length + MARGIN;
  const word = frameWord(subject);
  const words = [
    ...heads.map((text, row) =>
      lettering(MARGIN, foot + LINE * 1.5 * row, text, LETTER * 1.4, {
        weight: 'strong',
        width: 'head',
      }),
    ),
    ...small.map((text, row) =>
      lettering(MARGIN, foot + LINE * (1.5 * heads.length + row), text, LETTER),
    ),
  ];
  return {
    drawing: {
      width,
      height,
      title: [placed.title, ...lines].join('. '),
      shapes: [
        ...(word === null ? [] : [group(frameShapes(word, width, height), { part: 'frame' })]),
        group(placed.shapes, { at: point(MARGIN, MARGIN) }),
        group(words, { part: 'title' }),
      ],
    },
    scale,
    zero: point(placed.zero.x + MARGIN, placed.zero.y + MARGIN),
  };
};
