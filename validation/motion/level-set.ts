/** A set with the same imbalance everywhere and nothing that lands: two masses over a block. */
import type { Run, RunawayCase, Still } from '#motion';
import { runaway } from '#motion';
import { GRAVITY } from '#quantities';

export type TwoMasses = {
  readonly purchase?: 1 | 2;
  readonly battenKg: number;
  readonly arborKg: number;
  readonly frictionN?: number;
  readonly blockKg?: number;
  readonly wayM: number;
};

/** The heavy side has the whole way before it. */
export const levelSet = (the: TwoMasses): RunawayCase => {
  const { purchase = 1, battenKg, arborKg, frictionN = 0, blockKg = 0, wayM } = the;
  const imbalanceN = (battenKg - arborKg / purchase) * GRAVITY;
  return {
    curve: [{ height: 0, below: imbalanceN, above: imbalanceN }],
    lowStop: 0,
    highStop: wayM,
    height: imbalanceN > 0 ? wayM : 0,
    hold: 0,
    moves: {
      purchase,
      arbor: arborKg,
      hanging: battenKg,
      lineMass: 0,
      blockMass: blockKg,
      friction: { share: 0, of: 'batten', constant: frictionN },
    },
  };
};

export const running = (the: RunawayCase): Run => moved(runaway(the));

const moved = (found: Run | Still): Run => {
  if (!found.moves) throw new Error(`the set stays: ${found.why}`);
  return found;
};
