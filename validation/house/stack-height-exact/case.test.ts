import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spreaderCount, stackHeight } from '#house';
import { INCH } from '#quantities';
import { record } from '../../record.ts';

const SEED = 20_305;
const TOLERANCE = 1e-13;

const stack = fc.record({
  runs: fc.array(
    fc.record({ mils: fc.integer({ min: 20, max: 80 }).map((n) => n * 25), count: fc.nat(30) }),
    { minLength: 1, maxLength: 4 },
  ),
  plateMils: fc.integer({ min: 100, max: 300 }),
  everyMils: fc.constantFrom(12_000, 18_000, 24_000, 30_000, 36_000),
  rule: fc.constantFrom('floor' as const, 'ceil' as const),
});

const metresOf = (mils: number): number => (mils / 1000) * INCH;

it(`VAL-HSE-05 stacks are as high as their thousandths (seed ${SEED})`, () => {
  const stacks = fc.sample(stack, { seed: SEED, numRuns: 400 });
  const errors = stacks.map(({ runs, plateMils, everyMils, rule }) => {
    const bricksMils = runs.reduce((sum, { mils, count }) => sum + mils * count, 0);
    const rest = bricksMils % everyMils;
    const plates = (bricksMils - rest) / everyMils + (rule === 'ceil' && rest > 0 ? 1 : 0);
    const wantedM = metresOf(bricksMils + plates * plateMils);
    let brickThicknessM = 0;
    for (const { mils, count } of runs) {
      for (let brick = 0; brick < count; brick += 1) brickThicknessM += metresOf(mils);
    }
    const spreader = { thicknessM: metresOf(plateMils), everyM: metresOf(everyMils), rule };
    expect(spreaderCount(brickThicknessM, spreader.everyM, rule)).toBe(plates);
    return Math.abs(stackHeight({ brickThicknessM, spreader }) - wantedM) / (1 + wantedM);
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-HSE-05', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
  const whole = stacks.filter(({ runs, everyMils }) => {
    const mils = runs.reduce((sum, { mils: each, count }) => sum + each * count, 0);
    return mils > 0 && mils % everyMils === 0;
  });
  expect(whole.length).toBeGreaterThan(0);
});
