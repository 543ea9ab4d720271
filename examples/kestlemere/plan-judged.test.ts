/**
 * Every plan is replayed by the judge, who shares no code with the planner but the physics: load
 * and strike of all counterweight sets of the demo, then random hangs. And every plan with one
 * step left out, done twice or swapped with the next is replayed too.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type OrderOptions, type OrderVerdict, verifyOrder } from '#rules';
import type { OrderPlan } from '#sequence';
import type { OrderPhysics, Standing, Step } from '#state';
import { missedAtRest, missedOnTheWay } from './order-oracle.ts';
import { DEMO_JOBS, type PlanJob, planOf } from './plan-jobs.ts';
import { bareOn, feet, hungOn, madeUpSet, pounds, showRuns } from './plan-sets.ts';

type Asked = Pick<OrderOptions, 'doubt'>;

const judged = ({ set, start }: PlanJob, steps: readonly Step[], { doubt }: Asked) =>
  verifyOrder(set.physics, start, steps, { doubt, faults: 'check' });

const brokenIn = ({ broken, alsoBroken, refused }: OrderVerdict): readonly string[] => [
  ...(refused === null ? [] : [`step ${refused.step} cannot be replayed`]),
  ...[broken, ...alsoBroken].flatMap((each) =>
    each === null ? [] : [`${each.rule} at step ${each.step}`],
  ),
];

const stepsOf = (plan: OrderPlan): readonly Step[] | null =>
  'found' in plan ? plan.found.steps : null;

const asListed = DEMO_JOBS.map((job) => ({ job, plan: planOf(job) }));
const atWorst = DEMO_JOBS.map((job) => ({ job, plan: planOf(job, { doubtShare: 1 }) }));
const foundAtWorst = atWorst.filter(({ plan }) => 'found' in plan);
const states = (all: readonly { readonly plan: OrderPlan }[]): number =>
  all.reduce((sum, { plan }) => {
    if ('found' in plan) return sum + plan.found.searched;
    return sum + ('none' in plan ? plan.none.searched : plan.stopped.searched);
  }, 0);

describe('plans of the demo, replayed by the judge', () => {
  it(`accepts all ${asListed.length}, masses as listed (${states(asListed)} states)`, () => {
    for (const { job, plan } of asListed) {
      const steps = stepsOf(plan);
      expect(steps, `${job.name} has an order`).not.toBeNull();
      expect(brokenIn(judged(job, steps ?? [], { doubt: 'none' })), job.name).toEqual([]);
    }
  });

  it(`accepts all ${foundAtWorst.length} with every mass at its worst`, () => {
    expect(foundAtWorst.length).toBeGreaterThan(20);
    for (const { job, plan } of foundAtWorst) {
      const steps = stepsOf(plan) ?? [];
      expect(brokenIn(judged(job, steps, { doubt: 'worst' })), job.name).toEqual([]);
    }
  });

  const without = atWorst.filter(({ plan }) => 'none' in plan);
  it(`names for the other ${without.length} how well masses must be known, and no less`, () => {
    expect(without.length + foundAtWorst.length).toBe(atWorst.length);
    for (const { job, plan } of without) {
      const change = 'none' in plan ? plan.none.smallestChange : null;
      expect(change, job.name).toMatchObject({ change: 'tolerances' });
      const share = change?.change === 'tolerances' ? change.share : Number.NaN;
      expect('found' in planOf(job, { doubtShare: share }), job.name).toBe(true);
      // The search halves down to one part in 1024; that much more is too much.
      const less = planOf(job, { doubtShare: share + 2 ** -10 });
      expect(less, job.name).toMatchObject({ none: { exhaustive: true } });
    }
  });
});

/** The worst that the second look finds unheld anywhere in a replay, N. */
const missedIn = (physics: OrderPhysics, steps: readonly Step[], found: OrderVerdict): number => {
  const misses = found.states.flatMap(({ standing }, index) => {
    const before = found.states[index - 1];
    const isMove = steps[index - 1]?.act === 'fly' && before !== undefined;
    return [
      missedAtRest(physics, standing),
      isMove ? missedOnTheWay(physics, before.standing, standing) : 0,
    ];
  });
  return Math.max(...misses);
};

/** A thousandth of the largest share, and the hair by which the walk stays inside its ends. */
const NEAR_N = 3;

const changedOnce = (steps: readonly Step[]): readonly (readonly Step[])[] =>
  steps.flatMap((step, index) => {
    const next = steps[index + 1];
    return [
      steps.toSpliced(index, 1),
      steps.toSpliced(index, 0, step),
      ...(next === undefined ? [] : [steps.toSpliced(index, 2, next, step)]),
    ];
  });

