import { describe, expect, it } from 'vitest';
import { POUND } from '#quantities';
import { record } from '../../record.ts';
import { BARE, totalKg, typed } from '../asking.ts';

const ROLLS = [
  { cloth: '8 oz/lin yd @ 54 in', byHandLb: 50, quotedLb: 55 },
  { cloth: '16 oz/lin yd @ 54 in', byHandLb: 100, quotedLb: 100 },
];

describe('VAL-TKO-02 rolls of cloth', () => {
  it('weigh 50 lb and 100 lb', () => {
    const errors = ROLLS.map(({ cloth, byHandLb, quotedLb }) => {
      const massKg = totalKg({
        kind: 'cloth',
        basis: 'published',
        width: typed('length', '54 in'),
        drop: typed('length', '100 yd'),
        areaMass: typed('massPerArea', cloth),
        fullness: 0,
        ...BARE,
      });
      expect(massKg / POUND / byHandLb).toBeCloseTo(1, 9);
      return Math.abs(massKg / POUND - quotedLb) / quotedLb;
    });
    record({
      id: 'VAL-TKO-02',
      worst: Math.max(...errors),
      tolerance: 0.1,
      unit: 'relative',
      cases: errors.length,
    });
  });
});
