/**
 * The section with two revisions in it: the newer in full ink, the older beneath it in broken lines
 * and hollow, and a letter under every set where they differ. What each letter says stands in words
 * beside the drawing.
 */
import { unreachable } from '#outcome';
import { phrase, type Voice } from '#texts';
import {
  circle,
  type Drawing,
  group,
  lettering,
  line,
  point,
  polyline,
  rect,
  type Shape,
} from '../shape.ts';
import { hangingShapes, upstageOf } from './hangings.ts';
import {
  type SectionSubject,
  sectionParts,
  sectionStrips,
  wholeSection,
} from './section-drawing.ts';
import { spread } from './spread.ts';

export type SectionDifference = {
  readonly before: SectionSubject;
  readonly after: SectionSubject;
  /** Sets that differ, each with its letter, in the order of the letters. */
  readonly marks: readonly { readonly set: string; readonly letter: string }[];
  /** What the two are called: `revision 5`. */
  readonly names: { readonly before: string; readonly after: string };
};

export type DifferencePaper = {
  readonly drawing: Drawing;
  /** Letters that have no place on the drawing: nobody has told where the set is upstage. */
  readonly unplaced: readonly string[];
};

type Size = {
  readonly width: number;
  readonly letter: number;
  /** Of the field, without what stands round it. */
  readonly tallest: number;
};

/** A, B, … Z, AA, AB: as many letters as there are sets. */
export const markLetter = (index: number): string => {
  const rest = Math.floor(index / 26);
  const last = String.fromCharCode(65 + (index % 26));
  return rest === 0 ? last : `${markLetter(rest - 1)}${last}`;
};

/** A cloth edge on is one line; hollow, it is a slip round where the line was. */
const SLIP = 7;

/** Broken and hollow: another position of the same thing, and not the one that is drawn in full. */
const asBefore = (shape: Shape): Shape => {
  const broken = { stroke: 'ink', weight: 'thin', dash: 'hidden' } as const;
  switch (shape.kind) {
    case 'group':
      return { ...shape, shapes: shape.shapes.map(asBefore) };
    case 'text':
      return { ...shape, pen: 'ink2' };
    case 'circle':
      return circle(shape.x, shape.y, shape.radius + 2, {
        stroke: 'ink',
        weight: 'thin',
        fill: 'paper',
      });
    case 'line': {
      const { from, to } = shape;
      const isCloth = shape.weight === 'pencil' || shape.weight === 'mid';
      if (!isCloth || from.x !== to.x) return line(from.x, from.y, to.x, to.y, broken);
      return rect(from.x - SLIP / 2, Math.min(from.y, to.y), SLIP, Math.abs(to.y - from.y), {
        ...broken,
        fill: 'paper',
      });
    }
    case 'polyline':
    case 'path':
    case 'rect': {
      const { hatch: _hatch, fill, ...plain } = shape;
      return { ...plain, ...(fill === undefined ? {} : { fill: 'paper' as const }), ...broken };
    }
    default:
      return unreachable(shape);
  }
};

const olderShapes = (
  { before, marks }: SectionDifference,
  scale: Parameters<typeof hangingShapes>[2],
): readonly Shape[] => {
  const differing = new Set(marks.map(({ set }) => set));
  const sets = before.sets.filter(({ lineSet }) => differing.has(lineSet.id));
  const options = { moment: before.moment, chosen: null, arbors: false };
  return hangingShapes(sets, before.house, scale, options).map((shape) =>
    group([asBefore(shape)], { part: 'before' }),
  );
};

type Placed = { readonly letter: string; readonly x: number };

const placedMarks = (
  { before, after, marks }: SectionDifference,
  xOf: (upstageM: number) => number,
): { readonly placed: readonly Placed[]; readonly unplaced: readonly string[] } => {
  const found = marks.map(({ set, letter }) => {
    const at = [after, before].flatMap(({ sets }) =>
      sets.filter(({ lineSet }) => lineSet.id === set).flatMap((each) => upstageOf(each) ?? []),
    );
    return { letter, upstageM: at[0] };
  });
  return {
    placed: found
      .flatMap(({ letter, upstageM }) =>
        upstageM === undefined ? [] : [{ letter, x: xOf(upstageM) }],
      )
      .toSorted((one, other) => one.x - other.x),
    unplaced: found.flatMap(({ letter, upstageM }) => (upstageM === undefined ? [letter] : [])),
  };
};

