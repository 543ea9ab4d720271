import { describe, expect, it } from 'vitest';
import type { TakeoffQuestion } from '#takeoff';
import { record } from '../../record.ts';
import { BARE, takenOff, totalKg } from '../asking.ts';

const BATTEN: TakeoffQuestion = {
  kind: 'pipe',
  basis: 'published',
  length: 15,
  massPerLength: 4.048,
};

const DRAPE: TakeoffQuestion = {
  kind: 'cloth',
  basis: 'published',
  width: 15,
  drop: 7,
  areaMass: 0.475,
  fullness: 0.5,
  ...BARE,
  bottomMassPerLength: 0.62,
  ties: { count: 20, each: 0.1 },
};

const TRIM_CHAINS: TakeoffQuestion = {
  kind: 'hardware',
  basis: 'estimated',
  lines: [{ name: 'trim chain', count: 5, each: 0.5 }],
};

describe('VAL-TKO-03 a batten with a drape', () => {
  it('weighs 149.33 kg, line by line', () => {
    const [cloth, ties, chain] = takenOff(DRAPE).lines.map((line) => line.totalKg ?? Number.NaN);
    const found = [totalKg(BATTEN), cloth, chain, ties, totalKg(TRIM_CHAINS)];
    const together = totalKg(BATTEN) + totalKg(DRAPE) + totalKg(TRIM_CHAINS);
    const wanted = [60.72, 74.81, 9.3, 2, 2.5, 149.33];
    const errors = [...found, together].map((massKg, index) =>
      Math.abs((massKg ?? Number.NaN) - (wanted[index] ?? Number.NaN)),
    );
    record({
      id: 'VAL-TKO-03',
      worst: Math.max(...errors),
      tolerance: 0.005,
      unit: 'kg',
      cases: errors.length,
    });
    expect(together).toBeCloseTo(149.3325, 9);
  });
});
