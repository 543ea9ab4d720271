/** The cheapest order, and when there is none: what the search says, and in how many states. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { Standing } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { cheapest } from './cheapest.ts';
import { bare, clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { heldLoads } from './held-loads.ts';
import { type Job, leastStrict, loadsFor } from './job.ts';
import { USUAL } from './plan-order.ts';
import type { Trail } from './trail.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const LAMP = setWith({ lamp: clearItem(200), other: clearItem(50) });

const search = (more: Partial<Job>, statesMost = 1000, options: Partial<OrderOptions> = {}) => {
  const job: Job = {
    physics: examplePhysics(LAMP),
    start: bare,
    goal: { items: {}, bricks: {}, height: null, service: 'in' },
    options: { ...USUAL, doubtShare: 0, lock: 'nominal', ...options },
    ...more,
  };
  const loads = loadsFor(job);
  const trust = { ...leastStrict(job), exposedJ: Number.POSITIVE_INFINITY, extra: null };
  return cheapest(loads, heldLoads(loads, trust), statesMost);
};

const deedsOf = (last: Trail): readonly string[] => {
  const all: string[] = [];
  for (let each: Trail | null = last; each !== null; each = each.before) {
    all.unshift(each.deed.deed);
  }
  return all;
};

describe('the cheapest order', () => {
  const on = {
    items: { lamp: 'on' },
    bricks: { F: 9 },
    height: metres(ft(30)),
    service: 'in',
  } as const;

  it('is told by its last state', () => {
    const answer = search({ goal: on });
    if (answer.order !== 'exists') throw new Error(answer.order);
    expect(deedsOf(answer.trail)).toEqual([
      'start',
      'attach',
      ...Array.from({ length: 9 }, () => 'brick'),
      'fly',
    ]);
    // A flight, the lamp and nine plates: each of the two with a visit.
    expect(answer.trail.cost).toBe(1e6 + 2000 + 2009);
  });

  it('is none where all that can be come to has been searched', () => {
    const none = { ...examplePhysics(LAMP), galleries: [] };
    // As it stands, and flown over all of its travel.
    expect(search({ physics: none, goal: { ...on, items: {} } })).toEqual({
      order: 'none',
      searched: 2,
    });
    // Nothing at all can be done with a lamp more than the lock holds, on and off the stop.
    const start = hung(LAMP, 30, []);
    expect(search({ physics: none, start, goal: on })).toEqual({ order: 'none', searched: 1 });
  });

  it('is not known where the bound comes first', () => {
    expect(search({ goal: on }, 3)).toEqual({ order: 'stopped', searched: 3 });
    expect(search({ goal: { ...on, items: {}, bricks: {}, height: null } }, 1)).toMatchObject({
      order: 'exists',
      searched: 1,
    });
  });
});

describe('a piece that rests', () => {
  const set = setWith({ flat: clearItem(40), lamp: clearItem(30) });
  const physics = examplePhysics(set);
  const items = { flat: 'attachedResting', lamp: 'away' } as const;
  const height = metres(ft(10));
  const start: Standing = { ...hung(set, 10, [['F', 2]]), items };
  const rests = { rests: ['flat'] };

  it('is lifted from its rest, and goes below it by a flight more', () => {
    // 29.35 lb lifted at 10 ft; 35.95 at 5 ft.
    const goal = { items: { flat: 'on' }, bricks: { F: 2 }, service: 'in' } as const;
    const above = search({ physics, start, goal: { ...goal, height: metres(ft(20)) } }, 99, rests);
    const below = search({ physics, start, goal: { ...goal, height: metres(ft(5)) } }, 99, rests);
    if (above.order !== 'exists' || below.order !== 'exists') throw new Error('no order');
    expect(deedsOf(above.trail)).toEqual(['start', 'fly']);
    expect(deedsOf(below.trail)).toEqual(['start', 'fly', 'fly']);
  });

  it('is searched in so many states', () => {
    const goals: readonly OrderGoal[] = [
      { items: { flat: 'on', lamp: 'on' }, bricks: { F: 3 }, height, service: 'in' },
      { items: { flat: 'away' }, bricks: {}, height: null, service: 'in' },
      { items: { flat: 'away', lamp: 'on' }, bricks: { F: 1 }, height, service: 'in' },
      { items: { flat: 'on' }, bricks: { F: 4, H: 1 }, height: metres(ft(5)), service: 'in' },
    ];
    expect(
      goals.map((goal) => {
        const answer = search({ physics, start, goal }, 9999, rests);
        const cost = answer.order === 'exists' ? answer.trail.cost : 0;
        return `${answer.order} ${answer.searched} ${cost}`;
      }),
    ).toEqual([
      // Lifted, flown in, the lamp and a plate with a visit each, flown out.
      'exists 33 3004001',
      // Flown in slack, let go, two plates off.
      'exists 8 1004002',
      // Flown in slack, one off and the other on, flown out to where a plate can go, and to 10 ft.
      'exists 34 3005001',
      // Lifted, three plates of two kinds, flown in.
      'exists 24 2003003',
    ]);
  });
});
