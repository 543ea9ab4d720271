import { mixForSet } from '#balance';
import { GRAVITY, INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

const BATTEN_SIDE = 149.33;

const mixed = () => {
  const mix = mixForSet({
    purchase: 2,
    variants: [{ minN: BATTEN_SIDE * GRAVITY, maxN: BATTEN_SIDE * GRAVITY }],
    kinds: [{ id: 'brick', mass: 9.519, thickness: INCH, stock: 100 }],
    baseMass: 0,
    baseThickness: 0,
    stackHeight: 3,
  });
  if ('infeasible' in mix) throw new Error(mix.infeasible.reason);
  return mix;
};

export const theCase: ValidationCase = {
  id: 'VAL-BRK-05',
  title: 'Double purchase: two on the arbor for one at the batten',
  calculation: 'bricks',
  unit: 'kg',
  tolerance: 1e-9,
  run: () => {
    const { chosen, next, bandN } = mixed();
    const nextWorst = (next[0]?.worstN ?? Number.NaN) / GRAVITY;
    const chosenWorst = chosen.worstN / GRAVITY;
    return [
      chosenWorst - 1.7855,
      nextWorst - 2.974,
      // The one is batten heavy and the other arbor heavy, so that the two add up to one brick.
      chosenWorst + nextWorst - 4.7595,
      bandN / GRAVITY - 4.7595 / 2,
      chosen.arborMass - 295.089,
    ].map(Math.abs);
  },
  also: [
    {
      what: '31 bricks, then 32',
      unit: 'mixes unlike',
      tolerance: 0,
      run: () => {
        const { chosen, next } = mixed();
        return [unlike(chosen.counts, { brick: 31 }), unlike(next[0]?.counts, { brick: 32 })];
      },
    },
  ],
};
