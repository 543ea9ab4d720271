import { expect, it } from 'vitest';
import { mixForSet, stackToTarget } from '#balance';
import { GRAVITY, INCH } from '#quantities';
import { record } from '../../record.ts';

const BATTEN_SIDE = 60.72 + 74.81 + 9.3 + 2 + 2.5;
const BRICK = { id: 'brick', mass: 9.519, thickness: INCH, stock: 100 };
const STACK = { target: BATTEN_SIDE, carriage: 0, bricks: [BRICK], stackHeight: 2 };

it('VAL-BRK-04 sixteen bricks are nearest, 2.974 kg over; fifteen are 6.545 kg under', () => {
  const stack = stackToTarget(STACK);
  if ('infeasible' in stack) throw new Error(stack.infeasible.reason);
  const [next] = stack.alternatives;
  expect([stack.counts, next?.counts]).toEqual([{ brick: 16 }, { brick: 15 }]);
  const mix = mixForSet({
    purchase: 1,
    variants: [{ minN: BATTEN_SIDE * GRAVITY, maxN: BATTEN_SIDE * GRAVITY }],
    kinds: [BRICK],
    baseMass: 0,
    baseThickness: 0,
    stackHeight: 2,
  });
  if ('infeasible' in mix) throw new Error(mix.infeasible.reason);
  expect(mix.leastWorst.counts).toEqual({ brick: 16 });
  const refused = stackToTarget({ ...STACK, tolerance: 2.9 });
  const asked = 'infeasible' in refused ? refused.infeasible.smallestChange?.tolerance : undefined;
  const errors = [
    stack.error - 2.974,
    (next?.error ?? Number.NaN) + 6.545,
    mix.leastWorst.worstN / GRAVITY - 2.974,
    (asked ?? Number.NaN) - 2.974,
  ].map(Math.abs);
  for (const error of errors) expect(error).toBeLessThanOrEqual(1e-9);
  const worst = Math.max(...errors);
  record({ id: 'VAL-BRK-04', worst, tolerance: 1e-9, unit: 'kg', cases: errors.length });
});
