/** One arbor on its wall: galleries and heights, where it was recorded, where trims put it. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { phrase } from '#texts';
import { arborOutline, arborPlates, arborSpan } from './arbor-shapes.ts';
import type { Box } from './boxes.ts';
import { freeBox } from './boxes.ts';
import { emptyDrawing } from './empty-drawing.ts';
import type { HeightScale } from './height-scale.ts';
import { fitHeights, heightToY } from './height-scale.ts';
import { linesOfText, textWidth } from './lettering.ts';
import { suspensionSentence } from './no-arbor.ts';
import { runsOf } from './plates.ts';
import { heightWords } from './printed.ts';
import type { Drawing, Shape } from './shape.ts';
import { group, lettering, line, rect } from './shape.ts';
import { textBlock } from './text-block.ts';
import { tradeWord } from './trade-words.ts';

export type ArborOptions = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly scale?: HeightScale;
};

type ArborFrame = {
  readonly options: ArborOptions;
  readonly scale: HeightScale;
  readonly guideX: number;
  readonly wallX: number;
  readonly width: number;
};

const ARBOR_WIDTH = 24;
const WALL_WIDTH = 10;

const frameOf = (set: SetAssessment, house: House, options: ArborOptions): ArborFrame => {
  const { arbor, lowStop } = set.lineSet;
  const lowSpan = lowStop.height.known ? arborSpan(set.lineSet, lowStop.height.value) : null;
  const { headBlockHeight } = house.stage;
  const topM = headBlockHeight.known ? headBlockHeight.value : (lowSpan?.topM ?? 1);
  const scale =
    options.scale ??
    fitHeights({
      lowM: 0,
      highM: Math.max(topM, arbor === null ? 0 : (lowSpan?.topM ?? 0)),
      top: options.letter,
      bottom: options.height - options.letter * 1.6,
    });
  const wallX = options.width - WALL_WIDTH;
  return { options, scale, wallX, guideX: wallX - ARBOR_WIDTH, width: ARBOR_WIDTH };
};

type FloorWords = { readonly above: string; readonly below: string | null };

/** Name and height over the floor's line; height beneath where both would meet the arbor. */
const floorWords = (
  { name, heightM }: { readonly name: string; readonly heightM: number },
  house: House,
  { guideX, width, options }: ArborFrame,
): FloorWords => {
  const height = heightWords(house, heightM);
  const whole = `${name} ${height}`;
  return textWidth(whole, options.letter) <= guideX - width / 2 - options.letter * 0.5
    ? { above: whole, below: null }
    : { above: name, below: height };
};

const floorShapes = (house: House, frame: ArborFrame): readonly Shape[] => {
  const { options, scale, wallX } = frame;
  const { letter } = options;
  const deckY = heightToY(scale, 0);
  const floors = [...house.galleries, ...house.rails].flatMap(({ name, floor }) => {
    if (!floor.known || floor.value === 0) return [];
    const y = heightToY(scale, floor.value);
    const style = { pen: 'ink2', backed: true } as const;
    const { above, below } = floorWords({ name, heightM: floor.value }, house, frame);
    return [
      lettering(0, y - letter * 0.45, above, letter, style),
      ...(below === null ? [] : [lettering(0, y + letter * 1.15, below, letter, style)]),
      line(0, y, wallX * 0.42, y, { stroke: 'ink', weight: 'thick' }),
    ];
  });
  return [
    ...floors,
    line(0, deckY, wallX, deckY, { stroke: 'ink', weight: 'thick' }),
    lettering(
      0,
      deckY + letter * 1.2,
      phrase(house, 'deck {at}', { at: heightWords(house, 0) }),
      letter,
      {
        pen: 'ink2',
      },
    ),
  ];
};

type Position = {
  readonly span: { readonly bottomM: number; readonly topM: number };
  readonly lines: readonly string[];
  readonly isNow: boolean;
};

const positionsOf = (set: SetAssessment, house: House): readonly Position[] => {
  const { lineSet, recorded, hang } = set;
  const batten = tradeWord(house, 'batten');
  const at = (battenM: number, lines: readonly string[], isNow: boolean): readonly Position[] => {
    const span = arborSpan(lineSet, battenM);
    return span === null ? [] : [{ span, lines, isNow }];
  };
  const { height } = recorded.state;
  const now =
    height === null
      ? []
      : at(
          height.high,
          [
            phrase(house, 'now: {batten}', { batten }),
            phrase(house, 'at {height}', { height: heightWords(house, height.high) }),
          ],
          true,
        );
  const trims = (hang?.trims ?? []).flatMap(({ name, height: trimHeight }) =>
    trimHeight.known && trimHeight.value !== height?.high
      ? at(
          trimHeight.value,
          [
            phrase(house, '{name} trim:', { name }),
            `${batten} ${heightWords(house, trimHeight.value)}`,
          ],
          false,
        )
      : [],
  );
  return [...now, ...trims];
};

