/**
 * Against counting through every stack, in whole grams and tenths of a millimetre, where a tie is
 * a tie and a plate is a plate.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FoundStack, StackInput, StackResult } from './stack-to-target.ts';
import { stackToTarget } from './stack-to-target.ts';

const SEED = 60_114;
const RUNS = { seed: SEED, numRuns: 400 };

/** Grams and tenths of a millimetre. */
type Whole = {
  readonly kinds: readonly {
    readonly g: number;
    readonly tenths: number;
    readonly stock: number;
  }[];
  readonly targetG: number;
  readonly carriageG: number;
  readonly rodTenths: number;
  readonly plate: {
    readonly g: number;
    readonly tenths: number;
    readonly every: number;
    readonly rule: 'floor' | 'ceil';
  } | null;
};

const kindsUpTo = (number: number, stock: number): fc.Arbitrary<Whole['kinds']> =>
  fc.array(
    fc.record({
      g: fc.integer({ min: 4, max: 60 }).map((n) => n * 250),
      tenths: fc.integer({ min: 20, max: 60 }).map((n) => n * 5),
      stock: fc.integer({ min: 0, max: stock }),
    }),
    { minLength: 1, maxLength: number },
  );

const whole: fc.Arbitrary<Whole> = fc.record({
  // Few kinds of many bricks, and many kinds, where both halves of the search are mixed.
  kinds: fc.oneof(kindsUpTo(3, 14), kindsUpTo(6, 3)),
  targetG: fc.integer({ min: 0, max: 5_000 }).map((n) => n * 50),
  carriageG: fc.integer({ min: 0, max: 400 }).map((n) => n * 125),
  rodTenths: fc.integer({ min: 0, max: 3_000 }),
  plate: fc.option(
    fc.record({
      g: fc.integer({ min: 0, max: 8 }).map((n) => n * 125),
      tenths: fc.integer({ min: 0, max: 80 }),
      every: fc.integer({ min: 150, max: 1_500 }),
      rule: fc.constantFrom('floor' as const, 'ceil' as const),
    }),
    { nil: null },
  ),
});

const inputOf = ({ kinds, targetG, carriageG, rodTenths, plate }: Whole): StackInput => ({
  target: targetG / 1000,
  carriage: carriageG / 1000,
  bricks: kinds.map(({ g, tenths, stock }, at) => ({
    id: `k${at}`,
    mass: g / 1000,
    thickness: tenths / 10_000,
    stock,
  })),
  stackHeight: rodTenths / 10_000,
  ...(plate === null
    ? {}
    : {
        spreader: {
          mass: plate.g / 1000,
          thickness: plate.tenths / 10_000,
          every: plate.every / 10_000,
          rule: plate.rule,
        },
      }),
});

type Counted = {
  readonly counts: readonly number[];
  readonly bricks: number;
  readonly errorG: number;
  readonly plates: number;
  readonly heightTenths: number;
};

const platesOf = ({ plate }: Whole, tenths: number): number => {
  if (plate === null) return 0;
  return plate.rule === 'floor'
    ? Math.floor(tenths / plate.every)
    : Math.ceil(tenths / plate.every);
};

/** Every stack that the rod takes, best first. */
const everyStack = (problem: Whole, extra = 0): readonly Counted[] => {
  let all: readonly (readonly number[])[] = [[]];
  for (const { stock } of problem.kinds) {
    const upTo = Array.from({ length: stock + extra + 1 }, (_, count) => count);
    all = all.flatMap((counts) => upTo.map((count) => [...counts, count]));
  }
  const sum = (counts: readonly number[], of: (at: number) => number): number =>
    counts.reduce((total, count, at) => total + count * of(at), 0);
  return all
    .map((counts): Counted => {
      const tenths = sum(counts, (at) => problem.kinds[at]?.tenths ?? 0);
      const plates = platesOf(problem, tenths);
      const massG =
        sum(counts, (at) => problem.kinds[at]?.g ?? 0) + plates * (problem.plate?.g ?? 0);
      return {
        counts,
        bricks: sum(counts, () => 1),
        errorG: problem.carriageG + massG - problem.targetG,
        plates,
        heightTenths: tenths + plates * (problem.plate?.tenths ?? 0),
      };
    })
    .filter(({ heightTenths }) => heightTenths <= problem.rodTenths)
    .sort((a, b) => Math.abs(a.errorG) - Math.abs(b.errorG) || a.bricks - b.bricks);
};

