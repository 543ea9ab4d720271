/** Where a load is held, left and flown, and what is not: U = 60 − 10 h newtons. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Restraint, Standing } from '#state';
import { type RampAsked, rampLoad, rampNode, rounded } from './example-ramp.contract.ts';
import { gapIn, heldLoads, ratedFor, type Trust } from './held-loads.ts';
import { pointSpan } from './span.ts';

const LOCK: Trust = { lockN: 50, exposedJ: Number.POSITIVE_INFINITY, extra: null };

type Extra = NonNullable<Trust['extra']>;
const extra = (more: Partial<Extra> = {}): Extra => ({
  resists: 'out',
  ratedN: 60,
  span: null,
  as: 'fast',
  ...more,
});

const OUT = extra();

const held = (asked: RampAsked = {}, trust: Partial<Trust> = {}) => {
  const { loads, load } = rampLoad({ ...asked, physics: { frictionN: () => 5, ...asked.physics } });
  return { load, of: heldLoads(loads, { ...LOCK, ...trust }) };
};

describe('a load', () => {
  it('is held at rest by the lock as far as it is trusted', () => {
    const { load, of } = held();
    expect(of.rest(load).map(rounded)).toEqual([[1, 11]]);
    expect(of.open(load).map(rounded)).toEqual([[3, 9]]);
    expect(of.work(load).map(rounded)).toEqual([[3, 9]]);
  });

  it('is worked out once', () => {
    const { load, of } = held();
    expect(of.rest(load)).toBe(of.rest(load));
    // Friction leaves the lock its worth, so it flies where it rests, and is left there.
    expect(of.fly(load)).toBe(of.rest(load));
    expect(of.left(load)).toBe(of.rest(load));
    const { loads } = rampLoad({});
    expect(heldLoads(loads, LOCK).open).toBe(heldLoads(loads, { ...LOCK, lockN: 10 }).open);
  });

  it('asks of no fault at the nominal limit, where nobody is in the way', () => {
    const { load, of } = held({ options: { lock: 'nominal' } });
    expect(of.open(load)).toBe(of.rest(load));
    expect(of.work(load)).toBe(of.rest(load));
  });

  it('is held by what is made fast after a fault too, and left without it', () => {
    const { load, of } = held({}, { extra: OUT });
    // Up to 60 N arbor heavy at rest; 30 N batten heavy and 40 N arbor heavy with a fault.
    expect(of.rest(load).map(rounded)).toEqual([[1, 12]]);
    expect(of.open(load).map(rounded)).toEqual([[3, 10]]);
    expect(of.left(load).map(rounded)).toEqual([[1, 11]]);
    // A line may be lost, so it counts for no fault.
    const line = held({}, { extra: { ...OUT, as: 'line' } });
    expect(line.of.rest(line.load).map(rounded)).toEqual([[1, 12]]);
    expect(line.of.open(line.load).map(rounded)).toEqual([[3, 9]]);
  });

  it('does not take the faults of one restraint for those of another', () => {
    const { loads, load } = rampLoad({});
    const open = (trust: Trust) => heldLoads(loads, trust).open(load).map(rounded);
    const fast = { ...LOCK, extra: OUT };
    expect(open(fast)).toEqual([[3, 10]]);
    expect(open(LOCK)).toEqual([[3, 9]]);
    expect(open(fast)).toEqual([[3, 10]]);
    expect(open({ ...LOCK, extra: { ...OUT, ratedN: 55 } })).toEqual([[3, 9.5]]);
    expect(open(LOCK)).toEqual([[3, 9]]);
  });

  it('is calm where it may stand, if nobody asks', () => {
    const slack = { start: { items: { lamp: 'attachedSlack' } } } as const;
    const any = held(slack);
    expect(any.of.calm(any.load)).toEqual([{ lo: 0, hi: 4 }]);
    // F = 60 h − 5 h²: none at 0 and 12 m, 100 J at 2 m and 10 m.
    const some = held(slack, { exposedJ: 100 });
    expect(some.of.calm(some.load).map(rounded)).toEqual([
      [0, 2],
      [10, 12],
    ]);
  });
});

describe('flying', () => {
  const tied = (kind: Restraint['kind']): Partial<Standing> => ({
    restraints: [
      {
        kind,
        resists: 'out',
        rating: newtons(60),
        from: metres(0),
        to: metres(12),
        owner: null,
        tag: null,
      },
    ],
  });

  it('is for a set that hangs free', () => {
    const flights = (asked: RampAsked) => {
      const { load, of } = held(asked);
      return of.fly(load).map(rounded);
    };
    expect(flights({})).toEqual([[1, 11]]);
    expect(flights({ change: { onSteel: true }, goal: { height: metres(5) } })).toEqual([]);
    expect(flights({ start: tied('choke') })).toEqual([]);
    expect(flights({ start: tied('bullLine') })).toEqual([[1, 12]]);
    const rests = { start: { items: { lamp: 'attachedResting' } } } as const;
    const at = () => ({ lowN: 0, highN: 0, doubtN: 0 });
    expect(flights({ ...rests, physics: { at } })).toEqual([]);
  });

  it('is within what hands do, friction of what hangs taken off', () => {
    const heard: Standing['items'][] = [];
    const frictionN = (items: Standing['items']) => {
      heard.push(items);
      return 15;
    };
    const start = { items: { lamp: 'flying', heavy: 'away' } } as const;
    const { load, of } = held({ start, physics: { handsBriefN: 55, frictionN } });
    // 72 − 10 h within 55 − 15 N.
    expect(of.fly(load).map(rounded)).toEqual([[3.2, 11.2]]);
    expect(heard).toEqual([{ lamp: 'flying' }]);
    const weak = held({ start, physics: { handsBriefN: 10, frictionN } });
    expect(weak.of.fly(weak.load).map(rounded)).toEqual([[7.2, 7.2]]);
  });

  it('is helped by a line, less friction where it hauls, and not by what is made fast', () => {
    const fly = (as: Extra['as']) => {
      const { load, of } = held({}, { extra: { ...OUT, as } });
      return of.fly(load).map(rounded);
    };
    expect(fly('line')).toEqual([[1, 12]]);
    expect(fly('hauled')).toEqual([[1, 11.5]]);
    expect(fly('fast')).toEqual([[1, 11]]);
  });
});

describe('what an extra restraint is', () => {
  const rated = (more: Partial<Extra>, when?: 'rest' | 'way') => {
    const { loads, load } = rampLoad({ options: { work: [{ fromM: 1, toM: 2 }] } });
    return ratedFor(loads.site, { extra: extra(more) }, load, when).slice(2);
  };

  it('holds where riggers reach against in, over the travel against out, or where it is', () => {
    expect(rated({ resists: 'in' })).toEqual([
      { resists: 'in', ratedN: 60, span: { lo: 1, hi: 2 } },
    ]);
    expect(rated({ resists: 'out' })).toEqual([
      { resists: 'out', ratedN: 60, span: { lo: 0, hi: 12 } },
    ]);
    const span = { lo: 3, hi: 4 };
    expect(rated({ resists: 'in', span })).toEqual([{ resists: 'in', ratedN: 60, span }]);
  });

  it('is engaged on the way only where it runs along', () => {
    expect(rated({ resists: 'out' }, 'rest')).toHaveLength(1);
    expect(rated({ resists: 'out' }, 'way')).toEqual([]);
    expect(rated({ resists: 'out', as: 'line' }, 'way')).toHaveLength(1);
  });
});

describe('the part of a stretch that is not held', () => {
  const gap = (lo: number, hi: number, lockN = 30) => {
    const { loads, load } = rampLoad({});
    const found = gapIn(loads.site, LOCK, load, { span: { lo, hi }, lockN });
    return found === null ? null : rounded(found);
  };

  it('is below, above, around or all of it', () => {
    expect(gap(1, 8)).toEqual([1, 3]);
    expect(gap(4, 11)).toEqual([9, 11]);
    expect(gap(1, 11)).toEqual([1, 11]);
    expect(gap(10, 11)).toEqual([10, 11]);
    expect(gap(2, 2)).toEqual([2, 2]);
    expect(gap(4, 8)).toBeNull();
    expect(gap(5, 5)).toBeNull();
  });

  it('is between two that are', () => {
    const { loads, load } = rampLoad({});
    const trust = { ...LOCK, extra: { ...OUT, span: { lo: 11, hi: 12 } } };
    const found = gapIn(loads.site, trust, load, { span: { lo: 4, hi: 11.5 }, lockN: 30 });
    expect(found === null ? null : rounded(found)).toEqual([9, 11]);
  });

  it('is none where it is a ten millionth of a metre', () => {
    const edge = (lo: number, hi: number, fromM: number) => {
      const curve = () => [rampNode(fromM, 0), rampNode(fromM + 12, 0)];
      const [lowStop, highStop] = [fromM, fromM + 12].map((heightM) => ({ heightM, ratedN: 0 }));
      if (lowStop === undefined || highStop === undefined) throw new Error('no stops');
      const { loads, load } = rampLoad({ physics: { curve, lowStop, highStop } });
      return gapIn(loads.site, LOCK, load, { span: { lo, hi }, lockN: 30 });
    };
    const [NEAR, FAR] = [1e-7, 2e-7];
    // The travel begins at 0, and ends there.
    expect(edge(-NEAR, 5, 0)).toBeNull();
    expect(edge(-FAR, 5, 0)).toEqual({ lo: -FAR, hi: 0 });
    expect(edge(-5, NEAR, -12)).toBeNull();
    expect(edge(-5, FAR, -12)).toEqual({ lo: 0, hi: FAR });
    expect(edge(NEAR, NEAR, -12)).toBeNull();
    expect(edge(FAR, FAR, -12)).toEqual(pointSpan(FAR));
    expect(edge(-NEAR, -NEAR, 0)).toBeNull();
    expect(edge(-FAR, -FAR, 0)).toEqual(pointSpan(-FAR));
  });
});
