import { expect, it } from 'vitest';
import { balanceCurve, imbalanceAt, slopeAt } from '#balance';
import { GRAVITY } from '#quantities';
import { record } from '../../record.ts';
import { forceByEnergy } from '../energy.ts';
import { bareSet, drawSets } from '../random-sets.ts';

const SEED = 20_261;
const TOLERANCE = 2e-5;

it(`VAL-BAL-01 U is the slope of the energy of a single purchase set (seed ${SEED})`, () => {
  const drawn = drawSets(bareSet(1), { seed: SEED, count: 200, heights: 20 });
  const errors = drawn.flatMap(({ set, blocks, heights }) =>
    heights.map((heightM) =>
      Math.abs(imbalanceAt(set, heightM) - forceByEnergy(set, blocks, heightM)),
    ),
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-01', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});

it(`VAL-BAL-01 the energy itself curves by −2·n·w·g, and so does U (seed ${SEED})`, () => {
  const drawn = drawSets(bareSet(1), { seed: SEED, count: 50, heights: 1 });
  const errors = drawn.map(({ set, blocks }) => {
    const [fromM, toM] = [set.lowStop + 1, set.highStop - 1];
    const travelM = toM - fromM;
    const changeN = forceByEnergy(set, blocks, toM) - forceByEnergy(set, blocks, fromM);
    const slope = slopeAt(balanceCurve(set), fromM) ?? Number.NaN;
    const formula = -2 * set.lines * set.lineMassPerLength * GRAVITY;
    return Math.max(Math.abs(slope * travelM - changeN), Math.abs(formula * travelM - changeN));
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-01', worst, tolerance: TOLERANCE, unit: 'N', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
