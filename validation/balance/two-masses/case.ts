import { imbalanceAt } from '#balance';
import type { ValidationCase } from '../../form.ts';

const PUBLISHED = [
  { battenKg: 2, arborKg: 4, metresPerSecond2: 3.27, lastDigit: 0.01 },
  { battenKg: 200, arborKg: 225, metresPerSecond2: 0.5769, lastDigit: 0.0001 },
  { battenKg: 150, arborKg: 250, metresPerSecond2: 2.4517, lastDigit: 0.0001 },
] as const;

export const theCase: ValidationCase = {
  id: 'VAL-BAL-17',
  title: 'Two masses over a pulley',
  calculation: 'balance',
  unit: 'of the last digit printed',
  tolerance: 0.5,
  run: () =>
    PUBLISHED.map(({ battenKg, arborKg, metresPerSecond2, lastDigit }) => {
      const imbalanceN = imbalanceAt(
        {
          purchase: 1,
          lines: 1,
          lineMassPerLength: 0,
          batten: battenKg,
          carriage: 0,
          bricks: arborKg,
          lowStop: 0,
          highStop: 12,
          arborTopAtLow: 14,
          wireEndAbove: 0,
          items: [],
        },
        5,
      );
      // Of the sign too: what is arbor heavy raises the batten.
      return Math.abs(-imbalanceN / (battenKg + arborKg) - metresPerSecond2) / lastDigit;
    }),
};
