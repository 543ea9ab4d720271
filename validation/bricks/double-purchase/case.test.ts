import { expect, it } from 'vitest';
import { mixForSet } from '#balance';
import { GRAVITY, INCH } from '#quantities';
import { record } from '../../record.ts';

const BATTEN_SIDE = 149.33;

it('VAL-BRK-05 31 bricks balance in double purchase what 15.7 do in single', () => {
  const mix = mixForSet({
    purchase: 2,
    variants: [{ minN: BATTEN_SIDE * GRAVITY, maxN: BATTEN_SIDE * GRAVITY }],
    kinds: [{ id: 'brick', mass: 9.519, thickness: INCH, stock: 100 }],
    baseMass: 0,
    baseThickness: 0,
    stackHeight: 3,
  });
  if ('infeasible' in mix) throw new Error(mix.infeasible.reason);
  const { chosen, next, bandN } = mix;
  expect([chosen.counts, next[0]?.counts]).toEqual([{ brick: 31 }, { brick: 32 }]);
  const nextWorst = (next[0]?.worstN ?? Number.NaN) / GRAVITY;
  const chosenWorst = chosen.worstN / GRAVITY;
  const errors = [
    chosenWorst - 1.7855,
    nextWorst - 2.974,
    // The one is batten heavy and the other arbor heavy, so that the two add up to one brick.
    chosenWorst + nextWorst - 4.7595,
    bandN / GRAVITY - 4.7595 / 2,
    chosen.arborMass - 295.089,
  ].map(Math.abs);
  for (const error of errors) expect(error).toBeLessThanOrEqual(1e-9);
  const worst = Math.max(...errors);
  record({ id: 'VAL-BRK-05', worst, tolerance: 1e-9, unit: 'kg', cases: errors.length });
});
