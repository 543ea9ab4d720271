import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import { examplePhysics, SIX_LINE_SET } from '../../validation/sequence/set-physics.ts';
import {
  asked,
  bare,
  clearItem,
  found,
  ft,
  hung,
  lb,
  none,
  setWith,
} from './example-jobs.contract.ts';
import { faultsOf } from './example-replay.contract.ts';
import type { SmallestChange } from './types.ts';

const LAMP = setWith({ lamp: clearItem(200) });
const GOAL = { items: { lamp: 'on' }, bricks: { F: 9 }, height: metres(ft(30)) } as const;

const changeOf = (plan: Parameters<typeof none>[0]): SmallestChange => {
  const { smallestChange, exhaustive } = none(plan);
  expect(exhaustive).toBe(true);
  if (smallestChange === null) throw new Error('no change was named');
  return smallestChange;
};

/** A set whose loaders reach nothing but a stretch of the arbor's way. */
const reached = (fromFt: number, toFt: number) => {
  const [upper] = SIX_LINE_SET.galleries;
  if (upper === undefined) throw new Error('no gallery');
  const gallery = { ...upper, reachFromM: ft(fromFt), reachToM: ft(toFt) };
  return setWith({ lamp: clearItem(200) }, { galleries: [gallery] });
};

describe('what would make an order, where there is none', () => {
  it('masses better known: applied there is one, a little less there is none', () => {
    const vague = setWith({ lamp: clearItem(200, 70) });
    const plan = asked(vague, bare, GOAL, { doubtShare: 1 });
    expect(none(plan)).toMatchObject({ rule: 'HOLD', atHeight: ft(30) });
    // −12.05 lb, 70 of the lamp and nine halves in doubt, on a lock of 50; with eight bricks the
    // other way, 12.95 and 74.
    const missingLb = (byN: number | null): number => (byN ?? 0) / 9.80665 / 0.45359237;
    expect(missingLb(none(plan).byN)).toBeCloseTo(12.05 + 74.5 - 50, 6);
    const eight = asked(vague, bare, { ...GOAL, bricks: { F: 8 } }, { doubtShare: 1 });
    expect(missingLb(none(eight).byN)).toBeCloseTo(12.95 + 74 - 50, 6);
    const change = changeOf(plan);
    if (change.change !== 'tolerances') throw new Error(change.change);
    expect(change.share).toBeGreaterThan(0);
    found(asked(vague, bare, GOAL, { doubtShare: change.share }));
    none(asked(vague, bare, GOAL, { doubtShare: change.share + 1e-3 }));
  });

  it('says so of a start that is not held, with what is missing', () => {
    // 48.59 − 27 · 1.32 + 200 at 30 ft with no brick: 212.95 lb on a lock of 50.
    const plan = asked(LAMP, hung(LAMP, 30, []), GOAL);
    expect(none(plan)).toMatchObject({ rule: 'HOLD', atHeight: ft(30), searched: 1 });
    expect((none(plan).byN ?? 0) / 9.80665 / 0.45359237).toBeCloseTo(162.95, 6);
    expect(none(plan).smallestChange).toBeNull();
  });

  it('more bricks', () => {
    const galleries = SIX_LINE_SET.galleries.map((each) => ({ ...each, stock: { F: 4 } }));
    const few = setWith({ lamp: clearItem(200) }, { galleries });
    // Four at each gallery: nine are not to be had.
    expect(none(asked(few, bare, GOAL)).rule).toBe('STOCK');
    expect(changeOf(asked(few, bare, GOAL))).toEqual({ change: 'stock' });
    // Eight are, four of them in the air.
    const eight = { ...GOAL, bricks: { F: 8 } };
    const plan = found(asked(few, bare, eight, { restraint: 'out' }));
    const given = plan.steps.flatMap((step) => (step.act === 'add' ? [step.gallery] : []));
    expect(new Set(given)).toEqual(new Set(['upper', 'mid']));
  });

  it('the bricks that are not there, where the rod is too short as well', () => {
    const galleries = SIX_LINE_SET.galleries.map((each) => ({ ...each, stock: { F: 4 } }));
    const few = setWith({ lamp: clearItem(200) }, { galleries, rodM: ft(0.85) });
    // Eight are to be had, and neither a longer rod nor more bricks alone would do.
    expect(none(asked(few, bare, GOAL))).toMatchObject({ rule: 'STOCK', smallestChange: null });
    const short = setWith({ lamp: clearItem(200) }, { rodM: ft(0.85) });
    expect(none(asked(short, bare, GOAL)).rule).toBe('ROD');
  });

  it('more bricks, where only the arbor could carry them from one gallery to the other', () => {
    const galleries = SIX_LINE_SET.galleries.map((each) => ({
      ...each,
      stock: { F: each.id === 'mid' ? 8 : 0 },
    }));
    const above = setWith({ lamp: clearItem(200) }, { galleries });
    const plan = asked(above, bare, { ...GOAL, bricks: { F: 8 }, height: metres(ft(3)) });
    expect(none(plan).exhaustive).toBe(true);
  });

  it('says so of a start that runs out, too', () => {
    // 48.59 − 27 · 1.32 + 200 − 300 = −87.05 lb at 30 ft, on a lock of 50.
    const plan = asked(LAMP, hung(LAMP, 30, [['F', 12]]), GOAL);
    expect((none(plan).byN ?? 0) / 9.80665 / 0.45359237).toBeCloseTo(37.05, 6);
  });

  it('takes both stops for places to be', () => {
    const top = { ...GOAL, bricks: { F: 8 }, height: metres(ft(61)) };
    found(asked(LAMP, bare, top));
    found(asked(LAMP, hung(LAMP, 61, [['F', 8]]), { bricks: { F: 8 }, height: metres(ft(3)) }));
    const travel = { fromM: ft(3), toM: ft(30) };
    found(asked(LAMP, bare, GOAL, { travel }));
    const beyond = { ...GOAL, height: metres(ft(30.01)) };
    expect(none(asked(LAMP, bare, beyond, { travel })).rule).toBe('TRAVEL');
    // A height read in metres differs from one in feet in its last figure.
    found(
      asked(
        LAMP,
        { ...bare, height: metres(ft(3) - 1e-12) },
        { ...GOAL, height: metres(ft(61) + 1e-12), bricks: { F: 8 } },
      ),
    );
    const short = { fromM: ft(4), toM: ft(30) };
    const in_ = { ...GOAL, height: metres(ft(3.9)) };
    expect(none(asked(LAMP, { ...bare, height: metres(ft(4)) }, in_, { travel: short })).rule).toBe(
      'TRAVEL',
    );
  });

  it('counts what a gallery takes back', () => {
    const galleries = SIX_LINE_SET.galleries.map((each) => ({ ...each, stock: {} }));
    const empty = setWith({ lamp: clearItem(200) }, { galleries });
    const start = hung(empty, 3, [
      ['H', 1],
      ['F', 8],
    ]);
    const plan = found(asked(empty, start, { bricks: { F: 8 }, height: metres(ft(3)) }));
    expect(plan.steps.some((step) => step.act === 'add' && step.count === 8)).toBe(true);
  });

  it('a brick kind that nobody counted is none', () => {
    const [upper] = SIX_LINE_SET.galleries;
    const galleries = upper === undefined ? [] : [{ ...upper, stock: { H: 40 } }];
    const set = setWith({ lamp: clearItem(200) }, { galleries });
    expect(none(asked(set, bare, GOAL)).rule).toBe('STOCK');
  });

  it('a longer rod, by just so much', () => {
    const short = setWith({ lamp: clearItem(200) }, { rodM: ft(0.85) });
    const change = changeOf(asked(short, bare, GOAL));
    if (change.change !== 'rod') throw new Error(change.change);
    // Nine plates of a tenth of a foot.
    expect(change.by).toBeCloseTo(ft(0.05), 4);
    const longer = { ...short, rodM: short.rodM + change.by };
    found(asked(longer, bare, GOAL));
    none(asked({ ...short, rodM: short.rodM + change.by - 1e-3 }, bare, GOAL));
  });

  it('an arbor that may weigh more, by just so much, and not a longer rod', () => {
    // A carriage of 95 lb and nine bricks of 25 lb: 320 lb; each may be off by half a pound.
    const arbor = { carriageKg: lb(95), limitKg: lb(290) };
    const weak = setWith({ lamp: clearItem(200) }, { arbor });
    const plan = asked(weak, bare, GOAL, { doubtShare: 0 });
    expect(none(plan).rule).toBe('MASS');
    const change = changeOf(plan);
    if (change.change !== 'arbor') throw new Error(change.change);
    const enough = lb(290) + change.by;
    const limited = (limitKg: number) =>
      setWith({ lamp: clearItem(200) }, { arbor: { ...arbor, limitKg } });
    found(asked(limited(enough), bare, GOAL, { doubtShare: 0 }));
    none(asked(limited(enough - 0.01), bare, GOAL, { doubtShare: 0 }));
    // Found by halving between 290 lb and twice that.
    expect(change.by).toBeGreaterThanOrEqual(lb(30) - 1e-9);
    expect(change.by).toBeLessThan(lb(30) + 0.01);
  });

  it('an arbor with the tolerance of its bricks, where those count', () => {
    const limited = (limitLb: number) =>
      setWith({ lamp: clearItem(200) }, { arbor: { carriageKg: lb(95), limitKg: lb(limitLb) } });
    found(asked(limited(324.5), bare, GOAL, { doubtShare: 1 }));
    expect(none(asked(limited(324.49), bare, GOAL, { doubtShare: 1 })).rule).toBe('MASS');
  });

  it('more travel, up or down', () => {
    // The arbor comes in reach only where the batten is some 20 ft up.
    const cloth = setWith({
      drop: { kind: 'cloth', mass: lb(119), drop: ft(28), tie: ft(0.25), hem: lb(56) },
    });
    const goal = { items: { drop: 'on' }, bricks: { F: 6, H: 1 } } as const;
    const travel = { fromM: ft(3), toM: ft(10) };
    const higher = changeOf(asked(cloth, bare, goal, { travel }));
    if (higher.change !== 'higher') throw new Error(higher.change);
    found(asked(cloth, bare, goal, { travel: { ...travel, toM: higher.to } }));
    none(asked(cloth, bare, goal, { travel: { ...travel, toM: higher.to - 0.01 } }));
    const low = { fromM: ft(3.5), toM: ft(40) };
    const start = { ...bare, height: metres(ft(4)) };
    const lower = changeOf(asked(reached(59.9, 63), start, GOAL, { travel: low }));
    if (lower.change !== 'lower') throw new Error(lower.change);
    // Only the low stop holds the lamp without a brick.
    expect(lower.to).toBeCloseTo(ft(3), 4);
  });

  it('somebody who reaches the arbor, and where', () => {
    const change = changeOf(asked(reached(100, 101), bare, GOAL));
    if (change.change !== 'gallery') throw new Error(change.change);
    expect(change.from).toBeGreaterThanOrEqual(ft(3) - 1e-9);
    expect(change.to).toBeGreaterThanOrEqual(change.from);
    expect(none(asked(reached(100, 101), bare, GOAL)).rule).toBe('REACH');
    // On its stop and nowhere else the lamp is held without a brick.
    expect(change.from).toBeCloseTo(ft(3), 6);
    expect(change.to).toBeCloseTo(ft(3), 6);
  });

  it('nothing that it knows of, where nothing by itself would do', () => {
    const far = reached(100, 101);
    const plan = asked({ ...far, rodM: 0.01 }, bare, GOAL);
    expect(none(plan).smallestChange).toBeNull();
  });
});

