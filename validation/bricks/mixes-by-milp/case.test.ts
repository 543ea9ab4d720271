import { expect, it } from 'vitest';
import { mixForSet } from '#balance';
import { record } from '../../record.ts';
import { mixByMilp, openHighs } from '../milp.ts';
import { mixCases } from '../random-cases.ts';

const SEED = 27_182;
const TOLERANCE_N = 1e-4;

it(`VAL-BRK-02 least worst imbalance and choice on 200 random sets, seed ${SEED}`, async () => {
  const highs = await openHighs();
  const cases = mixCases(SEED, 200);
  let [worst, infeasible, passedOver] = [0, 0, 0];
  for (const [at, task] of cases.entries()) {
    const ours = mixForSet(task);
    const theirs = mixByMilp(highs, task);
    expect('infeasible' in ours, `case ${at}`).toBe(theirs === null);
    if ('infeasible' in ours || theirs === null) {
      infeasible += 1;
      continue;
    }
    const { chosen, leastWorst, optimal } = ours;
    expect(optimal, `case ${at}`).toBe(true);
    const { kinds, bricks, plates } = chosen;
    expect({ kinds, bricks, plates }, `case ${at}`).toEqual({
      kinds: theirs.kinds,
      bricks: theirs.bricks,
      plates: theirs.plates,
    });
    worst = Math.max(
      worst,
      Math.abs(leastWorst.worstN - theirs.leastWorstN),
      Math.abs(chosen.worstN - theirs.worstN),
    );
    expect(worst, `case ${at}`).toBeLessThanOrEqual(TOLERANCE_N);
    if (chosen.worstN > leastWorst.worstN + 1) passedOver += 1;
  }
  // Both kinds of answer have to be among the cases, and choices other than the least worst.
  expect(infeasible).toBeGreaterThan(10);
  expect(cases.length - infeasible).toBeGreaterThan(100);
  expect(passedOver).toBeGreaterThan(30);
  record({ id: 'VAL-BRK-02', worst, tolerance: TOLERANCE_N, unit: 'N', cases: cases.length });
});
