/** Loads of the six-line set: what they weigh, where they may stand, where plates are reached. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import { type ExampleSet, examplePhysics } from '../../validation/sequence/set-physics.ts';
import { asLb, bare, clearItem, ft, hung, lb, setWith } from './example-jobs.contract.ts';
import { loadsOf, phasesOf, runsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { siteOf } from './site.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const SET = setWith({ lamp: clearItem(200), flat: clearItem(60, 6) });
const GOAL: OrderGoal = { items: {}, bricks: {}, height: null, service: 'in' };

type Asked = {
  readonly set?: ExampleSet;
  readonly start?: Partial<Standing>;
  readonly goal?: Partial<OrderGoal>;
  readonly options?: Partial<OrderOptions>;
  readonly physics?: Partial<OrderPhysics>;
};

const loadsFor = ({ set = SET, start = {}, goal = {}, options = {}, physics = {} }: Asked) =>
  loadsOf(
    siteOf(
      { ...examplePhysics(set), ...physics },
      { ...bare, ...start },
      { ...GOAL, ...goal },
      { ...USUAL, ...options },
    ),
  );

const line = {
  kind: 'bullLine',
  resists: 'out',
  rating: null,
  from: null,
  to: null,
  owner: null,
  tag: null,
} as const;

describe('the first load', () => {
  it('is what is found', () => {
    const { first } = loadsFor({ start: hung(SET, 24, [['F', 8]]), goal: { bricks: { H: 1 } } });
    expect(first).toMatchObject({
      key: '8,0|33|',
      counts: [8, 0],
      phases: [3, 3],
      onSteel: false,
      tied: false,
      room: { lo: ft(3), hi: ft(61) },
      fitsArbor: true,
    });
  });

  it('is on steel, or tied, where the set is', () => {
    const steel = loadsFor({ start: { service: 'deadHung', items: { lamp: 'heldElsewhere' } } });
    expect(steel.first).toMatchObject({ key: '|3|s', onSteel: true, tied: false });
    const tied = loadsFor({ start: { restraints: [line] } });
    expect(tied.first).toMatchObject({ key: '||t', onSteel: false, tied: true });
  });
});

describe('a load', () => {
  it('is made once, and a changed one weighs its own', () => {
    const { first, changed } = loadsFor({ start: hung(SET, 24, [['F', 8]]) });
    const one = changed(first, { counts: [7] });
    expect(changed(one, { counts: [8] })).toBe(first);
    expect(one.nodes).not.toBe(first.nodes);
    const tied = changed(first, { tied: true });
    expect(tied).not.toBe(first);
    expect(tied.nodes).toBe(first.nodes);
    expect(tied.windows).toBe(first.windows);
    const steel = changed(first, { onSteel: true });
    expect([steel.onSteel, steel.tied]).toEqual([true, false]);
    expect(changed(first, { phases: [3, 0] }).nodes).not.toBe(first.nodes);
  });

  it('has one kind of numbers at a time in its name', () => {
    const { first, changed } = loadsFor({
      goal: { bricks: { F: 20, H: 20 }, items: { lamp: 'on', flat: 'on' } },
    });
    const keys = [
      changed(first, { counts: [1, 11] }),
      changed(first, { counts: [11, 1] }),
      changed(first, { phases: [3, 0] }),
      changed(first, { phases: [0, 3] }),
    ].map(({ key }) => key);
    expect(keys).toEqual(['1,11|00|', '11,1|00|', '0,0|30|', '0,0|03|']);
  });

  it('with a piece at rest weighs what the rest may give back, at that one height', () => {
    const { first, changed } = loadsFor({ start: { items: { flat: 'away' } } });
    const { nodes, room } = changed(first, { phases: [2] });
    // Bare at the working height, 4 ft: 48.59 − 1.32 = 47.27 lb; with the piece 60 lb more.
    expect(room).toEqual({ lo: ft(4), hi: ft(4) });
    expect(nodes).toHaveLength(1);
    const [node] = nodes;
    expect(node?.heightM).toBeCloseTo(ft(4), 9);
    expect(asLb(node?.belowN ?? 0)).toBeCloseTo(47.27, 6);
    expect(asLb(node?.aboveN ?? 0)).toBeCloseTo(47.27, 6);
    expect(asLb(node?.contact.lowN ?? 0)).toBeCloseTo(47.27, 6);
    expect(asLb(node?.contact.highN ?? 0)).toBeCloseTo(107.27, 6);
    expect(asLb(node?.doubtN ?? 0)).toBeCloseTo(6, 6);
  });

  it('with slack picks goes no higher than where they come taut, nor than its travel', () => {
    const slack = (options: Partial<OrderOptions>) => {
      const { first, changed } = loadsFor({ start: { items: { flat: 'away' } }, options });
      return changed(first, { phases: [1] }).room;
    };
    expect(slack({})).toEqual({ lo: ft(3), hi: ft(4) });
    expect(slack({ travel: { fromM: 1, toM: 1.1 } })).toEqual({ lo: 1, hi: 1.1 });
  });

  it('on steel stands where the steel is: as found, or as it is to be', () => {
    const found = loadsFor({
      start: { service: 'deadHung', height: metres(ft(24)) },
      goal: { height: metres(ft(30)) },
    });
    expect(found.first.room).toEqual({ lo: ft(24), hi: ft(24) });
    const wanted = loadsFor({ goal: { service: 'deadHung', height: metres(ft(30)) } });
    expect(wanted.changed(wanted.first, { onSteel: true }).room).toEqual({
      lo: ft(30),
      hi: ft(30),
    });
    const nowhere = loadsFor({});
    expect(nowhere.changed(nowhere.first, { onSteel: true }).room).toEqual({
      lo: Number.NaN,
      hi: Number.NaN,
    });
  });
});

describe('items of a load', () => {
  it('are said as the judge reads them', () => {
    const { site } = loadsFor({
      start: { items: { a: 'beside', b: 'flying', c: 'away' } },
      goal: { items: { d: 'on' } },
    });
    expect(phasesOf(site, [0, 3, 1, 2], false)).toEqual({
      a: 'beside',
      b: 'flying',
      c: 'attachedSlack',
      d: 'attachedResting',
    });
    // What came off is away, and what never came is as it was found, or away.
    expect(phasesOf(site, [3, 0, 0, 0], true)).toEqual({
      a: 'heldElsewhere',
      b: 'away',
      c: 'away',
      d: 'away',
    });
  });
});

describe('the stack of a load', () => {
  const show = (kind: string, count: number) => ({ kind, count, tag: 'show' }) as const;
  const pipe = { kind: 'F', count: 2, tag: 'pipe' } as const;

  it('is what lies under it, then each kind that there is any of', () => {
    const { site } = loadsFor({ start: { stack: [pipe] }, goal: { bricks: { F: 3, H: 1 } } });
    expect(runsOf(site, [3, 1])).toEqual([pipe, show('F', 3), show('H', 1)]);
    expect(runsOf(site, [0, 1])).toEqual([pipe, show('H', 1)]);
    expect(runsOf(site, [0, 0])).toEqual([pipe]);
  });

  it('is in reach between the heights at which its top is', () => {
    // Pan 60.0625 ft up with the batten at 3 ft; 8 F are 0.8 ft: top 60.8625 ft.
    const { first } = loadsFor({ start: hung(SET, 24, [['F', 8]]) });
    const [upper, mid] = first.windows;
    // Reach 58.25 to 63.5 ft: the batten up to 3 + 60.8625 − 58.25 ft, and no lower than its stop.
    expect(upper?.lo).toBe(ft(3));
    expect((upper?.hi ?? 0) / ft(1)).toBeCloseTo(5.6125, 9);
    // Reach 38.25 to 43.5 ft: 3 + 60.8625 − 43.5 and − 38.25.
    expect((mid?.lo ?? 0) / ft(1)).toBeCloseTo(20.3625, 9);
    expect((mid?.hi ?? 0) / ft(1)).toBeCloseTo(25.6125, 9);
  });

  it('goes half as far as the batten on a set of double purchase', () => {
    const { first } = loadsFor({ set: { ...SET, purchase: 2 } });
    // Top 60.0625 ft: 3 + 2 · (60.0625 − 43.5) and 3 + 2 · (60.0625 − 38.25).
    expect((first.windows[1]?.lo ?? 0) / ft(1)).toBeCloseTo(36.125, 9);
    expect((first.windows[1]?.hi ?? 0) / ft(1)).toBeCloseTo(46.625, 9);
  });

  it('is out of reach of a gallery that is past the travel', () => {
    const { first } = loadsFor({ options: { travel: { fromM: ft(3), toM: ft(10) } } });
    expect(first.windows[0]).not.toBeNull();
    expect(first.windows[1]).toBeNull();
  });

  it('is no higher than the rod', () => {
    // 60 in are 5 ft: 50 plates of a tenth of a foot, all told with the pipe weight.
    const { first, changed } = loadsFor({ goal: { bricks: { F: 51 } } });
    expect(changed(first, { counts: [50] }).fitsArbor).toBe(true);
    expect(changed(first, { counts: [51] }).fitsArbor).toBe(false);
    const under = loadsFor({ start: { stack: [pipe] }, goal: { bricks: { F: 51 } } });
    expect(under.changed(under.first, { counts: [48] }).fitsArbor).toBe(true);
    expect(under.changed(under.first, { counts: [49] }).fitsArbor).toBe(false);
  });

  it('is no heavier than the arbor carries, each plate as heavy as it may be', () => {
    // 95 lb and 8 of 25 lb are 295, with half a pound of doubt in each 299.
    const fits = (limitLb: number | null, doubtShare: number): boolean => {
      const { first, changed } = loadsFor({
        goal: { bricks: { F: 8 } },
        options: { doubtShare },
        physics: { arborMassLimitKg: limitLb === null ? null : lb(limitLb) },
      });
      return changed(first, { counts: [8] }).fitsArbor;
    };
    expect([295, 294.99].map((limit) => fits(limit, 0))).toEqual([true, false]);
    expect([299, 298.99].map((limit) => fits(limit, 1))).toEqual([true, false]);
    expect([297, 296.99].map((limit) => fits(limit, 0.5))).toEqual([true, false]);
    expect(fits(null, 1)).toBe(true);
  });
});
