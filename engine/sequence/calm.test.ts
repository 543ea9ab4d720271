import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OrderNode } from '#state';
import { calmSpans, mostFree } from './calm.ts';

const node = (heightM: number, belowN: number, aboveN = belowN): OrderNode => ({
  heightM,
  belowN,
  aboveN,
  contact: { lowN: Math.min(belowN, aboveN), highN: Math.max(belowN, aboveN) },
  doubtN: 0,
});

/** Batten heavy by 100 N over ten metres: m·g·h, with nothing else in it. */
const HEAVY = [node(0, 100), node(10, 100)];

/** From 60 N batten heavy to 40 N arbor heavy, nothing at 6 m. */
const TURNING = [node(0, 60), node(10, -40)];

describe('what could be set free', () => {
  it('is force times height where the force is one', () => {
    expect(mostFree(HEAVY)).toBeCloseTo(1000, 9);
    expect(calmSpans(HEAVY, 250)).toEqual([{ lo: 0, hi: expect.closeTo(2.5, 6) }]);
    expect(calmSpans(HEAVY, 0)).toEqual([{ lo: 0, hi: expect.closeTo(0, 6) }]);
  });

  it('is a triangle where the force turns: least at both ends, most between them', () => {
    // F = 60 h − 5 h²: 0 at the deck, 180 J at 6 m, 100 J at 10 m.
    expect(mostFree(TURNING)).toBeCloseTo(180, 9);
    const [low, high] = calmSpans(TURNING, 100);
    // 60 h − 5 h² = 100 at h = 2 and h = 10.
    expect(low).toEqual({ lo: 0, hi: expect.closeTo(2, 6) });
    expect(high).toEqual({ lo: expect.closeTo(10, 6), hi: 10 });
  });

  it('does not jump where a piece leaves the deck, as the force does', () => {
    const lifted = [node(0, -50), node(4, -50, 50), node(8, 50)];
    // F falls by 200 J to the contact and rises again.
    expect(mostFree(lifted)).toBeCloseTo(200, 9);
    expect(calmSpans(lifted, 0)).toEqual([{ lo: expect.closeTo(4, 6), hi: expect.closeTo(4, 6) }]);
    expect(calmSpans(lifted, 50)).toEqual([{ lo: expect.closeTo(3, 6), hi: expect.closeTo(5, 6) }]);
  });

  it('is everything there is at a single height', () => {
    expect(mostFree([node(3, 500)])).toBe(0);
    expect(calmSpans([node(3, 500)], 0)).toEqual([{ lo: 3, hi: 3 }]);
    expect(calmSpans([], 0)).toEqual([]);
  });

  const SEED = 40_923;
  it(`agrees with small steps along any travel (seed ${SEED})`, () => {
    const forces = fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(forces, forces, fc.integer({ min: 0, max: 900 }), (below, above, mostJ) => {
        const nodes = below.map((each, at) => node(2 * at, each, above[at] ?? each));
        const [energies, stepM] = [walked(nodes), 2 / STEPS];
        const least = Math.min(...energies);
        expect(Math.abs(mostFree(nodes) - (Math.max(...energies) - least))).toBeLessThan(NEAR_J);
        const spans = calmSpans(nodes, mostJ);
        for (const [at, energyJ] of energies.entries()) {
          const freeJ = energyJ - least;
          if (Math.abs(freeJ - mostJ) < NEAR_J) continue;
          const isIn = spans.some(
            ({ lo, hi }) => at * stepM >= lo - 1e-9 && at * stepM <= hi + 1e-9,
          );
          expect(isIn).toBe(freeJ < mostJ);
        }
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});

const STEPS = 400;
/** Trapezia are exact on straight lines; the least may lie between two of the steps. */
const NEAR_J = 0.02;

const walked = (nodes: readonly OrderNode[]): readonly number[] => {
  const energies = [0];
  let sumJ = 0;
  nodes.slice(1).forEach((to, index) => {
    const from = nodes[index];
    if (from === undefined) return;
    const lengthM = to.heightM - from.heightM;
    for (let step = 0; step < STEPS; step += 1) {
      const forceAt = (share: number) => from.aboveN + share * (to.belowN - from.aboveN);
      const meanN = (forceAt(step / STEPS) + forceAt((step + 1) / STEPS)) / 2;
      sumJ += (meanN * lengthM) / STEPS;
      energies.push(sumJ);
    }
  });
  return energies;
};
