/**
 * Where things lie on a drawing of one moment of an order. All drawings of an order, and of two
 * orders laid beside each other, share one scale of height, so that the eye can go along them.
 */
import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import type { StackRun } from '#state';
import { fitHeights, type HeightScale, heightToY } from './height-scale.ts';
import { platesOf } from './plates.ts';
import type { Line, Rect, Style } from './shape.ts';
import { line, rect } from './shape.ts';

export type OrderStepOptions = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  /** Names of galleries and the height of the batten, where there is room for them. */
  readonly isLettered?: boolean;
  /** Plates are drawn so many times as thick as they are; 1 is to scale. */
  readonly thicker?: number;
};

export type OrderFrame = OrderStepOptions & {
  readonly scale: HeightScale;
  readonly deckY: number;
  readonly topM: number;
  /** A place so far from the wall of the arbors, whichever side of the stage that is. */
  readonly at: (fromWall: number) => number;
  /** 1 where the arbors run at the left of the paper, −1 at the right. */
  readonly side: 1 | -1;
  readonly guideX: number;
  /** Half the width of the arbor. */
  readonly arborHalf: number;
  readonly ledge: number;
  readonly xOf: (acrossM: number) => number;
  readonly battenM: { readonly left: number; readonly right: number };
  /** Middle of the strip where what would be set free is drawn as bricks. */
  readonly fallX: number;
  readonly y: (heightM: number) => number;
};

/** A house whose head blocks were not surveyed is drawn to a little above its highest stop. */
const OVER_STOP = 1.14;
const NOWHERE_M = 12;
/** Half of a batten of which nobody knows where it ends. */
const HALF_BATTEN_M = 6;

export const topOfOrder = ({ lineSet }: SetAssessment, { stage }: House): number => {
  const { highStop } = lineSet;
  const stopM = highStop.height.known ? highStop.height.value * OVER_STOP : NOWHERE_M;
  const blocksM = stage.headBlockHeight.known ? stage.headBlockHeight.value : 0;
  return Math.max(stopM, blocksM);
};

/** Plates thicker than this many times would no longer look like plates. */
const THICKER_MOST = 5;
const ROD_SHARE = 0.8;

/**
 * How many times as thick the plates of an order may be drawn, so that the highest of its stacks
 * still lies inside the arbor: at the scale of the house a brick is thinner than a line.
 */
export const plateExaggeration = (
  { lineSet }: SetAssessment,
  house: House,
  stacks: readonly (readonly StackRun[])[],
): number => {
  const rod = lineSet.arbor?.length;
  if (rod === undefined || !rod.known) return 1;
  const mostM = Math.max(0, ...stacks.map((runs) => platesOf(runs, house)?.heightM ?? 0));
  if (mostM <= 0) return 1;
  return Math.min(THICKER_MOST, Math.max(1, (ROD_SHARE * rod.value) / mostM));
};

/** Shares of the width, so that a large drawing is the small one with more room. */
const LEDGE = 0.13;
const GUIDE = 0.24;
const ARBOR_HALF = 0.042;
const BATTEN_FROM = 0.36;
const FALL_ROOM = 0.12;
/** Under the deck, in letter sizes: its hatch, and the word of a closed zone. */
const DECK_ROOM = 1.7;
const HEAD_ROOM = 6;

export const orderFrame = (
  set: SetAssessment,
  house: House,
  options: OrderStepOptions,
): OrderFrame => {
  const { width, height, letter } = options;
  const topM = topOfOrder(set, house);
  const top = options.isLettered === true ? letter * 1.6 : HEAD_ROOM;
  const scale = fitHeights({ lowM: 0, highM: topM, top, bottom: height - letter * DECK_ROOM });
  const side = house.stage.operatingSide === 'stageRight' ? 1 : -1;
  const at = (fromWall: number): number => (side === 1 ? fromWall : width - fromWall);
  const { batten } = set.lineSet;
  const left = batten.left.known ? batten.left.value : -HALF_BATTEN_M;
  const right = batten.right.known ? batten.right.value : HALF_BATTEN_M;
  const room = width * (1 - BATTEN_FROM - FALL_ROOM);
  const middle = at(width * BATTEN_FROM + room / 2);
  const perMetre = room / Math.max(1, right - left);
  return {
    ...options,
    scale,
    deckY: heightToY(scale, 0),
    topM,
    at,
    side,
    guideX: at(width * GUIDE),
    arborHalf: Math.max(5, width * ARBOR_HALF),
    ledge: width * LEDGE,
    xOf: (acrossM) => middle + (acrossM - (left + right) / 2) * perMetre,
    battenM: { left, right },
    fallX: at(width * (1 - FALL_ROOM / 2)),
    y: (heightM) => heightToY(scale, heightM),
  };
};

/** A box between two places, whichever of them is left. */
export const boxBetween = (
  one: { readonly x: number; readonly y: number },
  other: { readonly x: number; readonly y: number },
  style: Style,
): Rect =>
  rect(
    Math.min(one.x, other.x),
    Math.min(one.y, other.y),
    Math.abs(other.x - one.x),
    Math.abs(other.y - one.y),
    style,
  );

export const levelLine = (
  { y }: Pick<OrderFrame, 'y'>,
  heightM: number,
  [from, to]: readonly [number, number],
  style: Style,
): Line => line(from, y(heightM), to, y(heightM), style);
