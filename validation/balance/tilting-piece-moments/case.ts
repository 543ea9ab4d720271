import { carriedMass } from '#balance';
import { POUND } from '#quantities';
import { drawn, type Make } from '../../draw.ts';
import type { ValidationCase } from '../../form.ts';

const SEED = 20_264;

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

type Piece = {
  readonly mass: number;
  readonly drop: number;
  readonly pick: number;
  readonly centre: number;
};
type Tilted = Piece & { readonly degrees: number };

const tilted: Make<Tilted> = ({ toEnds }) => ({
  mass: toEnds(10, 600),
  drop: toEnds(1, 9),
  pick: toEnds(0, 2),
  centre: toEnds(0.05, 0.95),
  degrees: toEnds(1, 89),
});

/** The piece of 640 lb with its centre at 0.46 of its height. */
const TOWER: Piece = { mass: 640 * POUND, drop: 6.7, pick: 0.3, centre: 0.46 };

const errorOf = ({ degrees, ...sizes }: Tilted): number => {
  const angle = (degrees * Math.PI) / 180;
  const wantedKg = pulledKg(sizes.mass, sizes.drop, sizes.centre, angle);
  const battenM = sizes.pick + at(sizes.drop, angle)[1];
  const { massKg, lowKg, highKg } = carriedMass({ kind: 'tipping', ...sizes }, battenM);
  return Math.max(...[massKg, lowKg, highKg].map((kg) => Math.abs(kg / wantedKg - 1)));
};

export const theCase: ValidationCase = {
  id: 'VAL-BAL-04',
  title: 'A tilting piece, by moments about its foot',
  calculation: 'balance',
  unit: 'relative',
  tolerance: 1e-12,
  run: () => [
    ...drawn(tilted, { seed: SEED, count: 500 }).map(errorOf),
    ...[1, 20, 45, 70, 89].map((degrees) => errorOf({ ...TOWER, degrees })),
    Math.abs(carriedMass({ kind: 'tipping', ...TOWER }, 3).massKg / POUND / 294.4 - 1),
  ],
};
