/**
 * At which height the batten stops. U = 60 − 10 h newtons and a lock of 50 N: the least of the
 * lock is used at 6 m, and the more the farther from there.
 */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { Deed } from './actions.ts';
import { type RampAsked, rampLoad, rampNode } from './example-ramp.contract.ts';
import { haltsOf } from './heights.ts';
import { heldLoads } from './held-loads.ts';
import type { LoadChange } from './load.ts';
import { AWAY, HANGING, RESTING } from './site.ts';
import { pointSpan, type Span } from './span.ts';
import { firstTrail, followed } from './trail.ts';

type Made = {
  readonly deed: Deed;
  readonly span: Span;
  readonly change?: LoadChange;
};

type Asked = RampAsked & {
  /** What is done after the start, which is at 5 m. */
  readonly deeds?: readonly Made[];
  readonly startSpan?: Span;
  readonly last?: Span;
  readonly lockN?: number;
};

const halts = ({ deeds = [], startSpan = pointSpan(5), lockN = 50, ...asked }: Asked) => {
  const options = { neatM: 1, ...asked.options };
  const { loads, load } = rampLoad({ ...asked, options });
  const trust = { lockN, exposedJ: Number.POSITIVE_INFINITY, extra: null };
  let trail = firstTrail({ load, order: '', taken: [], span: startSpan });
  for (const { deed, span, change = {} } of deeds) {
    const next = loads.changed(trail.place.load, change);
    trail = followed(loads.site, trail, { load: next, order: '', taken: [], span }, deed);
  }
  return haltsOf(loads.site, heldLoads(loads, trust), trail, asked.last ?? trail.place.span);
};

const heights = (asked: Asked): readonly number[] => halts(asked).map(({ heightM }) => heightM);

const fly = (from: Span, isWhole = true): Deed => ({ deed: 'fly', from, isWhole });
const brick: Deed = { deed: 'brick', act: 'add', kind: 0, gallery: 0 };
const span = (lo: number, hi: number): Span => ({ lo, hi });
/** Flown from the start to somewhere in a stretch. */
const to = (lo: number, hi: number): Made => ({ deed: fly(pointSpan(5)), span: span(lo, hi) });

/** U = 20 N everywhere: no height is better than another. */
const FLAT = { curve: () => [rampNode(0, 20), rampNode(12, 20)] };

describe('a stop', () => {
  it('is where least of the hold is used, at a height that can be called', () => {
    expect(heights({})).toEqual([5]);
    expect(heights({ deeds: [to(1, 11)] })).toEqual([5, 6]);
    expect(heights({ deeds: [to(1, 5.4)] })).toEqual([5, 5]);
    expect(heights({ deeds: [to(6.6, 11)] })).toEqual([5, 7]);
    // Where bricks are handled at multiples of a step only, it stops at those.
    expect(heights({ deeds: [to(6.6, 11)], options: { heightStepM: 0.75 } })).toEqual([5, 6.75]);
  });

  it('is one for all that is done between two flights', () => {
    const deeds = [to(1, 11), { deed: brick, span: span(7, 9) }, { deed: brick, span: span(8, 9) }];
    const [first, second] = halts({ deeds });
    expect(first).toMatchObject({ heightM: 5, trails: [{ deed: { deed: 'start' } }] });
    expect(second?.heightM).toBe(8);
    expect(second?.trails.map(({ deed }) => deed.deed)).toEqual(['fly', 'brick', 'brick']);
  });

  it('is where the next flight can begin', () => {
    const deeds = [to(1, 11), { deed: fly(span(8, 9)), span: span(1, 3) }];
    expect(heights({ deeds })).toEqual([5, 8, 3]);
  });

  it('is in the end where the goal is', () => {
    expect(heights({ deeds: [to(1, 11)], last: span(9, 11) })).toEqual([5, 9]);
    const deeds = [to(1, 11), { deed: fly(span(2, 3)), span: span(1, 11) }];
    expect(heights({ deeds, last: span(9, 11) })).toEqual([5, 3, 9]);
  });

  it('weighs the worst load that stands there', () => {
    // A lamp of 12 N comes on: 60 − 10 h before and 72 − 10 h after, both 6 N at 6.6 m.
    const lamp = { start: { items: { lamp: 'away' } }, options: { neatM: 0.1 } } as const;
    const attach: Deed = { deed: 'attach', item: 0, as: HANGING };
    const on: LoadChange = { phases: [HANGING] };
    const deeds = [to(1, 11), { deed: attach, span: span(6.2, 7), change: on }];
    expect(heights({ ...lamp, deeds }).at(-1)).toBeCloseTo(6.6, 9);
  });

  it('counts doubt against the hold, by its share', () => {
    // 15 h of doubt on 60 − 10 h: the lower the better.
    const curve = () => [rampNode(0, 60, 0), rampNode(12, -60, 360)];
    const deeds = [to(1, 11)];
    expect(heights({ deeds, physics: { curve }, options: { doubtShare: 0.5 } })).toEqual([5, 1]);
    expect(heights({ deeds, physics: { curve }, options: { doubtShare: 0 } })).toEqual([5, 6]);
  });

  it('is at the lower end where nothing holds at all', () => {
    expect(heights({ deeds: [to(1, 5)], lockN: 0 })).toEqual([5, 1]);
  });
});

