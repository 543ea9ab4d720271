import fc from 'fast-check';
import { expect, it } from 'vitest';
import { carriedMass } from '#balance';
import { POUND } from '#quantities';
import { record } from '../../record.ts';
import { between } from '../random-sets.ts';

const SEED = 20_264;
const TOLERANCE = 1e-12;

type Vector = readonly [number, number];
const at = (lengthM: number, angle: number): Vector => [
  lengthM * Math.cos(angle),
  lengthM * Math.sin(angle),
];
/** Moment about the foot of a force at a point. */
const moment = ([x, y]: Vector, [forceX, forceY]: Vector): number => x * forceY - y * forceX;

/** Mass that the picks carry: the one pull, straight up, under which the moments vanish. */
const pulledKg = (massKg: number, dropM: number, centre: number, angle: number): number => {
  const ofWeight = moment(at(centre * dropM, angle), [0, -massKg]);
  const ofUnitPull = moment(at(dropM, angle), [0, 1]);
  return -ofWeight / ofUnitPull;
};

const piece = fc.record({
  mass: between(10, 600),
  drop: between(1, 9),
  pick: between(0, 2),
  centre: between(0.05, 0.95),
  degrees: between(1, 89),
});

it(`VAL-BAL-04 a tilting piece carries c of its weight at every angle (seed ${SEED})`, () => {
  const demo = [1, 20, 45, 70, 89].map((degrees) => ({
    ...{ mass: 640 * POUND, drop: 6.7, pick: 0.3, centre: 0.46 },
    degrees,
  }));
  const errors = [...fc.sample(piece, { seed: SEED, numRuns: 500 }), ...demo].map(
    ({ degrees, ...sizes }) => {
      const angle = (degrees * Math.PI) / 180;
      const wantedKg = pulledKg(sizes.mass, sizes.drop, sizes.centre, angle);
      const battenM = sizes.pick + at(sizes.drop, angle)[1];
      const { massKg, lowKg, highKg } = carriedMass({ kind: 'tipping', ...sizes }, battenM);
      return Math.max(...[massKg, lowKg, highKg].map((kg) => Math.abs(kg / wantedKg - 1)));
    },
  );
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-04', worst, tolerance: TOLERANCE, unit: 'relative', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});

it('VAL-BAL-04 0.46 of 640 lb is 294.4 lb', () => {
  const sizes = { mass: 640 * POUND, drop: 6.7, pick: 0.3, centre: 0.46 };
  const worst = Math.abs(carriedMass({ kind: 'tipping', ...sizes }, 3).massKg / POUND / 294.4 - 1);
  record({ id: 'VAL-BAL-04', worst, tolerance: TOLERANCE, unit: 'relative', cases: 1 });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
