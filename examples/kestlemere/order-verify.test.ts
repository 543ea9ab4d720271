/**
 * The judge of orders against the fourteen worked orders of the demo's plan, right and wrong, with
 * their imbalances to the pound (its own computed figures, so no outside check).
 */
import { describe, expect, it } from 'vitest';
import { assert } from '#outcome';
import { FOOT, newtons, POUND_FORCE } from '#quantities';
import { type OrderVerdict, verifyOrder } from '#rules';
import type { Step } from '#state';
import { ORDER_PLANT } from './order-plant.ts';
import { WORKED_ORDERS } from './orders/worked-orders.ts';
import { standing, type WorkedOrder } from './orders/write-order.ts';

const NOMINAL = { doubt: 'none', faults: 'skip' } as const;

const verdictOf = ({ plant, start, steps }: WorkedOrder): OrderVerdict =>
  verifyOrder(ORDER_PLANT[plant], start, steps, NOMINAL);

/** Half a pound of the plan's rounding, and a tenth for figures that it rounded twice. */
const NEAR_LB = 0.6;

const expectPounds = (
  { states }: OrderVerdict,
  wanted: WorkedOrder['pounds'],
  side: 'lowN' | 'highN',
): void => {
  for (const [at, lb] of wanted) {
    const foundLb = (states[at]?.imbalance[side] ?? Number.NaN) / POUND_FORCE;
    expect(Math.abs(foundLb - lb), `state ${at}: ${foundLb} for ${lb} lb`).toBeLessThan(NEAR_LB);
  }
};

describe('the worked orders', () => {
  for (const order of WORKED_ORDERS) {
    const { scenario, name, refusedBy } = order;
    it(`${scenario}, ${name}: ${refusedBy ?? 'accepted'}`, () => {
      const verdict = verdictOf(order);
      expect(verdict.refused).toBeNull();
      expect(verdict.broken?.rule ?? null).toBe(refusedBy);
      expectPounds(verdict, order.pounds, 'highN');
      expectPounds(verdict, order.poundsLow ?? [], 'lowN');
      if (refusedBy !== null) expect(verdict.broken?.byN ?? 0).toBeGreaterThan(0);
    });
  }
});

describe('where the worked orders break', () => {
  const wrong = (scenario: string, start: string): OrderVerdict => {
    const order = WORKED_ORDERS.find(
      (each) =>
        each.scenario === scenario && each.refusedBy !== null && each.name.startsWith(start),
    );
    assert(order !== undefined, `${scenario}, ${start}, is among the orders`);
    return verdictOf(order);
  };

  const passesFt = ({ broken }: OrderVerdict): number => {
    const passes = broken?.finding.facts['passes'];
    assert(typeof passes === 'object', 'a move says where it passes what holds it');
    return passes.value / FOOT;
  };

  it('names where the lock is passed on the way in, and by how much at the worst', () => {
    const drop = wrong('S4', 'in to working');
    expect(passesFt(drop)).toBeCloseTo(20.9, 0);
    expect(drop.broken?.where).toBeCloseTo(4 * FOOT, 9);
    expect((drop.broken?.byN ?? 0) / POUND_FORCE).toBeCloseTo(49.3, 1);
    const curtain = wrong('S5', 'in to working');
    expect(passesFt(curtain)).toBeCloseTo(27.7, 1);
    expect((curtain.broken?.byN ?? 0) / POUND_FORCE).toBeCloseTo(379.6, 1);
  });

  it('names the height of contact of the tower and the bridge', () => {
    expect(passesFt(wrong('S7', 'A'))).toBeCloseTo(23, 9);
    expect(passesFt(wrong('S6', 'C'))).toBeCloseTo(23, 9);
    expect(passesFt(wrong('S14', 'landed half'))).toBeCloseTo(15, 9);
  });

  it('finds that nobody can hold what was flown to be tried', () => {
    const rules = wrong('S1', '16 bricks').alsoBroken.map(({ rule }) => rule);
    expect(rules).toContain('ORD-009');
  });

  it('counts the plate at which it breaks', () => {
    const plate = (scenario: string, start: string) =>
      wrong(scenario, start).broken?.finding.facts['plate'];
    expect(plate('S1', 'the bricks first')).toMatchObject({ value: 4 });
    expect(plate('S8', 'arbor first')).toMatchObject({ value: 3 });
    expect(plate('S9', 'arbor first')).toMatchObject({ value: 4 });
  });
});

describe('S10, the drill for a mass that nobody knows', () => {
  const add = (count: number): Step => ({ act: 'add', kind: 'F', count, gallery: 'upper' });
  const ease = (pullLbf: number, lifted: boolean): Step => ({
    act: 'ease',
    pull: newtons(pullLbf * POUND_FORCE),
    lifted,
  });
  const start = standing(3, { kind: 'F', count: 4, tag: 'pipe' }, [], { header: 'flying' });
  const closed = [{ zone: 'run' }, { zone: 'drop', gallery: 'upper' }] as const;
  const drilled = (steps: readonly Step[]): OrderVerdict =>
    verifyOrder(ORDER_PLANT.header, { ...start, closed }, steps, {
      doubt: 'worst',
      faults: 'check',
    });

  it('loads for the lightest truth, then brick by brick as pulls allow, until it lifts', () => {
    const pulled = [ease(90, false), add(1), ease(90, false), add(1), ease(90, false), add(1)];
    const verdict = drilled([add(8), ...pulled, ease(70, false), add(1), ease(47, true)]);
    expect(verdict.broken).toBeNull();
    const nominalLb = (verdict.states.at(-1)?.imbalance.highN ?? 0) / POUND_FORCE;
    expect(nominalLb).toBeCloseTo(-1.4, 1);
  });

  it('[ORD-025] does not load for the label', () => {
    expect(drilled([add(8)]).broken).toBeNull();
    expect(drilled([add(10)]).broken?.rule).toBe('ORD-025');
  });

  it('loads one brick fewer than the plan, which leaves out what the bricks may be off by', () => {
    const { broken } = drilled([add(9)]);
    expect(broken?.rule).toBe('ORD-025');
    expect((broken?.byN ?? 0) / POUND_FORCE).toBeLessThan(1);
  });
});

describe('single faults in the worked orders', () => {
  const right = WORKED_ORDERS.filter(({ refusedBy }) => refusedBy === null);

  it('finds every right order good for any one fault while nobody is where the set runs', () => {
    for (const { plant, start, steps, scenario, name } of right) {
      const closed = { ...start, closed: [{ zone: 'run' } as const] };
      const verdict = verifyOrder(ORDER_PLANT[plant], closed, steps, {
        doubt: 'none',
        faults: 'check',
      });
      expect(verdict.broken, `${scenario}, ${name}`).toBeNull();
    }
  });

  it('[ORD-028] takes the two that need the whole lock for no plan with people below', () => {
    for (const [scenario, letter] of [
      ['S2', 'C'],
      ['S8', 'B'],
    ]) {
      const order = right.find((each) => each.scenario === scenario && each.name[0] === letter);
      assert(order !== undefined, `${scenario} ${letter} is among the orders`);
      const { plant, start, steps } = order;
      const { broken, alsoBroken } = verifyOrder(ORDER_PLANT[plant], start, steps, {
        doubt: 'none',
        faults: 'check',
      });
      expect([broken, ...alsoBroken].map((each) => each?.rule)).toContain('ORD-028');
    }
  });
});
