import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bridle, legTension } from './bridle.ts';

const SEED = 17_203;
const RUNS = { seed: SEED, numRuns: 500 };

describe('a bridle', () => {
  it('carries half of the load in each leg of an even one, more the flatter it is', () => {
    // 45°: V = 500, T = 500·√2; 30°: T = 2·V.
    const even = bridle({ loadN: 1000, leftM: 2, rightM: 2, heightM: 2 });
    expect(even.left.vertical).toBe(500);
    expect(even.left.tension).toBeCloseTo(707.107, 3);
    expect(even.thrust).toBeCloseTo(500, 9);
    expect(even.right).toEqual(even.left);
    const flat = bridle({ loadN: 1000, leftM: 3 ** 0.5, rightM: 3 ** 0.5, heightM: 1 });
    expect(flat.left.tension).toBeCloseTo(1000, 9);
    expect((flat.left.angle * 180) / Math.PI).toBeCloseTo(30, 9);
  });

  it('puts more on the steeper leg', () => {
    // Worked by hand: spans 1 and 3, height 1: V 750 and 250, thrust 1000·1·3/4 = 750.
    const found = bridle({ loadN: 1000, leftM: 1, rightM: 3, heightM: 1 });
    expect([found.left.vertical, found.right.vertical, found.thrust]).toEqual([750, 250, 750]);
    expect(found.left.tension).toBeCloseTo(750 * Math.SQRT2, 9);
    expect(found.right.tension).toBeCloseTo(250 * Math.sqrt(10), 9);
  });

  it('hangs all of the load on a leg that is plumb', () => {
    const found = bridle({ loadN: 1000, leftM: 0, rightM: 3, heightM: 1 });
    expect([found.left.tension, found.right.tension, found.thrust]).toEqual([1000, 0, 0]);
  });

  it('doubles the tension of a leg at 30°', () => {
    expect(legTension({ shareN: 500, angleRad: Math.PI / 6 })).toBeCloseTo(1000, 9);
    expect(legTension({ shareN: 500, angleRad: Math.PI / 2 })).toBe(500);
  });
});

describe(`the legs of a bridle (seed ${SEED})`, () => {
  it(`hold the load and each other (seed ${SEED})`, () => {
    const length = fc.double({ min: 0.05, max: 20, noNaN: true });
    const load = fc.double({ min: 0, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(load, length, length, length, (loadN, leftM, rightM, heightM) => {
        const { left, right, thrust } = bridle({ loadN, leftM, rightM, heightM });
        // A leg pulls along itself, so its tension makes both parts.
        const up = left.tension * Math.sin(left.angle) + right.tension * Math.sin(right.angle);
        const noise = 1e-12 * Math.max(1, left.tension, right.tension);
        expect(Math.abs(up - loadN)).toBeLessThanOrEqual(noise);
        for (const leg of [left, right]) {
          const across = leg.tension * Math.cos(leg.angle);
          expect(Math.abs(across - thrust)).toBeLessThanOrEqual(noise);
        }
      }),
      RUNS,
    );
  });
});
