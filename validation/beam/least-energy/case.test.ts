import { expect, it } from 'vitest';
import type { BattenCase, BattenSolution } from '#beam';
import { drawFrom } from '../../draw.ts';
import { record } from '../../record.ts';
import { answered } from '../asking.ts';
import { wholeWeight } from '../judge-batten.ts';
import { tensionsByQp } from '../least-energy.ts';
import { pullingBatten } from '../random-battens.ts';

const SEED = 20_304;
const COUNT = 500;
const TOLERANCE = 1e-6;

type Solved = { readonly the: BattenCase; readonly ours: BattenSolution };

/** Random battens on lines that only pull, of which one or more hang slack. */
const withSlackLines = (): readonly Solved[] => {
  const draw = drawFrom(SEED);
  const found: Solved[] = [];
  while (found.length < COUNT) {
    const the = pullingBatten(draw);
    const ours = answered(the);
    if (!('unstable' in ours) && ours.slack.includes(true)) found.push({ the, ours });
  }
  return found;
};

it(`VAL-BEM-14 least energy on ${COUNT} battens with slack lines, seed ${SEED}`, () => {
  const cases = withSlackLines();
  const errors = cases.flatMap(({ the, ours }) => {
    const { forceN } = wholeWeight(the);
    const theirs = tensionsByQp(the);
    return ours.tensions.map((each, i) => Math.abs(each - (theirs[i] ?? Number.NaN)) / forceN);
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-BEM-14', worst, tolerance: TOLERANCE, unit: 'of the load', cases: COUNT });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  // Rigid lines and wires, one slack line and several are among them.
  const rigid = cases.filter(({ the }) => the.lines.some(({ stiffness }) => stiffness === null));
  const several = cases.filter(({ ours }) => ours.slack.filter(Boolean).length > 1);
  expect(rigid.length).toBeGreaterThan(100);
  expect(several.length).toBeGreaterThan(100);
});
