import { expect, it } from 'vitest';
import { type BalanceSet, imbalanceAt } from '#balance';
import { GRAVITY } from '#quantities';
import { record } from '../../record.ts';

const TOLERANCE = 0.005;

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

it('VAL-BAL-09 12 m of travel moves 19.64 kg over', () => {
  const atKg = (heightM: number): number => imbalanceAt(SET, heightM) / GRAVITY;
  const errors = [atKg(1) - atKg(13) - 19.64, atKg(1) - 9.82, atKg(13) + 9.82, atKg(7)].map(
    Math.abs,
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-09', worst, tolerance: TOLERANCE, unit: 'kg', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
