import { describe, expect, it } from 'vitest';
import { GRAVITY, POUND } from '#quantities';
import { type FoundMix, mixForSet } from './mix-for-set.ts';
import type { MixTask } from './mix-task.ts';

const FULL = { id: 'full', mass: 10, thickness: 0.03, stock: 40 };
const HALF = { id: 'half', mass: 5, thickness: 0.015, stock: 1 };

/** N at the batten for so many kg there. */
const weight = (kg: number): number => kg * GRAVITY;

const task = (more: Partial<MixTask>): MixTask => ({
  purchase: 1,
  variants: [{ minN: weight(60), maxN: weight(80) }],
  kinds: [FULL, HALF],
  baseMass: 70,
  baseThickness: 0.12,
  stackHeight: 1.5,
  ...more,
});

const found = (more: Partial<MixTask>): FoundMix => {
  const result = mixForSet(task(more));
  if ('infeasible' in result) throw new Error(result.infeasible.reason);
  return result;
};

const infeasible = (more: Partial<MixTask>) => {
  const result = mixForSet(task(more));
  if (!('infeasible' in result)) throw new Error(`found ${JSON.stringify(result.chosen)}`);
  return result.infeasible;
};

describe('the least worst imbalance', () => {
  it('is half the spread where the middle can be met', () => {
    const { chosen, optimal } = found({});
    expect(chosen.counts).toEqual({ full: 7, half: 0 });
    expect(chosen.worstN).toBeCloseTo(weight(10), 9);
    expect(chosen.arborMass).toBe(140);
    expect(chosen.stackHeight).toBeCloseTo(0.12 + 0.21, 12);
    expect(optimal).toBe(true);
  });

  it('looks at every variant: what is left after a release may be the worst', () => {
    const before = { minN: weight(60), maxN: weight(80) };
    const after = { minN: weight(20), maxN: weight(40) };
    const { chosen } = found({ variants: [before, after] });
    expect(chosen.counts).toEqual({ full: 5, half: 0 });
    expect(chosen.worstN).toBeCloseTo(weight(30), 9);
    expect(found({ variants: [after, before] }).chosen).toEqual(chosen);
  });

  it('puts nothing on a set that is arbor heavy already', () => {
    const { chosen } = found({ variants: [{ minN: weight(-30), maxN: weight(-10) }] });
    expect(chosen).toMatchObject({ bricks: 0, kinds: 0, order: [] });
    expect(chosen.worstN).toBeCloseTo(weight(30), 9);
  });

  it('refuses a set without a variant, and extremes the wrong way round', () => {
    expect(() => mixForSet(task({ variants: [] }))).toThrow(/defect/);
    expect(() => mixForSet(task({ variants: [{ minN: 2, maxN: 1 }] }))).toThrow(/defect/);
  });
});

describe('within half the smallest brick of the best', () => {
  // Wanted 73 kg: seven fulls and a half are 2 kg off, seven fulls 3 kg; the band is 2.5 kg.
  const variants = [{ minN: weight(63), maxN: weight(83) }];

  it('takes the fewest bricks, and names the least worst beside it', () => {
    const { chosen, leastWorst, bandN } = found({ variants });
    expect(bandN).toBeCloseTo(weight(2.5), 9);
    expect(chosen.counts).toEqual({ full: 7, half: 0 });
    expect(leastWorst.counts).toEqual({ full: 7, half: 1 });
    expect(chosen.worstN).toBeCloseTo(weight(13), 9);
    expect(leastWorst.worstN).toBeCloseTo(weight(12), 9);
  });

  it('puts one full and a half before three halves, which are one kind', () => {
    // Wanted 15 kg of fulls of 10 and halves of 5: both mixes are exact.
    const exact = [{ minN: weight(5), maxN: weight(25) }];
    expect(found({ variants: exact }).chosen.counts).toEqual({ full: 1, half: 1 });
  });

  it('does not reach further: just outside, the second kind is used', () => {
    // 73.8 kg: a half more is 1.2 off, without it 3.8; the band ends at 1.2 + 2.5 = 3.7.
    const outside = [{ minN: weight(63.8), maxN: weight(83.8) }];
    expect(found({ variants: outside }).chosen.counts).toEqual({ full: 7, half: 1 });
    const inside = [{ minN: weight(63.7), maxN: weight(83.7) }];
    expect(found({ variants: inside }).chosen.counts).toEqual({ full: 7, half: 0 });
  });

  it('is half as wide in double purchase', () => {
    expect(found({ purchase: 2 }).bandN).toBeCloseTo(weight(1.25), 9);
  });

  it('gives the next best two, all three distinct', () => {
    const { chosen, next } = found({ variants });
    expect([chosen, ...next].map(({ counts }) => counts)).toEqual([
      { full: 7, half: 0 },
      { full: 7, half: 1 },
      { full: 8, half: 0 },
    ]);
  });

  it('gives fewer where there are fewer', () => {
    const { next } = found({ kinds: [{ ...FULL, stock: 1 }] });
    expect(next.map(({ counts }) => counts)).toEqual([{ full: 0 }]);
  });
});

