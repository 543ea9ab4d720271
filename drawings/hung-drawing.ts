/** The set from the house: batten and what hangs on it at its highest trim, the lowest dashed. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { formatLength, metres } from '#quantities';
import { phrase } from '#texts';
import type { HangingItem } from './hanging-points.ts';
import { hangingItems, placesOf } from './hanging-points.ts';
import type { HeightScale } from './height-scale.ts';
import { fitHeights, heightToY } from './height-scale.ts';
import { linesOfText } from './lettering.ts';
import { heightWords } from './printed.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing, Shape, Style } from './shape.ts';
import { group, lettering, line, rect } from './shape.ts';
import { textBlock } from './text-block.ts';

export type HungOptions = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly scale?: HeightScale;
};

type HungFrame = {
  readonly options: HungOptions;
  readonly scale: HeightScale;
  readonly xOf: (acrossM: number) => number;
  readonly perMetre: number;
  /** The loft blocks, or about where they would be. */
  readonly topM: number;
};

const FALLBACK_TOP_M = 20;

const frameOf = (set: SetAssessment, house: House, options: HungOptions): HungFrame => {
  const { width, height, letter } = options;
  const { batten } = set.lineSet;
  const { loftBlockHeight, openingWidth } = house.stage;
  const topM = loftBlockHeight.known ? loftBlockHeight.value : FALLBACK_TOP_M;
  const halves = [
    batten.left.known ? Math.abs(batten.left.value) : 0,
    batten.right.known ? Math.abs(batten.right.value) : 0,
    openingWidth.known ? openingWidth.value / 2 : 0,
  ];
  const widestM = 2 * Math.max(1, ...halves);
  const fitted = fitHeights({
    lowM: 0,
    highM: topM,
    top: letter * 2,
    bottom: height - letter * 2.4,
  });
  const across = (width - letter) / widestM;
  const scale = options.scale ?? {
    perMetre: Math.min(fitted.perMetre, across),
    deckAt: height - letter * 2.4,
  };
  const perMetre = Math.min(scale.perMetre, across);
  return { options, scale, perMetre, topM, xOf: (acrossM) => width / 2 + acrossM * perMetre };
};

/** Under the head of the opening, or above it, or at its foot: where no trim and its word lie. */
const openingWordsAt = (set: SetAssessment, { options, scale }: HungFrame, top: number): number => {
  const { letter } = options;
  const trims = (set.hang?.trims ?? []).flatMap(({ height }) =>
    height.known ? [heightToY(scale, height.value)] : [],
  );
  const isFree = (y: number): boolean =>
    trims.every((trim) => y + letter * 0.25 < trim - letter * 1.4 || y - letter > trim);
  const places = [top + letter * 1.2, top - letter * 0.4, heightToY(scale, 0) - letter * 0.5];
  return places.find(isFree) ?? top + letter * 1.2;
};

const stageShapes = (set: SetAssessment, house: House, frame: HungFrame): readonly Shape[] => {
  const { options, scale, xOf } = frame;
  const { openingWidth, openingHeight } = house.stage;
  const { letter, width } = options;
  const deckY = heightToY(scale, 0);
  const deck = line(0, deckY, width, deckY, { stroke: 'ink', weight: 'thick' });
  if (!openingWidth.known || !openingHeight.known) return [deck];
  const half = openingWidth.value / 2;
  const top = heightToY(scale, openingHeight.value);
  const sizes = [openingWidth.value, openingHeight.value].map((sizeM) =>
    formatLength(metres(sizeM), house),
  );
  return [
    deck,
    rect(xOf(-half), top, xOf(half) - xOf(-half), deckY - top, {
      stroke: 'line',
      weight: 'thin',
      dash: 'hidden',
    }),
    lettering(
      xOf(-half) + 4,
      openingWordsAt(set, frame, top),
      phrase(house, 'opening {sizes}', { sizes: sizes.join(phrase(house, ' by ')) }),
      letter,
      {
        pen: 'ink2',
        backed: true,
      },
    ),
  ];
};

const widthOf = (item: HangingItem, frame: HungFrame, set: SetAssessment) => {
  const places = placesOf(item);
  const { batten } = set.lineSet;
  const left = item.span?.from ?? places[0] ?? (batten.left.known ? batten.left.value : -1);
  const right = item.span?.to ?? places.at(-1) ?? (batten.right.known ? batten.right.value : 1);
  return { left: frame.xOf(left), right: frame.xOf(right) };
};

/** The piece below its batten; what would lie under the deck lies on it. */
const pieceShapes = (
  item: HangingItem,
  battenM: number,
  { frame, set, style }: { frame: HungFrame; set: SetAssessment; style: Style },
): readonly Shape[] => {
  const { drop, pick } = item.item;
  if (!drop.known || drop.value === 0) return [];
  const pickM = pick.known ? pick.value : 0;
  const { scale } = frame;
  const { left, right } = widthOf(item, frame, set);
  const top = heightToY(scale, Math.max(0, battenM - pickM));
  const bottom = heightToY(scale, Math.max(0, battenM - pickM - drop.value));
  const y = heightToY(scale, battenM);
  const picks = [left, right].map((x) => line(x, y, x, top, { ...style, weight: 'thin' }));
  return [
    ...(pickM > 0 ? picks : []),
    rect(left, top, Math.max(2, right - left), bottom - top, style),
  ];
};

