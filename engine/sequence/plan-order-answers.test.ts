/**
 * Answers of the planner whole, numbers by hand: 48.59 lb batten heavy with the batten in, 1.32 lb
 * less for every foot, a lock of 50 lb. The bridge of 220.46 lb stands on the deck below 10 ft.
 */
import { describe, expect, it } from 'vitest';
import { metres, newtons, POUND_FORCE } from '#quantities';
import type { Restraint, Standing } from '#state';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import {
  asked,
  asLb,
  bare,
  clearItem,
  found,
  ft,
  hung,
  none,
  setWith,
  words,
} from './example-jobs.contract.ts';
import { planOrder } from './plan-order.ts';
import type { OrderOptions, OrderPlan } from './types.ts';

const LAMP = setWith({ lamp: clearItem(200, 10) });
const BRIDGE = setWith({ bridge: { kind: 'standing', mass: 100, drop: ft(9), pick: ft(1) } });
const LOAD = { items: { bridge: 'on' }, bricks: { F: 9 }, height: metres(ft(30)) } as const;
const AWAY = { items: { bridge: 'away' } } as const;
const FIVE = { restraintStepN: 5 * POUND_FORCE };

const nothing = { exhaustive: true, atHeight: null, byN: null, smallestChange: null };

const searchedOf = (plan: OrderPlan): number =>
  'found' in plan
    ? plan.found.searched
    : 'none' in plan
      ? plan.none.searched
      : plan.stopped.searched;

describe('a question that makes no sense', () => {
  it('is answered before anything is searched', () => {
    const plan = asked(LAMP, bare, { bricks: { X: 0 } });
    expect(plan).toEqual({ none: { ...nothing, rule: 'GOAL', searched: 0 } });
  });

  it('is not one of none of a kind, nor of an item that is to be away', () => {
    expect(words(found(asked(LAMP, bare, { bricks: { F: 0 } })))).toEqual([]);
    expect(words(found(asked(LAMP, bare, { items: { ghost: 'away' } })))).toEqual([]);
  });

  it('names a height that is in the house and not in its travel', () => {
    const travel = { fromM: ft(5), toM: ft(40) };
    const start: Standing = { ...hung(LAMP, 24, [['F', 8]]) };
    const rule = (heightFt: number) => {
      const plan = asked(
        LAMP,
        start,
        { bricks: { F: 8 }, height: metres(ft(heightFt)) },
        { travel },
      );
      return 'none' in plan ? plan.none.rule : 'found';
    };
    expect([4, 5, 40, 41].map(rule)).toEqual(['TRAVEL', 'found', 'found', 'TRAVEL']);
  });

  it('is of a set past one of its stops', () => {
    for (const heightFt of [2.9, 61.1]) {
      const start: Standing = { ...hung(LAMP, heightFt, [['F', 8]]) };
      expect(none(asked(LAMP, start, { bricks: { F: 8 } })).rule).toBe('TRAVEL');
    }
    const start: Standing = { ...hung(LAMP, 61, [['F', 8]]) };
    expect(words(found(asked(LAMP, start, { bricks: { F: 8 } })))).toEqual([]);
  });

  it('is of steel of which nobody says what it bears, to begin with or in the end', () => {
    const steel = (more: Partial<Restraint>): Restraint => ({
      kind: 'deadHangSteel',
      resists: 'in',
      rating: newtons(5000),
      from: metres(ft(24)),
      to: metres(ft(24)),
      owner: null,
      tag: null,
      ...more,
    });
    const onSteel = (...restraints: readonly Restraint[]): Standing => ({
      ...bare,
      height: metres(ft(24)),
      items: { lamp: 'heldElsewhere' },
      service: 'deadHung',
      restraints,
    });
    const goal = { bricks: { F: 8 }, height: metres(ft(24)) };
    const rule = (start: Standing, options = {}) => {
      const plan = asked(LAMP, start, goal, options);
      return 'none' in plan ? plan.none.rule : 'found';
    };
    expect(rule(onSteel())).toBe('SERVICE');
    expect(rule(onSteel(steel({ rating: null })))).toBe('SERVICE');
    expect(rule(onSteel(steel({ kind: 'bullLine' })))).toBe('SERVICE');
    expect(rule(onSteel(steel({})))).toBe('found');
    expect(rule(onSteel(steel({ rating: null })), { steelN: 5000 })).toBe('found');
  });
});

