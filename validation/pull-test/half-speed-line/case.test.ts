import { expect, it } from 'vitest';
import { type BalanceSet, handLinePulls, imbalanceAt, pullTest } from '#balance';
import { handLineTravel } from '#house';
import { record } from '../../record.ts';

const TOLERANCE = 1e-6;
const G = 9.80665;
const FRICTION_N = 120;

const SET: BalanceSet = {
  purchase: 2,
  lines: 5,
  lineMassPerLength: 0,
  batten: 100,
  carriage: 60,
  bricks: 130,
  lowStop: 1,
  highStop: 15,
  arborTopAtLow: 16,
  wireEndAbove: 0.5,
  items: [],
};

/** Pull that pays for a travel of the batten, over the line's own travel. */
const pullByWork = (travelM: number, way: 1 | -1): number => {
  const raisedJ = way * G * (100 * travelM - 190 * (travelM / 2));
  return (raisedJ + FRICTION_N * travelM) / handLineTravel(travelM, 0.5);
};

it('VAL-PUL-05 a gauge on a half-speed line shows twice what is at the batten', () => {
  const imbalanceN = imbalanceAt(SET, 6);
  const half = { handLinePerBatten: 0.5 };
  const pulls = handLinePulls({ imbalanceN, frictionN: FRICTION_N, ...half });
  const errors = [0.5, 3, 12].flatMap((travelM) => {
    const [outN, inN] = [pullByWork(travelM, 1), pullByWork(travelM, -1)];
    const found = pullTest({ outN, inN, ...half });
    return [
      pulls.out - outN,
      pulls.in - inN,
      found.imbalance - 5 * G,
      found.friction - FRICTION_N,
    ].map(Math.abs);
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-PUL-05', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  expect([pulls.out.toFixed(1), pulls.in.toFixed(1)]).toEqual(['338.1', '141.9']);
});
