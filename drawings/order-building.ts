/** What stands round a set and never moves: wall, gallery ledges, deck, blocks; and its arbor. */
import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import type { Standing } from '#state';
import { arborOutline, arborPlates, arborSpan } from './arbor-shapes.ts';
import { boxBetween, levelLine, type OrderFrame } from './order-frame.ts';
import { heightWords } from './printed.ts';
import type { Shape, Style } from './shape.ts';
import { group, lettering, line } from './shape.ts';

const INK = { stroke: 'ink', weight: 'thin' } as const;
const RAIL_SHARE = 0.7;

/** Wall in section, each gallery as a ledge on it, each rail as a shorter one. */
export const buildingShapes = (house: House, frame: OrderFrame): readonly Shape[] => {
  const { at, deckY, width, ledge, topM, y, letter } = frame;
  const ledges = [
    ...house.galleries.map((each) => ({ ...each, length: ledge, weight: 'thick' as const })),
    ...house.rails.map((each) => ({
      ...each,
      length: ledge * RAIL_SHARE,
      weight: 'mid' as const,
    })),
  ].flatMap(({ name, floor, length, weight }): readonly Shape[] => {
    if (!floor.known || floor.value <= 0) return [];
    const shelf = levelLine(frame, floor.value, [at(2), at(length)], { stroke: 'ink', weight });
    if (frame.isLettered !== true) return [shelf];
    const words = `${name} ${heightWords(house, floor.value)}`;
    const anchor = frame.side === 1 ? 'start' : 'end';
    const label = lettering(at(6), y(floor.value) + letter * 1.1, words, letter, {
      anchor,
      pen: 'ink2',
      backed: true,
    });
    return [shelf, label];
  });
  return [
    line(at(1), y(topM), at(1), deckY, { stroke: 'ink', weight: 'thick' }),
    ...ledges,
    boxBetween({ x: 0, y: deckY }, { x: width, y: deckY + 5 }, { hatch: 'cut' }),
    line(0, deckY, width, deckY, { stroke: 'ink', weight: 'thick' }),
  ];
};

const loftM = ({ stage }: House, { topM }: OrderFrame): number =>
  stage.loftBlockHeight.known ? stage.loftBlockHeight.value : topM;

/** From the arbor over the head block across to the loft blocks and down to the batten. */
export const ropeShapes = (
  set: SetAssessment,
  house: House,
  frame: OrderFrame,
  standing: Pick<Standing, 'height'>,
): readonly Shape[] => {
  const { guideX, y, topM, xOf, side, deckY } = frame;
  const loft = y(loftM(house, frame));
  const lines = (set.lineSet.lineXs ?? []).map(xOf);
  const far = side === 1 ? Math.max(...lines) : Math.min(...lines);
  const span = arborSpan(set.lineSet, standing.height);
  return [
    line(guideX, y(topM), guideX, deckY, { stroke: 'line', weight: 'hair' }),
    ...(span === null ? [] : [line(guideX, y(span.topM), guideX, y(topM), INK)]),
    ...(lines.length === 0 ? [] : [line(guideX, y(topM), far, loft, INK)]),
    ...lines.map((x) => line(x, loft, x, y(standing.height), INK)),
  ];
};

/** The arbor at its true height with its stack; nothing where the survey is short. */
export const arborAt = (
  set: SetAssessment,
  house: House,
  frame: OrderFrame,
  { height, stack }: Pick<Standing, 'height' | 'stack'>,
): readonly Shape[] => {
  const { arbor } = set.lineSet;
  const span = arborSpan(set.lineSet, height);
  if (arbor === null || span === null) return [];
  const { guideX: x, arborHalf, scale, thicker = 1 } = frame;
  const width = 2 * arborHalf;
  return [
    group(
      [
        ...arborOutline(span, { x, width, scale }, { stroke: 'ink', weight: 'mid' }),
        ...arborPlates(
          stack,
          { arbor, house },
          {
            x,
            width,
            scale,
            bottomM: span.bottomM,
            thicker,
          },
        ),
      ],
      { part: 'arbor' },
    ),
  ];
};

const outlines = (
  set: SetAssessment,
  frame: OrderFrame,
  { height }: Pick<Standing, 'height'>,
  style: Style,
): readonly Shape[] => {
  const span = arborSpan(set.lineSet, height);
  const { guideX: x, arborHalf, scale, xOf, battenM } = frame;
  return [
    ...(span === null ? [] : arborOutline(span, { x, width: 2 * arborHalf, scale }, style)),
    levelLine(frame, height, [xOf(battenM.left), xOf(battenM.right)], style),
  ];
};

/** Where a flight began: the same things at another place. */
export const beforeShapes = (
  set: SetAssessment,
  frame: OrderFrame,
  standing: Pick<Standing, 'height'>,
): Shape =>
  group(outlines(set, frame, standing, { stroke: 'ink2', weight: 'thin', dash: 'other' }), {
    part: 'before',
  });

/** The set where it stands, as background of something else. */
export const faintShapes = (
  set: SetAssessment,
  frame: OrderFrame,
  standing: Pick<Standing, 'height'>,
): Shape => group(outlines(set, frame, standing, { stroke: 'line', weight: 'thin' }));

/** Stops are drawn where the set stands on one: they carry. */
export const stopShapes = (
  set: SetAssessment,
  frame: OrderFrame,
  { height }: Pick<Standing, 'height'>,
): readonly Shape[] => {
  const { lowStop, highStop } = set.lineSet;
  const stands = (stop: typeof lowStop): boolean =>
    stop.height.known && Math.abs(stop.height.value - height) < SAME_M;
  const { xOf, battenM, y, deckY, guideX, arborHalf } = frame;
  const solid = { fill: 'solid' } as const;
  const low = [battenM.left, battenM.right].map((acrossM) =>
    boxBetween(
      { x: xOf(acrossM) - BLOCK / 2, y: y(height) + 2 },
      { x: xOf(acrossM) + BLOCK / 2, y: deckY },
      solid,
    ),
  );
  const span = arborSpan(set.lineSet, height);
  const high =
    span === null
      ? []
      : [
          boxBetween(
            { x: guideX - arborHalf, y: y(span.bottomM) + 2 },
            { x: guideX + arborHalf, y: Math.max(y(span.bottomM) + 6, deckY) },
            solid,
          ),
        ];
  return [
    ...(stands(lowStop) ? [group(low, { part: 'low stop' })] : []),
    ...(stands(highStop) ? [group(high, { part: 'high stop' })] : []),
  ];
};

const SAME_M = 1e-6;
const BLOCK = 7;
