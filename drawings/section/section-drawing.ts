/**
 * The section of the house, looking to stage right: audience at the left, upstage to the right, one
 * scale both ways. Three strips stand round the field: names of sets above, heights at the left,
 * the measure upstage below. They are drawings of their own, so that a screen may move the house
 * under them.
 */

import type { HouseMoment, SetAssessment } from '#assessment';
import type { House } from '#house';
import { NO_BREAK_SPACE } from '#quantities';
import { phrase } from '#texts';
import { type FieldScale, type FieldView, fieldScale, fitted } from '../field-view.ts';
import { cutTo, linesOfText, piecesOfWord } from '../lettering.ts';
import { measureStrip } from '../measure-strip.ts';
import { heightWords } from '../printed.ts';
import { type Drawing, group, lettering, point, polyline, type Shape } from '../shape.ts';
import { buildingShapes, houseTop, namedHeights, stageDepth } from './building.ts';
import { type HangingOptions, hangingShapes, upstageOf } from './hangings.ts';
import { spread } from './spread.ts';

export type SectionSubject = {
  readonly house: House;
  readonly sets: readonly SetAssessment[];
  readonly moment: HouseMoment;
};

export type SectionOptions = {
  /** The field alone, without the strips. */
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly view: FieldView;
  readonly strips: SectionStrips;
  readonly chosen?: string | null;
  readonly arbors?: boolean;
};

export type SectionParts = {
  readonly field: Drawing;
  readonly names: Drawing;
  readonly heights: Drawing;
  readonly upstage: Drawing;
  readonly scale: FieldScale;
  /** Sets that have a name and no room for it above; the table has them all. */
  readonly unnamed: number;
};

/** The stage house whole: a metre more at each side, and below the deck for its names. */
export const wholeSection = (house: House): FieldView => {
  const { fromY, toY } = stageDepth(house);
  return { left: fromY - 1, right: toY + 1, bottom: -1.4, top: houseTop(house) + 0.6 };
};

/** The same with the eyes in the auditorium. */
export const sectionWithEyes = (house: House): FieldView => {
  const whole = wholeSection(house);
  const [ys, zs] = [house.eyes.map(({ y }) => y as number), house.eyes.map(({ z }) => z as number)];
  return {
    ...whole,
    left: Math.min(whole.left, ...ys.map((y) => y - 2)),
    bottom: Math.min(whole.bottom, ...zs.map((z) => z - 1)),
  };
};

/** Room of the strips round a field, of so much width for both: a phone has less. */
export type SectionStrips = {
  readonly names: number;
  readonly heights: number;
  readonly upstage: number;
};

export const sectionStrips = (letter: number, width: number): SectionStrips => ({
  names: letter * 14,
  heights: Math.min(letter * 8.5, Math.max(letter * 5, width * 0.16)),
  upstage: letter * 4,
});

const GAP = 5;

const isNamed = ({ lineSet, hang }: SetAssessment, { sets }: HouseMoment): boolean =>
  hang !== null || (sets.get(lineSet.id)?.items?.length ?? 0) > 0;

const namesOf = (
  { house, sets, moment }: SectionSubject,
  { width, letter, strips, chosen = null }: SectionOptions,
  scale: FieldScale,
): { readonly drawing: Drawing; readonly unnamed: number } => {
  const height = strips.names;
  const apart = letter * 1.12;
  const inSight = sets
    .flatMap((set) => {
      const upstageM = upstageOf(set);
      const x = upstageM === null ? -1 : scale.xOf(upstageM);
      return x < 0 || x > width || !isNamed(set, moment) ? [] : [{ set, x }];
    })
    .toSorted((one, other) => one.x - other.x);
  const most = Math.max(1, Math.floor((width - letter) / apart));
  // Every second or third over the whole depth, so that a name is near its set, and the set in
  // hand too.
  const every = Math.ceil(inSight.length / most);
  const shown = inSight.filter(
    ({ set }, index) => index % every === 0 || set.lineSet.id === chosen,
  );
  const places = spread(
    shown.map(({ x }) => x),
    apart,
    { from: letter, to: width - 2 },
  );
  const foot = height - letter * 2.2;
  const shapes = shown.flatMap(({ set, x }, index): readonly Shape[] => {
    const at = places[index] ?? x;
    const isChosen = set.lineSet.id === chosen;
    const pen = isChosen ? 'blue' : 'ink';
    const words = `${set.lineSet.id}${NO_BREAK_SPACE}${NO_BREAK_SPACE}${set.hang?.name ?? ''}`;
    return [
      lettering(at + letter * 0.34, foot, cutTo(words, foot - 2, letter), letter, {
        turned: true,
        pen,
        weight: isChosen ? 'strong' : 'plain',
      }),
      polyline([point(at, foot + GAP), point(at, foot + GAP * 2), point(x, height)], {
        stroke: isChosen ? 'blue' : 'line',
        weight: 'hair',
      }),
    ];
  });
  const title = phrase(house, 'Names of the sets of {name}', { name: house.name });
  return { drawing: { width, height, title, shapes }, unnamed: inSight.length - shown.length };
};

