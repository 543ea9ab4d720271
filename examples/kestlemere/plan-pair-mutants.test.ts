/**
 * Every order for a pair with one step left out, done twice, or swapped with the next, on the
 * header pair and on pairs made up at random: each that lets anything go is caught, and each that
 * passes is shown by a second look to let nothing go.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pair, PairPlan } from '#sequence';
import {
  askPair,
  type FoundPair,
  judgedPair,
  mustPair,
  type PairCase,
  pairFor,
  pairMisses,
} from './plan-pair-asked.ts';
import { hungSet, madeUpSet } from './plan-sets.ts';

const SEED = 23_027;

type Steps = FoundPair['steps'];

const mutantsOf = (steps: Steps): readonly { readonly name: string; readonly steps: Steps }[] =>
  steps.flatMap((step, index) => {
    const next = steps[index + 1];
    return [
      { name: `step ${index} left out`, steps: steps.toSpliced(index, 1) },
      { name: `step ${index} done twice`, steps: steps.toSpliced(index, 0, step) },
      ...(next === undefined
        ? []
        : [{ name: `step ${index} swapped`, steps: steps.toSpliced(index, 2, next, step) }]),
    ];
  });

type Counts = { broken: number; refused: number; harmless: number };

const LOCKS = ['nominal', 'planning'] as const;
const WORKS = ['load', 'strike'] as const;

type Asked = {
  readonly name: string;
  readonly pair: Pair;
  readonly lock: (typeof LOCKS)[number];
  readonly plan: PairPlan;
};

const askedOf = (each: PairCase): readonly Asked[] =>
  WORKS.flatMap((work) =>
    LOCKS.map((lock) => {
      const pair = pairFor(each, work);
      return { name: `${work}, ${lock}`, pair, lock, plan: askPair(pair, lock) };
    }),
  );

/** Replays every mutant of what was found, and counts what became of it. */
const replay = ({ name: of, pair, lock, plan }: Asked, counts: Counts): void => {
  if (!('found' in plan)) return;
  for (const { name, steps } of mutantsOf(plan.found.steps)) {
    const verdict = judgedPair(pair, steps, lock);
    if (verdict.refused !== null) counts.refused += 1;
    else if (verdict.broken !== null) counts.broken += 1;
    else {
      counts.harmless += 1;
      expect(pairMisses(pair, steps, verdict), `${of}, ${name}`).toEqual([]);
    }
  }
};

const HEADER: PairCase = {
  laden: [
    { set: hungSet('23'), full: 9, half: 1, outFt: 52 },
    { set: hungSet('27'), full: 8, half: 0, outFt: 57.5 },
  ],
  bandFt: [-1, 6.5],
};

describe('orders for the header pair with one step changed', () => {
  const counts: Counts = { broken: 0, refused: 0, harmless: 0 };
  for (const asked of askedOf(HEADER)) replay(asked, counts);

  it(`catches or shows harmless: ${JSON.stringify(counts)}`, () => {
    expect(counts.broken).toBeGreaterThan(20);
    expect(counts.refused).toBeGreaterThan(4);
    expect(counts.harmless).toBeGreaterThan(10);
  });

  it('catches whatever the second look finds', () => {
    let loose = 0;
    for (const work of WORKS) {
      const pair = pairFor(HEADER, work);
      for (const { name, steps } of mutantsOf(mustPair(askPair(pair, 'nominal')).steps)) {
        const verdict = judgedPair(pair, steps, 'nominal');
        if (verdict.refused !== null) continue;
        if (pairMisses(pair, steps, verdict).length === 0) continue;
        loose += 1;
        expect(verdict.broken, name).not.toBeNull();
      }
    }
    expect(loose).toBeGreaterThan(3);
  });
});

const massLb = fc.integer({ min: 4, max: 36 }).map((n) => 10 * n);
const shares = fc.record({
  massLb,
  dropFt: fc.constantFrom(1, 4, 8),
  outFt: fc.integer({ min: 30, max: 54 }),
  half: fc.constantFrom(0, 1),
});
const pairs = fc.record({
  first: shares,
  second: shares,
  apartFt: fc.integer({ min: -3, max: 6 }),
  slackFt: fc.constantFrom(0.5, 1, 3),
});

type Share = typeof shares extends fc.Arbitrary<infer T> ? T : never;

const ladenOf = (id: string, { massLb: mass, dropFt, outFt, half }: Share) => ({
  set: madeUpSet({
    set: id,
    trimFt: outFt,
    items: [{ id: 'header', massLb: mass, dropFt, pickFt: 1 }],
  }),
  full: Math.max(0, Math.round((mass + 15) / 25) - half),
  half,
  outFt,
});

describe(`orders for pairs made up at random (seed ${SEED})`, () => {
  it('is accepted by the judge as found, and with one step changed caught or harmless', () => {
    const counts: Counts = { broken: 0, refused: 0, harmless: 0 };
    const plans = { found: 0, none: 0 };
    const see = ({ pair, lock, plan }: Asked): void => {
      if ('found' in plan) {
        plans.found += 1;
        const verdict = judgedPair(pair, plan.found.steps, lock);
        expect(verdict).toMatchObject({ broken: null, refused: null });
        expect(pairMisses(pair, plan.found.steps, verdict)).toEqual([]);
      } else plans.none += 1;
    };
    fc.assert(
      fc.property(pairs, ({ first, second, apartFt, slackFt }) => {
        const outFt = Math.min(60, Math.max(20, first.outFt + apartFt));
        const each: PairCase = {
          laden: [ladenOf('17', first), ladenOf('21', { ...second, outFt })],
          bandFt: [
            Math.min(0, outFt - first.outFt) - slackFt,
            Math.max(0, outFt - first.outFt) + slackFt,
          ],
        };
        for (const asked of askedOf(each)) {
          see(asked);
          replay(asked, counts);
        }
      }),
      { seed: SEED, numRuns: 12 },
    );
    console.info(`pairs made up: ${JSON.stringify({ ...plans, ...counts })}`);
    expect(plans.found).toBeGreaterThan(10);
    expect(counts.broken).toBeGreaterThan(100);
    expect(counts.harmless).toBeGreaterThan(50);
  }, 120_000);
});
