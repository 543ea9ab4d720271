/**
 * The wall: the elevation of the operating side, deck to head blocks, one scale of height. One
 * column a set; it shows what was recorded and never a plan.
 */

import type { Assessment, SetAssessment } from '#assessment';
import type { House } from '#house';
import { FOOT } from '#quantities';
import { phrase } from '#texts';
import { arborOutline, arborPlates, arborSpan } from './arbor-shapes.ts';
import { glyphAt, glyphWord } from './glyphs.ts';
import type { HeightScale } from './height-scale.ts';
import { fitHeights, heightToY } from './height-scale.ts';
import { cutTo, linesOfText, textWidth } from './lettering.ts';
import { heightWords, imbalanceWords } from './printed.ts';
import type { Drawing, Shape } from './shape.ts';
import { lettering, line, rect } from './shape.ts';
import { tradeWord } from './trade-words.ts';
import type { WallSigns } from './wall-signs.ts';
import { wallSigns } from './wall-signs.ts';

export type WallOptions = {
  /** 28 on a monitor, 48 on a touch screen. */
  readonly columnWidth: number;
  readonly height: number;
  readonly letter: number;
  /** Width of the names of galleries at the left. */
  readonly margin: number;
  readonly chosen?: string;
  readonly nowMs: number | null;
  /** In a call: what the call says of the set. Else what the record says. */
  readonly signs?: (set: SetAssessment) => WallSigns;
  /** A column as it was drawn before, where set, house and these options are the same. */
  readonly kept?: (set: SetAssessment) => WallColumn | undefined;
};

/** One column, to be laid beside the last; `name` is what a screen reader says of it. */
export type WallColumn = {
  readonly set: string;
  readonly name: string;
  readonly drawing: Drawing;
};

/** The ruling behind all columns, and the columns from the plaster line upstage. */
export type Wall = { readonly frame: Drawing; readonly columns: readonly WallColumn[] };

type WallFrame = WallOptions & { readonly scale: HeightScale; readonly topM: number };

const SIGN = 19;
const SIGN_ROW = 23;
/** A house whose head blocks were not surveyed is drawn to a little above its highest gallery. */
const UNSURVEYED_M = 40 * FOOT;
const ABOVE_GALLERY = 1.2;

const topOf = ({ stage, galleries }: House): number => {
  if (stage.headBlockHeight.known) return stage.headBlockHeight.value;
  const floors = galleries.flatMap(({ floor }) => (floor.known ? [floor.value] : []));
  return Math.max(UNSURVEYED_M, ABOVE_GALLERY * Math.max(0, ...floors));
};

const frameOf = (house: House, options: WallOptions): WallFrame => {
  const { height, letter } = options;
  const topM = topOf(house);
  const scale = fitHeights({
    lowM: 0,
    highM: topM,
    top: letter * 2,
    bottom: height - 2 * SIGN_ROW - 4,
  });
  return { ...options, scale, topM };
};

const hungItems = ({ recorded }: SetAssessment): 'some' | 'none' | 'unknown' => {
  const { items } = recorded.state;
  if (items === null) return 'unknown';
  return items.some(({ phase }) => phase !== 'away' && phase !== 'beside') ? 'some' : 'none';
};

/** What the record says hangs there; a planned name that nobody has hung yet is not shown. */
const nameOf = (set: SetAssessment, house: House): string => {
  switch (hungItems(set)) {
    case 'some':
      return set.hang?.name ?? phrase(house, 'not in the show');
    case 'none':
      return phrase(house, 'empty');
    case 'unknown':
      return phrase(house, 'not recorded');
    default:
      return '';
  }
};

type GuideSpan = readonly [top: number, bottom: number];

const GUIDE_GAP = 6;

const roomOf = ([top, bottom]: GuideSpan): number => bottom - top - GUIDE_GAP;

type TurnedStyle = {
  readonly x: number;
  readonly letter: number;
  readonly isState: boolean;
  readonly isEmpty: boolean;
};

/**
 * Words turned along the guide, reading upward from the foot of their span. The guide stops behind
 * them: a line that shows between two words reads as a dash.
 */
