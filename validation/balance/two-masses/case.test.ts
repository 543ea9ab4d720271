import { expect, it } from 'vitest';
import { imbalanceAt } from '#balance';
import { record } from '../../record.ts';

const PUBLISHED = [
  { battenKg: 2, arborKg: 4, metresPerSecond2: 3.27, lastDigit: 0.01 },
  { battenKg: 200, arborKg: 225, metresPerSecond2: 0.5769, lastDigit: 0.0001 },
  { battenKg: 150, arborKg: 250, metresPerSecond2: 2.4517, lastDigit: 0.0001 },
] as const;

it('VAL-BAL-17 the imbalance of two masses moves them as the textbook has it', () => {
  const errors = PUBLISHED.map(({ battenKg, arborKg, metresPerSecond2, lastDigit }) => {
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
    expect(imbalanceN).toBeLessThan(0);
    return Math.abs(-imbalanceN / (battenKg + arborKg) - metresPerSecond2) / lastDigit;
  });
  const worst = Math.max(...errors);
  record({
    id: 'VAL-BAL-17',
    worst,
    tolerance: 0.5,
    unit: 'of the last digit printed',
    cases: errors.length,
  });
  expect(worst).toBeLessThanOrEqual(0.5);
});
