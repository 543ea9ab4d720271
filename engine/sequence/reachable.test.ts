/** Where a state meets the goal, and whether any order comes to it. */
import { describe, expect, it } from 'vitest';
import { metres, newtons, POUND_FORCE } from '#quantities';
import type { Standing } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { firstPlace } from './actions.ts';
import { bare, clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { heldLoads, type Trust } from './held-loads.ts';
import { type LoadChange, loadsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { goalSpan, reachable } from './reachable.ts';
import { siteOf } from './site.ts';
import type { Span } from './span.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

const SET = setWith({ lamp: clearItem(200) });

type Asked = {
  readonly start?: Standing;
  readonly goal?: Partial<OrderGoal>;
  readonly options?: Partial<OrderOptions>;
  readonly extra?: Trust['extra'];
};

const world = ({ start = bare, goal = {}, options = {}, extra = null }: Asked) => {
  const wanted: OrderGoal = { items: {}, bricks: {}, height: null, service: 'in', ...goal };
  const usual = { ...USUAL, doubtShare: 0, lock: 'nominal' as const, ...options };
  const loads = loadsOf(siteOf(examplePhysics(SET), start, wanted, usual));
  const trust = { lockN: 50 * POUND_FORCE, exposedJ: Number.POSITIVE_INFINITY, extra };
  return { loads, held: heldLoads(loads, trust) };
};

/** The lamp with 8 F: 48.59 lb with the batten in, −28 at the high stop: held everywhere. */
const laden = hung(SET, 24, [['F', 8]]);

const meets = (asked: Asked, span: Span, change: LoadChange = {}): Span | null => {
  const { loads, held } = world({ start: laden, ...asked });
  const place = firstPlace({ loads, held });
  return goalSpan(loads, held, { ...place, load: loads.changed(place.load, change), span });
};

const STRETCH: Span = { lo: ft(20), hi: ft(30) };
const EIGHT = { bricks: { F: 8 } } as const;

describe('a state that is the goal', () => {
  it('is so in all of its stretch, or at the height that is asked for', () => {
    expect(meets({ goal: EIGHT }, STRETCH)).toEqual(STRETCH);
    const at = (heightFt: number) => ({ goal: { ...EIGHT, height: metres(ft(heightFt)) } });
    expect(meets(at(25), STRETCH)).toEqual({ lo: ft(25), hi: ft(25) });
    expect(meets(at(31), STRETCH)).toBeNull();
  });

  it('has the bricks that are asked for, of each kind', () => {
    expect(meets({ goal: EIGHT }, STRETCH, { counts: [7] })).toBeNull();
    expect(meets({ goal: { bricks: { F: 8, H: 1 } } }, STRETCH, { counts: [8, 0] })).toBeNull();
    expect(meets({ goal: { bricks: { F: 8, H: 1 } } }, STRETCH, { counts: [8, 1] })).toEqual(
      STRETCH,
    );
  });

  it('has each piece as it is wanted, or as it was', () => {
    const on = { goal: { ...EIGHT, items: { lamp: 'on' } } } as const;
    const away = { goal: { ...EIGHT, items: { lamp: 'away' } } } as const;
    expect(meets(on, STRETCH)).toEqual(STRETCH);
    expect(meets(away, STRETCH)).toBeNull();
    expect(meets(on, STRETCH, { phases: [2] })).toBeNull();
    expect(meets({ goal: EIGHT }, STRETCH, { phases: [0] })).toBeNull();
    // Off, it is on the stop only that nothing is too much; 8 F alone are −151 lb.
    const bareStop = { goal: { items: { lamp: 'away' } } } as const;
    const stop = { lo: ft(3), hi: ft(3) };
    expect(meets(bareStop, stop, { phases: [0], counts: [0] })).toEqual(stop);
    expect(meets(bareStop, stop, { phases: [1], counts: [0] })).toBeNull();
  });

  it('is on steel where that is asked for, and else not', () => {
    const steel = {
      goal: { ...EIGHT, service: 'deadHung', height: metres(ft(24)) },
      options: { steelN: 5000 },
    } as const;
    const here = { lo: ft(24), hi: ft(24) };
    expect(meets(steel, here)).toBeNull();
    expect(meets(steel, here, { onSteel: true })).toEqual(here);
    expect(meets({ goal: EIGHT }, here, { onSteel: true })).toBeNull();
  });

  it('is held without what was rigged for the work', () => {
    // 13 F: −76.41 lb at 3 ft and more above; a line of 400 lb holds that as long as it is on.
    const extra = {
      resists: 'out',
      ratedN: newtons(400 * POUND_FORCE),
      span: null,
      as: 'line',
    } as const;
    const thirteen = { goal: { bricks: { F: 13 } }, extra } as const;
    expect(meets(thirteen, STRETCH, { counts: [13] })).toBeNull();
    expect(meets({ goal: EIGHT, extra }, STRETCH)).toEqual(STRETCH);
  });

  it('is so only in the part that is held', () => {
    // 9 F: 23.59 lb at 3 ft, −50 at 58.75 ft.
    const span = meets({ goal: { bricks: { F: 9 } } }, { lo: ft(50), hi: ft(60) }, { counts: [9] });
    expect(span?.lo).toBe(ft(50));
    expect((span?.hi ?? 0) / ft(1)).toBeCloseTo(58.75, 6);
    const high = { lo: ft(59), hi: ft(60) };
    expect(meets({ goal: { bricks: { F: 9 } } }, high, { counts: [9] })).toBeNull();
  });
});

describe('any order', () => {
  const reach = (asked: Asked, most = 1000) => {
    const { loads, held } = world(asked);
    return reachable(loads, held, most);
  };
  const loading = { goal: { items: { lamp: 'on' }, bricks: { F: 8 } } } as const;

  it('exists at once where nothing is to do', () => {
    expect(reach({ start: laden, goal: EIGHT })).toMatchObject({ order: 'exists', searched: 1 });
  });

  it('exists where there is a way, and tells one', () => {
    const reached = reach(loading);
    if (reached.order !== 'exists') throw new Error(reached.order);
    const deeds: string[] = [];
    for (let each = reached.trail; each.before !== null; each = each.before) {
      deeds.unshift(each.deed.deed);
    }
    expect(deeds.filter((deed) => deed === 'attach')).toHaveLength(1);
    expect(deeds.filter((deed) => deed === 'brick').length).toBeGreaterThanOrEqual(8);
    expect(reached.trail.place.load).toMatchObject({ counts: [8], phases: [3] });
  });

  it('is none where every way was tried, in so many states', () => {
    // Nobody reaches the arbor within a foot of 10 ft, so its one load is all that there is.
    const travel = { fromM: ft(9.5), toM: ft(10.5) };
    const start = { ...bare, height: metres(ft(10)) };
    const narrow = { ...loading, start, options: { travel, work: [] } };
    expect(reach(narrow)).toMatchObject({ order: 'none' });
    expect(reach(narrow).searched).toBeLessThanOrEqual(3);
  });

  it('is none, and nothing is searched, where the start is not held', () => {
    expect(reach({ ...loading, start: hung(SET, 24, []) })).toEqual({ order: 'none', searched: 0 });
  });

  it('is not known where the bound comes first', () => {
    expect(reach(loading, 2)).toEqual({ order: 'stopped', searched: 2 });
    expect(reach({ start: laden, goal: EIGHT }, 1)).toMatchObject({ order: 'exists' });
  });

  it('goes by way of a rest that is lifted and flown on', () => {
    const set = {
      start: { ...bare, height: metres(ft(4)) },
      options: { rests: ['lamp'] },
    } as const;
    const lifted = reach({
      ...set,
      goal: { items: { lamp: 'on' }, bricks: { F: 8 }, height: metres(ft(40)) },
    });
    expect(lifted.order).toBe('exists');
  });
});
