import { describe, expect, it } from 'vitest';
import { metres, newtons, POUND_FORCE } from '#quantities';
import type { Restraint, Standing } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import { asLb, bare, clearItem, ft, hung, setWith } from './example-jobs.contract.ts';
import { loadsFor } from './job.ts';
import { USUAL } from './plan-order.ts';
import { type Site, siteOf } from './site.ts';
import { planningLockN, stateOf } from './states.ts';

const SET = setWith({ lamp: clearItem(200, 4), twin: clearItem(200, 4), other: clearItem(50) });
const GOAL = { items: {}, bricks: {}, height: null, service: 'in' } as const;

const siteFor = (start: Standing, doubtShare = 0): Site =>
  siteOf(examplePhysics(SET), start, GOAL, { ...USUAL, doubtShare });

const lb = (n: number) => newtons(n * POUND_FORCE);

const restraint = (more: Partial<Restraint>): Restraint => ({
  kind: 'bullLine',
  resists: 'out',
  rating: lb(300),
  from: metres(ft(20)),
  to: metres(ft(30)),
  owner: null,
  tag: null,
  ...more,
});

/** A bare set in feet: 48.59 lb batten heavy with the batten in, 1.32 lb less for every foot. */
const at = (heightFt: number, full = 0, more: Partial<Standing> = {}): Standing => ({
  ...bare,
  height: metres(ft(heightFt)),
  stack: full === 0 ? [] : [{ kind: 'F', count: full, tag: 'show' }],
  ...more,
});

const stated = (standing: Standing, doubtShare = 0) =>
  stateOf(siteFor(standing, doubtShare), standing);

describe('what holds a state', () => {
  it('is worth one largest brick less than the lock where people are', () => {
    expect(asLb(planningLockN(examplePhysics(SET)))).toBeCloseTo(25, 9);
    const weak = examplePhysics({ ...SET, lockLimitN: 20 * POUND_FORCE });
    expect(planningLockN(weak)).toBe(0);
  });

  it('says which limit of the lock it used, either way', () => {
    // 20.87 lb at 24 ft; 46.0 at 5 ft; with two bricks −29.1 at 24 ft.
    expect(stated(at(24)).lockUsed).toBe('planning');
    expect(stated(at(5)).lockUsed).toBe('nominal');
    expect(asLb(stated(at(5)).holds.in.ratedN)).toBeCloseTo(50, 9);
    expect(asLb(stated(at(24)).holds.in.ratedN)).toBeCloseTo(25, 9);
    expect(stated(at(24, 2)).lockUsed).toBe('nominal');
    expect(stated(at(24, 1)).lockUsed).toBe('planning');
    expect(stated(at(3)).lockUsed).toBeNull();
  });

  it('has the stops at their own heights and their own way', () => {
    expect(stated(at(3)).holds).toMatchObject({ in: { by: 'lowStop' }, out: { by: 'lock' } });
    expect(stated(at(61)).holds).toMatchObject({ in: { by: 'lock' }, out: { by: 'highStop' } });
    expect(stated(at(60)).holds).toMatchObject({ in: { by: 'lock' }, out: { by: 'lock' } });
    expect(stated(at(61)).lockUsed).toBeNull();
  });

  it('has a restraint its own way, between its ends', () => {
    const with_ = (heightFt: number, more: Partial<Restraint> = {}) =>
      stated(at(heightFt, 4, { restraints: [restraint(more)] })).holds;
    expect(with_(24)).toMatchObject({ in: { by: 'lock' }, out: { by: 'bullLine' } });
    expect(with_(20).out.by).toBe('bullLine');
    expect(with_(30).out.by).toBe('bullLine');
    expect(with_(19.9).out.by).toBe('lock');
    expect(with_(30.1).out.by).toBe('lock');
    expect(with_(24, { resists: 'in' })).toMatchObject({ in: { by: 'bullLine' } });
    expect(with_(24, { resists: 'in' }).out.by).toBe('lock');
    const both = with_(24, { resists: 'both' });
    expect([both.in.by, both.out.by]).toEqual(['bullLine', 'bullLine']);
    for (const unknown of [{ rating: null }, { from: null }, { to: null }]) {
      expect(with_(24, unknown).out.by).toBe('lock');
    }
  });

  it('takes the strongest, not the sum, and the lock where that is stronger', () => {
    const two = [restraint({ rating: lb(100) }), restraint({ kind: 'choke', rating: lb(120) })];
    const { out } = stated(at(24, 6, { restraints: two })).holds;
    expect(out.by).toBe('choke');
    expect(asLb(out.ratedN)).toBeCloseTo(120, 9);
    const weak = stated(at(24, 1, { restraints: [restraint({ rating: lb(10) })] }));
    expect(weak.holds.out.by).toBe('lock');
    const equal = stated(at(24, 1, { restraints: [restraint({ rating: lb(25) })] }));
    expect(equal.holds.out.by).toBe('bullLine');
    expect(equal.lockUsed).toBeNull();
  });

  it('counts doubt the worse way', () => {
    const standing = hung(setWith({ lamp: clearItem(200, 4) }), 24, [['F', 8]]);
    // 20.87 lb, and 4 of the lamp with 8 halves of a pound: 28.87 at the worst.
    expect(stated(standing).lockUsed).toBe('planning');
    expect(stated(standing, 1).lockUsed).toBe('nominal');
    expect(asLb(stated(standing, 1).imbalance.doubtN)).toBeCloseTo(8, 6);
    const light = hung(setWith({ lamp: clearItem(200, 4) }), 24, [['F', 9]]);
    // −4.13 lb, −12.63 at the worst.
    expect(stated(light, 1).lockUsed).toBe('planning');
  });

  it('lets what hangs on steel be borne by it', () => {
    const standing = at(24, 4, {
      service: 'deadHung',
      items: { lamp: 'heldElsewhere' },
      restraints: [restraint({ kind: 'deadHangSteel', resists: 'in', rating: lb(900) })],
    });
    const { imbalance, holds } = stated(standing);
    expect(asLb(imbalance.lowN)).toBeCloseTo(20.87 - 100, 6);
    expect(asLb(imbalance.highN)).toBeCloseTo(120.87, 6);
    expect(holds.in.by).toBe('steel');
    expect(asLb(holds.in.ratedN)).toBeCloseTo(900, 9);
  });
});