const found = (result: StackResult): FoundStack => {
  if ('infeasible' in result) throw new Error(`infeasible: ${result.infeasible.reason}`);
  return result;
};

const countsOf = ({ counts }: { readonly counts: Readonly<Record<string, number>> }): string =>
  Object.values(counts).join();

describe(`stackToTarget against every stack, seed ${SEED}`, () => {
  it('finds the least error, then the fewest bricks, and every stack that is as good', () => {
    fc.assert(
      fc.property(whole, (problem) => {
        const stacks = everyStack(problem);
        const result = found(stackToTarget(inputOf(problem)));
        const best = stacks[0] as Counted;
        const equal = stacks.filter(
          ({ errorG, bricks }) =>
            Math.abs(errorG) === Math.abs(best.errorG) && bricks === best.bricks,
        );
        expect(Math.abs(result.error)).toBeCloseTo(Math.abs(best.errorG) / 1000, 9);
        expect(result.bricks).toBe(best.bricks);
        expect(result.optimal).toBe(true);
        const listed = [result, ...result.alternatives.filter(({ optimal }) => optimal)];
        expect(listed).toHaveLength(equal.length);
        expect(new Set(listed.map(countsOf))).toEqual(
          new Set(equal.map(({ counts }) => counts.join())),
        );
        const next = result.alternatives.filter(({ optimal }) => !optimal);
        const nextBest = stacks.slice(equal.length, equal.length + 2);
        expect(next.map(({ bricks }) => bricks)).toEqual(nextBest.map(({ bricks }) => bricks));
        for (const [at, { errorG }] of nextBest.entries()) {
          expect(Math.abs(next[at]?.error ?? 0)).toBeCloseTo(Math.abs(errorG) / 1000, 9);
        }
      }),
      RUNS,
    );
  });

  it('measures the stack that it names: plates, height, total', () => {
    fc.assert(
      fc.property(whole, (problem) => {
        const result = found(stackToTarget(inputOf(problem)));
        const stacks = everyStack(problem);
        for (const stack of [result, ...result.alternatives]) {
          const counted = stacks.find(({ counts }) => counts.join() === countsOf(stack));
          expect(counted).toBeDefined();
          expect(stack.plates).toBe(counted?.plates);
          expect(stack.stackHeight).toBeCloseTo((counted?.heightTenths ?? 0) / 10_000, 9);
          expect(stack.error).toBeCloseTo((counted?.errorG ?? 0) / 1000, 9);
          expect(stack.platesAfter).toHaveLength(stack.plates);
          expect(stack.order.reduce((sum, { count }) => sum + count, 0)).toBe(stack.bricks);
        }
      }),
      RUNS,
    );
  });

  it('finds the fewest bricks within the tolerance, or says that there are none', () => {
    const tolerances = fc.integer({ min: 0, max: 200 }).map((n) => n * 50);
    fc.assert(
      fc.property(whole, tolerances, (problem, toleranceG) => {
        const within = everyStack(problem)
          .filter(({ errorG }) => Math.abs(errorG) <= toleranceG)
          .sort((a, b) => a.bricks - b.bricks || Math.abs(a.errorG) - Math.abs(b.errorG));
        const result = stackToTarget({ ...inputOf(problem), tolerance: toleranceG / 1000 });
        expect('infeasible' in result).toBe(within.length === 0);
        if ('infeasible' in result) return;
        const fewest = result.fewestWithinTolerance;
        expect(fewest?.bricks).toBe(within[0]?.bricks);
        expect(fewest?.optimal).toBe(true);
        expect(Math.abs(fewest?.error ?? 0)).toBeCloseTo(
          Math.abs(within[0]?.errorG ?? 0) / 1000,
          9,
        );
      }),
      RUNS,
    );
  });

  it('is no worse off with more stock or a longer rod', () => {
    fc.assert(
      fc.property(whole, fc.nat(3), fc.nat(500), (problem, moreBricks, moreTenths) => {
        const error = (given: Whole): number =>
          Math.abs(found(stackToTarget(inputOf(given))).error) - 1e-9;
        const kinds = problem.kinds.map((kind) => ({ ...kind, stock: kind.stock + moreBricks }));
        const before = Math.abs(found(stackToTarget(inputOf(problem))).error);
        expect(error({ ...problem, kinds })).toBeLessThanOrEqual(before);
        const longer = { ...problem, rodTenths: problem.rodTenths + moreTenths };
        expect(error(longer)).toBeLessThanOrEqual(before);
      }),
      RUNS,
    );
  });

  it('gives the same answer whichever way the kinds are listed', () => {
    fc.assert(
      fc.property(whole, (problem) => {
        const input = inputOf(problem);
        const forward = found(stackToTarget(input));
        const backward = found(stackToTarget({ ...input, bricks: [...input.bricks].reverse() }));
        expect(backward.counts).toEqual(forward.counts);
        expect(backward.alternatives.map(({ counts }) => counts)).toEqual(
          forward.alternatives.map(({ counts }) => counts),
        );
      }),
      RUNS,
    );
  });
});