describe('heights that have a name', () => {
  const shortly = (lo: number, hi: number, asked: Asked = {}) =>
    heights({ ...asked, deeds: [to(lo, hi)] }).at(-1);

  it('go where no multiple is: the goal, the working height, the stops, a contact', () => {
    expect(shortly(7.05, 7.45, { goal: { height: metres(7.3) } })).toBe(7.3);
    expect(shortly(3.3, 3.6, { physics: { workingM: 3.4 } })).toBe(3.4);
    const contact = () => [rampNode(0, 60), rampNode(5.35, 6.5), rampNode(12, -60)];
    expect(shortly(5.2, 5.45, { physics: { curve: contact } })).toBe(5.35);
    expect(shortly(0, 0)).toBe(0);
    expect(shortly(12, 12)).toBe(12);
  });

  it('do without a name in a short stretch: the middle, and the end in which less is used', () => {
    const middle = shortly(5.3, 5.4, { physics: FLAT });
    expect(Math.abs((middle ?? 0) - 5.35)).toBeLessThan(0.1 / 16);
    // Sixteenths of the stretch, of which the last is the nearest to 6 m.
    expect(shortly(5.3, 5.4)).toBeCloseTo(5.3 + (0.1 * 15.5) / 16, 9);
    expect(shortly(6.3, 6.4)).toBeCloseTo(6.3, 9);
  });
});

describe('a flight that begins on a rest', () => {
  const restAt = (restAtM: number, deeds: readonly Made[]) =>
    heights({ deeds, options: { restAtM } }).at(-1);

  it('leaves it', () => {
    const lifted = [{ deed: fly(pointSpan(6), false), span: span(5.4, 11) }];
    expect(restAt(6, lifted)).toBe(7);
    expect(restAt(9, lifted)).toBe(6);
    expect(restAt(6, [to(5.4, 11)])).toBe(6);
    expect(heights({ startSpan: pointSpan(6), options: { restAtM: 6 } })).toEqual([6]);
  });

  it('leaves it by more than a ten millionth of a metre', () => {
    // Best as low as may be; the rest is at 0, and the goal so near it that it is there.
    const curve = () => [rampNode(0, 0), rampNode(12, 60)];
    const near = (goalM: number) =>
      heights({
        deeds: [{ deed: fly(pointSpan(0), false), span: span(0, 2) }],
        physics: { curve },
        goal: { height: metres(goalM) },
        options: { restAtM: 0 },
      }).at(-1);
    expect(near(1e-7)).toBe(1);
    expect(near(2e-7)).toBe(2e-7);
  });

  it('stays on it with a load that has no other height', () => {
    const at = () => ({ lowN: 20, highN: 20, doubtN: 0 });
    const lamp = { start: { items: { lamp: 'attachedResting' } }, physics: { at } } as const;
    // 8 m is better for the batten alone; with the piece on its rest it stands at 4 m.
    const release: Deed = { deed: 'release', item: 0 };
    const off: LoadChange = { phases: [AWAY] };
    const deeds = [{ deed: release, span: span(3, 5), change: off }];
    expect(halts({ ...lamp, deeds, startSpan: span(3, 5) })).toMatchObject([
      { heightM: 4, trails: [{ place: { load: { phases: [RESTING] } } }, {}] },
    ]);
  });
});
