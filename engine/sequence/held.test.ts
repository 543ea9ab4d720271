import { describe, expect, it } from 'vitest';
import type { OrderNode } from '#state';
import { heldSpans, holdsAt, nodeAt, type Rated } from './held.ts';
import { isWithin, onMultiples, overlap, pointSpan } from './span.ts';

const node = (heightM: number, belowN: number, aboveN = belowN, doubtN = 0): OrderNode => ({
  heightM,
  belowN,
  aboveN,
  contact: { lowN: Math.min(belowN, aboveN), highN: Math.max(belowN, aboveN) },
  doubtN,
});

/** 60 N batten heavy at the deck, 40 N arbor heavy 10 m up: 10 N for every metre. */
const RAMP = [node(0, 60), node(10, -40)];

const restraint = (resists: Rated['resists'], ratedN: number, lo = 0, hi = 10): Rated => ({
  resists,
  ratedN,
  span: { lo, hi },
});

describe('where a set is held', () => {
  it('ends where the imbalance passes the lock', () => {
    expect(heldSpans(RAMP, [], 50, 0)).toEqual([{ lo: expect.closeTo(1, 6), hi: 10 }]);
    expect(heldSpans(RAMP, [], 30, 0)).toEqual([
      { lo: expect.closeTo(3, 6), hi: expect.closeTo(9, 6) },
    ]);
    expect(heldSpans([node(0, 60), node(10, 51)], [], 50, 0)).toEqual([]);
  });

  it('holds for every mass in doubt, the worse way', () => {
    const doubtful = RAMP.map((each) => ({ ...each, doubtN: 15 }));
    expect(heldSpans(doubtful, [], 50, 1)).toEqual([
      { lo: expect.closeTo(2.5, 6), hi: expect.closeTo(9.5, 6) },
    ]);
    expect(heldSpans(doubtful, [], 50, 0.4)[0]?.lo).toBeCloseTo(1.6, 6);
  });

  it('is held nowhere where the doubt alone is more than the lock', () => {
    const vague = RAMP.map((each) => ({ ...each, doubtN: 15 }));
    expect(heldSpans(vague, [], 14, 1)).toEqual([]);
    expect(heldSpans(vague, [], 15, 1)).toEqual([
      { lo: expect.closeTo(6, 6), hi: expect.closeTo(6, 6) },
    ]);
  });

  it('takes the largest hold each way, and never a sum', () => {
    const both = [restraint('in', 55), restraint('in', 54)];
    expect(holdsAt(both, pointSpan(5), 50)).toEqual({ inN: 55, outN: 50 });
    expect(heldSpans(RAMP, both, 50, 0)[0]?.lo).toBeCloseTo(0.5, 6);
    expect(holdsAt([restraint('both', 80)], pointSpan(5), 50)).toEqual({ inN: 80, outN: 80 });
    expect(holdsAt([restraint('out', 80)], pointSpan(5), 50)).toEqual({ inN: 50, outN: 80 });
  });

  it('counts a restraint between its ends only, and the ends are exact', () => {
    const spans = heldSpans(RAMP, [restraint('out', 100, 8, 9.5)], 30, 0);
    expect(spans).toHaveLength(1);
    expect(spans[0]?.hi).toBeCloseTo(9.5, 6);
    expect(heldSpans(RAMP, [restraint('in', 100, 0.5, 2)], 50, 0)[0]?.lo).toBeCloseTo(0.5, 6);
    // A stop is a restraint at one height.
    const stop = restraint('in', 100, 0, 0);
    expect(heldSpans(RAMP, [stop], 50, 0)).toEqual([
      { lo: 0, hi: 0 },
      { lo: expect.closeTo(1, 6), hi: 10 },
    ]);
  });

  it('lets a contact choose, at its own height alone', () => {
    const landing = [node(0, -300), node(5, -300, 300), node(10, 300)];
    expect(heldSpans(landing, [], 50, 0)).toEqual([{ lo: 5, hi: 5 }]);
    // From above it comes down to the contact and no further.
    const light = [node(0, -300), node(5, -300, 20), node(10, 20)];
    expect(heldSpans(light, [], 50, 0)).toEqual([{ lo: 5, hi: 10 }]);
  });

  it('never lets a contact choose a doubt away', () => {
    // The contact reaches from 60 to 300: at its lightest it pulls in with 60.
    const heavy = [node(0, 60), node(5, 60, 300), node(10, 300)];
    expect(heldSpans(heavy, [], 50, 0)).toEqual([]);
    const doubtful = [node(0, 300), node(5, 40, 300, 9), node(10, 300)];
    expect(heldSpans(doubtful, [], 50, 1)).toContainEqual({ lo: expect.anything(), hi: 5 });
    const more = [node(0, 300), node(5, 40, 300, 11), node(10, 300)];
    expect(heldSpans(more, [], 50, 1)).toEqual([]);
  });

  it('is held to the very limit, and a millionth of a newton past it', () => {
    const all = [{ lo: 0, hi: 10 }];
    for (const sign of [1, -1]) {
      const level = (forceN: number) => [node(0, sign * forceN), node(10, sign * forceN)];
      expect(heldSpans(level(50), [], 50, 0)).toEqual(all);
      expect(heldSpans([node(3, sign * 1e-6)], [], 0, 0)).toEqual([{ lo: 3, hi: 3 }]);
      expect(heldSpans(level(1e-6), [], 0, 0)).toEqual(all);
      expect(heldSpans([node(3, sign * 1.1e-6)], [], 0, 0)).toEqual([]);
      expect(heldSpans(level(1.1e-6), [], 0, 0)).toEqual([]);
    }
  });

  it('may be held at one height, or at two that are as good as one', () => {
    // Just at the limit with the batten in, and heavier from there on.
    expect(heldSpans([node(0, 1e-6), node(10, 5)], [], 0, 0)).toEqual([{ lo: 0, hi: 0 }]);
    // Balanced at 1 m only, with as much doubt as is left to rounding.
    expect(heldSpans([node(0, 2, 2, 1e-6), node(2, -2, -2, 1e-6)], [], 0, 1)).toEqual([
      { lo: 1, hi: 1 },
    ]);
    // Two contacts, a ten millionth of a metre apart.
    const contacts = [node(0, -300, 300), node(1e-7, 300, -300), node(5, -300)];
    expect(heldSpans(contacts, [], 50, 0)).toEqual([{ lo: 0, hi: 1e-7 }]);
  });

  it('counts doubt by its share, at a node and between two', () => {
    const doubtful = [node(0, 20, 20, 40), node(10, -20, -20, 40)];
    // 20 + 40 / 2 is 40 at the ends.
    expect(heldSpans(doubtful, [], 40, 0.5)).toEqual([{ lo: 0, hi: 10 }]);
    expect(heldSpans(doubtful, [], 30, 0.5)).toEqual([
      { lo: expect.closeTo(2.5, 6), hi: expect.closeTo(7.5, 6) },
    ]);
    // Doubt that grows from 0 to 20: 10 + 2 h passes 20 at 5 m, and so it does downwards.
    const growing = (valueN: number) => [node(0, valueN, valueN, 0), node(10, valueN, valueN, 20)];
    expect(heldSpans(growing(10), [], 20, 1)).toEqual([{ lo: 0, hi: expect.closeTo(5, 6) }]);
    expect(heldSpans(growing(-10), [], 20, 1)).toEqual([{ lo: 0, hi: expect.closeTo(5, 6) }]);
    const mid = nodeAt(growing(10), 2.5);
    expect(mid).toEqual({
      heightM: 2.5,
      belowN: 10,
      aboveN: 10,
      contact: { lowN: 10, highN: 10 },
      doubtN: 5,
    });
  });

  it('takes a restraint that misses a height by a ten millionth of a metre', () => {
    const near = [restraint('in', 80, 1e-7, 5), restraint('out', 90, -5, -1e-7)];
    expect(holdsAt(near, pointSpan(0), 50)).toEqual({ inN: 80, outN: 90 });
    const far = [restraint('in', 80, 2e-7, 5), restraint('out', 90, -5, -2e-7)];
    expect(holdsAt(far, pointSpan(0), 50)).toEqual({ inN: 50, outN: 50 });
  });

  it('has no node twice where a restraint ends on one', () => {
    // It ends within a ten millionth of the node at 10 m, where the curve would else be cut.
    expect(heldSpans(RAMP, [restraint('both', 70, 0, 10)], 10, 0)).toEqual([{ lo: 0, hi: 10 }]);
    expect(heldSpans(RAMP, [restraint('both', 70, -1, 11)], 10, 0)).toEqual([{ lo: 0, hi: 10 }]);
    // Two that meet at 5 m hold one after the other, each with its own rating.
    const two = [restraint('in', 70, 0, 5), restraint('in', 8, 5, 9)];
    expect(heldSpans(RAMP, two, 0, 0)).toEqual([
      { lo: 0, hi: 5 },
      { lo: expect.closeTo(5.2, 6), hi: expect.closeTo(6, 6) },
    ]);
  });

  it('reads the curve on a node and between two', () => {
    expect(nodeAt(RAMP, 10)).toBe(RAMP[1]);
    expect(nodeAt(RAMP, 2.5)?.aboveN).toBeCloseTo(35, 9);
    expect(nodeAt(RAMP, 11)).toBeNull();
    expect(nodeAt(RAMP, -1)).toBeNull();
    expect(nodeAt(RAMP, 10 + 1e-8)).toBe(RAMP[1]);
    expect(nodeAt([node(0, 5)], 1e-7)?.heightM).toBe(0);
    expect(nodeAt([node(0, 5)], 1.1e-7)).toBeNull();
  });
});

