/**
 * Orders of work that the planner finds on Kestlemere, where all is done at one height, against the
 * scenarios of the demo's plan (4.7; its own computed figures, in whole pounds, so no outside
 * check). The plan works at the nominal limit of the lock, zone clear, masses as written; so do
 * these, unless they say not.
 */
import { describe, expect, it } from 'vitest';
import type { Standing } from '#state';
import {
  ask,
  count,
  deeds,
  expectHeld,
  expectLb,
  highsLb,
  must,
  NOMINAL,
  PLANNING,
  title,
} from './plan-asked.ts';
import {
  asFeet,
  asPounds,
  bareOn,
  feet,
  hungOn,
  hungSet,
  imbalanceLb,
  madeUpSet,
  showRuns,
} from './plan-sets.ts';

describe('S1 Electric 1 on the low stop', () => {
  const set = hungSet('5');
  const goal = { all: 'on', bricks: { F: 33 }, height: feet(36) } as const;
  const plan = ask(set, bareOn(set, 3), goal);

  it(`attaches all, then loads, then flies (${title(plan)})`, () => {
    const found = must(plan);
    expect(deeds(found)).toEqual([
      ...set.items.map((id) => `attach ${id}`),
      'add 33 F upper',
      'fly',
    ]);
    expectHeld(found);
    const highs = highsLb(found);
    expectLb(highs[3], 814);
    expectLb(highs[4], -11);
    expectLb(highs[5], 10);
  });

  it('does the same within the planning limit: the stop is what holds', () => {
    const found = must(ask(set, bareOn(set, 3), goal, PLANNING));
    expect(deeds(found).at(-2)).toBe('add 33 F upper');
    expect(found.states.some(({ lockUsed }) => lockUsed === 'nominal')).toBe(false);
  });

  it('strikes arbor first, which nobody wrote in', () => {
    const plan = ask(set, hungOn(set, 36, showRuns(33, 0)), { all: 'away' }, PLANNING);
    const words = deeds(must(plan));
    expect(words.slice(0, 2)).toEqual(['fly', 'remove 33 F upper']);
    expect(words.slice(2).every((word) => word.startsWith('release'))).toBe(true);
  });
});

describe('S2 the same electric a foot above its stop', () => {
  const heads = Array.from({ length: 6 }, (_, index) => ({
    id: `head${index + 1}`,
    massLb: 79,
    dropFt: 3,
    pickFt: 0,
  }));
  const set = madeUpSet({ set: '5', trimFt: 36, items: heads });
  const goal = { all: 'on', bricks: { F: 18, H: 3 }, height: feet(4) } as const;
  const travel = { fromM: feet(4), toM: feet(36) };
  const work = [{ fromM: feet(4), toM: feet(4) }];
  const nominal = ask(set, bareOn(set, 4), goal, { ...NOMINAL, travel, work });
  const planning = ask(set, bareOn(set, 4), goal, { ...PLANNING, travel, work });

  it(`alternates bricks and heads at the nominal limit (${title(nominal)})`, () => {
    const found = must(nominal);
    expectHeld(found);
    // The plan's own order: six handlings of heads, nine of bricks, and no flight.
    expect(count(found, ['attach'])).toBe(6);
    expect(count(found, ['add', 'remove'])).toBeLessThanOrEqual(9);
    expect(count(found, ['fly'])).toBe(0);
    expectLb(highsLb(found).at(-1), 34);
  });

  it(`has no order at the planning limit (${title(planning)})`, () => {
    expect(planning).toMatchObject({ none: { exhaustive: true, rule: 'HOLD' } });
  });

  it('goes to the low stop where it may', () => {
    const found = must(ask(set, bareOn(set, 4), goal, { ...PLANNING, work: null }));
    const words = deeds(found);
    expect(words[0]).toBe('fly');
    expect(words.slice(1, 7).every((word) => word.startsWith('attach'))).toBe(true);
    expect(
      asFeet(found.states.find(({ holds }) => holds.in.by === 'lowStop')?.standing.height ?? 0),
    ).toBeCloseTo(3, 6);
  });
});

