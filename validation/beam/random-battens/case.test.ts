import { expect, it } from 'vitest';
import { record } from '../../record.ts';
import { trials } from '../random-trials.ts';

const SEED = 20_303;
const COUNT = 2000;

it(`VAL-BEM-15 ${COUNT} random battens, seed ${SEED}`, () => {
  const { answered, withSlack, unstable, faults } = trials(COUNT, SEED);
  expect(faults).toEqual([]);
  expect(answered + unstable).toBe(COUNT);
  // Both kinds of answer are among them, and slack lines enough.
  expect(unstable).toBeGreaterThan(COUNT / 10);
  expect(withSlack).toBeGreaterThan(COUNT / 3);
  record({ id: 'VAL-BEM-15', worst: 0, tolerance: 0, unit: 'faults', cases: COUNT });
});
