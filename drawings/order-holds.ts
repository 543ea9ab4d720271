/**
 * What holds a set each way, as a slice of its balance: a bracket a side with what it holds, a
 * wedge where the set stands. Arbor heavy lies on the arbor's side. What is too large for the scale
 * has a break mark and keeps its order on the line.
 */

import type { House } from '#house';
import { type OrderState, planningLimitN } from '#rules';
import type { OrderPhysics } from '#state';
import { phrase } from '#texts';
import { limitWords } from './printed.ts';
import type { Drawing, Shape } from './shape.ts';
import { group, lettering, line, point, polygon, polyline, rect } from './shape.ts';

export type HoldsOptions = {
  readonly width: number;
  readonly letter: number;
  readonly isHeld: boolean;
  /** Whether every mass was taken at its worst; else the doubt is not drawn. */
  readonly isDoubtTried: boolean;
};

type Line = {
  readonly xOf: (imbalanceN: number) => number;
  readonly isBroken: readonly [boolean, boolean];
};

/** Share of each half that is to scale; the rest is past the break. */
const EVEN = 0.72;
const AFTER_BREAK = 0.8;
const MARGIN = 4;

/** The even scale ends at twice the lock, in every step of every order of a set. */
const EDGE_LOCKS = 2;

const mostOf = (state: OrderState, { isDoubtTried }: HoldsOptions) => {
  const { lowN, highN, doubtN } = state.imbalance;
  const doubt = isDoubtTried ? doubtN : 0;
  return { lowN: lowN - doubt, highN: highN + doubt };
};

/** Even up to the edge; past it in proportion between the edge and the largest of that side. */
const lineOf = (
  state: OrderState,
  { lockLimitN }: OrderPhysics,
  house: House,
  options: HoldsOptions,
): Line => {
  const { width } = options;
  const edgeN = EDGE_LOCKS * lockLimitN;
  const arborSide = house.stage.operatingSide === 'stageRight' ? -1 : 1;
  const half = width / 2 - MARGIN;
  const ends = mostOf(state, options);
  const outMost = Math.max(state.holdOutN, -ends.lowN);
  const inMost = Math.max(state.holdInN, ends.highN);
  const share = (sizeN: number, mostN: number): number => {
    if (mostN <= edgeN) return sizeN / edgeN;
    if (sizeN <= edgeN) return (sizeN / edgeN) * EVEN;
    return AFTER_BREAK + (1 - AFTER_BREAK) * ((sizeN - edgeN) / (mostN - edgeN));
  };
  return {
    xOf: (imbalanceN) => {
      const isOut = imbalanceN < 0;
      const along = share(Math.abs(imbalanceN), isOut ? outMost : inMost);
      return width / 2 + (isOut ? arborSide : -arborSide) * Math.min(1, along) * half;
    },
    isBroken: [outMost > edgeN, inMost > edgeN],
  };
};

const BRACKET = 8;

const bracket = (x: number, zeroX: number, y: number): Shape => {
  const inward = x < zeroX ? 5 : -5;
  return polyline(
    [
      point(x + inward, y - BRACKET),
      point(x, y - BRACKET),
      point(x, y + BRACKET),
      point(x + inward, y + BRACKET),
    ],
    { stroke: 'ink', weight: 'mid' },
  );
};

const breakMark = (x: number, y: number): readonly Shape[] => [
  rect(x - 4, y - 6, 8, 12, { fill: 'paper' }),
  polyline([point(x - 4, y), point(x - 1.5, y - 5), point(x + 1.5, y + 5), point(x + 4, y)], {
    stroke: 'ink',
    weight: 'thin',
  }),
];

const wedge = (x: number, y: number, isHeld: boolean): Shape =>
  group(
    [
      polygon([point(x - 6, y - 14), point(x + 6, y - 14), point(x, y - 3)], {
        fill: isHeld ? 'blue' : 'red',
      }),
    ],
    { part: 'stands' },
  );

/** Where a set settles that may choose: nearest to balance. */
const settledN = ({ imbalance: { lowN, highN } }: OrderState): number =>
  lowN > 0 ? lowN : Math.min(highN, 0);

const PLANNING = { stroke: 'ink2', weight: 'thin', dash: 'hidden' } as const;

const planningShapes = (state: OrderState, { xOf }: Line, y: number, planningN: number) =>
  [-1, 1].flatMap((way): readonly Shape[] => {
    const holdN = way < 0 ? state.holdOutN : state.holdInN;
    // A stop or a restraint that holds more has nothing to do with the lock's planning limit.
    if (planningN <= 0 || planningN >= holdN) return [];
    const x = xOf(way * planningN);
    return [line(x, y - BRACKET + 2, x, y + BRACKET - 2, PLANNING)];
  });

const doubtShape = (state: OrderState, line_: Line, y: number, options: HoldsOptions): Shape => {
  const { lowN, highN } = mostOf(state, options);
  return group(
    [line(line_.xOf(lowN), y, line_.xOf(highN), y, { stroke: 'ink', weight: 'thick' })],
    {
      part: 'doubt',
    },
  );
};

export const orderHoldsDrawing = (
  state: OrderState,
  physics: OrderPhysics,
  house: House,
  options: HoldsOptions,
): Drawing => {
  const { width, letter, isHeld } = options;
  const along = lineOf(state, physics, house, options);
  const y = 16;
  const [outX, inX] = [along.xOf(-state.holdOutN), along.xOf(state.holdInN)];
  const zeroX = along.xOf(0);
  const [left, right] = outX < inX ? (['out', 'in'] as const) : (['in', 'out'] as const);
  const heldN = (way: string): number => (way === 'out' ? state.holdOutN : state.holdInN);
  const height = y + BRACKET + letter * 1.35;
  const breaks = along.isBroken.flatMap((isBroken, index) => {
    const way = (index === 0 ? outX : inX) < zeroX ? -1 : 1;
    return isBroken
      ? breakMark(zeroX + (way * (width / 2 - MARGIN) * (EVEN + AFTER_BREAK)) / 2, y)
      : [];
  });
  const words = (way: 'in' | 'out', anchor: 'start' | 'end', x: number): Shape =>
    lettering(x, height - 3, `${phrase(house, way)} ${limitWords(house, heldN(way))}`, letter, {
      anchor,
      pen: 'ink2',
    });
  return {
    width,
    height,
    title: phrase(house, 'Held against going out {at}, against coming in {at2}', {
      at: limitWords(house, state.holdOutN),
      at2: limitWords(house, state.holdInN),
    }),
    shapes: [
      line(MARGIN, y, width - MARGIN, y, { stroke: 'line', weight: 'thin' }),
      rect(Math.min(outX, inX), y - BRACKET, Math.abs(inX - outX), 2 * BRACKET, { hatch: 'lock' }),
      ...breaks,
      line(zeroX, y - 6, zeroX, y + 6, { stroke: 'ink', weight: 'thin' }),
      ...planningShapes(state, along, y, planningLimitN(physics)),
      bracket(outX, zeroX, y),
      bracket(inX, zeroX, y),
      doubtShape(state, along, y, options),
      wedge(along.xOf(settledN(state)), y, isHeld),
      words(left, 'start', 0),
      words(right, 'end', width),
    ],
  };
};
