import { type BalanceSet, imbalanceAt } from '#balance';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const loaded = (purchase: 1 | 2, bricks: number): BalanceSet => ({
  purchase,
  lines: 5,
  lineMassPerLength: 0,
  batten: 60.72 + 2.5 + 2,
  carriage: 0,
  bricks: bricks * 9.519,
  lowStop: 1,
  highStop: 15,
  arborTopAtLow: 16,
  wireEndAbove: 0.5,
  items: [{ kind: 'cloth', mass: 74.81, drop: 7, tie: 0.2, hem: 9.3 }],
});

export const theCase: ValidationCase = {
  id: 'VAL-BAL-11',
  title: 'A drape of 149.33 kg and bricks of 9.519 kg',
  calculation: 'balance',
  unit: 'kg',
  tolerance: 0.006,
  run: () => {
    const leftKg = (purchase: 1 | 2, bricks: number): number =>
      imbalanceAt(loaded(purchase, bricks), 10) / GRAVITY;
    return [
      leftKg(1, 15) - 6.55,
      leftKg(1, 16) + 2.97,
      leftKg(2, 30) - 6.55,
      leftKg(2, 32) + 2.97,
    ].map(Math.abs);
  },
};
