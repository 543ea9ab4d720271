/** The curve itself: straight pieces, doubt as hair lines, jumps as double lines. */
import type { Jump } from '#balance';
import type { BalanceFrame } from './balance-frame.ts';
import type { OpenRegion } from './balance-regions.ts';
import type { BalanceSubject, Stretch } from './balance-subject.ts';
import type { Pen, Point, Shape } from './shape.ts';
import { circle, group, line, point, polygon, polyline } from './shape.ts';

export const curvePoint = (frame: BalanceFrame, imbalanceN: number, heightM: number): Point =>
  point(frame.xOf(imbalanceN), frame.yOf(heightM));

const stretchLine = (
  frame: BalanceFrame,
  ends: readonly [fromN: number, fromM: number, toN: number, toM: number],
  style: { readonly stroke: Pen; readonly weight: 'curve' | 'hair' | 'mid' },
): Shape => {
  const [fromN, fromM, toN, toM] = ends;
  return polyline([curvePoint(frame, fromN, fromM), curvePoint(frame, toN, toM)], style);
};

/** Heights at which a stretch crosses the limits, so that each part takes its own pen. */
const cutAtLimits = ({ fromM, toM, from, to }: Stretch, limitN: number): readonly number[] => {
  const crossings = [-limitN, limitN]
    .map((edgeN) => (edgeN - from.valueN) / (to.valueN - from.valueN))
    .filter((share) => share > 0 && share < 1)
    .toSorted((one, other) => one - other)
    .map((share) => fromM + share * (toM - fromM));
  return [fromM, ...crossings, toM];
};

const valueAt = ({ fromM, toM, from, to }: Stretch, heightM: number): number =>
  from.valueN + ((heightM - fromM) / (toM - fromM)) * (to.valueN - from.valueN);

const curvePieces = (
  frame: BalanceFrame,
  stretch: Stretch,
  lockN: number | null,
): readonly Shape[] => {
  const heights = lockN === null ? [stretch.fromM, stretch.toM] : cutAtLimits(stretch, lockN);
  return heights.slice(1).flatMap((toM, index) => {
    const fromM = heights[index];
    if (fromM === undefined) return [];
    const [fromN, toN] = [valueAt(stretch, fromM), valueAt(stretch, toM)];
    const isOpen = lockN !== null && Math.abs(fromN + toN) / 2 > lockN;
    const pen = isOpen ? 'red' : 'ink';
    return [stretchLine(frame, [fromN, fromM, toN, toM], { stroke: pen, weight: 'curve' })];
  });
};

/** What the masses could be off by, both ways; nothing where no tolerance was given. */
const doubtLines = (frame: BalanceFrame, { fromM, toM, from, to }: Stretch): readonly Shape[] =>
  from.doubtN === 0 && to.doubtN === 0
    ? []
    : [-1, 1].map((side) =>
        stretchLine(
          frame,
          [from.valueN + side * from.doubtN, fromM, to.valueN + side * to.doubtN, toM],
          { stroke: 'ink', weight: 'hair' },
        ),
      );

/** Where a piece rests on the deck its batten may carry anything between two edges. */
const contactField = (frame: BalanceFrame, { fromM, toM, from, to }: Stretch): readonly Shape[] =>
  from.highN <= from.lowN && to.highN <= to.lowN
    ? []
    : [
        polygon(
          [
            curvePoint(frame, from.lowN, fromM),
            curvePoint(frame, from.highN, fromM),
            curvePoint(frame, to.highN, toM),
            curvePoint(frame, to.lowN, toM),
          ],
          { stroke: 'ink', weight: 'thin' },
        ),
      ];

const JUMP_HALF = 2;

/** Two thin lines at one height, open between: two values, and nothing in between. */
const jumpLines = (frame: BalanceFrame, { height, below, above }: Jump): Shape => {
  const y = frame.yOf(height);
  const [one, other] = [frame.xOf(below), frame.xOf(above)];
  const [left, right] = [Math.min(one, other), Math.max(one, other)];
  return group(
    [
      polygon(
        [
          point(left, y - JUMP_HALF),
          point(right, y - JUMP_HALF),
          point(right, y + JUMP_HALF),
          point(left, y + JUMP_HALF),
        ],
        { fill: 'paper' },
      ),
      line(left, y - JUMP_HALF, right, y - JUMP_HALF, { stroke: 'ink', weight: 'thin' }),
      line(left, y + JUMP_HALF, right, y + JUMP_HALF, { stroke: 'ink', weight: 'thin' }),
    ],
    { part: 'jump' },
  );
};

/** The hatched ground between the lock's edge and the curve. */
export const regionShapes = (
  frame: BalanceFrame,
  regions: readonly OpenRegion[],
  limitN: number,
): readonly Shape[] =>
  regions.map(({ side, stretches }) =>
    group(
      stretches.map(({ fromM, toM, fromN, toN }) =>
        polygon(
          [
            curvePoint(frame, side * limitN, fromM),
            curvePoint(frame, fromN, fromM),
            curvePoint(frame, toN, toM),
            curvePoint(frame, side * limitN, toM),
          ],
          { hatch: 'notHeld' },
        ),
      ),
      { part: 'not held' },
    ),
  );

const MARK_RADIUS = 4;

const mark = (frame: BalanceFrame, imbalanceN: number, heightM: number): Shape => {
  const { x, y } = curvePoint(frame, imbalanceN, heightM);
  return circle(x, y, MARK_RADIUS, { stroke: 'ink', weight: 'mid', fill: 'paper' });
};

/** Another curve on the same axes: thin and dashed, jumps and all, so that it stays behind. */
export const besideShapes = (
  frame: BalanceFrame,
  { stretches }: Pick<BalanceSubject, 'stretches'>,
): Shape =>
  group(
    stretches.flatMap(({ fromM, toM, from, to }, index) => {
      const next = stretches[index + 1];
      const ends = [curvePoint(frame, from.valueN, fromM), curvePoint(frame, to.valueN, toM)];
      const jump = next === undefined ? [] : [curvePoint(frame, next.from.valueN, next.fromM)];
      return [polyline([...ends, ...jump], { stroke: 'ink2', weight: 'thin', dash: 'hidden' })];
    }),
    { part: 'beside' },
  );

export const curveShapes = (
  frame: BalanceFrame,
  { stretches, curve, trims, lockN }: BalanceSubject,
): readonly Shape[] => [
  ...stretches.flatMap((stretch) => contactField(frame, stretch)),
  ...stretches.flatMap((stretch) => doubtLines(frame, stretch)),
  ...curve.jumps.map((jump) => jumpLines(frame, jump)),
  group(
    stretches.flatMap((stretch) => curvePieces(frame, stretch, lockN)),
    { part: 'curve' },
  ),
  ...trims.map(({ imbalance, height }) => mark(frame, imbalance, height)),
];
