import { mixForSet, stackToTarget } from '#balance';
import { GRAVITY, INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

const BATTEN_SIDE = 60.72 + 74.81 + 9.3 + 2 + 2.5;
const BRICK = { id: 'brick', mass: 9.519, thickness: INCH, stock: 100 };
const STACK = { target: BATTEN_SIDE, carriage: 0, bricks: [BRICK], stackHeight: 2 };

const found = () => {
  const stack = stackToTarget(STACK);
  if ('infeasible' in stack) throw new Error(stack.infeasible.reason);
  const mix = mixForSet({
    purchase: 1,
    variants: [{ minN: BATTEN_SIDE * GRAVITY, maxN: BATTEN_SIDE * GRAVITY }],
    kinds: [BRICK],
    baseMass: 0,
    baseThickness: 0,
    stackHeight: 2,
  });
  if ('infeasible' in mix) throw new Error(mix.infeasible.reason);
  return { stack, mix };
};

export const theCase: ValidationCase = {
  id: 'VAL-BRK-04',
  title: 'Fifteen bricks or sixteen',
  calculation: 'bricks',
  unit: 'kg',
  tolerance: 1e-9,
  run: () => {
    const { stack, mix } = found();
    const refused = stackToTarget({ ...STACK, tolerance: 2.9 });
    const asked =
      'infeasible' in refused ? refused.infeasible.smallestChange?.tolerance : undefined;
    return [
      stack.error - 2.974,
      (stack.alternatives[0]?.error ?? Number.NaN) + 6.545,
      mix.leastWorst.worstN / GRAVITY - 2.974,
      (asked ?? Number.NaN) - 2.974,
    ].map(Math.abs);
  },
  also: [
    {
      what: '16 bricks, then 15',
      unit: 'stacks unlike',
      tolerance: 0,
      run: () => {
        const { stack, mix } = found();
        return [
          unlike(stack.counts, { brick: 16 }),
          unlike(stack.alternatives[0]?.counts, { brick: 15 }),
          unlike(mix.leastWorst.counts, { brick: 16 }),
        ];
      },
    },
  ],
};