describe('a set that is not held', () => {
  it('to begin with: by how much, and how well its masses have to be known', () => {
    // 212.95 − 175 = 37.95 lb at 30 ft with 7 F, and 13.5 in doubt, on 50.
    const start = hung(LAMP, 30, [['F', 7]]);
    const answer = none(asked(LAMP, start, { bricks: { F: 8 } }, { doubtShare: 1 }));
    expect(answer).toMatchObject({
      ...nothing,
      rule: 'HOLD',
      searched: 1,
      atHeight: ft(30),
      byN: expect.any(Number),
      // The mid gallery reaches 7 F up to 25.5125 ft, where it is 43.87 lb: 6.13 of 13.5 in doubt.
      smallestChange: { change: 'tolerances', share: 464 / 1024 },
    });
    expect(asLb(answer.byN ?? 0)).toBeCloseTo(1.45, 6);
  });

  it('in the end: where, by how much, and that two states were looked at', () => {
    // 73.59 − 17 · 1.32 = 51.15 lb at 20 ft with 7 F.
    const start = hung(LAMP, 3, [['F', 8]]);
    const goal = { bricks: { F: 7 }, height: metres(ft(20)) };
    const answer = none(asked(LAMP, start, goal, { doubtShare: 1 }));
    expect(answer).toMatchObject({
      ...nothing,
      rule: 'HOLD',
      searched: 2,
      atHeight: ft(20),
      byN: expect.any(Number),
    });
    expect(asLb(answer.byN ?? 0)).toBeCloseTo(1.15 + 13.5, 6);
  });

  it('in the end: what would help is looked for only where somebody wants to know', () => {
    // 37.95 lb at 30 ft, 13.5 in doubt.
    const start = hung(LAMP, 3, [['F', 8]]);
    const goal = { bricks: { F: 7 }, height: metres(ft(30)) };
    const change = (explain: boolean) =>
      none(asked(LAMP, start, goal, { doubtShare: 1, explain })).smallestChange;
    expect(change(true)).toMatchObject({ change: 'tolerances' });
    expect(change(false)).toBeNull();
  });
});

