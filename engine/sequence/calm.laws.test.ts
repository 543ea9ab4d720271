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

describe('what could be set free', () => {
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
