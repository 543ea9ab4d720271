/** What a way costs, and what it must still cost: sums by hand. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import type { Deed } from './actions.ts';
import { bare, clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { type LoadChange, loadsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { siteOf } from './site.ts';
import { pointSpan, type Span } from './span.ts';
import { firstTrail, followed } from './trail.ts';
import type { OrderGoal } from './types.ts';

const SET = setWith({ lamp: clearItem(200) });

/** A flight is 1 000 000, a handling or a visit 1000, a plate 1. */
const costs = (...deeds: readonly Deed[]): readonly number[] => {
  const goal: OrderGoal = { items: {}, bricks: { F: 1, H: 1 }, height: null, service: 'in' };
  const site = siteOf(examplePhysics(SET), bare, goal, USUAL);
  const { first } = loadsOf(site);
  const place = { load: first, order: '', taken: [], span: pointSpan(ft(3)) };
  let trail = firstTrail(place);
  return deeds.map((deed) => {
    const before = trail.cost;
    trail = followed(site, trail, place, deed);
    return trail.cost - before;
  });
};

const fly: Deed = { deed: 'fly', from: pointSpan(0), isWhole: true };
const brick = (act: 'add' | 'remove', kind = 0, gallery = 0): Deed => ({
  deed: 'brick',
  act,
  kind,
  gallery,
});

describe('what a deed costs', () => {
  it('is a flight, whatever was before', () => {
    expect(costs(fly, brick('add'), fly)).toEqual([1e6, 2001, 1e6]);
  });

  it('is a plate where the same hands go on with the same kind', () => {
    expect(costs(brick('add'), brick('add'), brick('add'))).toEqual([2001, 1, 1]);
  });

  it('is a handling more for another kind or the other way, and a visit elsewhere', () => {
    expect(costs(brick('add'), brick('add', 1))).toEqual([2001, 1001]);
    expect(costs(brick('add'), brick('remove'))).toEqual([2001, 1001]);
    expect(costs(brick('add'), brick('add', 0, 1))).toEqual([2001, 2001]);
  });

  it('is a handling for each piece, and a visit where riggers come', () => {
    expect(
      costs(
        { deed: 'attach', item: 0, as: 3 },
        { deed: 'release', item: 0 },
        { deed: 'takeUp', item: 0 },
        { deed: 'rest', item: 0 },
      ),
    ).toEqual([2000, 1000, 1000, 1000]);
    for (const deed of ['takeUp', 'rest', 'release'] as const) {
      expect(costs(brick('add'), { deed, item: 0 }, brick('add'))).toEqual([2001, 2000, 2001]);
    }
  });

  it('is a handling for steel and for what is untied, which is nobody\u2019s visit', () => {
    for (const deed of ['hangOnSteel', 'takeOffSteel', 'untie'] as const) {
      expect(costs({ deed }, { deed })).toEqual([1000, 1000]);
      // The loaders were away meanwhile, and come again.
      expect(costs(brick('add'), { deed }, brick('add'))).toEqual([2001, 1000, 2001]);
    }
    expect(costs({ deed: 'start' })).toEqual([0]);
  });
});

type Ahead = {
  readonly goal?: Partial<OrderGoal>;
  readonly load?: LoadChange;
  readonly span?: Span;
  readonly deed?: Deed;
};

/** 2 F and an H lie on it and the lamp hangs; the rank is what is ahead over what it has cost. */
const ahead = ({ goal = {}, load = {}, span = pointSpan(ft(24)), deed = fly }: Ahead): number => {
  const start = hung(SET, 24, [
    ['F', 2],
    ['H', 1],
  ]);
  const wanted: OrderGoal = {
    items: {},
    bricks: { F: 2, H: 1 },
    height: null,
    service: 'in',
    ...goal,
  };
  const loads = loadsOf(siteOf(examplePhysics(SET), start, wanted, USUAL));
  const place = { load: loads.changed(loads.first, load), order: '', taken: [], span };
  const trail = followed(loads.site, firstTrail(place), place, deed);
  return trail.rank - trail.cost;
};

describe('what is ahead at least', () => {
  it('is nothing where all is as it should be', () => {
    expect(ahead({})).toBe(0);
  });

  it('is every plate that is missing or too many, and a handling for each kind', () => {
    expect(ahead({ load: { counts: [0, 1] } })).toBe(1002);
    expect(ahead({ load: { counts: [5, 1] } })).toBe(1003);
    expect(ahead({ load: { counts: [1, 2] } })).toBe(2002);
  });

  it('is no handling for the kind in hand, if it goes on the same way', () => {
    const missing = { counts: [0, 1] };
    expect(ahead({ load: missing, deed: brick('add') })).toBe(2);
    expect(ahead({ load: missing, deed: brick('remove') })).toBe(1002);
    expect(ahead({ load: missing, deed: brick('add', 1) })).toBe(1002);
    const over = { counts: [3, 1] };
    expect(ahead({ load: over, deed: brick('remove') })).toBe(1);
    expect(ahead({ load: over, deed: brick('add') })).toBe(1001);
  });

  it('is a handling for every piece that is not as it is wanted', () => {
    const away = { items: { lamp: 'away' } } as const;
    const on = { items: { lamp: 'on' } } as const;
    expect(ahead({ goal: away })).toBe(1000);
    expect(ahead({ goal: on })).toBe(0);
    expect(ahead({ goal: on, load: { phases: [1] } })).toBe(1000);
    expect(ahead({ goal: away, load: { phases: [0] } })).toBe(0);
    expect(ahead({ load: { phases: [0] } })).toBe(0);
  });

  it('is a flight where the height that is asked for is not in the stretch', () => {
    const goal = { height: metres(ft(30)) };
    expect(ahead({ goal })).toBe(1e6);
    expect(ahead({ goal, span: { lo: ft(24), hi: ft(40) } })).toBe(0);
    expect(ahead({ goal, span: { lo: ft(30), hi: ft(40) } })).toBe(0);
    expect(ahead({ goal, span: { lo: ft(24), hi: ft(30) } })).toBe(0);
    expect(ahead({ goal, span: { lo: ft(31), hi: ft(40) } })).toBe(1e6);
    expect(ahead({ goal, span: { lo: ft(24), hi: ft(29) } })).toBe(1e6);
  });
});
