import { type BlockFriction, type LineRun, tensionAlongRun } from '#lines';
import type { ValidationCase } from '../../form.ts';

/** A weightless line over as many blocks as there are: one loft, one head, mule blocks between. */
const over = (blocks: number): LineRun => ({
  purchase: 1,
  lineX: 0,
  headX: -10,
  loftZ: 20,
  headZ: 20,
  wireEndZ: 5,
  attachZ: 5,
  mules: Array.from({ length: blocks - 2 }, (_, index) => ({ x: -1 - index, z: 20 })),
});

const PARTS = 4;

/** What leaves the last block over what the first four parts hold up together. */
const leadFactor = (bearing?: BlockFriction['bearing'], moreBlocks = 0): number => {
  const { blocks } = tensionAlongRun({
    run: over(PARTS + moreBlocks),
    tensionN: 1,
    massPerLengthKg: 0,
    ...(bearing === undefined ? {} : { friction: { bearing, batten: 'out' } }),
  });
  const heldN = blocks.slice(0, PARTS).reduce((sumN, { before }) => sumN + before, 0);
  return (blocks.at(-1)?.after ?? Number.NaN) / heldN;
};

export const theCase: ValidationCase = {
  id: 'VAL-LIN-09',
  title: 'Lead line of a tackle over plain bearings',
  calculation: 'lines',
  unit: 'of the factor',
  tolerance: 5e-4,
  run: () => [
    Math.abs(leadFactor('plain') - 0.309),
    Math.abs(leadFactor('plain', 2) - 0.367),
    Math.abs(leadFactor('rolling') - 0.2755),
  ],
  also: [
    {
      what: '6000 lb with two more sheaves',
      unit: 'lb',
      tolerance: 2,
      run: () => [Math.abs(6000 * leadFactor('plain', 2) - 2202)],
    },
    {
      what: '6000 lb without friction',
      unit: 'lb',
      tolerance: 1e-9,
      run: () => [Math.abs(6000 * leadFactor() - 1500)],
    },
  ],
};
