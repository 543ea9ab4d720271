import { describe, expect, it } from 'vitest';
import { record } from '../../record.ts';
import { totalKg } from '../asking.ts';

const C24 = 420;
const FRAMES = [
  {
    sectionM2: 0.038 * 0.089,
    kgPerM: 1.42,
    runs: [
      [2, 4],
      [3, 1.2],
    ],
    wantedKg: 16.48,
  },
  {
    sectionM2: 0.019 * 0.064,
    kgPerM: 0.511,
    runs: [
      [2, 2.4],
      [4, 1.2],
    ],
    wantedKg: 4.9,
  },
] as const;

describe('VAL-TKO-08 timber', () => {
  it('weighs its volume times its density', () => {
    const errors = FRAMES.map(({ sectionM2, kgPerM, runs, wantedKg }) => {
      const massKg = totalKg({
        kind: 'frame',
        basis: 'published',
        members: runs.map(([count, length]) => ({
          name: 'member',
          count,
          length,
          massPerLength: kgPerM,
        })),
        allowance: 0,
      });
      const volumeM3 = runs.reduce((sum, [count, length]) => sum + count * length * sectionM2, 0);
      expect(massKg).toBeCloseTo(wantedKg, 1);
      return Math.abs(massKg / (volumeM3 * C24) - 1);
    });
    record({
      id: 'VAL-TKO-08',
      worst: Math.max(...errors),
      tolerance: 0.001,
      unit: 'relative',
      cases: errors.length,
    });
  });
});