const changed = asListed.flatMap(({ job, plan }) =>
  changedOnce(stepsOf(plan) ?? []).map((steps) => {
    const verdict = judged(job, steps, { doubt: 'none' });
    return { job, steps, verdict, missedN: missedIn(job.set.physics, steps, verdict) };
  }),
);
const harmless = changed.filter(({ verdict }) => brokenIn(verdict).length === 0);
const impossible = changed.filter(({ verdict }) => verdict.refused !== null);
const caught = changed.filter(({ verdict }) => verdict.broken !== null);
const loose = changed.filter(({ missedN }) => missedN > NEAR_N);

describe(`those plans with one step changed: ${changed.length}`, () => {
  it(`passes ${harmless.length}, and a second look shows that they let nothing go`, () => {
    expect(harmless.length).toBeGreaterThan(100);
    for (const { job, missedN } of harmless) expect(missedN, job.name).toBeLessThan(NEAR_N);
  });

  it(`catches ${caught.length}, all ${loose.length} loose; ${impossible.length} cannot be`, () => {
    expect(loose.length).toBeGreaterThan(100);
    for (const { job, verdict, missedN } of loose) {
      expect(brokenIn(verdict), `${job.name} misses ${missedN} N`).not.toEqual([]);
    }
  });
});

const SEED = 20_261_128;

const someHang = fc.record({
  set: fc.constantFrom('5', '17', 'D2'),
  masses: fc.array(fc.integer({ min: 15, max: 260 }), { minLength: 1, maxLength: 3 }),
  off: fc.integer({ min: -1, max: 1 }),
  trimFt: fc.integer({ min: 20, max: 58 }),
  lockLb: fc.integer({ min: 30, max: 80 }),
  reachFt: fc.integer({ min: 3, max: 7 }),
  isStrike: fc.boolean(),
  isDoubted: fc.boolean(),
});
type Hang = typeof someHang extends fc.Arbitrary<infer T> ? T : never;

const randomJob = (hang: Hang): PlanJob => {
  const { set: id, masses, off, trimFt, lockLb, reachFt, isStrike } = hang;
  const items = masses.map((massLb, at) => ({ id: `i${at}`, massLb, dropFt: 3, pickFt: 0 }));
  const set = madeUpSet({ set: id, trimFt, items });
  const physics: OrderPhysics = {
    ...set.physics,
    lockLimitN: pounds(lockLb),
    galleries: set.physics.galleries.map((each) => ({
      ...each,
      reachToM: each.floorM + feet(reachFt),
    })),
  };
  const hungLb = masses.reduce((sum, mass) => sum + mass, 0);
  const full = Math.max(0, Math.round((hungLb * set.physics.purchase) / 25) + off);
  const all = (wanted: 'on' | 'away') =>
    Object.fromEntries(set.items.map((item) => [item, wanted]));
  const start: Standing = isStrike ? hungOn(set, trimFt, showRuns(full, 0)) : bareOn(set, 3);
  return {
    name: JSON.stringify(hang),
    set: { ...set, physics },
    start,
    goal: {
      items: all(isStrike ? 'away' : 'on'),
      bricks: isStrike ? {} : { F: full },
      height: isStrike ? null : feet(trimFt),
      service: 'in',
    },
  };
};

describe('plans of random hangs, locks and galleries', () => {
  it(`are accepted by the judge, every one that is found (seed ${SEED})`, () => {
    const tally = { found: 0, none: 0, stopped: 0, restrained: 0, broken: 0 };
    fc.assert(
      fc.property(someHang, (hang) => {
        const job = randomJob(hang);
        const plan = planOf(job, { doubtShare: hang.isDoubted ? 1 : 0, statesMost: 20_000 });
        if (!('found' in plan)) {
          tally['none' in plan ? 'none' : 'stopped'] += 1;
          return;
        }
        tally.found += 1;
        if (plan.found.restraint !== null) tally.restrained += 1;
        const verdict = judged(job, plan.found.steps, {
          doubt: hang.isDoubted ? 'worst' : 'none',
        });
        expect(brokenIn(verdict)).toEqual([]);
      }),
      { seed: SEED, numRuns: 100 },
    );
    expect(tally.found).toBeGreaterThan(40);
    expect(tally.restrained).toBeGreaterThan(4);
    console.info(`random hangs: ${JSON.stringify(tally)}`);
  });
});