describe('stretches of heights', () => {
  it('meet where they overlap or touch', () => {
    expect(overlap({ lo: 0, hi: 2 }, { lo: 1, hi: 3 })).toEqual({ lo: 1, hi: 2 });
    expect(overlap({ lo: 0, hi: 2 }, { lo: 2 + 1e-8, hi: 3 })).toEqual({ lo: 2, hi: 2 });
    expect(overlap({ lo: 0, hi: 2 }, { lo: 2.001, hi: 3 })).toBeNull();
    expect(isWithin({ lo: 1, hi: 2 }, { lo: 1, hi: 2 })).toBe(true);
    expect(isWithin({ lo: 0.9, hi: 2 }, { lo: 1, hi: 2 })).toBe(false);
    expect(isWithin({ lo: 1, hi: 2.1 }, { lo: 1, hi: 2 })).toBe(false);
    // A ten millionth of a metre is no distance; more than that is one.
    expect(overlap(pointSpan(0), { lo: 1e-7, hi: 3 })).toEqual({ lo: 0, hi: 0 });
    expect(isWithin({ lo: -1e-7, hi: 1e-7 }, pointSpan(0))).toBe(true);
    expect(isWithin({ lo: 0, hi: 1.1e-7 }, pointSpan(0))).toBe(false);
    expect(isWithin({ lo: -1.1e-7, hi: 0 }, pointSpan(0))).toBe(false);
  });

  it('keep to multiples of a step', () => {
    expect(onMultiples({ lo: 0.1, hi: 1.1 }, 0.25)).toEqual({ lo: 0.25, hi: 1 });
    expect(onMultiples({ lo: 0.5, hi: 0.5 }, 0.25)).toEqual({ lo: 0.5, hi: 0.5 });
    expect(onMultiples({ lo: 0.3, hi: 0.4 }, 0.25)).toBeNull();
  });
});