describe('S8 two heads of six off Electric 1 at 7.5 ft', () => {
  const head = { massLb: 79, dropFt: 3, pickFt: 0 };
  // Any one of them may be let go, so they are told apart: heads, profiles and the bar cable.
  const rest = [
    ...['3', '4', '5', '6'].map((id) => ({ ...head, id: `head${id}` })),
    ...Array.from({ length: 12 }, (_, at) => ({ ...head, id: `profile${at}`, massLb: 18.5 })),
    { ...head, id: 'cable', massLb: 60 },
  ];
  const set = madeUpSet({
    set: '5',
    trimFt: 36,
    items: [...rest, { id: 'head1', ...head }, { id: 'head2', ...head }],
  });
  const start = hungOn(set, 7.5, showRuns(33, 0));
  const goal = { items: { head1: 'away', head2: 'away' }, bricks: { F: 27 } } as const;
  const here = { fromM: feet(7.5), toM: feet(7.5) };
  const options = { ...NOMINAL, travel: here, work: [here] };
  const alternating = ask(set, start, goal, options);
  const planning = ask(set, start, goal, { ...PLANNING, ...options, lock: 'planning' });

  it(`alternates at the nominal limit (${title(alternating)})`, () => {
    const found = must(alternating);
    expectHeld(found);
    // The plan: 2 off, head, 3 off, head, 1 off.
    expect(count(found, ['remove', 'add'])).toBeLessThanOrEqual(3);
    expect(count(found, ['release'])).toBe(2);
  });

  it(`has no order at the planning limit but with the arbor slung (${title(planning)})`, () => {
    expect(planning).toMatchObject({ none: { exhaustive: true, rule: 'HOLD' } });
    const slung = must(ask(set, start, goal, { ...options, lock: 'planning', restraint: 'out' }));
    expectHeld(slung);
    expect(deeds(slung)).toContain('rig arborSling');
    expect(deeds(slung)).toContain('unrig arborSling');
    // Both heads off and nothing else: 161 lb, and 79 more if a third is let go.
    expect(asPounds(slung.restraint?.rated ?? 0)).toBeLessThanOrEqual(245);
  });
});

describe('S9 a unit off at the high stop', () => {
  const unit = { id: 'unit', massLb: 110, dropFt: 2, pickFt: 0 };
  const made = madeUpSet({ set: '38', trimFt: 61, items: [unit] });
  const deck = {
    id: 'deck',
    name: 'Deck',
    floorM: 0,
    reachFromM: feet(0.25),
    reachToM: feet(5.5),
    stock: {},
  };
  const set = {
    ...made,
    physics: { ...made.physics, galleries: [...made.physics.galleries, deck] },
  };
  const here = { fromM: feet(61), toM: feet(61) };
  const plan = ask(
    set,
    hungOn(set, 61, showRuns(4, 1)),
    { all: 'away' },
    {
      ...PLANNING,
      travel: here,
      work: [here],
    },
  );

  it(`takes the unit off first (${title(plan)})`, () => {
    const found = must(plan);
    expect(deeds(found)).toEqual(['release unit', 'remove 1 H deck', 'remove 4 F deck']);
    const highs = highsLb(found);
    expectLb(asPounds(found.states[0]?.imbalance.highN ?? 0), -43);
    expectLb(highs[0], -153);
    expectLb(highs.at(-1), -41);
    expect(found.states[1]?.holds.out.by).toBe('highStop');
  });
});

describe('S11 double purchase', () => {
  const header = { id: 'header', massLb: 300, dropFt: 4, pickFt: 1 };
  const set = madeUpSet({ set: 'D1', trimFt: 52, items: [header] });
  const plan = ask(set, hungOn(set, 3, showRuns(24, 0)), { all: 'away' }, PLANNING);

  it(`takes 24 off for 300 lb (${title(plan)})`, () => {
    const found = must(plan);
    expect(deeds(found)).toEqual(['remove 24 F upper', 'release header']);
    const highs = highsLb(found);
    expectLb(highs[0], 336);
    expectLb(highs[1], 36);
  });

  it('has none that takes 12 off, one for one', () => {
    const plan = ask(set, hungOn(set, 3, showRuns(24, 0)), { all: 'away', bricks: { F: 12 } });
    expect(plan).toMatchObject({ none: { exhaustive: true, rule: 'HOLD' } });
    const after = imbalanceLb(set, 3, showRuns(12, 0), {});
    expectLb(after.high, -114);
  });
});

describe('S12 release of the dead-hung frame', () => {
  const set = hungSet('D3');
  const steel = {
    kind: 'deadHangSteel',
    resists: 'in',
    rating: 4448 as Standing['height'] & number,
    from: feet(38),
    to: feet(38),
    owner: null,
    tag: null,
  };
  const start = {
    ...bareOn(set, 38),
    items: { frame: 'heldElsewhere' },
    service: 'deadHung',
    restraints: [steel],
  } as unknown as Standing;
  const plan = ask(set, start, { bricks: { F: 19 }, height: feet(38) }, PLANNING);

  it(`loads the arbor first, and takes the steel off while it is tight (${title(plan)})`, () => {
    const found = must(plan);
    expect(deeds(found)).toEqual(['add 18 F mid', 'takeOffSteel', 'add 1 F mid']);
    const highs = highsLb(found);
    expectLb(highs[0], 11);
    expectLb(highs.at(-1), -2);
    expect(found.states[0]?.holds.in.by).toBe('steel');
  });

  it('weighs 236 lb if the steel went now', () => {
    expectLb(imbalanceLb(set, 38, [], { frame: 'flying' }).high, 236);
  });
});
