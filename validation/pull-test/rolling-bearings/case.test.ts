import { expect, it } from 'vitest';
import { record } from '../../record.ts';
import { arborKgf, battenKgf, pullsOver, readKgf } from '../sheave-friction.ts';

const PER_BLOCK = 1.04;
const LEFT_OUT_KGF = 0.78;

it('VAL-PUL-03 rolling bearings make a pull test read 0.77 kgf too batten heavy', () => {
  const pulls = pullsOver(PER_BLOCK);
  expect([pulls.outKgf, pulls.inKgf].map((kgf) => kgf.toFixed(2))).toEqual(['15.40', '23.86']);
  const { imbalanceKgf, frictionKgf } = readKgf(pulls);
  expect(imbalanceKgf).toBeCloseTo(-4.23, 3);
  expect(frictionKgf).toBeCloseTo(19.63, 2);
  const leftOutKgf = imbalanceKgf - (battenKgf - arborKgf);
  expect(leftOutKgf).toBeGreaterThan(0);
  expect(leftOutKgf).toBeCloseTo((battenKgf * (PER_BLOCK - 1 / PER_BLOCK) ** 2) / 2, 9);
  record({
    id: 'VAL-PUL-03',
    worst: leftOutKgf,
    tolerance: LEFT_OUT_KGF,
    unit: 'kgf left out',
    cases: 1,
  });
});