/** Labels left of the guide, each clear of the floors and of those before. */
const positionShapes = (set: SetAssessment, house: House, frame: ArborFrame): readonly Shape[] => {
  const { options, scale, guideX, width } = frame;
  const { letter } = options;
  const field: Box = { x: 0, y: 0, width: options.width, height: options.height };
  const floors = [...house.galleries, ...house.rails].flatMap(({ name, floor }): readonly Box[] => {
    if (!floor.known) return [];
    const { below } = floorWords({ name, heightM: floor.value }, house, frame);
    return [
      {
        x: 0,
        y: heightToY(scale, floor.value) - letter * 1.4,
        width: guideX * 0.75,
        height: letter * (below === null ? 1.7 : 2.8),
      },
    ];
  });
  const room = guideX - width / 2 - letter;
  const done = positionsOf(set, house).reduce<{ shapes: readonly Shape[]; taken: readonly Box[] }>(
    (before, { span, lines, isNow }) => {
      const weight = { weight: isNow ? 'strong' : 'plain' } as const;
      const block = textBlock(
        lines
          .flatMap((text) => linesOfText(text, letter, room, weight))
          .map((text) => ({ text, strong: isNow })),
        letter,
        { anchor: 'end', pen: isNow ? 'ink' : 'ink2' },
      );
      const middle = (heightToY(scale, span.topM) + heightToY(scale, span.bottomM)) / 2;
      const x = guideX - width / 2 - block.width - letter;
      const candidates = [0, -1, 1, -2, 2, -3, 3, -4, 4].map((step) => ({
        x,
        y: middle - block.height / 2 + step * letter,
        width: block.width,
        height: block.height,
      }));
      const box = freeBox(candidates, before.taken, field);
      const style = isNow
        ? ({ stroke: 'ink', weight: 'mid' } as const)
        : ({ stroke: 'ink2', weight: 'thin', dash: 'other' } as const);
      const outline = arborOutline(span, { x: guideX, width, scale }, style);
      if (box === undefined) return { ...before, shapes: [...before.shapes, ...outline] };
      return {
        shapes: [...before.shapes, ...outline, ...block.at(box)],
        taken: [...before.taken, box],
      };
    },
    { shapes: [], taken: floors },
  );
  return done.shapes;
};

const recordedPlates = (
  set: SetAssessment,
  house: House,
  { guideX, width, scale }: ArborFrame,
): readonly Shape[] => {
  const { arbor } = set.lineSet;
  const { height } = set.recorded.state;
  const runs = runsOf(set, 'record');
  const span = height === null ? null : arborSpan(set.lineSet, height.high);
  if (arbor === null || runs === null || span === null) return [];
  const place = { x: guideX, width, scale, bottomM: span.bottomM };
  return arborPlates(runs, { arbor, house }, place);
};

/** The arbor on its wall with the galleries: where it was recorded, and where the trims put it. */
export const arborDrawing = (set: SetAssessment, house: House, options: ArborOptions): Drawing => {
  const { width, height } = options;
  const title = phrase(house, 'arbor of set {id} on its wall', { id: set.lineSet.id });
  if (set.lineSet.arbor === null) {
    return emptyDrawing(title, suspensionSentence(set.lineSet, house), options);
  }
  const frame = frameOf(set, house, options);
  const { scale, wallX, guideX } = frame;
  const deckY = heightToY(scale, 0);
  const wall = rect(wallX, 0, WALL_WIDTH, deckY, { hatch: 'cut' });
  const face = line(wallX, 0, wallX, deckY, { stroke: 'ink', weight: 'thick' });
  return {
    width,
    height,
    title,
    shapes: [
      wall,
      face,
      line(guideX, 0, guideX, deckY, { stroke: 'line', weight: 'thin' }),
      ...floorShapes(house, frame),
      group([...positionShapes(set, house, frame)], { part: 'positions' }),
      ...recordedPlates(set, house, frame),
    ],
  };
};
