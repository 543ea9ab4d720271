import { describe, expect, it } from 'vitest';
import { record } from '../../record.ts';
import { totalKg } from '../asking.ts';

const SHEETS = [
  { thicknessMm: 4, kgPerM2: 2.65, sheetKg: 7.9 },
  { thicknessMm: 6.5, kgPerM2: 4.37, sheetKg: 13 },
  { thicknessMm: 9, kgPerM2: 6.38, sheetKg: 19 },
  { thicknessMm: 12, kgPerM2: 8.33, sheetKg: 24.8 },
  { thicknessMm: 15, kgPerM2: 10.35, sheetKg: 30.8 },
  { thicknessMm: 18, kgPerM2: 12.33, sheetKg: 36.7 },
  { thicknessMm: 21, kgPerM2: 14.28, sheetKg: 42.5 },
  { thicknessMm: 24, kgPerM2: 16.33, sheetKg: 48.6 },
];
const AREA_M2 = 1.22 * 2.44;

describe('VAL-TKO-07 birch ply', () => {
  it('weighs what its data sheet says, and is as dense as it says', () => {
    const errors = SHEETS.map(({ thicknessMm, kgPerM2, sheetKg }) => {
      const massKg = totalKg({
        kind: 'frame',
        basis: 'published',
        sheets: [{ name: 'birch ply', count: 1, area: AREA_M2, massPerArea: kgPerM2 }],
        allowance: 0,
      });
      const density = massKg / AREA_M2 / (thicknessMm / 1000);
      expect(density).toBeGreaterThan(650);
      expect(density).toBeLessThan(710);
      return Math.abs(massKg - sheetKg);
    });
    record({
      id: 'VAL-TKO-07',
      worst: Math.max(...errors),
      tolerance: 0.04,
      unit: 'kg',
      cases: errors.length,
    });
  });
});