const battenShapes = (
  set: SetAssessment,
  heightM: number,
  frame: HungFrame,
  style: Style,
): readonly Shape[] => {
  const { batten } = set.lineSet;
  if (!batten.left.known || !batten.right.known) return [];
  const y = heightToY(frame.scale, heightM);
  return [line(frame.xOf(batten.left.value), y, frame.xOf(batten.right.value), y, style)];
};

const loftBlocks = (house: House, { options, scale }: HungFrame): readonly Shape[] => {
  const { loftBlockHeight } = house.stage;
  if (!loftBlockHeight.known) return [];
  const top = heightToY(scale, loftBlockHeight.value);
  const { letter, width } = options;
  return [
    line(0, top, width, top, { stroke: 'ink', weight: 'mid' }),
    lettering(width, top - letter * 0.4, phrase(house, 'loft blocks'), letter, {
      anchor: 'end',
      pen: 'ink2',
    }),
  ];
};

const liftLines = (set: SetAssessment, house: House, frame: HungFrame, heightM: number) => {
  const { loftBlockHeight } = house.stage;
  if (!loftBlockHeight.known) return [];
  const top = heightToY(frame.scale, loftBlockHeight.value);
  const y = heightToY(frame.scale, heightM);
  return [
    ...loftBlocks(house, frame),
    ...(set.lineSet.lineXs ?? []).map((acrossM) =>
      line(frame.xOf(acrossM), top, frame.xOf(acrossM), y, { stroke: 'ink', weight: 'thin' }),
    ),
  ];
};

const heightLabel = (words: string, y: number, { options }: HungFrame): Shape =>
  lettering(options.width, y - options.letter * 0.4, words, options.letter, {
    anchor: 'end',
    backed: true,
  });

const positionShapes = (set: SetAssessment, house: House, frame: HungFrame): readonly Shape[] => {
  const trims = (set.hang?.trims ?? []).flatMap(({ name, height }) =>
    height.known ? [{ name, heightM: height.value as number }] : [],
  );
  const sorted = trims.toSorted((one, other) => other.heightM - one.heightM);
  const items = hangingItems(set);
  const dashed = { stroke: 'ink2', weight: 'thin', dash: 'other' } as const;
  const solid = { stroke: 'ink', weight: 'mid' } as const;
  return sorted.flatMap(({ name, heightM }, index) => {
    const style: Style = index === 0 ? solid : dashed;
    const y = heightToY(frame.scale, heightM);
    return [
      ...(index === 0 ? liftLines(set, house, frame, heightM) : []),
      ...items.flatMap((item) => pieceShapes(item, heightM, { frame, set, style })),
      ...battenShapes(set, heightM, frame, index === 0 ? { ...solid, weight: 'thick' } : dashed),
      heightLabel(`${name} ${heightWords(house, heightM)}`, y, frame),
    ];
  });
};

/** The house with nothing in it, and the one sentence; a plan gives an empty batten no height. */
const emptySet = (title: string, set: SetAssessment, house: House, frame: HungFrame): Drawing => {
  const { width, height, letter } = frame.options;
  const sentence = phrase(house, 'Nothing is planned on this set.');
  const lines = linesOfText(sentence, letter, width - letter);
  const block = textBlock(
    lines.map((text) => ({ text })),
    letter,
  );
  return {
    width,
    height,
    title: `${title}: ${sentence}`,
    shapes: [
      ...stageShapes(set, house, frame),
      ...loftBlocks(house, frame),
      ...block.at({ x: letter / 2, y: heightToY(frame.scale, frame.topM) + letter }),
    ],
  };
};

/** Heights and widths at one scale; where the width forces another, the drawing says so. */
export const hungDrawing = (set: SetAssessment, house: House, options: HungOptions): Drawing => {
  const { width, height, letter } = options;
  const title = phrase(house, 'Set {id} from the house', { id: set.lineSet.id });
  const frame = frameOf(set, house, options);
  if (set.hang === null) return emptySet(title, set, house, frame);
  const deckY = heightToY(frame.scale, 0);
  const isOneScale = frame.perMetre === frame.scale.perMetre;
  return {
    width,
    height,
    title,
    shapes: [
      ...stageShapes(set, house, frame),
      group([...positionShapes(set, house, frame)], { part: 'positions' }),
      scaleBar({
        x: 0,
        y: deckY + letter * 0.9,
        room: width / 3,
        perMetre: frame.perMetre,
        units: house.units,
        letter,
      }),
      ...(isOneScale
        ? []
        : [
            lettering(
              width,
              deckY + letter * 1.4,
              phrase(house, 'heights not to this scale'),
              letter,
              {
                anchor: 'end',
                pen: 'ink2',
              },
            ),
          ]),
    ],
  };
};
