/** Sets of the demo house for the tests, typed in feet and pounds as its plan has them. */
import { FOOT, GRAVITY, POUND } from '#quantities';
import type { BalanceSet } from './balance-set.ts';

export const feet = (n: number): number => n * FOOT;
export const pounds = (n: number): number => n * POUND;
export const poundsPerFoot = (n: number): number => (n * POUND) / FOOT;

/** An imbalance as the pounds that would make it. */
export const asPounds = (imbalanceN: number): number => imbalanceN / GRAVITY / POUND;

const travel = { lowStop: feet(3), highStop: feet(61), wireEndAbove: feet(2), items: [] } as const;

/** Single purchase, six lines, pipe weight of three old cast bricks. */
export const SIX_LINES: BalanceSet = {
  ...travel,
  purchase: 1,
  lines: 6,
  lineMassPerLength: poundsPerFoot(0.11),
  batten: pounds(169),
  carriage: pounds(95),
  bricks: pounds(66),
  arborTopAtLow: feet(66.5),
};

/** Single purchase, seven lines, pipe weight of four full bricks. */
export const SEVEN_LINES: BalanceSet = {
  ...SIX_LINES,
  lines: 7,
  batten: pounds(196.26),
  bricks: pounds(100),
};

/** Double purchase, seven lines, pipe weight of ten full bricks. */
export const DOUBLE_PURCHASE: BalanceSet = {
  ...SEVEN_LINES,
  purchase: 2,
  carriage: pounds(165),
  bricks: pounds(250),
  arborTopAtLow: feet(66.5),
};

/** A set as it is with show bricks on its arbor and items on its batten. */
export const hung = (
  bare: BalanceSet,
  showPounds: number,
  items: BalanceSet['items'],
): BalanceSet => ({ ...bare, bricks: bare.bricks + pounds(showPounds), items });
