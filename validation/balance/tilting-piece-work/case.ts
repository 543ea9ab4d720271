import { carriedMass } from '#balance';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';

const SEED = 20_265;
const STEPS = 400;

type Piece = {
  readonly mass: number;
  readonly drop: number;
  readonly pick: number;
  readonly centre: number;
  readonly clearM: number;
};

const piece: Make<Piece> = ({ toEnds }) => ({
  mass: toEnds(10, 600),
  drop: toEnds(1, 9),
  pick: toEnds(0.1, 2),
  centre: toEnds(0, 1),
  clearM: toEnds(0.1, 4),
});

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

export const theCase: ValidationCase = {
  id: 'VAL-BAL-05',
  title: 'A tilting piece, by the work it takes to stand it up and lift it',
  calculation: 'balance',
  unit: 'relative',
  tolerance: 1e-11,
  run: () =>
    drawn(piece, { seed: SEED, count: 300 }).map((one) => {
      const riseM = centreHeight(one, Math.PI / 2, one.clearM) - centreHeight(one, 0, 0);
      return Math.abs(workOverG(one) / (one.mass * riseM) - 1);
    }),
};