describe('a set that needs a restraint', () => {
  // Just below 10 ft it is 48.59 − 7 · 1.32 − 225 = −185.65 lb: 190 in steps of 5.
  const span = { from: ft(3), to: expect.closeTo(ft(10), 9) };

  it('says which, by how much more than the lock, and where, where none may be rigged', () => {
    const answer = none(asked(BRIDGE, bare, LOAD, FIVE));
    expect(answer).toMatchObject({
      rule: 'HOLD',
      exhaustive: true,
      atHeight: ft(3),
      smallestChange: { change: 'restraint', resists: 'out', ...span },
    });
    expect(asLb(answer.byN ?? 0)).toBeCloseTo(140, 6);
    expect(answer.smallestChange).not.toHaveProperty('refutedStates');
    const alone = none(asked(BRIDGE, bare, LOAD, { ...FIVE, explain: false }));
    expect(alone).toEqual({ ...nothing, rule: 'HOLD', searched: answer.searched });
  });

  it('has it rigged a little wider than it is needed, where it may be', () => {
    const plan = found(asked(BRIDGE, bare, LOAD, { ...FIVE, restraint: 'out' }));
    expect(plan.restraint).toMatchObject({ resists: 'out', ...span });
    const rigged = plan.steps.flatMap((step) => (step.act === 'rig' ? [step.restraint] : []));
    expect(rigged).toMatchObject([{ kind: 'bullLine', from: ft(3), to: expect.closeTo(3.05, 9) }]);
    const alone = searchedOf(asked(BRIDGE, bare, LOAD, { ...FIVE, explain: false }));
    expect(plan.searched).toBeGreaterThan(alone);
  });

  it('rates a line for friction too where it draws the arbor up', () => {
    // 0.05 · (180 kg, 396.83 lb) and 4 lb are 23.84: 209.49 lb, 210 in steps of 5.
    const strike = (options: Partial<OrderOptions>) => {
      const plan = asked(BRIDGE, hung(BRIDGE, 30, [['F', 9]]), AWAY, { ...FIVE, ...options });
      return asLb('found' in plan ? (plan.found.restraint?.rated ?? 0) : 0);
    };
    expect(strike({ restraint: 'out', lock: 'planning' })).toBeCloseTo(210, 6);
    expect(strike({ restraint: 'out', lock: 'nominal' })).toBeCloseTo(190, 6);
    // Going out it only pays out.
    const out = found(asked(BRIDGE, bare, LOAD, { ...FIVE, restraint: 'out', lock: 'planning' }));
    expect(asLb(out.restraint?.rated ?? 0)).toBeCloseTo(190, 6);
  });

  it('counts all that it searched', () => {
    const strike = (options: Partial<OrderOptions>) =>
      searchedOf(asked(BRIDGE, hung(BRIDGE, 30, [['F', 9]]), AWAY, { ...FIVE, ...options }));
    // Staging alone, the order with a line, and at the planning limit once more with friction.
    const alone = strike({ explain: false });
    const nominal = strike({ restraint: 'out' });
    expect(nominal).toBeGreaterThan(alone);
    const planning = strike({ restraint: 'out', lock: 'planning' });
    expect(planning).toBeGreaterThan(2 * (nominal - alone));
  });

  it('is known to have none by staging, though the look for a restraint was cut short', () => {
    const bound = (statesMost: number, restraint: 'none' | 'out') =>
      asked(BRIDGE, bare, LOAD, { ...FIVE, statesMost, restraint });
    // Eight states are all that staging alone comes to.
    expect(bound(10, 'none')).toEqual({ none: { ...nothing, rule: 'HOLD', searched: 8 } });
    expect(bound(10, 'out')).toEqual({ stopped: { searched: 18 } });
    expect(bound(20, 'out')).toEqual({ stopped: { searched: 28 } });
    expect(bound(5, 'none')).toEqual({ stopped: { searched: 5 } });
    expect(bound(40, 'out')).toHaveProperty('found');
  });
});

describe('what is asked where nobody says', () => {
  it('is for people: all doubt, the lock at its planning limit, and any restraint in 5 lb', () => {
    const physics = examplePhysics(
      setWith({
        lamp: clearItem(200, 10),
        bridge: { kind: 'standing', mass: 100, drop: ft(9), pick: ft(1), uncertainty: 1 },
      }),
    );
    const start: Standing = { ...bare, items: {} };
    const goal = { ...LOAD, service: 'in' } as const;
    const plan = planOrder(physics, start, goal);
    expect(found(plan).restraint).not.toBeNull();
    // Five pounds of force are 22.2411 N.
    expect((found(plan).restraint?.rated ?? 0) / 22.2411).toBeCloseTo(
      Math.round((found(plan).restraint?.rated ?? 0) / 22.2411),
      6,
    );
    expect(plan).toEqual(
      planOrder(physics, start, goal, {
        doubtShare: 1,
        lock: 'planning',
        restraint: 'either',
        explain: true,
        neatM: 0.05,
        sharesBatten: false,
      }),
    );
    expect(plan).not.toEqual(planOrder(physics, start, goal, { doubtShare: 0 }));
    expect(plan).not.toEqual(planOrder(physics, start, goal, { lock: 'nominal' }));
  });
});
