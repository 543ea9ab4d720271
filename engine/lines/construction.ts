import { INCH, type Newtons, newtons, POUND_FORCE } from '#quantities';

/** Stretch in per cent of length, for each lbf over the square of the diameter in inches. */
const STRETCH_FACTOR = {
  '7x19 galvanized': 0.000_014,
  '7x19 stainless 302': 0.000_016_2,
  '7x7 galvanized': 0.000_010_7,
  '7x7 stainless 302': 0.000_012,
  '6x19 IWRC galvanized': 0.000_013_6,
  '6x19 IWRC stainless 302': 0.000_015_7,
  '6x37 IWRC galvanized': 0.000_014_4,
  '1x19 galvanized': 0.000_006_98,
  '19x7 galvanized': 0.000_017_8,
} as const;

/** How a wire rope is laid: strands by wires, core, metal. */
export type Construction = keyof typeof STRETCH_FACTOR;

/**
 * Axial stiffness of a settled wire rope.
 *
 *     E% = W·G/D²          so EA = 100·D²/G, in lbf with D in inches
 *
 *     G  -  STRETCH_FACTOR of the construction
 *     D  m  diameterM
 *
 * Source  published: a cable maker's page on wire rope stretch. The factor printed there for 1x7 of
 *         type 302 is ten times its neighbours, surely a misprint, and left out
 * Holds   a rope that has settled, in the range of its working load. A maker's own figure for the
 *         rope goes before this
 * Check   VAL-LIN-03
 */
export const publishedAxialStiffness = (construction: Construction, diameterM: number): Newtons => {
  const diameterIn = diameterM / INCH;
  return newtons(((100 * diameterIn ** 2) / STRETCH_FACTOR[construction]) * POUND_FORCE);
};