describe('double purchase', () => {
  it('takes two on the arbor for one at the batten', () => {
    const { chosen } = found({ purchase: 2 });
    expect(chosen.counts).toEqual({ full: 14, half: 0 });
    expect(chosen.worstN).toBeCloseTo(weight(10), 9);
  });
});

describe('limits', () => {
  it('of the rod, with pipe weight below and plates between', () => {
    const spreader = { mass: 2, thickness: 0.005, every: 0.3, rule: 'floor' as const };
    const { chosen, heldBackBy } = found({ stackHeight: 0.305, spreader, kinds: [FULL] });
    // 0.12 + 6 × 0.03 = 0.30 m brings a plate, 0.305 m: it fits, and seven do not.
    expect(chosen).toMatchObject({ counts: { full: 6 }, plates: 1, platesAfter: [6] });
    expect(chosen.arborMass).toBe(70 + 60 + 2);
    expect(heldBackBy).toEqual(['rod']);
    expect(found({ stackHeight: 0.3049, spreader, kinds: [FULL] }).chosen.counts.full).toBe(5);
  });

  it('of the arbor: the mass limit is met to the gram and not passed', () => {
    expect(found({ massLimit: 140 }).chosen.counts).toEqual({ full: 7, half: 0 });
    const under = found({ massLimit: 139.99 });
    expect(under.chosen.counts).toEqual({ full: 6, half: 1 });
    expect(under.heldBackBy).toEqual(['massLimit']);
  });

  it('of the stock', () => {
    const { chosen, heldBackBy } = found({ kinds: [{ ...FULL, stock: 4 }, HALF] });
    expect(chosen.counts).toEqual({ full: 4, half: 1 });
    expect(heldBackBy).toEqual(['stock']);
  });

  it('are not blamed for what the smallest brick explains', () => {
    // 72 kg with one brick of 8 kg: 70 is 2 off, less than half of 8, though 4 + 4 would be exact.
    const kinds = [FULL, { ...FULL, id: 'eight', mass: 8, stock: 1 }];
    const given = found({ kinds, variants: [{ minN: weight(72), maxN: weight(72) }] });
    expect(given.leastWorst.worstN).toBeCloseTo(weight(2), 9);
    expect(given.heldBackBy).toEqual([]);
  });

  it('count plates under the pipe weight too, once', () => {
    const spreader = { mass: 2, thickness: 0.005, every: 0.06, rule: 'floor' as const };
    const { chosen } = found({ spreader, variants: [{ minN: 0, maxN: 0 }] });
    expect(chosen).toMatchObject({ bricks: 0, plates: 2, platesAfter: [0, 0], arborMass: 74 });
  });
});

