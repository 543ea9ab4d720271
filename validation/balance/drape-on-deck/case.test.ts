import { expect, it } from 'vitest';
import { type BalanceSet, imbalanceAt, imbalanceBelow } from '#balance';
import { GRAVITY } from '#quantities';
import { record } from '../../record.ts';

const TOLERANCE = 0.005;

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

it('VAL-BAL-10 three metres on the deck are 32.06 kg, and the chain 9.30 kg at once', () => {
  const kilograms = (imbalanceN: number): number => imbalanceN / GRAVITY;
  const [up, touching] = [imbalanceAt(SET, 7.2), imbalanceBelow(SET, 7.2)].map(kilograms);
  const lower = kilograms(imbalanceAt(SET, 4.2));
  const errors = [
    Math.abs((up ?? Number.NaN) - (touching ?? Number.NaN) - 9.3),
    Math.abs((touching ?? Number.NaN) - lower - 32.06),
  ];
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-10', worst, tolerance: TOLERANCE, unit: 'kg', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
