import { type BalanceSet, imbalanceAt } from '#balance';
import { panHeight } from '#house';
import { FOOT, POUND, POUND_FORCE } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const balanced = (purchase: 1 | 2, loadLb: number): BalanceSet => ({
  purchase,
  lines: 6,
  lineMassPerLength: 0,
  batten: loadLb * POUND,
  carriage: 0,
  bricks: loadLb * purchase * POUND,
  lowStop: 3 * FOOT,
  highStop: 61 * FOOT,
  arborTopAtLow: 66 * FOOT,
  wireEndAbove: 0,
  items: [],
});

export const theCase: ValidationCase = {
  id: 'VAL-BAL-12',
  title: 'Two to one',
  calculation: 'balance',
  unit: 'relative',
  tolerance: 1e-12,
  run: () =>
    ([1, 2] as const).flatMap((purchase) =>
      [50, 137.5, 400, 800].flatMap((loadLb) =>
        [3, 17, 42, 61].map((heightFt) => {
          const heightM = heightFt * FOOT;
          const leftN = imbalanceAt(balanced(purchase, loadLb), heightM);
          const panM = panHeight({ panAtLowM: 20, battenM: heightM, lowStopM: 3 * FOOT, purchase });
          const wantedM = ((heightFt - 3) * FOOT) / purchase;
          return Math.max(
            Math.abs(leftN) / (loadLb * POUND_FORCE),
            wantedM === 0 ? 20 - panM : Math.abs((20 - panM) / wantedM - 1),
          );
        }),
      ),
    ),
};
