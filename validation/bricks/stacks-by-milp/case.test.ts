import { expect, it } from 'vitest';
import { stackToTarget } from '#balance';
import { record } from '../../record.ts';
import { openHighs, stackByMilp } from '../milp.ts';
import { stackCases } from '../random-cases.ts';

const SEED = 31_415;

it(`VAL-BRK-01 least error, then fewest bricks, on 200 random stacks, seed ${SEED}`, async () => {
  const highs = await openHighs();
  const cases = stackCases(SEED, 200);
  let [worst, withPlates, close, short, tied] = [0, 0, 0, 0, 0];
  for (const [at, input] of cases.entries()) {
    const ours = stackToTarget(input);
    const theirs = stackByMilp(highs, input);
    if ('infeasible' in ours) throw new Error(`case ${at}: ${ours.infeasible.reason}`);
    expect(ours.optimal, `case ${at}`).toBe(true);
    worst = Math.max(worst, Math.abs(Math.abs(ours.error) - theirs.error));
    expect(worst, `case ${at}: ${ours.error} against ${theirs.error} kg`).toBeLessThanOrEqual(1e-6);
    expect(ours.bricks, `case ${at}`).toBe(theirs.bricks);
    if (ours.plates > 0) withPlates += 1;
    const smallest = Math.min(...input.bricks.map(({ mass }) => mass));
    if (Math.abs(ours.error) <= smallest / 2) close += 1;
    else short += 1;
    if (ours.alternatives.some(({ optimal }) => optimal)) tied += 1;
  }
  // The cases are worth something only while plates, close fits, full rods and ties are common.
  expect(withPlates).toBeGreaterThan(60);
  expect(Math.min(close, short)).toBeGreaterThan(40);
  expect(tied).toBeGreaterThan(15);
  record({ id: 'VAL-BRK-01', worst, tolerance: 1e-6, unit: 'kg', cases: cases.length });
});