const turned = (
  text: string,
  [, bottom]: GuideSpan,
  { x, letter, isState, isEmpty }: TurnedStyle,
): readonly Shape[] => {
  const weight = isState ? 'strong' : 'plain';
  const length = textWidth(text, letter, { weight });
  const foot = bottom - GUIDE_GAP / 2;
  return [
    rect(x - letter / 2, foot - length, letter, length, { fill: 'paper' }),
    lettering(x + letter * 0.34, foot, text, letter, {
      turned: true,
      backed: true,
      weight,
      pen: isEmpty && !isState ? 'ink2' : 'ink',
    }),
  ];
};

/**
 * The name where there is more room, the state word on the other side of the arbor, or behind
 * the name where that side is short; a name that then has no room gives way to the word.
 */
const turnedWords = (
  { name, word, isEmpty }: { name: string; word: string | null; isEmpty: boolean },
  { x, above, below }: { x: number; above: GuideSpan; below: GuideSpan },
  letter: number,
): readonly Shape[] => {
  const [first, second] = roomOf(above) >= roomOf(below) ? [above, below] : [below, above];
  const style = { x, letter, isEmpty };
  if (word === null) {
    return turned(cutTo(name, roomOf(first), letter), first, { ...style, isState: false });
  }
  const wordLength = textWidth(word, letter, { weight: 'strong' });
  if (wordLength <= roomOf(second)) {
    return [
      ...turned(cutTo(name, roomOf(first), letter), first, { ...style, isState: false }),
      ...turned(word, second, { ...style, isState: true }),
    ];
  }
  const stated = turned(word, first, { ...style, isState: true });
  const rest: GuideSpan = [first[0], first[1] - wordLength - GUIDE_GAP];
  if (textWidth(name, letter) > roomOf(rest)) return stated;
  return [...stated, ...turned(name, rest, { ...style, isState: false })];
};

const motorShapes = (x: number, { scale, topM }: WallFrame): readonly Shape[] => {
  const y = heightToY(scale, topM) + 4;
  const outline = { stroke: 'ink', weight: 'thin' } as const;
  return [
    rect(x - 7, y, 14, 10, { ...outline, fill: 'paper' }),
    line(x - 7, y, x + 7, y + 10, outline),
    line(x + 7, y, x - 7, y + 10, outline),
  ];
};

const arborShapes = (
  set: SetAssessment,
  house: House,
  frame: WallFrame,
): { readonly shapes: readonly Shape[]; readonly top: number; readonly bottom: number } => {
  const { columnWidth, scale, topM } = frame;
  const x = columnWidth / 2;
  const deck = heightToY(scale, 0);
  const { state } = set.recorded;
  const { arbor } = set.lineSet;
  if (arbor === null) {
    const top = heightToY(scale, topM);
    return { shapes: motorShapes(x, frame), top, bottom: top + 18 };
  }
  const span = state.height === null ? null : arborSpan(set.lineSet, state.height.high);
  const lower = state.height === null ? null : arborSpan(set.lineSet, state.height.low);
  if (span === null || lower === null) {
    const y = (heightToY(scale, topM) + deck) / 2;
    return { shapes: [glyphAt('unknown', x - 8, y - 8, 16)], top: y - 10, bottom: y + 10 };
  }
  const width = Math.min(16, columnWidth * 0.58);
  const place = { x, width, scale };
  const other =
    span.bottomM === lower.bottomM
      ? []
      : arborOutline(lower, place, { stroke: 'ink', weight: 'thin', dash: 'hidden' });
  const outline = arborOutline(span, place, {
    stroke: 'ink',
    weight: 'mid',
    ...(state.stack === null ? { dash: 'plan' as const } : {}),
  });
  const plates = arborPlates(
    state.stack ?? [],
    { arbor, house },
    { ...place, bottomM: span.bottomM },
  );
  return {
    shapes: [...other, ...outline, ...plates],
    top: heightToY(scale, Math.max(span.topM, lower.topM)),
    bottom: heightToY(scale, Math.min(span.bottomM, lower.bottomM)),
  };
};

const signShapes = (signs: WallSigns, house: House, frame: WallFrame): readonly Shape[] => {
  const x = frame.columnWidth / 2 - SIGN / 2;
  const deck = heightToY(frame.scale, 0);
  const mirrored = house.stage.operatingSide === 'stageLeft';
  return [signs.balance, signs.hold].flatMap((name, row) =>
    name === null ? [] : [glyphAt(name, x, deck + 5 + row * SIGN_ROW, SIGN, { mirrored })],
  );
};