describe('goals that cannot be', () => {
  const rules: readonly (readonly [string, Parameters<typeof asked>[2], string])[] = [
    ['a kind that the house has not', { bricks: { X: 1 } }, 'GOAL'],
    ['half a brick in number', { bricks: { F: 1.5 } }, 'GOAL'],
    ['fewer than none', { bricks: { F: -1 } }, 'GOAL'],
    ['an item that weighs nothing', { items: { ghost: 'on' } }, 'GOAL'],
    ['a height past the stop', { height: metres(ft(62)) }, 'TRAVEL'],
    ['steel of which nobody says what it bears', { service: 'deadHung' }, 'SERVICE'],
  ];
  for (const [what, goal, rule] of rules) {
    it(`${what}: ${rule}`, () => {
      expect(none(asked(LAMP, bare, goal))).toMatchObject({ rule, searched: 0 });
    });
  }

  it('steel at no height', () => {
    const plan = asked(LAMP, bare, { service: 'deadHung' }, { steelN: 4000 });
    expect(none(plan).rule).toBe('GOAL');
  });

  it('a set that is locked out, paused, or stands outside its travel', () => {
    for (const service of ['lockedOut', 'paused'] as const) {
      expect(none(asked(LAMP, { ...bare, service }, GOAL)).rule).toBe('SERVICE');
    }
    const beyond = { ...bare, height: metres(ft(2)) };
    expect(none(asked(LAMP, beyond, GOAL)).rule).toBe('TRAVEL');
  });
});