describe('holds', () => {
  const hold = { heightM: 7, baselineN: weight(90), inN: weight(12), outN: weight(25) };

  it('are respected though the balance is worse for it', () => {
    const { chosen, heldBackBy } = found({ holds: [hold], kinds: [FULL] });
    expect(chosen.counts).toEqual({ full: 8 });
    expect(chosen.worstN).toBeCloseTo(weight(20), 9);
    expect(heldBackBy).toEqual(['holds']);
  });

  it('are met at their very edge', () => {
    const edge = { ...hold, inN: weight(20) };
    expect(found({ holds: [edge], kinds: [FULL] }).chosen.counts).toEqual({ full: 7 });
  });

  it('that contradict each other: by how much, at which height, in which direction', () => {
    const other = { heightM: 12, baselineN: weight(30), inN: weight(12), outN: weight(20) };
    const no = infeasible({ holds: [hold, other] });
    expect(no.code).toBe('holdsTooWeak');
    // 78 kg or more for the one, 50 or less for the other: 65 breaks one by 13, the other by 15.
    const broken = no.smallestChange?.moreHold ?? [];
    expect(broken.map(({ heightM, direction }) => [heightM, direction])).toEqual([
      [7, 'in'],
      [12, 'out'],
    ]);
    expect(broken[0]?.byN).toBeCloseTo(weight(13), 9);
    expect(broken[1]?.byN).toBeCloseTo(weight(15), 9);
  });

  it('that no brick can help: the set is arbor heavy without any', () => {
    const no = infeasible({
      holds: [{ heightM: 3, baselineN: weight(-40), inN: weight(25), outN: weight(25) }],
    });
    expect(no.code).toBe('holdsTooWeak');
    expect(no.smallestChange?.moreHold?.[0]).toMatchObject({ heightM: 3, direction: 'out' });
    expect(no.smallestChange?.moreHold?.[0]?.byN).toBeCloseTo(weight(15), 9);
  });

  it('between two bricks: the bricks are too coarse', () => {
    const narrow = { heightM: 7, baselineN: weight(74), inN: weight(1), outN: weight(1) };
    const no = infeasible({ holds: [narrow], kinds: [FULL] });
    expect(no.code).toBe('bricksTooCoarse');
    expect(no.smallestChange?.moreHold?.[0]?.byN).toBeCloseTo(weight(3), 9);
    const piece = no.otherChanges[0]?.onePiece;
    expect(piece?.massFrom).toBeCloseTo(3, 9);
    expect(piece?.massTo).toBeCloseTo(5, 9);
  });

  it('out of reach of stock, rod and mass limit: each named with what it lacks', () => {
    const need = [{ heightM: 7, baselineN: weight(90), inN: weight(20), outN: weight(20) }];
    const few = infeasible({ holds: need, kinds: [{ ...FULL, stock: 5 }] });
    expect(few.code).toBe('stockTooSmall');
    expect(few.smallestChange).toEqual({ moreBricks: { full: 2 }, proven: true });
    const short = infeasible({ holds: need, kinds: [FULL], stackHeight: 0.3 });
    expect(short.code).toBe('rodTooShort');
    expect(short.smallestChange?.moreRod).toBeCloseTo(0.03, 9);
    const light = infeasible({ holds: need, kinds: [FULL], massLimit: 135 });
    expect(light.code).toBe('massLimitTooLow');
    expect(light.smallestChange?.moreMassLimit).toBeCloseTo(5, 9);
    expect(light.otherChanges.at(-1)?.moreHold?.[0]?.byN).toBeCloseTo(weight(10), 9);
    const two = infeasible({ holds: need, kinds: [FULL], massLimit: 135, stackHeight: 0.3 });
    expect(two.code).toBe('severalLimits');
    expect(two.smallestChange?.moreRod).toBeCloseTo(0.03, 9);
    expect(two.smallestChange?.moreMassLimit).toBeCloseTo(5, 9);
  });
});

describe('pipe weight that is too much by itself', () => {
  it('for the rod', () => {
    const no = infeasible({ stackHeight: 0.1 });
    expect(no.code).toBe('baseTooHigh');
    expect(no.smallestChange?.moreRod).toBeCloseTo(0.02, 9);
  });

  it('for the mass limit', () => {
    const no = infeasible({ massLimit: 65 });
    expect(no.code).toBe('baseTooHeavy');
    expect(no.smallestChange?.moreMassLimit).toBeCloseTo(5, 9);
  });
});

describe('the demo house, set 11 by its trims', () => {
  it('takes 25 fulls and a half: 25 lb batten heavy at lift-off, 24 lb arbor heavy above', () => {
    // the-job.md 10.4: bricks 25F+1H; U is +25 lb at 23 ft and −24 lb at 60 ft with them on.
    const lb = POUND * GRAVITY;
    const shiftLb = 25 * 25 + 12.5;
    const { leastWorst } = found({
      kinds: [
        { id: 'F', mass: 25 * POUND, thickness: 0.03048, stock: 332 },
        { id: 'H', mass: 12.5 * POUND, thickness: 0.01524, stock: 40 },
      ],
      baseMass: 161 * POUND,
      variants: [{ minN: (shiftLb - 24) * lb, maxN: (shiftLb + 25) * lb }],
    });
    expect(leastWorst.counts).toEqual({ F: 25, H: 1 });
    expect(leastWorst.worstN).toBeCloseTo(25 * lb, 6);
    expect(leastWorst.arborMass / POUND).toBeCloseTo(798.5, 9);
  });
});
