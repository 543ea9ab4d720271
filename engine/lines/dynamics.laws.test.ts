import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import { dropPeak, steadyPeak, suddenStopPeak } from './dynamics.ts';

const SEED = 29_989;
const RUNS = { seed: SEED, numRuns: 200 };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const massKg = between(1, 800);
const stiffnessNPerM = between(5_000, 600_000);

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

/**
 * Largest pull on a line that does not push, stepped through time: a load that moves down at a
 * speed while the line is stretched by so much. Velocity Verlet over three quarters of a swing, in
 * 20 000 steps, so that a peak is missed by less than a part in 10⁷.
 */
const steppedPeak = (load: {
  readonly massKg: number;
  readonly stiffnessNPerM: number;
  readonly speedMs: number;
  readonly stretchM: number;
}): number => {
  const swing = 2 * Math.PI * Math.sqrt(load.massKg / load.stiffnessNPerM);
  const step = (0.75 * swing) / 20_000;
  const pull = (stretchM: number): number => Math.max(0, load.stiffnessNPerM * stretchM);
  let [stretchM, speedMs, peakN] = [load.stretchM, load.speedMs, 0];
  for (let n = 0; n < 20_000; n += 1) {
    const halfMs = speedMs + (step / 2) * (GRAVITY - pull(stretchM) / load.massKg);
    stretchM += step * halfMs;
    speedMs = halfMs + (step / 2) * (GRAVITY - pull(stretchM) / load.massKg);
    peakN = Math.max(peakN, pull(stretchM));
  }
  return peakN;
};

describe(`peaks against the motion stepped through time (seed ${SEED})`, () => {
  it(`a load that moves when its line stops (seed ${SEED})`, () => {
    fc.assert(
      fc.property(massKg, stiffnessNPerM, between(0.05, 4), (kg, perM, speedMs) => {
        const { force } = suddenStopPeak({ massKg: kg, stiffnessNPerM: perM, speedMs });
        const stretchM = (kg * GRAVITY) / perM;
        const stepped = steppedPeak({ massKg: kg, stiffnessNPerM: perM, speedMs, stretchM });
        expect(relative(force, stepped)).toBeLessThanOrEqual(1e-6);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  it(`a load that falls through slack (seed ${SEED})`, () => {
    fc.assert(
      fc.property(massKg, stiffnessNPerM, between(0, 2), (kg, perM, dropM) => {
        const { force } = dropPeak({ massKg: kg, stiffnessNPerM: perM, dropM });
        const speedMs = Math.sqrt(2 * GRAVITY * dropM);
        const stepped = steppedPeak({ massKg: kg, stiffnessNPerM: perM, speedMs, stretchM: 0 });
        expect(relative(force, stepped)).toBeLessThanOrEqual(1e-6);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });
});

describe(`peaks by energy (seed ${SEED})`, () => {
  it(`what is lost in height and speed is in the line (seed ${SEED})`, () => {
    fc.assert(
      fc.property(massKg, stiffnessNPerM, between(0, 3), (kg, perM, sizeM) => {
        const fall = dropPeak({ massKg: kg, stiffnessNPerM: perM, dropM: sizeM });
        const stretchM = fall.force / perM;
        expect(
          relative((perM * stretchM ** 2) / 2, kg * GRAVITY * (sizeM + stretchM)),
        ).toBeLessThanOrEqual(1e-9);
        const stop = suddenStopPeak({ massKg: kg, stiffnessNPerM: perM, speedMs: sizeM });
        const [restM, farM] = [(kg * GRAVITY) / perM, stop.force / perM];
        const beforeJ = (kg * sizeM ** 2) / 2 + (perM * restM ** 2) / 2;
        const afterJ = (perM * farM ** 2) / 2 - kg * GRAVITY * (farM - restM);
        expect(relative(afterJ, beforeJ)).toBeLessThanOrEqual(1e-9);
      }),
      RUNS,
    );
  });

  it(`a stiffer line, a lighter load and a higher speed all snatch harder (seed ${SEED})`, () => {
    fc.assert(
      fc.property(massKg, stiffnessNPerM, between(0.1, 3), (kg, perM, speedMs) => {
        const { factor } = suddenStopPeak({ massKg: kg, stiffnessNPerM: perM, speedMs });
        const harder = [
          suddenStopPeak({ massKg: kg, stiffnessNPerM: 2 * perM, speedMs }),
          suddenStopPeak({ massKg: kg / 2, stiffnessNPerM: perM, speedMs }),
          suddenStopPeak({ massKg: kg, stiffnessNPerM: perM, speedMs: 2 * speedMs }),
        ];
        for (const each of harder) expect(each.factor).toBeGreaterThan(factor);
      }),
      RUNS,
    );
  });
});

describe('single peaks', () => {
  it('a stop from 1.5 m/s in 0.3 s is 1.510 times the weight', () => {
    const { factor, force } = steadyPeak({ massKg: 100, accelerationMs2: 1.5 / 0.3 });
    expect(factor).toBeCloseTo(1.5099, 4);
    expect(force).toBeCloseTo(100 * (GRAVITY + 5), 9);
  });

  it('a load let go at once on a line without slack is twice its weight', () => {
    expect(dropPeak({ massKg: 50, stiffnessNPerM: 1e5, dropM: 0 }).factor).toBe(2);
  });

  it('nothing that does not move is more than its weight', () => {
    expect(suddenStopPeak({ massKg: 50, stiffnessNPerM: 1e5, speedMs: 0 }).factor).toBe(1);
    expect(steadyPeak({ massKg: 50, accelerationMs2: 0 }).factor).toBe(1);
  });
});
