import type { BalanceItem, BalanceSet } from '#balance';
import { imbalanceAt, loomTooShort } from '#balance';
import type { Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';
import { forceByEnergy, isNear } from '../energy.ts';
import { anySet, drawSets } from '../random-sets.ts';

const SEED = 20_266;

const loom: Make<BalanceItem> = ({ toEnds, chance }) => {
  const cable = { massPerLength: toEnds(0.3, 6), length: toEnds(12, 40) };
  return chance(0.5)
    ? { kind: 'loom', ...cable, fixedAt: toEnds(0, 15) }
    : { kind: 'deckLoom', ...cable };
};
const hung: Make<BalanceSet> = (draw) => ({ ...anySet(draw), items: draw.several(1, 3, loom) });

const changesOf = (item: BalanceItem): readonly number[] => {
  if (item.kind === 'loom') return [item.length - item.fixedAt, item.fixedAt + item.length];
  return item.kind === 'deckLoom' ? [item.length] : [];
};

export const theCase: ValidationCase = {
  id: 'VAL-BAL-06',
  title: 'Electric cable in a loop and to the deck, by its potential energy',
  calculation: 'balance',
  unit: 'N',
  tolerance: 2e-5,
  run: () =>
    enough(
      drawSets(hung, { seed: SEED, count: 300, heights: 20 }).flatMap(({ set, blocks, heights }) =>
        heights
          .filter((heightM) => !set.items.some((item) => loomTooShort(item, heightM)))
          .filter((heightM) => !isNear(heightM, set.items.flatMap(changesOf)))
          .map((heightM) =>
            Math.abs(imbalanceAt(set, heightM) - forceByEnergy(set, blocks, heightM)),
          ),
      ),
      4000,
    ),
};
