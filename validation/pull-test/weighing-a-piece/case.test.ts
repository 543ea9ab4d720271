import fc from 'fast-check';
import { expect, it } from 'vitest';
import { correctedMass, pullTest } from '#balance';
import { POUND, POUND_FORCE } from '#quantities';
import {
  asNumber,
  exact,
  GRAVITY_EXACTLY,
  minus,
  POUND_EXACTLY,
  plus,
  times,
} from '../../exact.ts';
import { record } from '../../record.ts';

const SEED = 20_407;
const TOLERANCE = 1e-11;

const tenths = fc.integer({ min: 500, max: 9000 }).map((n) => (n / 10).toFixed(1));
const piece = fc.record({
  listed: tenths,
  truly: tenths,
  part: fc.integer({ min: 5, max: 100 }).map((n) => (n / 100).toFixed(2)),
  friction: fc.integer({ min: 5, max: 90 }).map(String),
});

it(`VAL-PUL-07 two pulls weigh the piece (seed ${SEED})`, () => {
  const poundForce = times(POUND_EXACTLY, GRAVITY_EXACTLY);
  const errors = fc
    .sample(piece, { seed: SEED, numRuns: 300 })
    .flatMap(({ listed, truly, part, friction }) => {
      const excess = times(minus(exact(truly), exact(listed)), exact(part));
      const found = pullTest({
        outN: asNumber(times(plus(exact(friction), excess), poundForce)),
        inN: asNumber(times(minus(exact(friction), excess), poundForce)),
        handLinePerBatten: 1,
      });
      const massKg = correctedMass({
        listedKg: Number(listed) * POUND,
        carriedShare: Number(part),
        measuredN: found.imbalance,
        listedN: 0,
      });
      return [
        Math.abs(massKg / asNumber(times(exact(truly), POUND_EXACTLY)) - 1),
        Math.abs(found.friction / (Number(friction) * POUND_FORCE) - 1),
      ];
    });
  const worst = Math.max(...errors);
  record({ id: 'VAL-PUL-07', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
