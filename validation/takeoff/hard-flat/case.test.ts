import { describe, expect, it } from 'vitest';
import { FOOT, POUND } from '#quantities';
import { record } from '../../record.ts';
import { totalKg } from '../asking.ts';

const TIMBER = 0.511;
const AREA_FT2 = 4 * 8;

describe('VAL-TKO-15 a ply-faced flat', () => {
  it('lies within the rule of thumb', () => {
    const massKg = totalKg({
      kind: 'frame',
      basis: 'calculated',
      members: [
        { name: 'stile', count: 2, length: 8 * FOOT, massPerLength: TIMBER },
        { name: 'rail', count: 3, length: 4 * FOOT, massPerLength: TIMBER },
        { name: 'corner brace', count: 2, length: 3 * FOOT, massPerLength: TIMBER },
      ],
      sheets: [{ name: 'skin', count: 1, area: AREA_FT2 * FOOT ** 2, massPerArea: 4.37 }],
      hardware: [{ name: 'corner block', count: 8, each: 0.1 }],
      allowance: 0.08,
    });
    const lbPerFt2 = massKg / POUND / AREA_FT2;
    record({
      id: 'VAL-TKO-15',
      worst: Math.abs(lbPerFt2 - 1.35),
      tolerance: 0.15,
      unit: 'lb/ft²',
      cases: 1,
    });
    expect(lbPerFt2).toBeGreaterThan(1.2);
  });
});