const ROWS = 3;

/** Rows of letters under the field, each led up to its set; three rows, so that all have room. */
const markShapes = (
  placed: readonly Placed[],
  { width, letter, from }: { width: number; letter: number; from: number },
): readonly Shape[] => {
  const apart = (letter * 1.9) / ROWS;
  const places = spread(
    placed.map(({ x }) => x),
    placed.length > 1 ? Math.min(apart, width / placed.length) : apart,
    { from: letter, to: width - letter },
  );
  return placed.map(({ letter: mark, x }, index) => {
    const at = places[index] ?? x;
    const y = from + letter * (1.6 + (index % ROWS) * 1.9);
    return group(
      [
        polyline([point(x, from - 4), point(x, from + 2), point(at, y - letter * 0.85)], {
          stroke: 'blue',
          weight: 'hair',
        }),
        circle(at, y, letter * 0.85, { stroke: 'blue', weight: 'thin', fill: 'paper' }),
        lettering(at, y + letter * 0.34, mark, letter, { anchor: 'middle', weight: 'strong' }),
      ],
      { part: `mark ${mark}` },
    );
  });
};

/** Which line means which revision, in words on the drawing itself. */
const legendShapes = (
  { before, after }: SectionDifference['names'],
  { letter, y, voice }: { readonly letter: number; readonly y: number; readonly voice: Voice },
): readonly Shape[] => {
  const row = (index: number, words: string, style: Parameters<typeof line>[4]): Shape[] => [
    line(2, y + letter * (index * 1.5 + 0.7), 40, y + letter * (index * 1.5 + 0.7), style),
    lettering(48, y + letter * (index * 1.5 + 1), words, letter),
  ];
  return [
    ...row(0, phrase(voice, 'full ink: {after}', { after }), { stroke: 'ink', weight: 'pencil' }),
    ...row(1, phrase(voice, 'broken and hollow: {before}, where it differs', { before }), {
      stroke: 'ink',
      weight: 'thin',
      dash: 'hidden',
    }),
  ];
};

/** As wide as it is given, or less where the field would be taller than can be seen at once. */
export const sectionDifference = (
  difference: SectionDifference,
  { width: given, letter, tallest }: Size,
): DifferencePaper => {
  const { after, names } = difference;
  const strips = sectionStrips(letter, given);
  const whole = wholeSection(after.house);
  const shape = (whole.top - whole.bottom) / (whole.right - whole.left);
  const field = Math.min(given - strips.heights, tallest / shape);
  const room = { width: field, height: Math.round(field * shape) };
  const parts = sectionParts(after, { ...room, letter, strips, view: whole });
  const { placed, unplaced } = placedMarks(difference, parts.scale.xOf);
  const [marksHeight, legendHeight] = [letter * (ROWS * 1.9 + 0.8), letter * 3.4];
  const fieldAt = strips.names;
  const marksAt = fieldAt + room.height;
  const upstageAt = marksAt + marksHeight;
  const legendAt = upstageAt + strips.upstage;
  const at = (x: number, y: number, shapes: readonly Shape[]): Shape =>
    group(shapes, { at: point(x, y) });
  const title = phrase(
    after.house,
    'Section of {name}, looking to stage right: {after} in full, {before} in broken lines',
    { name: after.house.name, after: names.after, before: names.before },
  );
  return {
    drawing: {
      width: room.width + strips.heights,
      height: legendAt + legendHeight,
      title,
      shapes: [
        at(strips.heights, 0, parts.names.shapes),
        at(0, fieldAt, parts.heights.shapes),
        at(strips.heights, fieldAt, olderShapes(difference, parts.scale)),
        at(strips.heights, fieldAt, parts.field.shapes),
        at(strips.heights, marksAt, markShapes(placed, { width: room.width, letter, from: 0 })),
        at(strips.heights, upstageAt, parts.upstage.shapes),
        at(0, legendAt, legendShapes(names, { letter, y: 0, voice: after.house })),
      ],
    },
    unplaced,
  };
};