describe('the job as the search sees it', () => {
  it('knows equal items, and does not take unequal ones for them', () => {
    const start = { ...bare, items: { lamp: 'away', twin: 'away', other: 'away' } } as const;
    const site = (items: Readonly<Record<string, 'on' | 'away'>>, rests: readonly string[] = []) =>
      siteOf(examplePhysics(SET), start, { ...GOAL, items }, { ...USUAL, rests }).items.map(
        ({ twin }) => twin,
      );
    expect(site({ lamp: 'on', twin: 'on', other: 'on' })).toEqual([null, 0, null]);
    expect(site({ lamp: 'on', twin: 'away' })).toEqual([null, null, null]);
    expect(site({ lamp: 'on' })).toEqual([null, null, null]);
    expect(site({ lamp: 'on', twin: 'on' }, ['twin'])).toEqual([null, null, null]);
    expect(site({ lamp: 'on', twin: 'on' }, ['lamp', 'twin'])).toEqual([null, null, null]);
    const half = { ...bare, items: { lamp: 'flying', twin: 'away' } } as const;
    const mixed = siteOf(examplePhysics(SET), half, GOAL, USUAL);
    expect(mixed.items.map(({ twin }) => twin)).toEqual([null, null]);
  });

  it('reads phases, and what steel bears as hanging', () => {
    const items = {
      lamp: 'heldElsewhere',
      twin: 'attachedSlack',
      other: 'beside',
    } as const;
    const starts = (service: 'in' | 'deadHung') =>
      siteFor({ ...bare, items, service }).items.map(({ start }) => start);
    expect(starts('in')).toEqual([0, 1, 0]);
    expect(starts('deadHung')).toEqual([3, 1, 0]);
    const resting = { ...bare, height: metres(ft(5)), items: { lamp: 'attachedResting' } } as const;
    expect(siteFor(resting).restAtM).toBeCloseTo(ft(5), 9);
    expect(siteFor(bare).restAtM).toBeCloseTo(ft(4), 9);
  });

  it('bounds the bricks of each kind by start, goal and spare', () => {
    const physics = examplePhysics(SET);
    const start = hung(SET, 3, [
      ['F', 3],
      ['H', 1],
    ]);
    const goal = { ...GOAL, bricks: { F: 5 } };
    const { counts, order, kinds } = siteOf(physics, start, goal, { ...USUAL, spare: { H: 2 } });
    expect(kinds.map(({ id }) => id)).toEqual(['F', 'H']);
    expect(counts).toEqual({ start: [3, 1], goal: [5, 0], most: [5, 3] });
    expect(order).toEqual([0, 0, 0, 1]);
  });

  it('makes each load once, and knows where each gallery reaches it', () => {
    const physics = examplePhysics(SET);
    const job = { physics, start: bare, goal: { ...GOAL, bricks: { F: 9 } }, options: USUAL };
    const loads = loadsFor(job);
    const one = loads.changed(loads.first, { counts: [1] });
    expect(loads.changed(one, { counts: [0] })).toBe(loads.first);
    expect(loads.changed(loads.first, { counts: [1] })).toBe(one);
    // Pan 60.0625 ft up with the batten in, a tenth of a foot a plate, reach 58.25 to 63.5 ft.
    const [upper, mid] = one.windows;
    expect((upper?.hi ?? 0) / ft(1)).toBeCloseTo(3 + 60.1625 - 58.25, 9);
    expect((upper?.lo ?? 0) / ft(1)).toBeCloseTo(3, 9);
    expect((mid?.lo ?? 0) / ft(1)).toBeCloseTo(3 + 60.1625 - 43.5, 9);
    expect((mid?.hi ?? 0) / ft(1)).toBeCloseTo(3 + 60.1625 - 38.25, 9);
  });

  it('keeps slack picks below where they come taut, and a rest at its height', () => {
    const start = { ...bare, items: { lamp: 'away' } } as const;
    const job = { physics: examplePhysics(SET), start, goal: GOAL, options: USUAL };
    const { first, changed } = loadsFor(job);
    const room = (phase: 0 | 1 | 2 | 3) => changed(first, { phases: [phase] }).room;
    expect(room(0)).toEqual({ lo: ft(3), hi: ft(61) });
    expect(room(1)).toEqual({ lo: ft(3), hi: ft(4) });
    expect(room(2)).toEqual({ lo: ft(4), hi: ft(4) });
    expect(room(3)).toEqual({ lo: ft(3), hi: ft(61) });
    const steel = loadsFor({
      ...job,
      start: { ...start, height: metres(ft(24)), service: 'deadHung' },
    });
    expect(steel.first.room).toEqual({ lo: ft(24), hi: ft(24) });
  });
});
