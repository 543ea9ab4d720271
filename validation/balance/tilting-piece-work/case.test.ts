import fc from 'fast-check';
import { expect, it } from 'vitest';
import { carriedMass } from '#balance';
import { record } from '../../record.ts';
import { between } from '../random-sets.ts';

const SEED = 20_265;
const TOLERANCE = 1e-11;
const STEPS = 400;

const piece = fc.record({
  mass: between(10, 600),
  drop: between(1, 9),
  pick: between(0.1, 2),
  centre: between(0, 1),
  clearM: between(0.1, 4),
});
type Piece = Parameters<Parameters<typeof piece.map>[0]>[0];

/** The middle of each step, so that no step ends on a jump. */
const middles = (fromM: number, toM: number): readonly number[] =>
  Array.from({ length: STEPS }, (_, step) => fromM + ((step + 0.5) / STEPS) * (toM - fromM));

const workOverG = ({ clearM, ...sizes }: Piece): number => {
  const item = { kind: 'tipping', ...sizes } as const;
  const lifts = sizes.pick + sizes.drop;
  const over = (fromM: number, toM: number): number =>
    middles(fromM, toM).reduce((sum, heightM) => sum + carriedMass(item, heightM).massKg, 0) *
    ((toM - fromM) / STEPS);
  return over(0, sizes.pick) + over(sizes.pick, lifts) + over(lifts, lifts + clearM);
};

/** Height of the centre with the piece at an angle of the deck and its foot at a height. */
const centreHeight = ({ drop, centre }: Piece, angle: number, footM: number): number =>
  footM + centre * drop * Math.sin(angle);

it(`VAL-BAL-05 the work is the rise of the centre (seed ${SEED})`, () => {
  const errors = fc.sample(piece, { seed: SEED, numRuns: 300 }).map((one) => {
    const riseM = centreHeight(one, Math.PI / 2, one.clearM) - centreHeight(one, 0, 0);
    return Math.abs(workOverG(one) / (one.mass * riseM) - 1);
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-05', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
