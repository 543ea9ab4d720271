import { describe, expect, it } from 'vitest';
import { kilograms } from '#quantities';
import { known, unknownValue } from './known.ts';
import {
  brickHalfWidth,
  contradictsSample,
  massBySample,
  sampleOfSummary,
  sampleOfWeights,
  type WeighedSample,
} from './weighed-sample.ts';

const WHEN = { on: '2026-08-31', by: 'house crew' };
const FOUR = sampleOfWeights([11, 11.2, 10.8, 11], WHEN);
const written = (massKg: number, tolerance?: number) =>
  known(kilograms(massKg), { basis: 'weighed' }, tolerance);

describe('a sample of weights', () => {
  it('has its mean, its ends and its deviation', () => {
    // Squares of 0, 0.2, 0.2 and 0: 0.08 over 3.
    expect(FOUR).toMatchObject({ count: 4, mean: 11, least: 10.8, most: 11.2, ...WHEN });
    expect(FOUR.deviation).toBeCloseTo(Math.sqrt(0.08 / 3), 12);
  });

  it('has a mean between its ends, to the last binary place', () => {
    // 0.1 + 0.1 + 0.1 is 0.30000000000000004, whose third is above a tenth.
    expect(sampleOfWeights([0.1, 0.1, 0.1], WHEN).mean).toBe(0.1);
    // A sum that falls short: 0.7 six times.
    expect(sampleOfWeights([0.7, 0.7, 0.7, 0.7, 0.7, 0.7], WHEN).mean).toBe(0.7);
  });

  it('leaves out who weighed where nobody says', () => {
    expect(sampleOfWeights([1, 2, 3], { on: '2026-08-31' })).not.toHaveProperty('by');
  });
});

describe('what one more brick may be off', () => {
  it('is t·s·√(1 + 1/n): 3.182 · 0.1633 · 1.118 after four', () => {
    // t of 3 degrees of freedom, 95 %, is 3.182 in the tables (from memory).
    expect(brickHalfWidth(FOUR)).toBeCloseTo(3.182 * Math.sqrt(0.08 / 3) * Math.sqrt(1.25), 3);
  });

  it('is never less than a brick of the sample was off', () => {
    // 29 bricks alike and one a kilogram lighter: s is 0.18 kg, and the bound 0.38 kg.
    const outlier = sampleOfWeights([...Array.from({ length: 29 }, () => 11), 10], WHEN);
    expect(brickHalfWidth(outlier)).toBeCloseTo(outlier.mean - 10, 12);
    const heavy = sampleOfWeights([...Array.from({ length: 29 }, () => 11), 12], WHEN);
    expect(brickHalfWidth(heavy)).toBeCloseTo(12 - heavy.mean, 12);
  });

  it('is nothing where all weigh the same', () => {
    expect(brickHalfWidth(sampleOfWeights([11, 11, 11], WHEN))).toBe(0);
  });

  /** A plain generator of its own, so that the draws are the same each time; seed 20261127. */
  it('holds the next brick 95 times in a hundred, a stack of six far more (seed 20261127)', () => {
    let seed = 20_261_127;
    const uniform = (): number => {
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
      return (seed + 0.5) / 2 ** 32;
    };
    const normal = (): number =>
      Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const brick = (): number => 11.34 + 0.1 * normal();
    const drawn = (count: number): readonly number[] => Array.from({ length: count }, brick);
    const trials = 4000;
    // Six of them scatter by s·√(6 + 36/n) against 6·Δ: that is 7.0, 4.8, 4.6 and 4.6 such
    // deviations, and Student's t with 2, 5, 11 and 23 degrees of freedom lies past them 2.0 %,
    // 0.5 %, 0.1 % and 0.01 % of the time.
    const lostAtMost = { 3: 0.03, 6: 0.01, 12: 0.003, 24: 0.001 } as const;
    for (const count of [3, 6, 12, 24] as const) {
      let [held, stacksLost] = [0, 0];
      for (let trial = 0; trial < trials; trial += 1) {
        // The t-based bound alone: the largest deviation can only hold more.
        const { mean, ...sample } = sampleOfWeights(drawn(count), WHEN);
        const half = brickHalfWidth({ ...sample, mean, least: mean, most: mean });
        if (Math.abs(brick() - mean) <= half) held += 1;
        const stack = drawn(6).reduce((sum, weight) => sum + weight - mean, 0);
        if (Math.abs(stack) > 6 * half) stacksLost += 1;
      }
      // 95 % of 4000 is 3800, with a deviation of √(4000 · 0.95 · 0.05) = 14; four of them.
      expect(Math.abs(held - 0.95 * trials)).toBeLessThan(56);
      expect(stacksLost / trials).toBeLessThan(lostAtMost[count]);
    }
  });
});

