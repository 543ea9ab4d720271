/**
 * Potential energy of a whole set, from where every kilogram of it is, in joules above the deck.
 * It shares nothing with the program but the shape of the question: no tension, no formula of
 * balance, no carried mass. What it takes to move the batten is the change of this energy.
 */
import type { BalanceItem, BalanceSet } from '#balance';

const G = 9.80665;

/** Where the wires run; a set has as many loft blocks as lines. */
export type Blocks = {
  readonly loftM: readonly number[];
  readonly headM: number;
  /** Where the second leg of a double purchase is made fast. */
  readonly deadEndM: number;
  /** From the attachment of the lines down to the centre of the loaded arbor. */
  readonly arborCentreBelowM: number;
};

/** A straight wire between two heights: its mass, at the middle of the two. */
const legJ = (kgPerM: number, fromM: number, toM: number, lengthM: number): number =>
  G * kgPerM * lengthM * ((fromM + toM) / 2);
const plumb = (kgPerM: number, fromM: number, toM: number): number =>
  legJ(kgPerM, fromM, toM, Math.abs(toM - fromM));

const wiresJ = (set: BalanceSet, blocks: Blocks, battenM: number, attachM: number): number =>
  blocks.loftM.reduce((sum, loftM, index) => {
    const w = set.lineMassPerLength;
    const battenLeg = plumb(w, battenM + set.wireEndAbove, loftM);
    // Across to the head block: as long as ever, so only its weight at a fixed height.
    const run = legJ(w, loftM, blocks.headM, 3 + 2 * index);
    const down = plumb(w, attachM, blocks.headM);
    const up = set.purchase === 2 ? plumb(w, attachM, blocks.deadEndM) : 0;
    return sum + battenLeg + run + down + up;
  }, 0);

/** Whole pieces, piles on the deck and loops, each by its own geometry. */
const itemJ = (item: BalanceItem, battenM: number): number => {
  switch (item.kind) {
    case 'clear':
      return G * item.mass * battenM;
    case 'cloth': {
      const topM = Math.max(0, battenM - item.tie);
      const hangingM = Math.min(topM, item.drop);
      const hangingKg = (item.mass * hangingM) / item.drop;
      return G * (hangingKg * (topM - hangingM / 2) + item.hem * Math.max(0, topM - item.drop));
    }
    case 'tipping': {
      const headM = Math.max(0, battenM - item.pick);
      const tiltedM = Math.min(headM, item.drop);
      // The centre lies on the line from foot to head, and rises with it.
      return G * item.mass * (item.centre * tiltedM + (headM - tiltedM));
    }
    case 'standing':
      return G * item.mass * Math.max(0, battenM - item.pick - item.drop);
    case 'loom': {
      const slackM = battenM + item.fixedAt - item.length;
      const lowM = Math.max(0, slackM / 2);
      const up = plumb(item.massPerLength, lowM, battenM);
      return up + plumb(item.massPerLength, lowM, item.fixedAt);
    }
    case 'deckLoom':
      return plumb(item.massPerLength, 0, battenM);
  }
};

/** Height at which the lines meet the arbor: what wire leaves the batten's side goes there. */
export const attachHeight = (set: BalanceSet, battenM: number): number =>
  set.arborTopAtLow - (battenM - set.lowStop) / set.purchase;

export const potentialEnergy = (set: BalanceSet, blocks: Blocks, battenM: number): number => {
  const attachM = attachHeight(set, battenM);
  const arborM = attachM - blocks.arborCentreBelowM;
  return (
    G * set.batten * battenM +
    G * (set.carriage + set.bricks) * arborM +
    wiresJ(set, blocks, battenM, attachM) +
    set.items.reduce((sum, item) => sum + itemJ(item, battenM), 0)
  );
};

/** Small against any length of a set; a straight slope is met exactly whatever its size. */
const STEP_M = 0.02;

/** Force at the batten, N, by the difference of the energy to both sides. */
export const forceByEnergy = (set: BalanceSet, blocks: Blocks, battenM: number): number =>
  (potentialEnergy(set, blocks, battenM + STEP_M) -
    potentialEnergy(set, blocks, battenM - STEP_M)) /
  (2 * STEP_M);

/** Whether a height is so near a kink or jump that the difference straddles it. */
export const isNear = (battenM: number, changesM: readonly number[]): boolean =>
  changesM.some((changeM) => Math.abs(changeM - battenM) < 2 * STEP_M);
