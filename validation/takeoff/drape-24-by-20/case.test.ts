import { describe, expect, it } from 'vitest';
import { POUND } from '#quantities';
import { record } from '../../record.ts';
import { BARE, totalKg, typed } from '../asking.ts';

const drapeKg = (cloth: string): number =>
  totalKg({
    kind: 'cloth',
    basis: 'published',
    width: typed('length', '24 ft'),
    drop: typed('length', '20 ft'),
    areaMass: typed('massPerArea', cloth),
    fullness: typed('ratio', '50 %'),
    ...BARE,
  });

describe('VAL-TKO-01 a drape of 24 ft by 20 ft', () => {
  it('weighs 83.3 lb, and not the 125 lb of a weight per square yard', () => {
    const massKg = drapeKg('25 oz/lin yd @ 54 in');
    const errors = [
      Math.abs(massKg / POUND - 83.3),
      Math.abs(massKg - 37.8),
      Math.abs(drapeKg('25 oz/yd²') / POUND - 125),
    ];
    record({
      id: 'VAL-TKO-01',
      worst: Math.max(...errors),
      tolerance: 0.05,
      unit: 'lb or kg',
      cases: errors.length,
    });
    expect(massKg / POUND).toBeCloseTo(250 / 3, 9);
  });
});
