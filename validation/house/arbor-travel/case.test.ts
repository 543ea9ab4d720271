import fc from 'fast-check';
import { expect, it } from 'vitest';
import { panHeight } from '#house';
import { FOOT } from '#quantities';
import { record } from '../../record.ts';

const SEED = 20_301;
const TOLERANCE = 1e-13;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const set = fc.record({
  purchase: fc.constantFrom(1 as const, 2 as const),
  lowStopM: between(0.3, 1.5),
  panAtLowM: between(14, 22),
  attachM: between(1.5, 3),
  loftM: between(26, 32),
  headM: between(26, 32),
  deadEndM: between(26, 32),
  acrossM: between(2, 25),
  risesM: fc.array(between(0, 13), { minLength: 10, maxLength: 10 }),
});
type Set = Parameters<Parameters<typeof set.map>[0]>[0];

const wireLength = (the: Set, battenM: number): number => {
  const attachM = panHeight({ ...the, battenM }) + the.attachM;
  const across = Math.hypot(the.acrossM, the.headM - the.loftM);
  const single = the.loftM - battenM + across + (the.headM - attachM);
  return the.purchase === 1 ? single : single + (the.deadEndM - attachM);
};

it(`VAL-HSE-01 no wire grows or shrinks as the batten moves (seed ${SEED})`, () => {
  const errors = fc.sample(set, { seed: SEED, numRuns: 300 }).flatMap((the) => {
    const atLowM = wireLength(the, the.lowStopM);
    return the.risesM.map((riseM) => Math.abs(wireLength(the, the.lowStopM + riseM) / atLowM - 1));
  });
  const travel = { panAtLowM: 57 * FOOT, lowStopM: 3 * FOOT, purchase: 2 } as const;
  const fallM = 57 * FOOT - panHeight({ ...travel, battenM: 5 * FOOT });
  errors.push(Math.abs(fallM / FOOT - 1));
  const worst = Math.max(...errors);
  record({ id: 'VAL-HSE-01', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
