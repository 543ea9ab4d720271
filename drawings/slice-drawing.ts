/** The balance of one set in one row: a slice of its curve that can be compared down a column. */

import type { SetAssessment, SetPlan } from '#assessment';
import { type House, lockHoldOf } from '#house';
import { phrase } from '#texts';
import { stretchesOf } from './balance-subject.ts';
import type { Drawing, Shape } from './shape.ts';
import { group, line, point, polygon, polyline } from './shape.ts';

export type SliceOptions = {
  readonly width: number;
  readonly height: number;
  /** Imbalance at either edge, N; the same for every row of a table. */
  readonly edgeN: number;
  /** Where the set was last recorded; screens only. */
  readonly nowN?: number;
};

type SliceFrame = { readonly xOf: (imbalanceN: number) => number; readonly middle: number };

/** What lies past the edge is drawn at the edge; the figure beside the slice says how much. */
const frameOf = (house: House, { width, height, edgeN }: SliceOptions): SliceFrame => {
  const arborSide = house.stage.operatingSide === 'stageRight' ? -1 : 1;
  const half = width / 2 - 3;
  return {
    xOf: (imbalanceN) => {
      const share = Math.max(-1, Math.min(1, imbalanceN / edgeN));
      return width / 2 - arborSide * share * half;
    },
    middle: height / 2,
  };
};

const bracketShapes = (
  lockN: number,
  { xOf, middle }: SliceFrame,
  height: number,
): readonly Shape[] =>
  [-1, 1].map((side) => {
    const x = xOf(side * lockN);
    const inward = x < xOf(0) ? 4 : -4;
    const [top, bottom] = [middle - height * 0.36, middle + height * 0.36];
    return polyline(
      [point(x + inward, top), point(x, top), point(x, bottom), point(x + inward, bottom)],
      { stroke: 'ink', weight: 'thin' },
    );
  });

type Ends = { readonly leastN: number; readonly mostN: number };

const freeEnds = ({ freeExtremes }: SetPlan): Ends => ({
  leastN: freeExtremes.least.imbalance,
  mostN: freeExtremes.most.imbalance,
});

/** Over the whole travel, with what a resting piece leaves open, and nothing below the low stop. */
const travelEnds = ({ set, curve }: SetPlan): Ends => {
  const ends = stretchesOf(set, curve).flatMap(({ from, to }) => [from, to]);
  return {
    leastN: Math.min(...ends.map(({ lowN }) => lowN)),
    mostN: Math.max(...ends.map(({ highN }) => highN)),
  };
};

const barBetween = (
  { leastN, mostN }: Ends,
  { xOf, middle }: SliceFrame,
  weight: 'thick' | 'thin',
): Shape => line(xOf(leastN), middle, xOf(mostN), middle, { stroke: 'ink', weight });

/** From the free range out to the worst on the deck, ending in an arrow head. */
const landedShapes = (free: Ends, travel: Ends, { xOf, middle }: SliceFrame): readonly Shape[] =>
  (
    [
      [free.leastN, travel.leastN],
      [free.mostN, travel.mostN],
    ] as const
  )
    .filter(([inside, outside]) => Math.abs(xOf(outside) - xOf(inside)) > 3)
    .map(([inside, outside]) => {
      const tip = xOf(outside);
      const back = tip < xOf(inside) ? 5 : -5;
      return group(
        [
          line(xOf(inside), middle, tip, middle, { stroke: 'red', weight: 'mid', dash: 'plan' }),
          polygon(
            [point(tip, middle), point(tip + back, middle - 3), point(tip + back, middle + 3)],
            { fill: 'red' },
          ),
        ],
        { part: 'landed' },
      );
    });

const nowShape = (nowN: number, { xOf, middle }: SliceFrame): Shape => {
  const x = xOf(nowN);
  return group(
    [
      polygon([point(x - 4, middle - 8), point(x + 4, middle - 8), point(x, middle - 1)], {
        fill: 'blue',
      }),
    ],
    { part: 'now' },
  );
};

/** One row of the schedule: thick = free of the deck, dashed = brought in with all bricks. */
export const sliceDrawing = (set: SetAssessment, house: House, options: SliceOptions): Drawing => {
  const { width, height, nowN } = options;
  const frame = frameOf(house, options);
  const lock = lockHoldOf(set.lineSet, house.rules);
  const zero = line(frame.xOf(0), frame.middle - 3, frame.xOf(0), frame.middle + 3, {
    stroke: 'line',
    weight: 'thin',
  });
  const bare = set.hang === null && set.bare.known ? set.bare.value.curve.nodes : [];
  const values = bare.flatMap(({ below, above }) => [below, above]);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const bareBar =
    values.length === 0
      ? []
      : [
          line(frame.xOf(least), frame.middle, frame.xOf(most), frame.middle, {
            stroke: 'ink',
            weight: 'thin',
          }),
        ];
  const planned = set.plan.known
    ? [
        ...landedShapes(freeEnds(set.plan.value), travelEnds(set.plan.value), frame),
        barBetween(freeEnds(set.plan.value), frame, 'thick'),
      ]
    : [];
  return {
    width,
    height,
    title: phrase(house, 'Balance of set {id}', { id: set.lineSet.id }),
    shapes: [
      zero,
      ...(lock.known ? bracketShapes(lock.value, frame, height) : []),
      ...bareBar,
      ...planned,
      ...(nowN === undefined ? [] : [nowShape(nowN, frame)]),
    ],
  };
};
