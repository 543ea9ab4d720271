import fc from 'fast-check';
import { expect, it } from 'vitest';
import { imbalanceAt } from '#balance';
import { FOOT, GRAVITY } from '#quantities';
import { record } from '../../record.ts';
import { attachHeight, potentialEnergy } from '../energy.ts';
import { bareSet, between, drawSets } from '../random-sets.ts';

const SEED = 20_278;
const LEFT_OUT_N = 6.1;
const ROPE_KG_PER_M = 0.201;
const TENSION_BLOCK_M = 0.5;
const STEP_M = 0.02;

/** Mass of a plumb leg at its middle, J. */
const legJ = (lowM: number, highM: number): number => {
  expect(highM).toBeGreaterThan(lowM);
  return GRAVITY * ROPE_KG_PER_M * (highM - lowM) * ((lowM + highM) / 2);
};

it(`VAL-BAL-18 the hand line adds its missing length, at every height alike (seed ${SEED})`, () => {
  const drawn = drawSets(bareSet(1), { seed: SEED, count: 40, heights: 5 });
  const lengths = fc.sample(between(1.2, 10 * FOOT), { seed: SEED, numRuns: drawn.length });
  const leftOut = drawn.flatMap(({ set: low, blocks, heights }, index) => {
    const arborM = lengths[index] ?? Number.NaN;
    // Room for the longest arbor above the tension block when the batten is out.
    const set = { ...low, arborTopAtLow: low.arborTopAtLow + 1.9 };
    const withRopeJ = (battenM: number): number => {
      const topM = attachHeight(set, battenM);
      const front = legJ(TENSION_BLOCK_M, blocks.headM);
      const back = legJ(topM, blocks.headM) + legJ(TENSION_BLOCK_M, topM - arborM);
      return potentialEnergy(set, blocks, battenM) + front + back;
    };
    return heights.map((heightM) => {
      const byEnergyN = (withRopeJ(heightM + STEP_M) - withRopeJ(heightM - STEP_M)) / (2 * STEP_M);
      return {
        leftOutN: byEnergyN - imbalanceAt(set, heightM),
        gapN: GRAVITY * ROPE_KG_PER_M * arborM,
      };
    });
  });
  for (const { leftOutN, gapN } of leftOut) {
    expect(Math.abs(leftOutN - gapN)).toBeLessThanOrEqual(2e-5);
  }
  const worst = Math.max(...leftOut.map(({ leftOutN }) => leftOutN));
  record({ id: 'VAL-BAL-18', worst, tolerance: LEFT_OUT_N, unit: 'N', cases: leftOut.length });
  expect(GRAVITY * ROPE_KG_PER_M * 7 * FOOT).toBeCloseTo(4.2, 1);
});
