/** Traps of the demo that an order of work falls into (its own plan, 10.7), found by the tools. */
import { describe, expect, it } from 'vitest';
import { verifyOrder } from '#rules';
import type { Step } from '#state';
import { ORDER_PLANT } from './order-plant.ts';
import { WORKED_ORDERS } from './orders/worked-orders.ts';
import { allOn, expectLb, must } from './plan-asked.ts';
import { DEMO_JOBS, planOf } from './plan-jobs.ts';
import { asFeet, asPounds, bareOn, hungSet, imbalanceLb, showRuns } from './plan-sets.ts';

const jobOf = (name: string) => {
  const job = DEMO_JOBS.find((each) => each.name === name);
  if (job === undefined) throw new Error(`no ${name}`);
  return job;
};

describe('[trap 16] the iron bridge at its landing', () => {
  const set = hungSet('36');

  it('is anything from 482 lb arbor heavy to 38 lb batten heavy at 15 ft', () => {
    const touch = imbalanceLb(set, 15, showRuns(20, 1), allOn(set));
    expectLb(touch.low, -482);
    expectLb(touch.high, 38);
    expect(asFeet(set.physics.contactM(set.items[0] ?? '') ?? 0)).toBeCloseTo(15, 6);
  });

  it('is in no loader’s reach there, with any stack up to its own', () => {
    for (let full = 0; full <= 20; full += 1) {
      const { height, stack } = { ...bareOn(set, 15), stack: [...set.pipe, ...showRuns(full, 0)] };
      const topM = set.physics.topOfStackM({ height, stack });
      const reached = set.physics.galleries.filter(
        ({ reachFromM, reachToM }) => topM >= reachFromM && topM <= reachToM,
      );
      expect(reached).toEqual([]);
    }
  });

  it('asks for 485 lb against going out to be hung, and no order has less', () => {
    const { restraint } = must(planOf(jobOf('set 36, load')));
    expect(asPounds(restraint?.rated ?? 0)).toBeCloseTo(485, 6);
    expect(restraint?.resists).toBe('out');
    expect(restraint?.refutedStates).toBeGreaterThan(0);
  });
});

describe('[trap 24] two galleries at once', () => {
  it('is in no plan: a gallery is opened only when the other is shut again', () => {
    for (const job of DEMO_JOBS) {
      for (const { standing } of must(planOf(job)).states) {
        const drops = standing.closed.filter(({ zone }) => zone === 'drop');
        expect(drops.length, job.name).toBeLessThan(2);
      }
    }
  });

  it('is warned of in an order that somebody writes', () => {
    const job = jobOf('set 9, strike');
    const close = (gallery: string): Step => ({ act: 'close', zone: { zone: 'drop', gallery } });
    const steps: readonly Step[] = [
      { act: 'close', zone: { zone: 'run' } },
      ...must(planOf(job)).steps.slice(1, 2),
      close('upper'),
      close('mid'),
      { act: 'remove', kind: 'H', count: 1, gallery: 'mid' },
    ];
    const asked = { doubt: 'none', faults: 'check' } as const;
    const { cautions } = verifyOrder(job.set.physics, job.start, steps, asked);
    expect(cautions.map(({ rule }) => rule)).toContain('ORD-036');
  });
});

describe('[trap 27] the planning limit', () => {
  const judged = (scenario: string, start: string, faults: 'check' | 'skip') => {
    const order = WORKED_ORDERS.find(
      (each) => each.scenario === scenario && each.name.startsWith(start),
    );
    if (order === undefined) throw new Error(`no ${scenario} ${start}`);
    const { plant, start: from, steps } = order;
    return verifyOrder(ORDER_PLANT[plant], from, steps, { doubt: 'none', faults });
  };

  it('is past in S2 C and S8 B with people in their path, which the nominal limit passes', () => {
    for (const [scenario, start] of [
      ['S2', 'C,'],
      ['S8', 'B,'],
    ] as const) {
      expect(judged(scenario, start, 'skip').broken).toBeNull();
      const { broken, alsoBroken } = judged(scenario, start, 'check');
      const rules = [broken, ...alsoBroken].map((each) => each?.rule);
      expect(rules).toContain('ORD-028');
      expect(rules).toContain('ORD-029');
    }
  });

  it('is kept by S2 A, on the low stop', () => {
    expect(judged('S2', 'A,', 'check').broken).toBeNull();
  });
});
