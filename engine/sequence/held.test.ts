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

  it('reads the curve on a node and between two', () => {
    expect(nodeAt(RAMP, 10)).toBe(RAMP[1]);
    expect(nodeAt(RAMP, 2.5)?.aboveN).toBeCloseTo(35, 9);
    expect(nodeAt(RAMP, 11)).toBeNull();
    expect(nodeAt(RAMP, -1)).toBeNull();
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
  });

  it('keep to multiples of a step', () => {
    expect(onMultiples({ lo: 0.1, hi: 1.1 }, 0.25)).toEqual({ lo: 0.25, hi: 1 });
    expect(onMultiples({ lo: 0.5, hi: 0.5 }, 0.25)).toEqual({ lo: 0.5, hi: 0.5 });
    expect(onMultiples({ lo: 0.3, hi: 0.4 }, 0.25)).toBeNull();
  });
});
