import { type BalanceSet, imbalanceAt, imbalanceBelow } from '#balance';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const SET: BalanceSet = {
  purchase: 1,
  lines: 5,
  lineMassPerLength: 0,
  batten: 65.22,
  carriage: 40,
  bricks: 109.33,
  lowStop: 1,
  highStop: 15,
  arborTopAtLow: 16,
  wireEndAbove: 0.5,
  items: [{ kind: 'cloth', mass: 15 * 7 * 1.5 * 0.475, drop: 7, tie: 0.2, hem: 15 * 0.62 }],
};

export const theCase: ValidationCase = {
  id: 'VAL-BAL-10',
  title: 'A drape of which three metres lie on the deck',
  calculation: 'balance',
  unit: 'kg',
  tolerance: 0.005,
  run: () => {
    const kilograms = (imbalanceN: number): number => imbalanceN / GRAVITY;
    const [up, touching] = [imbalanceAt(SET, 7.2), imbalanceBelow(SET, 7.2)].map(kilograms);
    const lower = kilograms(imbalanceAt(SET, 4.2));
    return [
      Math.abs((up ?? Number.NaN) - (touching ?? Number.NaN) - 9.3),
      Math.abs((touching ?? Number.NaN) - lower - 32.06),
    ];
  },
};