describe('a bound on states', () => {
  it('stops and says so, and never says that none exists', () => {
    for (const statesMost of [1, 2, 5]) {
      const plan = asked(LAMP, bare, GOAL, { statesMost, restraint: 'either' });
      expect(plan).not.toHaveProperty('none');
      expect(plan).not.toHaveProperty('found');
      expect(plan).toMatchObject({ stopped: { searched: expect.any(Number) } });
    }
    expect(found(asked(LAMP, bare, GOAL, { statesMost: 1000 })).optimal).toBe(true);
  });

  it('tells a way that it has, and that there may be a better one', () => {
    const heads = Object.fromEntries([60, 70, 80, 90].map((n) => [`head${n}`, clearItem(n)]));
    const set = setWith(heads);
    const items = Object.fromEntries(Object.keys(heads).map((id) => [id, 'on' as const]));
    const goal = { items, bricks: { F: 12, H: 1 } };
    const best = found(asked(set, bare, goal));
    expect(best.optimal).toBe(true);
    const first = [20, 40, 80, 160]
      .map((statesMost) => asked(set, bare, goal, { statesMost }))
      .find((plan) => 'found' in plan);
    if (first === undefined) throw new Error('none was found within any bound');
    const quick = found(first);
    expect(quick.optimal).toBe(false);
    expect(quick.steps.length).toBeGreaterThanOrEqual(best.steps.length);
    expect(faultsOf(examplePhysics(set), quick, 0)).toEqual([]);
  });
});
