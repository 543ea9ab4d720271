import fc from 'fast-check';
import { expect, it } from 'vitest';
import { handLinePulls, pullTest } from '#balance';
import { record } from '../../record.ts';

const SEED = 20_401;
const TOLERANCE = 1e-6;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const set = fc.record({
  imbalanceN: between(-2000, 2000),
  frictionN: between(5, 500),
  perBatten: fc.constantFrom(0.5, 1, 2),
});
type Moved = Parameters<Parameters<typeof set.map>[0]>[0];

/** Energy that motion gains over a metre of batten travel, J: what is put in less what it takes. */
const gainJ = ({ imbalanceN, frictionN, perBatten }: Moved, pullN: number, way: 1 | -1): number => {
  const pulledJ = pullN * perBatten;
  // Going out lifts the heavy side of a batten heavy set, and going in lets it down.
  const liftedJ = way * imbalanceN;
  return pulledJ - liftedJ - frictionN;
};

const steadyPull = (the: Moved, way: 1 | -1): number => {
  let [low, high] = [-2e4, 2e4];
  for (let step = 0; step < 100; step += 1) {
    const pullN = (low + high) / 2;
    if (gainJ(the, pullN, way) < 0) low = pullN;
    else high = pullN;
  }
  return (low + high) / 2;
};

it(`VAL-PUL-01 two steady pulls give imbalance and friction back (seed ${SEED})`, () => {
  const errors = fc.sample(set, { seed: SEED, numRuns: 300 }).flatMap((the) => {
    const [outN, inN] = [steadyPull(the, 1), steadyPull(the, -1)];
    const handLinePerBatten = the.perBatten;
    const { imbalanceN, frictionN } = the;
    const pulls = handLinePulls({ imbalanceN, frictionN, handLinePerBatten });
    const found = pullTest({ outN, inN, handLinePerBatten });
    return [
      pulls.out - outN,
      pulls.in - inN,
      found.imbalance - imbalanceN,
      found.friction - frictionN,
    ].map(Math.abs);
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-PUL-01', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
