/** What two steady pulls on the low stop weigh, on the small set of the tests. */
import { describe, expect, it } from 'vitest';
import type { BalanceItem } from '#balance';
import { assert } from '#outcome';
import { POUND_FORCE } from '#quantities';
import type { Standing } from '#state';
import { examplePhysics } from '../../../validation/sequence/set-physics.ts';
import { bare, clearItem, ft, lb, setWith } from '../example-jobs.contract.ts';
import { type DrillMass, drillMass } from './drill-mass.ts';
import { frictionMostN, weighedItems } from './weighed-items.ts';

const hungWith = (items: readonly string[], bricks: number): Standing => ({
  ...bare,
  items: Object.fromEntries(items.map((id) => [id, 'flying' as const])),
  stack: [{ kind: 'F', count: bricks, tag: 'show' }],
});

const HEADER = { header: clearItem(250, 62) };
const CLOTH: BalanceItem = {
  kind: 'cloth',
  mass: lb(250),
  drop: ft(28),
  tie: ft(0.25),
  hem: 0,
  uncertainty: lb(5),
};

const weighed = (
  items: Readonly<Record<string, BalanceItem>>,
  bricks: number,
  pulls: { readonly out: number; readonly in: number; readonly perBatten?: number },
): DrillMass => {
  const mass = drillMass(examplePhysics(setWith(items)), hungWith(Object.keys(items), bricks), {
    outN: pulls.out * POUND_FORCE,
    inN: pulls.in * POUND_FORCE,
    handLinePerBatten: pulls.perBatten ?? 1,
  });
  assert(!('why' in mass), JSON.stringify(mass));
  return mass;
};

describe('two pulls', () => {
  it('weigh a header: half their difference above what the list has with it exact', () => {
    // As listed 48.59 + 250 − 300 is −1.41 lb; the pulls say 29 lb batten heavy.
    const { massKg, imbalance, friction, weighs } = weighed(HEADER, 12, { out: 47, in: -11 });
    expect(massKg / lb(1)).toBeCloseTo(250 + 29 + 1.41, 6);
    expect([imbalance / POUND_FORCE, friction / POUND_FORCE]).toEqual([
      expect.closeTo(29, 9),
      expect.closeTo(18, 9),
    ]);
    expect(weighs).toEqual(['header']);
  });

  it('leave in doubt what the bricks may be off by, and a heap that hangs in part', () => {
    expect(weighed(HEADER, 12, { out: 47, in: -11 }).doubtKg / lb(1)).toBeCloseTo(6, 6);
    const { doubtKg, weighs } = weighed({ ...HEADER, cloth: CLOTH }, 12, { out: 47, in: -11 });
    // 2.75 of 28 ft of it hang.
    expect(doubtKg / lb(1)).toBeCloseTo(6 + (5 * 2.75) / 28, 6);
    expect(weighs).toEqual(['header']);
  });

  it('weigh two pieces together', () => {
    const two = { ...HEADER, crate: clearItem(100, 30) };
    const { massKg, weighs, doubtKg } = weighed(two, 12, { out: 47, in: -11 });
    expect(weighs).toEqual(['header', 'crate']);
    expect(massKg / lb(1)).toBeCloseTo(29 + 300 - 48.59, 6);
    expect(doubtKg / lb(1)).toBeCloseTo(6, 6);
  });

  it('count half on a hand line that travels half as far', () => {
    const half = weighed(HEADER, 12, { out: 94, in: -22, perBatten: 0.5 });
    expect(half.massKg).toBeCloseTo(weighed(HEADER, 12, { out: 47, in: -11 }).massKg, 9);
  });

  it('weigh nothing where nothing hangs', () => {
    const pulls = { outN: 1, inN: 1, handLinePerBatten: 1 };
    const physics = examplePhysics(setWith(HEADER));
    expect(drillMass(physics, hungWith([], 0), pulls)).toEqual({ why: 'nothingToWeigh' });
  });
});

describe('what hangs in full', () => {
  const itemsOf = (items: Readonly<Record<string, BalanceItem>>) =>
    weighedItems(examplePhysics(setWith(items)), hungWith(Object.keys(items), 0));

  it('is summed up, with what may be off, and what a heap adds later', () => {
    const sum = itemsOf({ ...HEADER, crate: clearItem(100, 30), cloth: CLOTH });
    assert(!('why' in sum), 'they hang');
    expect(sum.listedKg / lb(1)).toBeCloseTo(350, 6);
    expect(sum.doubtKg / lb(1)).toBeCloseTo(92, 6);
    expect(sum.laterN / POUND_FORCE).toBeCloseTo(5 * (1 - 2.75 / 28), 6);
  });

  it('is nothing of a heap in more doubt than the lock holds', () => {
    const cloth = (uncertainty: number) => ({ ...HEADER, cloth: { ...CLOTH, uncertainty } });
    expect(itemsOf(cloth(lb(50) - 1e-9))).toHaveProperty('items', ['header']);
    expect(itemsOf(cloth(lb(50.1)))).toMatchObject({ why: 'hangsInPart', items: ['cloth'] });
  });

  it('names the piece that touches the deck, of several', () => {
    const flat: BalanceItem = { kind: 'standing', mass: lb(90), drop: ft(3), pick: 0 };
    expect(itemsOf({ ...HEADER, flat })).toEqual({ why: 'inContact', item: 'flat' });
  });
});

describe('friction at most', () => {
  const frictionLb = (items: Readonly<Record<string, BalanceItem>>, ids = Object.keys(items)) =>
    frictionMostN(examplePhysics(setWith(items)), hungWith(ids, 0)) / POUND_FORCE;
  const bareLb = (0.05 * 80) / lb(1) + 4;

  it('is that of the heaviest, in what hangs', () => {
    expect(frictionLb(HEADER)).toBeCloseTo(bareLb + 0.05 * 312, 6);
    expect(frictionLb({ ...HEADER, crate: clearItem(100, 30) })).toBeCloseTo(
      bareLb + 0.05 * (312 + 130),
      6,
    );
    expect(frictionLb(HEADER, [])).toBeCloseTo(bareLb, 6);
  });

  it('leaves a piece that lies beside the batten out', () => {
    const physics = examplePhysics(setWith({ ...HEADER, crate: clearItem(100, 30) }));
    const standing = { ...hungWith(['header'], 0) };
    const beside: Standing = { ...standing, items: { ...standing.items, crate: 'beside' } };
    expect(frictionMostN(physics, beside)).toBeCloseTo(frictionMostN(physics, standing), 9);
  });
});
