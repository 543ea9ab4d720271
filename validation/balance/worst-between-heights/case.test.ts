import { expect, it } from 'vitest';
import { type BalanceSet, balanceCurve, extremesOf, imbalanceAt } from '#balance';
import { GRAVITY } from '#quantities';
import { record } from '../../record.ts';

const TOLERANCE = 1e-6;

const BARE: BalanceSet = {
  purchase: 1,
  lines: 5,
  lineMassPerLength: 0.4,
  batten: 80,
  carriage: 47.126,
  bricks: 100,
  lowStop: 1.003,
  highStop: 19.004,
  // 20 − (h − 1.003) − h at the wire's ends, less the 1.003 m put back here.
  arborTopAtLow: 18.997,
  wireEndAbove: 0,
  items: [],
};
const WITH_PIECE: BalanceSet = {
  ...BARE,
  items: [{ kind: 'standing', mass: 100, drop: 6, pick: 0.437 }],
};

const kilograms = (imbalanceN: number): number => imbalanceN / GRAVITY;
const extremes = (set: BalanceSet) => {
  const { least, most } = extremesOf(balanceCurve(set).nodes);
  return [least, most].map(({ height, imbalance }) => [height, kilograms(imbalance)] as const);
};

it('VAL-BAL-16 the extremes are at the jump and at the ends', () => {
  const found = [...extremes(WITH_PIECE), ...extremes(BARE)];
  const wanted = [
    [6.437, -52.874],
    [6.437, 47.126],
    [19.004, -103.142],
    [1.003, -31.138],
  ] as const;
  const errors = wanted.map(([, kg], index) => Math.abs((found[index]?.[1] ?? Number.NaN) - kg));
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-16', worst, tolerance: TOLERANCE, unit: 'kg', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  const heights = found.map(([heightM]) => heightM.toFixed(6));
  expect(heights).toEqual(wanted.map(([heightM]) => heightM.toFixed(6)));
});

it('VAL-BAL-16 a table misses them: the case is no easy one', () => {
  for (const stepM of [1, 0.1, 0.01]) {
    const table = Array.from({ length: Math.floor(18 / stepM) }, (_, index) => 2 + index * stepM)
      .filter((heightM) => heightM <= BARE.highStop)
      .map((heightM) => kilograms(imbalanceAt(WITH_PIECE, heightM)));
    expect(Math.min(...table)).toBeGreaterThan(-52.874);
    expect(Math.max(...table)).toBeLessThan(47.126);
  }
});
