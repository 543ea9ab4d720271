/** Small random jobs on which the planner, the slow way and an outside solver have to agree. */
import fc from 'fast-check';
import type { BalanceItem } from '#balance';
import { FOOT, metres, POUND, POUND_FORCE } from '#quantities';
import { type OrderGoal, type OrderOptions, type OrderPlan, planOrder } from '#sequence';
import type { Standing } from '#state';
import { type ExampleSet, examplePhysics, SIX_LINE_SET } from './set-physics.ts';
import type { SlowJob } from './slow-search.ts';

const ft = (most: number, least = 0): fc.Arbitrary<number> =>
  fc.integer({ min: least * 2, max: most * 2 }).map((n) => (n / 2) * FOOT);
const lb = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least, max: most }).map((n) => n * POUND);

const item: fc.Arbitrary<BalanceItem> = fc.oneof(
  fc.record({ kind: fc.constant('clear' as const), mass: lb(20, 110), uncertainty: lb(0, 4) }),
  fc.record({
    kind: fc.constant('cloth' as const),
    mass: lb(20, 130),
    drop: ft(12, 4),
    tie: fc.constant(0),
    hem: lb(0, 50),
    uncertainty: lb(0, 4),
  }),
  fc.record({
    kind: fc.constant('standing' as const),
    mass: lb(40, 120),
    drop: ft(12, 5),
    pick: fc.constant(0),
    uncertainty: lb(0, 3),
  }),
);

/** Short travel and thick plates, so that reach, contact and lock all bite within few states. */
const anySet: fc.Arbitrary<ExampleSet> = fc
  .record({
    first: item,
    second: fc.option(item),
    bareLb: fc.integer({ min: -30, max: 60 }),
    linesLbFt: fc.integer({ min: 0, max: 12 }),
    lockLb: fc.integer({ min: 20, max: 70 }),
    lowReach: ft(4, 1),
    gap: ft(6),
  })
  .map(({ first, second, bareLb, linesLbFt, lockLb, lowReach, gap }) => ({
    ...SIX_LINE_SET,
    lowStopM: 3 * FOOT,
    highStopM: 20 * FOOT,
    workingM: 4 * FOOT,
    bareKg: bareLb * POUND,
    linesKgPerM: (linesLbFt * POUND) / 8 / FOOT,
    lockLimitN: lockLb * POUND_FORCE,
    panAtLowM: 30 * FOOT,
    bricks: SIX_LINE_SET.bricks.map((brick) => ({ ...brick, thicknessM: 4 * brick.thicknessM })),
    galleries: [
      {
        id: 'upper',
        name: 'Upper',
        floorM: 28 * FOOT,
        reachFromM: 28 * FOOT,
        reachToM: 31 * FOOT + lowReach,
        stock: { F: 50, H: 50 },
      },
      {
        id: 'mid',
        name: 'Mid',
        floorM: 13 * FOOT,
        reachFromM: 13 * FOOT,
        reachToM: 25 * FOOT - gap,
        stock: { F: 50, H: 50 },
      },
    ],
    items: { first, ...(second === null ? {} : { second }) },
  }));

const massOf = (each: BalanceItem): number =>
  'mass' in each ? each.mass + (each.kind === 'cloth' ? each.hem : 0) : 0;

/** As many full bricks as balance about all that hangs, a half one or none, now and then wrong. */
export const task = fc
  .record({
    set: anySet,
    off: fc.constantFrom(0, 0, 0, -1, 1),
    half: fc.integer({ min: 0, max: 1 }),
    strikes: fc.boolean(),
    doubtShare: fc.constantFrom(0, 0, 1),
  })
  .map(({ off, ...each }) => {
    const { items, bareKg } = each.set;
    const hungKg = Object.values(items).reduce((sum, one) => sum + massOf(one), bareKg);
    const full = Math.max(0, Math.round(hungKg / (25 * POUND)) - each.half + off);
    return { ...each, full };
  });
export type Task = typeof task extends fc.Arbitrary<infer T> ? T : never;

export const QUARTER = FOOT / 4;

export const gridOf = (
  { lowStopM, highStopM }: ExampleSet,
  more: readonly number[],
): readonly number[] => {
  const steps = Math.round((highStopM - lowStopM) / QUARTER);
  const grid = Array.from({ length: steps + 1 }, (_, index) => lowStopM + index * QUARTER);
  const apart = more.filter((each) => !grid.some((other) => Math.abs(other - each) < 1e-7));
  return [...grid, ...apart].toSorted((one, other) => one - other);
};

const NO_ONE = { restraints: [], service: 'in', closed: [] } as const;

export const planned = (
  { set, full, half, strikes, doubtShare }: Task,
  more: Partial<OrderOptions>,
) => {
  const physics = examplePhysics(set);
  const hung = Object.fromEntries(Object.keys(set.items).map((id) => [id, 'flying' as const]));
  const stack = [
    ...(full > 0 ? [{ kind: 'F', count: full, tag: 'show' as const }] : []),
    ...(half > 0 ? [{ kind: 'H', count: half, tag: 'show' as const }] : []),
  ];
  const start: Standing = {
    height: metres(set.lowStopM),
    stack: strikes ? stack : [],
    items: strikes ? hung : {},
    ...NO_ONE,
  };
  const goal: OrderGoal = {
    items: Object.fromEntries(Object.keys(set.items).map((id) => [id, strikes ? 'away' : 'on'])),
    bricks: strikes ? {} : { F: full, H: half },
    height: null,
    service: 'in',
  };
  const options = { doubtShare, lock: 'nominal' as const, restraint: 'none' as const, ...more };
  return { physics, start, goal, options, plan: planOrder(physics, start, goal, options) };
};

export const slowJob = (
  { set, full, half, strikes, doubtShare }: Task,
  heights: readonly number[],
  heldOutN: number,
): SlowJob => {
  const ids = Object.keys(set.items);
  const all = (phase: 'away' | 'flying') => Object.fromEntries(ids.map((id) => [id, phase]));
  return {
    physics: examplePhysics(set),
    start: {
      heightM: heights[0] ?? 0,
      stack: strikes ? 'F'.repeat(full) + 'H'.repeat(half) : '',
      items: all(strikes ? 'flying' : 'away'),
    },
    goal: {
      counts: strikes ? { F: 0, H: 0 } : { F: full, H: half },
      items: all(strikes ? 'away' : 'flying'),
      heightM: null,
    },
    heights,
    lockN: set.lockLimitN,
    heldOutN,
    doubtShare,
  };
};

/** What a plan costs, counted from its steps. */
export const costOf = (plan: OrderPlan): readonly [number, number, number] | null => {
  if (!('found' in plan)) return null;
  let [flights, handlings, plates, visit] = [0, 0, 0, ''];
  for (const step of plan.found.steps) {
    const isRigging = step.act === 'attach' || step.act === 'release';
    const isLoading = step.act === 'add' || step.act === 'remove';
    if (step.act === 'fly') [flights, visit] = [flights + 1, ''];
    if (!isRigging && !isLoading) continue;
    const next = isLoading ? step.gallery : 'batten';
    handlings += next === visit ? 1 : 2;
    visit = next;
    if (isLoading) plates += step.count;
  }
  return [flights, handlings, plates];
};