const EXTRA_TRIED = 4;

/** Fewest bricks above the stock with which some stack lies within the tolerance; or one more. */
const fewestExtra = (problem: Whole, toleranceG: number): number =>
  everyStack(problem, EXTRA_TRIED)
    .filter(({ errorG }) => Math.abs(errorG) <= toleranceG)
    .map(({ counts }) =>
      counts.reduce((sum, n, at) => sum + Math.max(0, n - (problem.kinds[at]?.stock ?? 0)), 0),
    )
    .reduce((least, extra) => Math.min(least, extra), EXTRA_TRIED + 1);

describe(`the smallest change, seed ${SEED}`, () => {
  it('is enough, and one less is not', () => {
    const tolerances = fc.integer({ min: 0, max: 40 }).map((n) => n * 50);
    let [stock, rod, coarse] = [0, 0, 0];
    fc.assert(
      fc.property(whole, tolerances, (problem, toleranceG) => {
        const input = { ...inputOf(problem), tolerance: toleranceG / 1000 };
        const result = stackToTarget(input);
        if (!('infeasible' in result)) return;
        const { smallestChange: change } = result.infeasible;
        if (change?.moreBricks !== undefined && change.moreRod === undefined) {
          const more = Object.values(change.moreBricks).reduce((sum, count) => sum + count, 0);
          const bricks = input.bricks.map((brick) => ({
            ...brick,
            stock: brick.stock + (change.moreBricks?.[brick.id] ?? 0),
          }));
          expect(stackToTarget({ ...input, bricks })).not.toHaveProperty('infeasible');
          expect(Math.min(more, EXTRA_TRIED + 1)).toBe(fewestExtra(problem, toleranceG));
          stock += 1;
        }
        if (change?.moreRod !== undefined && change.moreBricks === undefined) {
          const fits = (rodM: number): boolean =>
            !('infeasible' in stackToTarget({ ...input, stackHeight: input.stackHeight + rodM }));
          expect(fits(change.moreRod)).toBe(true);
          expect(fits(change.moreRod - 1e-5)).toBe(false);
          rod += 1;
        }
        if (change?.tolerance !== undefined) {
          const { tolerance } = change;
          expect(stackToTarget({ ...input, tolerance })).not.toHaveProperty('infeasible');
          const less = stackToTarget({ ...input, tolerance: tolerance - 1e-4 });
          expect(less).toHaveProperty('infeasible');
          coarse += 1;
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
    expect(Math.min(stock, rod, coarse)).toBeGreaterThan(10);
  });
});
