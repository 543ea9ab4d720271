import { expect, it } from 'vitest';
import { type BalanceSet, handLinePulls, imbalanceAt, pullTest } from '#balance';
import { record } from '../../record.ts';

const TOLERANCE = 0.05;

const SET: BalanceSet = {
  purchase: 1,
  lines: 5,
  lineMassPerLength: 0,
  batten: 250,
  carriage: 55,
  bricks: 200,
  lowStop: 1,
  highStop: 15,
  arborTopAtLow: 16,
  wireEndAbove: 0.5,
  items: [],
};

it('VAL-PUL-02 5 kgf too many on the arbor pull 49.0 N', () => {
  const imbalanceN = imbalanceAt(SET, 8);
  const pulls = handLinePulls({ imbalanceN, frictionN: 0, handLinePerBatten: 1 });
  const found = pullTest({ outN: pulls.out, inN: pulls.in, handLinePerBatten: 1 });
  const errors = [pulls.in - 49, pulls.out + 49, found.imbalance + 49, found.friction].map(
    Math.abs,
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-PUL-02', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
