import { expect, it } from 'vitest';
import type { Dimension } from '#quantities';
import {
  FOOT,
  GRAVITY,
  INCH,
  kilograms,
  massToWeight,
  OUNCE,
  POUND,
  POUND_FORCE,
  parseQuantity,
  YARD,
} from '#quantities';
import { record } from '../../record.ts';

const value = (dimension: Dimension, text: string): number => {
  const answer = parseQuantity(dimension, text);
  return answer.ok ? answer.value : Number.NaN;
};

it('VAL-QTY-04 the constants are the defined values, to the last bit', () => {
  expect([YARD, FOOT, INCH]).toEqual([0.9144, 0.3048, 0.0254]);
  expect([POUND, OUNCE, GRAVITY]).toEqual([0.45359237, 0.028349523125, 9.80665]);
});

it('VAL-QTY-04 yard, pound and pound-force are 0.9144 m, 0.45359237 kg, 4.4482216152605 N', () => {
  const exact = [
    value('length', '1 yd') - 0.9144,
    value('length', '1 ft') - 0.3048,
    value('length', '1 in') - 0.0254,
    value('mass', '1 lb') - 0.45359237,
    value('mass', '1 oz') - 0.028349523125,
    massToWeight(kilograms(POUND)) - POUND_FORCE,
  ];
  expect(exact).toEqual([0, 0, 0, 0, 0, 0]);
  const worst = Math.abs(value('force', '1 lbf') / 4.4482216152605 - 1);
  expect(worst).toBeLessThanOrEqual(1e-15);
  const cases = exact.length + 1;
  record({ id: 'VAL-QTY-04', worst, tolerance: 1e-15, unit: 'relative', cases });
});
