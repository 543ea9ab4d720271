import type { Termination } from '#house';
import { unreachable } from '#outcome';
import { INCH } from '#quantities';
import type { Efficiency } from './types.ts';

const TABLE_4 = 'US Army TM 5-3810-305-10, Table 4, steel core';

/** Diameter in inches, and what a hand-tucked eye of that size leaves of the strength. */
const HAND_TUCKED: readonly (readonly [number, number])[] = [
  [1 / 4, 0.9],
  [5 / 16, 0.89],
  [3 / 8, 0.88],
  [7 / 16, 0.87],
  [1 / 2, 0.86],
  [5 / 8, 0.84],
  [3 / 4, 0.82],
];
const HAND_TUCKED_LARGER = 0.8;

/** A hair over a size is that size: a diameter typed in inches comes back from metres. */
const SIZE_SLACK = 1 + 1e-9;

/** The largest rope for which the figure of a mechanical splice is published. */
const MECHANICAL_SPLICE_MAX = 1 * INCH;

/**
 * What the end of a line leaves of the strength in the catalogue.
 *
 * Between two sizes a hand-tucked eye takes the figure of the larger, which is the lower. Where a
 * range is published (wedge socket, 75 to 95 %) the lowest is taken. Null where the table has no
 * figure: a mechanical splice on a rope over 1 in.
 *
 * Source  published: US Army TM 5-3810-305-10, Table 4, column for a steel core; hand-tucked eyes
 *         by size are from memory of the Wire Rope Users Manual (the 1/2 in one, 86 %, is in
 *         Table 4 too); a compression sleeve is from memory
 * Holds   an end made and gauged as its maker says. Rope with a steel core, as 7x19 has: on a
 *         fibre core a mechanical splice leaves 92.5 %
 * Omits   that many catalogues give 100 % for swaged sockets (this errs low), and that a German
 *         rule forbids ends made with clips: a rule of the house judges that, not this figure
 * Check   VAL-LIN-05
 */
export const terminationEfficiency = (
  termination: Termination,
  diameterM: number,
): Efficiency | null => {
  switch (termination) {
    case 'spelterSocket':
      return { value: 1, source: TABLE_4 };
    case 'swagedSocket':
      return { value: 0.95, source: TABLE_4 };
    case 'mechanicalSplice':
      return diameterM <= MECHANICAL_SPLICE_MAX * SIZE_SLACK
        ? { value: 0.95, source: `${TABLE_4}, 1 in and smaller` }
        : null;
    case 'handTuckedSplice':
      return {
        value: handTucked(diameterM / INCH),
        source: 'Wire Rope Users Manual, by size, from memory',
      };
    case 'wedgeSocket':
      return { value: 0.75, source: `${TABLE_4}, lowest of 75 to 95 %` };
    case 'compressionSleeve':
      return {
        value: 1,
        source: 'from memory: made and gauged to the instructions of its maker',
      };
    case 'clips':
      return { value: 0.8, source: TABLE_4 };
    default:
      return unreachable(termination);
  }
};

const handTucked = (diameterIn: number): number =>
  HAND_TUCKED.find(([sizeIn]) => diameterIn <= sizeIn * SIZE_SLACK)?.[1] ?? HAND_TUCKED_LARGER;

/** Sheave over rope diameter, and what is left of the catalogue strength. */
const BENDING: readonly (readonly [number, number])[] = [
  [1, 0.5],
  [2, 0.65],
  [4, 0.75],
  [6, 0.79],
  [8, 0.83],
  [10, 0.86],
  [15, 0.89],
  [20, 0.91],
  [30, 0.93],
  [40, 0.95],
];

const BENDING_SOURCE = 'published table of sheave size and wire rope strength';

/** Diameter of a sheave at the bottom of its groove over that of its line. */
export const sheaveRatio = ({
  sheaveDiameterM,
  lineDiameterM,
}: {
  readonly sheaveDiameterM: number;
  readonly lineDiameterM: number;
}): number => sheaveDiameterM / lineDiameterM;

/**
 * What bending over a sheave leaves of the strength in the catalogue, by D/d.
 *
 * Straight lines between the published points; over 40 it stays at the last one, 95 %, though a
 * larger sheave takes less. Null below 1, where the table has nothing.
 *
 * Source  published: a block maker's table, "Sheave Size & Wire Rope Strength"
 * Holds   a load at rest; how long the rope lasts is another table
 * Check   VAL-LIN-06: 1/2 in rope on a 10 in sheave, 91 %
 */
export const bendingEfficiency = (ratio: number): Efficiency | null => {
  const above = BENDING.findIndex(([at]) => ratio <= at);
  const [lastRatio, lastShare] = BENDING.at(-1) ?? [0, 0];
  if (ratio > lastRatio) {
    return { value: lastShare, source: `${BENDING_SOURCE}, its last figure (D/d ${lastRatio})` };
  }
  const [to, from] = [BENDING[above], BENDING[above - 1]];
  if (to === undefined) return null;
  if (from === undefined) return ratio === to[0] ? { value: to[1], source: BENDING_SOURCE } : null;
  const part = (ratio - from[0]) / (to[0] - from[0]);
  return { value: from[1] + part * (to[1] - from[1]), source: BENDING_SOURCE };
};

/**
 * How many times a line holds what it carries.
 *
 *     n = F_b · η_t · η_b / T
 *
 *     F_b  N  breakingN   of the catalogue
 *     η_t  -  what its end leaves of that
 *     η_b  -  what the sheave leaves of that
 *     T    N  tensionN    the largest along the line
 *
 * Null where the line carries nothing. House limits of 5, 8 and 10 are usually meant on F_b alone:
 * this asks for more rope than they do.
 *
 * Source  definition of a design factor; efficiencies multiplied, which errs low, since the end of
 *         a line does not run over a sheave
 * Check   VAL-LIN-01
 */
export const lineFactor = ({
  breakingN,
  termination,
  bending,
  tensionN,
}: {
  readonly breakingN: number;
  readonly termination: number;
  readonly bending: number;
  readonly tensionN: number;
}): number | null => (tensionN > 0 ? (breakingN * termination * bending) / tensionN : null);
