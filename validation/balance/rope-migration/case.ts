import { type BalanceSet, imbalanceAt } from '#balance';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';

/** The wire's two ends are level with the batten half way, so that it balances there. */
const SET: BalanceSet = {
  purchase: 1,
  lines: 5,
  lineMassPerLength: 0.1637,
  batten: 150,
  carriage: 50,
  bricks: 100,
  lowStop: 1,
  highStop: 13,
  arborTopAtLow: 13.5,
  wireEndAbove: 0.5,
  items: [],
};

export const theCase: ValidationCase = {
  id: 'VAL-BAL-09',
  title: 'Wire that passes from one side to the other over the travel',
  calculation: 'balance',
  unit: 'kg',
  tolerance: 0.005,
  run: () => {
    const atKg = (heightM: number): number => imbalanceAt(SET, heightM) / GRAVITY;
    return [atKg(1) - atKg(13) - 19.64, atKg(1) - 9.82, atKg(13) + 9.82, atKg(7)].map(Math.abs);
  },
};