const heightsOf = (
  house: House,
  { height, letter, strips }: SectionOptions,
  scale: FieldScale,
): Drawing => {
  const width = strips.heights;
  const inSight = namedHeights(house)
    .map((each) => ({ ...each, y: scale.yOf(each.heightM) }))
    .filter(({ y }) => y >= 0 && y <= height)
    .toReversed()
    .map((each) => {
      const room = width - 10;
      // The figure stands alone, so that no name runs into it and it is found first.
      const lines = [
        ...linesOfText(each.name, letter, room).flatMap((line) => piecesOfWord(line, letter, room)),
        heightWords(house, each.heightM),
      ];
      return { ...each, lines };
    });
  // The tallest label sets the distance for all: there are few of them.
  const apart = letter * 1.15 * Math.max(1, ...inSight.map(({ lines }) => lines.length));
  const places = spread(
    inSight.map(({ y }) => y),
    apart,
    { from: apart / 2, to: height - apart / 2 },
  );
  const shapes = inSight.flatMap(({ y, lines }, index): readonly Shape[] => {
    const at = places[index] ?? y;
    return [
      polyline([point(width - 7, at), point(width, y)], { stroke: 'line', weight: 'hair' }),
      ...lines.map((text, row) =>
        lettering(
          width - 9,
          at + letter * (0.34 + 1.1 * (row - (lines.length - 1) / 2)),
          text,
          letter,
          row === lines.length - 1
            ? { anchor: 'end', pen: 'ink', weight: 'strong' }
            : { anchor: 'end', pen: 'ink2' },
        ),
      ),
    ];
  });
  return { width, height, title: phrase(house, 'Heights of {name}', { name: house.name }), shapes };
};

export const sectionTitle = ({ house, moment }: SectionSubject): string =>
  phrase(house, 'Section of {name}, {is}, looking to stage right', {
    name: house.name,
    is: moment.is,
  });

/** Everything that is in the view, strip by strip. */
export const sectionParts = (subject: SectionSubject, options: SectionOptions): SectionParts => {
  const { house, sets, moment } = subject;
  const { width, height, letter, view, strips, chosen = null, arbors = false } = options;
  const scale = fieldScale(view, { width, height });
  const hanging: HangingOptions = { moment, chosen, arbors };
  const names = namesOf(subject, options, scale);
  return {
    field: {
      width,
      height,
      title: sectionTitle(subject),
      shapes: [
        group(buildingShapes(house, scale, letter), { part: 'building' }),
        ...hangingShapes(sets, house, scale, hanging),
      ],
    },
    names: names.drawing,
    heights: heightsOf(house, options, scale),
    upstage: measureStrip(house, scale, {
      letter,
      view,
      height: strips.upstage,
      words: phrase(house, 'from the plaster line; upstage to the right'),
    }),
    scale,
    unnamed: names.unnamed,
  };
};

/** Field and strips on one paper, the whole stage house in view: for print and for files. */
export const sectionDrawing = (
  subject: SectionSubject,
  { width, height, letter, ...options }: Omit<SectionOptions, 'view' | 'strips'>,
): Drawing => {
  const strips = sectionStrips(letter, width);
  const room = {
    width: width - strips.heights,
    height: height - strips.names - strips.upstage,
  };
  const view = fitted(wholeSection(subject.house), room);
  const parts = sectionParts(subject, { ...options, ...room, letter, strips, view });
  const at = (x: number, y: number, drawing: Drawing): Shape =>
    group(drawing.shapes, { at: point(x, y) });
  return {
    width,
    height,
    title: sectionTitle(subject),
    shapes: [
      at(strips.heights, 0, parts.names),
      at(0, strips.names, parts.heights),
      at(strips.heights, strips.names, parts.field),
      at(strips.heights, strips.names + room.height, parts.upstage),
    ],
  };
};
