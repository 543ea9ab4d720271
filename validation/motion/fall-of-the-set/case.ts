import type { Releasable } from '#motion';
import { releasable } from '#motion';
import { GRAVITY } from '#quantities';
import { potentialEnergy } from '../../balance/energy.ts';
import { blocksOf } from '../../balance/random-sets.ts';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';
import { enough } from '../../unlike.ts';
import { hangingAt, hungSet, runOf } from '../random-sets.ts';

const SEED = 50_411;
const HEIGHTS = 2000;

type Let = {
  readonly found: Releasable;
  readonly startM: number;
  readonly lostJ: (heightM: number) => number;
  /** What the sums are of. */
  readonly sizeJ: number;
};

const letGo: Make<Let> = (draw) => {
  const set = hungSet(draw);
  const blocks = blocksOf(set, draw);
  const the = runOf(set, draw, false);
  const startJ = potentialEnergy(set, blocks, the.height);
  const weighsN = GRAVITY * (hangingAt(set, set.highStop) + set.carriage + set.bricks);
  return {
    found: releasable(the),
    startM: the.height,
    lostJ: (heightM) => startJ - potentialEnergy(set, blocks, heightM),
    sizeJ: weighsN * (set.highStop - set.lowStop),
  };
};

const errorsOf = ({ found, startM, lostJ, sizeJ }: Let): readonly number[] =>
  found.starts.flatMap(({ free: { most, end, contacts } }) => {
    const points = [most, end, ...contacts];
    const largest = Array.from({ length: HEIGHTS + 1 }, (_, index) =>
      lostJ(startM + ((end.height - startM) * index) / HEIGHTS),
    ).reduce((one, other) => Math.max(one, other), 0);
    return [
      ...points.map(({ height, energy }) => Math.abs(energy - lostJ(height)) / sizeJ),
      Math.max(0, largest - most.energy) / sizeJ,
    ];
  });

export const theCase: ValidationCase = {
  id: 'VAL-MOT-04',
  title: 'What is set free is the fall of the whole set',
  calculation: 'motion',
  unit: 'of weight over travel',
  tolerance: 1e-12,
  run: () => enough(drawn(letGo, { seed: SEED, count: 60 }).flatMap(errorsOf), 150),
};
