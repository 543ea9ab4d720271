import { imbalanceAt } from '#balance';
import { FOOT, GRAVITY } from '#quantities';
import { drawn } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { attachHeight, potentialEnergy } from '../energy.ts';
import { bareSet, drawSets } from '../random-sets.ts';

const SEED = 20_278;
const ROPE_KG_PER_M = 0.201;
const TENSION_BLOCK_M = 0.5;
const STEP_M = 0.02;

/** Mass of a plumb leg at its middle, J. */
const legJ = (lowM: number, highM: number): number => {
  if (highM <= lowM) throw new Error('a leg of the rope is upside down');
  return GRAVITY * ROPE_KG_PER_M * (highM - lowM) * ((lowM + highM) / 2);
};

/** What is left out, by energy, and the weight of the missing length of rope. */
const leftOut = () => {
  const sets = drawSets(bareSet(1), { seed: SEED, count: 40, heights: 5 });
  const lengths = drawn(({ toEnds }) => toEnds(1.2, 10 * FOOT), { seed: SEED, count: sets.length });
  return sets.flatMap(({ set: low, blocks, heights }, index) => {
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
};

export const theCase: ValidationCase = {
  id: 'VAL-BAL-18',
  title: 'What the hand line adds, which the program leaves out',
  calculation: 'balance',
  unit: 'N',
  tolerance: 6.1,
  run: () => leftOut().map(({ leftOutN }) => leftOutN),
  also: [
    {
      what: 'it is the weight of the missing length of rope, at every height alike',
      unit: 'N',
      tolerance: 2e-5,
      run: () => leftOut().map(({ leftOutN, gapN }) => Math.abs(leftOutN - gapN)),
    },
    {
      what: 'an arbor of 7 ft, as case.md prints it',
      unit: 'N',
      // Half of the last digit printed.
      tolerance: 0.05,
      run: () => [Math.abs(GRAVITY * ROPE_KG_PER_M * 7 * FOOT - 4.2)],
    },
  ],
};
