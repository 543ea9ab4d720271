/** Pairs of small random sets: every order that is found keeps the band and each set held. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, metres } from '#quantities';
import type { PairStep, Standing, Step } from '#state';
import { planned, type Task, task } from '../../../validation/sequence/small-jobs.ts';
import { faultsOf } from '../example-replay.contract.ts';
import type { OrderState } from '../types.ts';
import type { FoundPair } from './example-pairs.contract.ts';
import { planPair } from './plan-pair.ts';
import type { Pair, PairJob, PairPlan, PairState } from './types.ts';

const SEED = 270_023;
const RUNS = { seed: SEED, numRuns: 300 };

const SHARED = [{ first: 'first', second: 'first' }] as const;

const half = (least: number, most: number) =>
  fc.integer({ min: least * 2, max: most * 2 }).map((n) => (n / 2) * FOOT);

const pairs = fc
  .record({
    first: task,
    second: task,
    strikes: fc.boolean(),
    least: half(-4, 1),
    most: half(1, 4),
    trim: half(6, 16),
    apart: half(-3, 3),
    doubtShare: fc.constantFrom(0, 0, 0, 1),
    restraint: fc.constantFrom('none', 'none', 'out'),
  })
  .map(({ first, second, strikes, least, most, trim, apart, doubtShare, restraint }) => {
    const job = (id: string, each: Task, trimM: number): PairJob => {
      const { physics, start, goal } = planned({ ...each, strikes, doubtShare }, { statesMost: 1 });
      return {
        physics: { ...physics, set: id },
        start: strikes ? { ...start, height: metres(trimM) } : start,
        goal: { ...goal, height: strikes ? null : metres(trimM) },
      };
    };
    const out = Math.min(Math.max(apart, least), most);
    const pair: Pair = {
      first: job('A', first, trim),
      second: job('B', { ...second, set: withBricksOf(second, first) }, trim + out),
      shared: SHARED,
      band: { leastM: least, mostM: most },
    };
    return { pair, doubtShare, restraint } as const;
  });

/** One house: galleries and bricks are the same for both. */
const withBricksOf = ({ set }: Task, { set: other }: Task): Task['set'] => ({
  ...set,
  galleries: other.galleries,
  bricks: other.bricks,
});

type Case = typeof pairs extends fc.Arbitrary<infer T> ? T : never;

const planOf = ({ pair, doubtShare, restraint }: Case): PairPlan =>
  planPair(pair, { doubtShare, lock: 'planning', restraint });

const hasPiece = ({ items }: Standing): boolean =>
  Object.entries(items).some(
    ([id, phase]) => id === 'first' && phase !== 'away' && phase !== 'beside',
  );

const apartOf = ({ first, second }: PairState): number => second.height - first.height;

type Own = { readonly steps: readonly Step[]; readonly states: readonly OrderState[] };

/** What one set goes through: its own steps, flights of both, and zones, which are of both. */
const ownOf = ({ steps, states }: FoundPair, side: 'first' | 'second', set: string): Own => {
  const own: Step[] = [];
  const stood: Standing[] = states.slice(0, 1).map((state) => state[side]);
  steps.forEach((each, index) => {
    const state = states[index + 1]?.[side];
    if (state === undefined) return;
    const step = ownStep(each, set);
    if (step === null) return;
    own.push(step);
    stood.push(state);
  });
  return { steps: own, states: stood.map((standing) => ({ standing }) as OrderState) };
};

const ownStep = (each: PairStep, set: string): Step | null => {
  if ('together' in each) {
    const move = each.together.find((one) => one.set === set);
    return move === undefined ? null : { act: 'fly', to: move.to };
  }
  const isZone = each.step.act === 'close' || each.step.act === 'reopen';
  return each.set === set || isZone ? each.step : null;
};

describe(`orders for pairs of small sets (seed ${SEED})`, () => {
  it('keeps the band wherever a piece is on both, and each set held', () => {
    const counts = {
      found: 0,
      together: 0,
      stops: 0,
      lines: 0,
      halves: 0,
      alone: 0,
      band: 0,
      unmatched: 0,
      stopped: 0,
    };
    fc.assert(
      fc.property(pairs, (each) => {
        const plan = planOf(each);
        if ('stopped' in plan) counts.stopped += 1;
        if ('none' in plan && plan.none.why !== 'asked') counts[plan.none.why] += 1;
        if (!('found' in plan)) return;
        const { steps, states } = plan.found;
        counts.found += 1;
        const { leastM, mostM } = each.pair.band;
        let flights = 0;
        states.forEach((state, index) => {
          const step = steps[index - 1];
          if (step !== undefined && 'together' in step) flights += 1;
          if (!hasPiece(state.first) || !hasPiece(state.second)) return;
          expect(apartOf(state)).toBeGreaterThanOrEqual(leastM - 1e-6);
          expect(apartOf(state)).toBeLessThanOrEqual(mostM + 1e-6);
          // While it is on both, neither moves but by a flight of both.
          if (step !== undefined && 'set' in step) expect(step.step.act).not.toBe('fly');
        });
        expectApart(plan.found, counts);
        counts.together += flights;
        if (flights > 1) counts.stops += 1;
        const { first, second } = plan.found.restraints;
        if (first !== null || second !== null) counts.lines += 1;
        for (const [side, set] of [
          ['first', 'A'],
          ['second', 'B'],
        ] as const) {
          const own = ownOf(plan.found, side, set);
          const { physics } = each.pair[side];
          expect(faultsOf(physics, { ...FOUND, ...own }, each.doubtShare)).toEqual([]);
        }
      }),
      RUNS,
    );
    console.info(`pairs: ${JSON.stringify(counts)}`);
    expect(counts.lines).toBeGreaterThan(3);
    expect(counts.halves).toBeGreaterThan(40);
    // Every answer must come up, or the law says little.
    expect(counts.found).toBeGreaterThan(40);
    expect(counts.stops).toBeGreaterThan(10);
    expect(counts.alone).toBeGreaterThan(10);
    expect(counts.band + counts.unmatched).toBeGreaterThan(5);
  }, 120_000);
});

/** While a piece is half on nothing else is done, and one gallery is at work at a time. */
const expectApart = ({ steps, states }: FoundPair, counts: { halves: number }): void => {
  steps.forEach((step, index) => {
    const before = states[index];
    if (before === undefined || 'together' in step) return;
    const isHalf = hasPiece(before.first) !== hasPiece(before.second);
    const { act } = step.step;
    if (isHalf) counts.halves += 1;
    if (isHalf) expect(['attach', 'release', 'close', 'reopen']).toContain(act);
    if (act !== 'add' && act !== 'remove') return;
    expect(before.first.closed.filter(({ zone }) => zone === 'drop')).toHaveLength(1);
  });
};

const FOUND = { restraint: null, exposedJ: null, searched: 0, optimal: false } as const;
