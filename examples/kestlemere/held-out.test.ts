/**
 * "Held out" of the demo's plan (10.4 and 10.6; its own search, so no outside check): the least
 * rating against the batten going out with which a hanging order exists. As there: heights in
 * quarter feet from the low stop to the highest trim, half bricks, steps of 5 lb, the lock at its
 * nominal limit, zone clear, masses as written.
 */
import { describe, expect, it } from 'vitest';
import { type OrderPlan, planOrder } from '#sequence';
import { asPounds, bareOn, feet, ferrySet, hungSet, type PlanSet, pounds } from './plan-sets.ts';

const NONE_BUT_LOCK = null;

/** Set, full bricks, half bricks, pounds held out. */
const CLOCKMAKER = [
  ['1', 21, 1, 200],
  ['2', 10, 0, 65],
  ['3', 5, 0, NONE_BUT_LOCK],
  ['5', 33, 0, NONE_BUT_LOCK],
  ['7', 5, 1, NONE_BUT_LOCK],
  ['8', 5, 0, NONE_BUT_LOCK],
  ['9', 6, 1, NONE_BUT_LOCK],
  ['11', 25, 1, NONE_BUT_LOCK],
  ['15', 5, 1, NONE_BUT_LOCK],
  ['16', 4, 1, NONE_BUT_LOCK],
  ['17', 3, 1, NONE_BUT_LOCK],
  ['19', 23, 0, NONE_BUT_LOCK],
  ['22', 7, 0, NONE_BUT_LOCK],
  ['23', 9, 1, NONE_BUT_LOCK],
  ['27', 8, 0, NONE_BUT_LOCK],
  ['28', 5, 1, NONE_BUT_LOCK],
  ['29', 4, 1, NONE_BUT_LOCK],
  ['30', 2, 1, NONE_BUT_LOCK],
  ['32', 30, 0, NONE_BUT_LOCK],
  ['34', 3, 0, NONE_BUT_LOCK],
  ['36', 20, 1, 485],
  ['38', 5, 1, NONE_BUT_LOCK],
  ['40', 14, 1, NONE_BUT_LOCK],
  ['D2', 32, 0, 195],
  ['D4', 15, 1, 140],
] as const;

const WINTERFERRY = [
  ['9', 7, 0, NONE_BUT_LOCK],
  ['11', 29, 0, 385],
  ['36', 15, 0, 175],
] as const;

type Row = (typeof CLOCKMAKER | typeof WINTERFERRY)[number];

const heldOut = (
  set: PlanSet,
  [, full, half]: Row | readonly [string, number, number],
  more: { readonly restraint?: 'none'; readonly highest?: number } = {},
): OrderPlan => {
  const items = Object.fromEntries(set.items.map((id) => [id, 'on' as const]));
  const goal = { items, bricks: { F: full, H: half }, height: null, service: 'in' as const };
  return planOrder(set.physics, bareOn(set, 3), goal, {
    doubtShare: 0,
    lock: 'nominal',
    restraint: more.restraint ?? 'out',
    restraintStepN: pounds(5),
    rests: set.rigid,
    travel: { fromM: feet(3), toM: more.highest ?? Math.max(...set.trimsM) },
    heightStepM: feet(0.25),
    // The plan's search goes in halves all the way, so a half may lie there for a while.
    spare: { H: 1 },
  });
};

const expectRow = (plan: OrderPlan, heldLb: number | null): void => {
  if (!('found' in plan)) throw new Error(JSON.stringify(plan));
  const { restraint } = plan.found;
  if (heldLb === null) {
    expect(restraint).toBeNull();
    return;
  }
  expect(restraint?.resists).toBe('out');
  // Whole steps of 5 lb: only rounding may differ.
  expect(asPounds(restraint?.rated ?? 0)).toBeCloseTo(heldLb, 6);
  // One step less was searched to its end and has none.
  expect(restraint?.refutedStates).toBeGreaterThan(0);
};

const words = (plan: OrderPlan): string => {
  if (!('found' in plan)) return 'not found';
  const { restraint, searched } = plan.found;
  const less = restraint === null ? '' : `, one step less: none in all ${restraint.refutedStates}`;
  return `${searched} states searched${less}`;
};

describe('held out, The Clockmaker of Vell', () => {
  for (const row of CLOCKMAKER) {
    const plan = heldOut(hungSet(row[0]), row);
    it(`set ${row[0]}: ${row[3] ?? 'the lock'} (${words(plan)})`, () => expectRow(plan, row[3]));
  }

  it('set 21: 65 lb, where the plan says the lock', () => {
    // The plan takes the lamps for clear of the deck at all heights; they hang 15 ft below their
    // batten, so on the way out they are lifted from the deck, and no gallery reaches there.
    const set = hungSet('21');
    expectRow(heldOut(set, ['21', 4, 1]), 65);
  });

  it('set D4: 100 lb where it may be flown above its trim, as the plan says', () => {
    const row = ['D4', 15, 1] as const;
    expectRow(heldOut(hungSet('D4'), row, { highest: feet(35.5) }), 100);
  });

  it('[trap 23] says of the valance, cyc and star drop that the lock alone has no order', () => {
    for (const [id, full, half] of [
      ['2', 10, 0],
      ['D4', 15, 1],
      ['D2', 32, 0],
    ] as const) {
      const plan = heldOut(hungSet(id), [id, full, half], { restraint: 'none' });
      expect(plan).toMatchObject({ none: { exhaustive: true, rule: 'HOLD' } });
    }
  });
});

describe('held out, Winterferry', () => {
  for (const row of WINTERFERRY) {
    const plan = heldOut(ferrySet(row[0]), row);
    it(`set ${row[0]}: ${row[3] ?? 'the lock'} (${words(plan)})`, () => expectRow(plan, row[3]));
  }
});