describe('a sample of which only the summary was kept', () => {
  const summary = (count: number, mean: number, least: number, most: number): WeighedSample =>
    sampleOfSummary(
      { count, mean: kilograms(mean), least: kilograms(least), most: kilograms(most) },
      WHEN,
    );

  it('differs as much as weights can that have it: each is the least or the most', () => {
    const ends = sampleOfWeights([10.8, 10.8, 11.2, 11.2], WHEN);
    expect(summary(4, 11, 10.8, 11.2).deviation).toBeCloseTo(ends.deviation, 12);
    const oneSide = sampleOfWeights([10.8, 11.2, 11.2, 11.2], WHEN);
    expect(summary(4, 11.1, 10.8, 11.2).deviation).toBeCloseTo(oneSide.deviation, 12);
  });

  it('is never closer than the weights themselves', () => {
    const { mean, least, most } = FOUR;
    expect(brickHalfWidth(summary(4, mean, least, most))).toBeGreaterThan(brickHalfWidth(FOUR));
  });

  it('of bricks that all weigh the same leaves nothing', () => {
    expect(summary(5, 11, 11, 11).deviation).toBe(0);
  });
});

describe('the mass of a kind by its sample', () => {
  it('is the mean, weighed, with the day and the size of the sample', () => {
    expect(massBySample(FOUR)).toEqual({
      known: true,
      value: 11,
      tolerance: brickHalfWidth(FOUR),
      provenance: { basis: 'weighed', source: 'sample of 4', by: 'house crew', on: '2026-08-31' },
    });
  });

  it('keeps a written tolerance that is wider, and narrows nothing', () => {
    expect(massBySample(FOUR, written(11, 2))).toMatchObject({ value: 11, tolerance: 2 });
    expect(massBySample(FOUR, written(11, 0.1))).toMatchObject({ tolerance: brickHalfWidth(FOUR) });
    expect(massBySample(FOUR, written(11))).toMatchObject({ tolerance: brickHalfWidth(FOUR) });
    expect(massBySample(FOUR, unknownValue())).toMatchObject({ value: 11 });
  });
});

describe('a written mass beside its sample', () => {
  it('may be off the mean by its own tolerance', () => {
    expect(contradictsSample(FOUR, written(11.1, 0.1))).toBe(false);
    expect(contradictsSample(FOUR, written(10.9, 0.1))).toBe(false);
    expect(contradictsSample(FOUR, written(11.101, 0.1))).toBe(true);
    expect(contradictsSample(FOUR, written(10.899, 0.1))).toBe(true);
  });

  it('without a tolerance, by what one more brick may be off', () => {
    const half = brickHalfWidth(FOUR);
    expect(contradictsSample(FOUR, written(11 + half - 0.001))).toBe(false);
    expect(contradictsSample(FOUR, written(11 + half + 0.001))).toBe(true);
  });

  it('that nobody has written contradicts nothing', () => {
    expect(contradictsSample(FOUR, unknownValue())).toBe(false);
  });
});
