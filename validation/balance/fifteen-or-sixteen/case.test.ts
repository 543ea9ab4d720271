import { expect, it } from 'vitest';
import { type BalanceSet, imbalanceAt } from '#balance';
import { GRAVITY } from '#quantities';
import { record } from '../../record.ts';

const TOLERANCE = 0.006;

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

it('VAL-BAL-11 15 bricks are 6.55 kg short and 16 are 2.97 kg over', () => {
  const leftKg = (purchase: 1 | 2, bricks: number): number =>
    imbalanceAt(loaded(purchase, bricks), 10) / GRAVITY;
  const errors = [
    leftKg(1, 15) - 6.55,
    leftKg(1, 16) + 2.97,
    leftKg(2, 30) - 6.55,
    leftKg(2, 32) + 2.97,
  ].map(Math.abs);
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-11', worst, tolerance: TOLERANCE, unit: 'kg', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
