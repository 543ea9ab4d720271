import type { BalanceItem, BalanceSet } from '#balance';
import { imbalanceAt, imbalanceBelow } from '#balance';
import type { Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';
import { forceByEnergy, isNear, potentialEnergy } from '../energy.ts';
import { anySet, type Drawn, drawSets } from '../random-sets.ts';

const SEED = 20_263;
const HALF_M = 0.005;

const cloth: Make<BalanceItem> = ({ toEnds }) => ({
  kind: 'cloth',
  mass: toEnds(10, 300),
  drop: toEnds(2, 12),
  tie: toEnds(0, 1),
  hem: toEnds(0, 40),
});
const hung: Make<BalanceSet> = (draw) => ({ ...anySet(draw), items: draw.several(1, 3, cloth) });

const changesOf = (set: BalanceSet): readonly number[] =>
  set.items.flatMap((item) => (item.kind === 'cloth' ? [item.tie, item.tie + item.drop] : []));

const awayFromChanges = ({ set, blocks, heights }: Drawn): readonly number[] =>
  heights
    .filter((heightM) => !isNear(heightM, changesOf(set)))
    .map((heightM) => Math.abs(imbalanceAt(set, heightM) - forceByEnergy(set, blocks, heightM)));

/** Crossing the hem costs what both sides of it say. */
const overHem = ({ set, blocks }: Drawn): readonly number[] => {
  const [first] = set.items;
  if (first?.kind !== 'cloth') return [];
  const hemM = first.tie + first.drop;
  const others = changesOf({ ...set, items: set.items.slice(1) });
  if (isNear(hemM, others) || hemM + 1 > set.highStop) return [];
  const costJ =
    potentialEnergy(set, blocks, hemM + HALF_M) - potentialEnergy(set, blocks, hemM - HALF_M);
  // Straight on each side, so each half counts at its middle.
  const saidJ =
    (HALF_M / 2) *
    (imbalanceAt(set, hemM - HALF_M) +
      imbalanceBelow(set, hemM) +
      imbalanceAt(set, hemM) +
      imbalanceAt(set, hemM + HALF_M));
  return [Math.abs(costJ - saidJ) / (2 * HALF_M)];
};

export const theCase: ValidationCase = {
  id: 'VAL-BAL-03',
  title: 'A cloth that piles up on the deck, by its potential energy',
  calculation: 'balance',
  unit: 'N',
  tolerance: 2e-5,
  run: () => {
    const sets = drawSets(hung, { seed: SEED, count: 300, heights: 20 });
    return [...enough(sets.flatMap(awayFromChanges), 4000), ...enough(sets.flatMap(overHem), 200)];
  },
};
