/** Sets of the demo house for the tests, as its scenarios give them in feet and pounds. */
import { FOOT, GRAVITY, POUND } from '#quantities';
import type { RunawayCase } from './runaway.ts';
import type { BrokenLine, ImbalanceNode, Moving } from './types.ts';

export const feet = (n: number): number => n * FOOT;
export const pounds = (n: number): number => n * POUND;
/** The weight of so many pounds. */
export const poundsForce = (n: number): number => n * POUND * GRAVITY;

export const LOW_STOP = feet(3);
export const HIGH_STOP = feet(61);
export const LOCK = poundsForce(50);

/** Height in feet and a value in pounds; or, where it jumps, the values below and above. */
export type InPounds = readonly [number, number] | readonly [number, number, number];

/** Imbalance along the travel. */
export const curve = (...nodes: readonly InPounds[]): readonly ImbalanceNode[] =>
  nodes.map(([heightFt, below, above = below]) => ({
    height: feet(heightFt),
    below: poundsForce(below),
    above: poundsForce(above),
  }));

/** Mass on the batten in the same manner. */
export const hanging = (...nodes: readonly InPounds[]): BrokenLine =>
  nodes.map(([heightFt, below, above = below]) => ({
    height: feet(heightFt),
    below: pounds(below),
    above: pounds(above),
  }));

/** The demo's friction until measured: 5 % of what hangs and 4 lb. */
export const DEMO_FRICTION = { share: 0.05, of: 'batten', constant: poundsForce(4) } as const;
export const NO_FRICTION = { share: 0, of: 'batten', constant: 0 } as const;

/** Six or seven lines of about 110 ft. */
const LINES_LB = { six: 6 * 110 * 0.11, seven: 7 * 110 * 0.11 } as const;

export const moves = (
  lb: { readonly arbor: number; readonly hanging: number },
  lines: keyof typeof LINES_LB = 'six',
): Moving => ({
  purchase: 1,
  arbor: pounds(lb.arbor),
  hanging: pounds(lb.hanging),
  lineMass: pounds(LINES_LB[lines]),
  blockMass: 0,
  friction: DEMO_FRICTION,
});

const travel = { lowStop: LOW_STOP, highStop: HIGH_STOP, hold: 0 } as const;

/** S1: 33 bricks on a bare electric on its low stop, nothing attached. */
export const BRICKS_FIRST: RunawayCase = {
  ...travel,
  height: LOW_STOP,
  curve: curve([3, -776.4], [61, -853]),
  moves: moves({ arbor: 161 + 825, hanging: 169 }),
};

/** S2: the whole electric on, no bricks, one foot above the stop. */
export const ELECTRIC_AT_CHEST: RunawayCase = {
  ...travel,
  height: feet(4),
  hold: LOCK,
  curve: curve([3, 816], [61, 816 + 58 * 0.43]),
  moves: moves({ arbor: 161, hanging: 169 + 756 }),
};

/** S5: a house curtain in at 4 ft with all its bricks on; its chain lands at 30.5 ft. */
export const CURTAIN_IN: RunawayCase = {
  ...travel,
  height: feet(4),
  curve: curve([3, -445.6], [30.5, -5.3, 16.7], [61, -23.5]),
  moves: {
    ...moves({ arbor: 698.5, hanging: 0 }),
    hanging: hanging([3, 169 + 43.3], [30.5, 169 + 520, 169 + 542], [61, 169 + 542]),
  },
};

/** S6, wrong A: all bricks of a tall flat that still lies on the deck, lock closed. */
export const FLAT_ON_DECK: RunawayCase = {
  ...travel,
  height: feet(4),
  hold: LOCK,
  curve: curve([3, -294.5], [23, -320.8, 24.8], [61, -25.4]),
  moves: {
    ...moves({ arbor: 798.5, hanging: 0 }),
    hanging: hanging([3, 169 + 294.4], [23, 169 + 294.4, 169 + 640], [61, 169 + 640]),
  },
};

/** S9, wrong: bricks off first with a 110 lb unit on the batten at its high stop. */
export const UNIT_AT_GRID: RunawayCase = {
  ...travel,
  height: HIGH_STOP,
  curve: curve([3, 159], [61, 69.3]),
  moves: moves({ arbor: 195, hanging: 196.26 + 110 }, 'seven'),
};

/** S11, wrong: half the bricks off a double purchase, then its header. */
export const DOUBLE_HALVED: RunawayCase = {
  ...travel,
  height: LOW_STOP,
  hold: LOCK,
  curve: curve([3, -114], [61, -181]),
  moves: { ...moves({ arbor: 715, hanging: 196.26 }, 'seven'), purchase: 2 },
};

/** S12: the steel of a dead-hung frame taken away with the arbor at pipe weight. */
export const STEEL_AWAY: RunawayCase = {
  ...travel,
  height: feet(38),
  hold: LOCK,
  curve: curve([3, 276], [38, 236], [61, 209]),
  moves: { ...moves({ arbor: 415, hanging: 196.26 + 240 }, 'seven'), purchase: 2 },
};
