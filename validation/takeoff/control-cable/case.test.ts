import { describe, expect, it } from 'vitest';
import { record } from '../../record.ts';
import { takenOff, typed } from '../asking.ts';

const CABLES = [
  { cores: 19, mm2: 1.5, kgPerKm: 590, wantedKg: 8.85 },
  { cores: 3, mm2: 1.5, kgPerKm: 190, wantedKg: 2.85 },
  { cores: 3, mm2: 2.5, kgPerKm: 250, wantedKg: 3.75 },
  { cores: 5, mm2: 2.5, kgPerKm: 350, wantedKg: 5.25 },
  { cores: 12, mm2: 1.5, kgPerKm: 465, wantedKg: 6.975 },
  { cores: 24, mm2: 1.5, kgPerKm: 740, wantedKg: 11.1 },
];
const COPPER = 8960;
const LENGTH_M = 15;

describe('VAL-TKO-09 control cable', () => {
  it('weighs its length, and more than its copper', () => {
    const errors = CABLES.map(({ cores, mm2, kgPerKm, wantedKg }) => {
      const { mass, carried } = takenOff({
        kind: 'loom',
        basis: 'published',
        carriedAs: 'loom',
        length: LENGTH_M,
        massPerLength: typed('massPerLength', `${kgPerKm} g/m`),
        fixedAt: 11,
      });
      if (mass === null || carried?.kind !== 'loom') throw new Error('no loom');
      const copperKg = cores * mm2 * 1e-6 * LENGTH_M * COPPER;
      expect(mass.mass).toBeGreaterThan(copperKg);
      expect(mass.mass).toBeLessThan(5 * copperKg);
      expect(carried.massPerLength * carried.length).toBeCloseTo(wantedKg, 9);
      return Math.abs(mass.mass / wantedKg - 1);
    });
    record({
      id: 'VAL-TKO-09',
      worst: Math.max(...errors),
      tolerance: 1e-9,
      unit: 'relative',
      cases: errors.length,
    });
  });
});
