import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asPounds, SIX_LINES } from './example-sets.ts';
import { imbalanceAt } from './imbalance.ts';
import { correctedMass, handLinePulls, pullTest } from './pulls.ts';

const SEED = 15_017;
const RUNS = { seed: SEED, numRuns: 500 };

const force = fc.double({ min: -5000, max: 5000, noNaN: true });
const friction = fc.double({ min: 0, max: 800, noNaN: true });
const perBatten = fc.constantFrom(0.5, 1, 2);

describe(`a pull test undoes the pulls (seed ${SEED})`, () => {
  it(`finds the imbalance and the friction that made them (seed ${SEED})`, () => {
    fc.assert(
      fc.property(force, friction, perBatten, (imbalanceN, frictionN, handLinePerBatten) => {
        const pulls = handLinePulls({ imbalanceN, frictionN, handLinePerBatten });
        const found = pullTest({ outN: pulls.out, inN: pulls.in, handLinePerBatten });
        expect(Math.abs(found.imbalance - imbalanceN)).toBeLessThanOrEqual(1e-9);
        expect(Math.abs(found.friction - frictionN)).toBeLessThanOrEqual(1e-9);
      }),
      RUNS,
    );
  });

  it(`makes the pulls again from what it found (seed ${SEED})`, () => {
    fc.assert(
      fc.property(force, force, perBatten, (outN, inN, handLinePerBatten) => {
        const { imbalance, friction: found } = pullTest({ outN, inN, handLinePerBatten });
        const pulls = handLinePulls({
          imbalanceN: imbalance,
          frictionN: found,
          handLinePerBatten,
        });
        expect(Math.abs(pulls.out - outN)).toBeLessThanOrEqual(1e-9);
        expect(Math.abs(pulls.in - inN)).toBeLessThanOrEqual(1e-9);
      }),
      RUNS,
    );
  });

  it(`mirrors: the pulls change places where the heavy side does (seed ${SEED})`, () => {
    fc.assert(
      fc.property(force, friction, perBatten, (imbalanceN, frictionN, handLinePerBatten) => {
        const one = handLinePulls({ imbalanceN, frictionN, handLinePerBatten });
        const other = handLinePulls({ imbalanceN: -imbalanceN, frictionN, handLinePerBatten });
        expect([other.out, other.in]).toEqual([one.in, one.out]);
      }),
      RUNS,
    );
  });

  it(`does the same work on the line as at the batten, whatever the reeving (seed ${SEED})`, () => {
    fc.assert(
      fc.property(force, friction, perBatten, (imbalanceN, frictionN, handLinePerBatten) => {
        const { out } = handLinePulls({ imbalanceN, frictionN, handLinePerBatten });
        const battenTravelM = 3;
        const onLineJ = out * battenTravelM * handLinePerBatten;
        expect(onLineJ).toBeCloseTo((imbalanceN + frictionN) * battenTravelM, 6);
      }),
      RUNS,
    );
  });
});

describe(`correctedMass (seed ${SEED})`, () => {
  it(`finds the true mass of a piece from the imbalance it makes (seed ${SEED})`, () => {
    const mass = fc.double({ min: 1, max: 500, noNaN: true });
    const centre = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(mass, mass, centre, fc.boolean(), (listedKg, trueKg, share, isUp) => {
        const piece = { kind: 'tipping', drop: 6, pick: 0.5, centre: share } as const;
        const heightM = isUp ? 9 : 4;
        const measure = (massKg: number) =>
          imbalanceAt({ ...SIX_LINES, items: [{ ...piece, mass: massKg }] }, heightM);
        const found = correctedMass({
          listedKg,
          carriedShare: isUp ? 1 : share,
          measuredN: measure(trueKg),
          listedN: measure(listedKg),
        });
        expect(found).toBeCloseTo(trueKg, 7);
        expect(Math.abs(asPounds(measure(found) - measure(trueKg)))).toBeLessThanOrEqual(1e-6);
      }),
      RUNS,
    );
  });
});
