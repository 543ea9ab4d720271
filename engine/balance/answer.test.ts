import { describe, expect, it } from 'vitest';
import { answerBalance, answerMix, answerPullTest } from './answer.ts';
import { asPounds, feet, hung, pounds, SEVEN_LINES, SIX_LINES } from './example-sets.ts';
import type { BalanceItem } from './item.ts';

const TOWER: BalanceItem = {
  kind: 'tipping',
  mass: pounds(640),
  drop: feet(22),
  pick: feet(1),
  centre: 0.46,
  uncertainty: pounds(12.8),
};
const tower = hung(SIX_LINES, 637.5, [TOWER]);
const SHOW_BRICKS = [
  { id: 'F', mass: pounds(25), thickness: feet(0.1), stock: 60 },
  { id: 'H', mass: pounds(12.5), thickness: feet(0.05), stock: 20 },
] as const;

describe('answerBalance', () => {
  const heights = [4, 20, 23, 60].map(feet);

  it('answers at the heights asked for, in their order, above a jump', () => {
    const { imbalance, contact, uncertainty, parts, slope } = answerBalance(tower, { heights });
    expect(imbalance.map((n) => Math.round(asPounds(n)))).toEqual([-296, -317, 25, -24]);
    expect(contact.map(({ low, high }) => low === high)).toEqual([true, true, false, true]);
    expect(uncertainty.map((n) => asPounds(n).toFixed(2))).toEqual([
      '5.89',
      '5.89',
      '12.80',
      '12.80',
    ]);
    expect(parts.map(({ itemsKg }) => Math.round((itemsKg[0] ?? 0) / pounds(1)))).toEqual([
      294, 294, 640, 640,
    ]);
    expect(slope.every((one) => (one ?? 1) < 0)).toBe(true);
  });

  it('gives the jumps and the extremes of the whole travel, whatever was asked', () => {
    const { jumps, least, most } = answerBalance(tower, { heights: [] });
    expect(jumps.map(({ height }) => height / feet(1))).toEqual([expect.closeTo(23, 9)]);
    expect(asPounds(least.imbalance)).toBeCloseTo(-320.91, 9);
    expect(asPounds(most.imbalance)).toBeCloseTo(24.69, 9);
  });

  it('gives pulls only where friction is given', () => {
    expect('pulls' in answerBalance(tower, { heights })).toBe(false);
    const { pulls, imbalance } = answerBalance(tower, {
      heights,
      friction: 180,
      handLinePerBatten: 0.5,
    });
    expect(pulls?.map((pull) => pull.out)).toEqual(imbalance.map((n) => (n + 180) / 0.5));
  });

  it('has no slope off the travel, and says where a loom is too short', () => {
    const loom = { kind: 'loom', massPerLength: 4, length: feet(30), fixedAt: feet(38) } as const;
    const found = answerBalance(
      { ...SIX_LINES, items: [loom] },
      { heights: [2, 3, 7.9, 8.1, 62].map(feet) },
    );
    expect(found.slope.map((one) => one === null)).toEqual([true, false, false, false, true]);
    expect(found.loomTooShort.map((heightM) => Math.round(heightM / feet(0.1)))).toEqual([
      20, 30, 79,
    ]);
  });
});

describe('answerMix', () => {
  const asked = {
    balance: { ...SEVEN_LINES, carriage: pounds(195), items: [] },
    bricks: SHOW_BRICKS,
    stackHeight: feet(5.5),
  };
  /** A header of 230 lb, balanced from 18 to 52 ft: 9 F 1 H in the demo. */
  const header: BalanceItem = { kind: 'clear', mass: pounds(230), drop: feet(4), pick: feet(1) };
  const balance = { ...asked.balance, items: [header] };

  it('chooses by the free range alone, and starts with the piece in the air', () => {
    const found = answerMix({ ...asked, balance, from: feet(5), to: feet(52) });
    if ('infeasible' in found) throw new Error(found.infeasible.reason);
    const { F = 0, H = 0 } = found.leastWorst.counts;
    // From 5 ft, 196.26 + 230 + 0.77·57.5 − 195, to 52 ft, where 72.38 lb less: middle 239.35 lb.
    expect(25 * F + 12.5 * H).toBe(237.5);
    expect(asPounds(found.leastWorst.worstN)).toBeCloseTo(38.03, 1);
  });

  it('keeps within what holds at both ends, or says that it cannot', () => {
    const narrow = { in: 1, out: 1 };
    const found = answerMix({ ...asked, balance, from: feet(5), to: feet(52), holds: narrow });
    expect('infeasible' in found).toBe(true);
    const wide = { in: 400, out: 400 };
    const held = answerMix({ ...asked, balance, from: feet(5), to: feet(52), holds: wide });
    expect('infeasible' in held).toBe(false);
  });
});

describe('answerPullTest', () => {
  it('says no more than was asked', () => {
    expect(answerPullTest({ out: 47, in: -11 })).toEqual({ imbalance: 29, friction: 18 });
    expect(answerPullTest({ out: 47, in: -11, expectedImbalance: 9 })).toEqual({
      imbalance: 29,
      friction: 18,
      difference: 20,
    });
  });

  it('corrects the mass of one item by what differs', () => {
    const found = answerPullTest({
      out: 47,
      in: -11,
      expectedImbalance: 29 - 9.80665,
      itemMass: 100,
      carriedShare: 0.5,
    });
    expect(found.correctedMass).toBeCloseTo(102, 9);
  });

  it('reckons with a line at half speed', () => {
    const found = answerPullTest({ out: 94, in: -22, handLinePerBatten: 0.5 });
    expect(found).toEqual({ imbalance: 29, friction: 18 });
  });
});
