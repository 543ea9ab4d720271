import { describe, expect, it } from 'vitest';
import { record } from '../../record.ts';
import { BARE, totalKg, typed } from '../asking.ts';

const SERGE = [
  { cloth: '500 g/m²', allowances: BARE, wantedKg: 52.5 },
  { cloth: '300 g/m²', allowances: BARE, wantedKg: 31.5 },
  { cloth: '1000 g/m²', allowances: BARE, wantedKg: 105 },
  {
    cloth: '500 g/m²',
    allowances: { hemAllowance: 0.1, paint: 0.3, moisture: 0.05 },
    wantedKg: 78.82875,
  },
];

describe('VAL-TKO-16 wool serge', () => {
  it('weighs in proportion to its mass per area', () => {
    const errors = SERGE.map(({ cloth, allowances, wantedKg }) => {
      const massKg = totalKg({
        kind: 'cloth',
        basis: 'published',
        width: 10,
        drop: 6,
        areaMass: typed('massPerArea', cloth),
        fullness: 0.75,
        ...allowances,
      });
      return Math.abs(massKg / wantedKg - 1);
    });
    record({
      id: 'VAL-TKO-16',
      worst: Math.max(...errors),
      tolerance: 1e-9,
      unit: 'relative',
      cases: errors.length,
    });
    expect(errors).toHaveLength(4);
  });
});
