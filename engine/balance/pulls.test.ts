import { describe, expect, it } from 'vitest';
import { kilograms, POUND_FORCE } from '#quantities';
import { asPounds, feet, hung, pounds, SEVEN_LINES } from './example-sets.ts';
import { imbalanceAt } from './imbalance.ts';
import { assumedFriction, correctedMass, handLinePulls, pullTest } from './pulls.ts';

const poundsForce = (n: number): number => n * POUND_FORCE;
const asPoundsForce = (forceN: number): number => forceN / POUND_FORCE;

describe('assumedFriction', () => {
  it('is a share of what hangs and a constant, and says that nobody measured it', () => {
    const found = assumedFriction({
      share: 0.05,
      constantN: poundsForce(4),
      hangingKg: pounds(700),
    });
    expect(asPoundsForce(found.force)).toBeCloseTo(39, 9);
    expect(found.measured).toBe(false);
  });
});

describe('handLinePulls', () => {
  it('takes imbalance and friction out, and friction less imbalance in', () => {
    const { out, in: inward } = handLinePulls({
      imbalanceN: 120,
      frictionN: 200,
      handLinePerBatten: 1,
    });
    expect([out, inward]).toEqual([320, 80]);
  });

  it('is negative where the set goes by itself', () => {
    const found = handLinePulls({ imbalanceN: 250, frictionN: 200, handLinePerBatten: 1 });
    expect(found.in).toBe(-50);
    const arborHeavy = handLinePulls({ imbalanceN: -250, frictionN: 200, handLinePerBatten: 1 });
    expect(arborHeavy.out).toBe(-50);
  });

  it('is doubled on a line that travels half as far as the batten', () => {
    const found = handLinePulls({ imbalanceN: 120, frictionN: 200, handLinePerBatten: 0.5 });
    expect([found.out, found.in]).toEqual([640, 160]);
  });
});

describe('pullTest', () => {
  it('finds 29 lb batten heavy and 18 lb of friction from 47 lbf out and 11 lbf checked', () => {
    const found = pullTest({
      outN: poundsForce(47),
      inN: poundsForce(-11),
      handLinePerBatten: 1,
    });
    expect(asPounds(found.imbalance)).toBeCloseTo(29, 9);
    expect(asPounds(found.friction)).toBeCloseTo(18, 9);
  });

  it('finds balance where both ways pull alike', () => {
    expect(pullTest({ outN: 90, inN: 90, handLinePerBatten: 1 })).toEqual({
      imbalance: 0,
      friction: 90,
    });
  });

  it('halves both on a line that travels half as far', () => {
    expect(pullTest({ outN: 90, inN: 50, handLinePerBatten: 0.5 })).toEqual({
      imbalance: 10,
      friction: 35,
    });
  });
});

/** Scenario S10 of the trade: a header marked 250 lb that comes off its stop at 47 lbf. */
describe('correctedMass', () => {
  const listedKg = pounds(250);
  const header = { kind: 'clear', mass: listedKg, drop: feet(2), pick: feet(0.5) } as const;

  it('makes the header 280 lb', () => {
    const set = hung(SEVEN_LINES, 300, [header]);
    const found = correctedMass({
      listedKg,
      carriedShare: 1,
      measuredN: pullTest({
        outN: poundsForce(47),
        inN: poundsForce(-11),
        handLinePerBatten: 1,
      }).imbalance,
      listedN: imbalanceAt(set, feet(3)),
    });
    // U as listed: 196.26 + 250 + 0.77·61.5 − 495 = −1.385 lb, so 30.385 lb are missing.
    expect(found / pounds(1)).toBeCloseTo(280.385, 9);
  });

  it('reckons with the part that hangs: half a cloth shows half of what is missing', () => {
    const found = correctedMass({ listedKg: 80, carriedShare: 0.5, measuredN: 30, listedN: 10 });
    expect(found).toBeCloseTo(80 + 40 / 9.80665, 12);
  });

  it('leaves a mass alone that was listed right', () => {
    const same = { listedKg: 80, carriedShare: 0.4, measuredN: 12.5, listedN: 12.5 };
    expect(correctedMass(same)).toBe(kilograms(80));
  });

  it('cannot weigh what lies on the deck', () => {
    expect(() =>
      correctedMass({ listedKg: 80, carriedShare: 0, measuredN: 30, listedN: 10 }),
    ).toThrow('finite');
  });
});
