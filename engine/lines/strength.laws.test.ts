import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TERMINATIONS } from '#house';
import { bendingEfficiency, lineFactor, terminationEfficiency } from './strength.ts';

const SEED = 83_407;
const RUNS = { seed: SEED, numRuns: 1000 };
const ratio = fc.double({ min: 1, max: 80, noNaN: true });

describe(`efficiencies (seed ${SEED})`, () => {
  it(`a larger sheave never leaves less, and never all (seed ${SEED})`, () => {
    fc.assert(
      fc.property(ratio, ratio, (one, other) => {
        const [small, large] = one <= other ? [one, other] : [other, one];
        const left = [small, large].map((each) => bendingEfficiency(each)?.value ?? Number.NaN);
        const [less = Number.NaN, more = Number.NaN] = left;
        expect(less).toBeGreaterThanOrEqual(0.5);
        expect(more).toBeLessThanOrEqual(0.95);
        expect(less).toBeLessThanOrEqual(more + 1e-15);
      }),
      RUNS,
    );
  });

  it(`there is no step between two figures of the table (seed ${SEED})`, () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 79, noNaN: true }), (at) => {
        const here = bendingEfficiency(at)?.value ?? Number.NaN;
        const next = bendingEfficiency(at + 1e-6)?.value ?? Number.NaN;
        // The steepest part of the table is 0.15 for one.
        expect(next - here).toBeLessThanOrEqual(0.16e-6);
      }),
      RUNS,
    );
  });

  it(`a thicker rope never has a better end (seed ${SEED})`, () => {
    const diameter = fc.double({ min: 1e-3, max: 0.0254, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...TERMINATIONS), diameter, diameter, (made, one, other) => {
        const thin = terminationEfficiency(made, Math.min(one, other))?.value ?? Number.NaN;
        const thick = terminationEfficiency(made, Math.max(one, other))?.value ?? Number.NaN;
        expect(thick).toBeLessThanOrEqual(thin);
        expect(thick).toBeGreaterThan(0);
        expect(thin).toBeLessThanOrEqual(1);
      }),
      RUNS,
    );
  });

  it(`the factor halves when the tension doubles (seed ${SEED})`, () => {
    const force = fc.double({ min: 1, max: 1e5, noNaN: true });
    const share = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(force, force, share, share, (breakingN, tensionN, termination, bending) => {
        const line = { breakingN, tensionN, termination, bending };
        const once = lineFactor(line) ?? Number.NaN;
        const twice = lineFactor({ ...line, tensionN: 2 * tensionN }) ?? Number.NaN;
        expect(Math.abs(once / twice - 2)).toBeLessThanOrEqual(1e-14);
      }),
      RUNS,
    );
  });
});
