import { expect, it } from 'vitest';
import { record } from '../../record.ts';
import { arborKgf, battenKgf, pullsOver, readKgf } from '../sheave-friction.ts';

const PER_BLOCK = 1.09;
const LEFT_OUT_KGF = 3.73;

it('VAL-PUL-04 plain bearings make a pull test read 3.72 kgf too batten heavy', () => {
  const pulls = pullsOver(PER_BLOCK);
  expect([pulls.outKgf, pulls.inKgf].map((kgf) => kgf.toFixed(2))).toEqual(['42.03', '44.58']);
  const { imbalanceKgf, frictionKgf } = readKgf(pulls);
  expect(imbalanceKgf).toBeCloseTo(-1.2775, 4);
  expect(frictionKgf).toBeCloseTo(43.3025, 3);
  const leftOutKgf = imbalanceKgf - (battenKgf - arborKgf);
  expect(leftOutKgf).toBeGreaterThan(0);
  expect(leftOutKgf).toBeCloseTo((battenKgf * (PER_BLOCK - 1 / PER_BLOCK) ** 2) / 2, 9);
  record({
    id: 'VAL-PUL-04',
    worst: leftOutKgf,
    tolerance: LEFT_OUT_KGF,
    unit: 'kgf left out',
    cases: 1,
  });
});