const spoken = (set: SetAssessment, house: House, signs: WallSigns): string => {
  const { state, imbalance } = set.recorded;
  const { height } = state;
  const at =
    height === null
      ? []
      : [phrase(house, 'batten at {at}', { at: heightWords(house, height.high) })];
  const balance =
    imbalance.known && imbalance.value.low === imbalance.value.high
      ? [imbalanceWords(house, imbalance.value.low)]
      : [];
  return [
    phrase(house, 'Set {id}', { id: set.lineSet.id }),
    nameOf(set, house),
    ...(signs.word === null ? [] : [signs.word]),
    ...at,
    ...balance,
    ...(signs.hold === null ? [] : [glyphWord(house, signs.hold)]),
  ].join(', ');
};

const columnOf = (set: SetAssessment, house: House, frame: WallFrame): WallColumn => {
  const { columnWidth, height, letter, scale, chosen, nowMs } = frame;
  const { id, arbor } = set.lineSet;
  const x = columnWidth / 2;
  const deck = heightToY(scale, 0);
  const top = letter * 1.5;
  const signs = frame.signs?.(set) ?? wallSigns(set, house, nowMs);
  const arborAt = arborShapes(set, house, frame);
  const isEmpty = hungItems(set) !== 'some';
  const words = turnedWords(
    { name: nameOf(set, house), word: signs.word, isEmpty },
    { x, above: [top, arborAt.top], below: [arborAt.bottom, deck] },
    letter,
  );
  const guide = arbor === null ? [] : [line(x, top, x, deck, { stroke: 'line', weight: 'thin' })];
  const outline = { stroke: 'blue', weight: 'pencil' } as const;
  const mark = id === chosen ? [rect(1.5, 1.5, columnWidth - 3, height - 3, outline)] : [];
  const name = spoken(set, house, signs);
  return {
    set: id,
    name,
    drawing: {
      width: columnWidth,
      height,
      title: name,
      shapes: [
        lettering(x, letter, id, letter, {
          anchor: 'middle',
          weight: isEmpty ? 'plain' : 'strong',
          pen: isEmpty ? 'ink2' : 'ink',
        }),
        ...guide,
        ...arborAt.shapes,
        ...words,
        ...signShapes(signs, house, frame),
        ...mark,
      ],
    },
  };
};

const floorsOf = ({ galleries, rails }: House) =>
  [...galleries, ...rails].flatMap(({ name, floor }) =>
    floor.known && floor.value > 0 ? [{ name, floorM: floor.value }] : [],
  );

const rulingOf = (house: House, frame: WallFrame, width: number): readonly Shape[] => {
  const { margin, letter, scale, height } = frame;
  const deck = heightToY(scale, 0);
  const named = (words: string, y: number): readonly Shape[] => {
    const lines = linesOfText(words, letter, margin - 8);
    return lines.map((text, index) =>
      lettering(margin - 6, y + letter * (0.34 + index - (lines.length - 1) / 2), text, letter, {
        anchor: 'end',
        pen: 'ink2',
      }),
    );
  };
  const floors = floorsOf(house).flatMap(({ name, floorM }) => {
    const y = heightToY(scale, floorM);
    return [line(margin - 4, y, width, y, { stroke: 'line', weight: 'thin' }), ...named(name, y)];
  });
  return [
    ...named(phrase(house, 'set'), letter * 0.66),
    ...floors,
    line(margin - 4, deck, width, deck, { stroke: 'ink', weight: 'thick' }),
    ...named(tradeWord(house, 'deck'), deck),
    ...named(phrase(house, 'balance'), deck + 5 + SIGN / 2),
    ...named(phrase(house, 'held by'), deck + 5 + SIGN_ROW + SIGN / 2),
    line(0, height - 0.5, width, height - 0.5, { stroke: 'line', weight: 'thin' }),
  ];
};

/** The elevation of the operating side, from records only. */
export const wallDrawing = (
  assessment: Pick<Assessment, 'sets'>,
  house: House,
  options: WallOptions,
): Wall => {
  const frame = frameOf(house, options);
  const width = options.margin + assessment.sets.length * options.columnWidth;
  return {
    frame: {
      width,
      height: options.height,
      title: phrase(house, 'The wall of {name}, from the plaster line upstage', {
        name: house.name,
      }),
      shapes: rulingOf(house, frame, width),
    },
    columns: assessment.sets.map((set) => options.kept?.(set) ?? columnOf(set, house, frame)),
  };
};
