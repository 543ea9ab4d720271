import { balanceCurve, imbalanceAt, slopeAt } from '#balance';
import { GRAVITY } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { forceByEnergy } from '../energy.ts';
import { bareSet, drawSets } from '../random-sets.ts';

const SEED = 20_262;

/** U against the slope of the energy. */
const atHeights = (): readonly number[] =>
  drawSets(bareSet(2), { seed: SEED, count: 200, heights: 20 }).flatMap(
    ({ set, blocks, heights }) =>
      heights.map((heightM) =>
        Math.abs(imbalanceAt(set, heightM) - forceByEnergy(set, blocks, heightM)),
      ),
  );

/** The lines alone: the energy curves by -1.5·n·w·g, and so does U. */
const overTravel = (): readonly number[] =>
  drawSets(bareSet(2), { seed: SEED + 1, count: 50, heights: 1 }).map(({ set, blocks }) => {
    const [fromM, toM] = [set.lowStop + 1, set.highStop - 1];
    const travelM = toM - fromM;
    const changeN = forceByEnergy(set, blocks, toM) - forceByEnergy(set, blocks, fromM);
    const slope = slopeAt(balanceCurve(set), fromM) ?? Number.NaN;
    const formula = -1.5 * set.lines * set.lineMassPerLength * GRAVITY;
    return Math.max(Math.abs(slope * travelM - changeN), Math.abs(formula * travelM - changeN));
  });

export const theCase: ValidationCase = {
  id: 'VAL-BAL-02',
  title: 'Imbalance of a whole double purchase set, by its potential energy',
  calculation: 'balance',
  unit: 'N',
  tolerance: 2e-5,
  run: () => [...atHeights(), ...overTravel()],
};
