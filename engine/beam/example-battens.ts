/** Battens for tests: the demo house's fifty foot tube, in its own pounds and feet. */
import { FOOT, GRAVITY, POUND } from '#quantities';
import { solveBatten } from './solve-batten.ts';
import type { BattenCase, BattenSolution, Load } from './types.ts';

const INCH = FOOT / 12;
/** N in a pound-force. */
export const POUND_FORCE = POUND * GRAVITY;
/** N·m in a pound-force foot. */
export const POUND_FOOT = POUND_FORCE * FOOT;

/** Six lines, feet from the centre line. */
export const LINES_FT = [-22.5, -13.5, -4.5, 4.5, 13.5, 22.5];

type Changes = {
  /** in, of the third line. */
  readonly thirdShort?: number;
  /** Times the bending stiffness of the tube. */
  readonly stiffer?: number;
};

/** What the design states of the demo house: tube, fittings, and lines of 78 to 123 ft. */
export const demoBatten = (
  loads: readonly Load[],
  { thirdShort = 0, stiffer = 1 }: Changes = {},
): BattenCase => ({
  pipe: {
    massPerLength: (2.72 * POUND) / FOOT,
    secondMoment: 0.31 * INCH ** 4 * stiffer,
    elasticModulus: (29e6 * POUND_FORCE) / INCH ** 2,
  },
  left: -25 * FOOT,
  right: 25 * FOOT,
  lines: LINES_FT.map((x, index) => ({
    x: x * FOOT,
    stiffness: 1.1e6 / ((100.5 + x) * FOOT),
    trim: index === 2 ? thirdShort * INCH : 0,
  })),
  loads: [...LINES_FT.map((x) => pounds(x, 5.5)), ...loads],
});

/** A point load in feet and pounds. */
export const pounds = (x: number, mass: number): Load => ({ x: x * FOOT, mass: mass * POUND });

/** Electric 1 of the demo: heads, profiles, the hanging part of the loom, and the bar cable. */
export const ELECTRIC_1: readonly Load[] = [
  ...[-20, -12, -4, 4, 12, 20].map((x) => pounds(x, 79)),
  ...[-16, -14, -10, -8, -6, -2, 2, 6, 8, 10, 14, 16].map((x) => pounds(x, 18.5)),
  pounds(-24, 74.4),
  { from: -25 * FOOT, to: 25 * FOOT, mass: 60 * POUND },
];

/** An answer where there has to be one. */
export const solved = (the: BattenCase): BattenSolution => {
  const answer = solveBatten(the);
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  if ('unstable' in answer.value) throw new Error(`unstable: ${answer.value.unstable.reason}`);
  return answer.value;
};

export const largestMoment = ({ moment }: BattenSolution): number =>
  Math.max(moment.max.value, -moment.min.value);

/** Two spans of 3 m on lines that do not stretch, 48 mm tube: hand sums come out even. */
export const twoSpans = (
  loads: readonly Load[],
  changes: Partial<BattenCase> = {},
): BattenCase => ({
  pipe: { massPerLength: 0, secondMoment: 1.289867e-7, elasticModulus: 2e11 },
  left: 0,
  right: 6,
  lines: [0, 3, 6].map((x) => ({ x, stiffness: null })),
  loads,
  ...changes,
});
