import type { Allowable, At, Pipe, Splice, Utilisation } from './types.ts';

/** Safety factor of allowable strength design on bending. */
const FACTOR = 1.67;

/**
 * Moment that the pipe is allowed.
 *
 *     plastic       M = Fy · Z / 1.67     where the plastic modulus Z is given
 *     first yield   M = Fy · S / 1.67     where only the elastic modulus S is
 *
 *     Fy  Pa  yieldStrength       Z, S  m³  plasticModulus, sectionModulus
 *
 * Source  AISC 360 section F8, round sections, allowable strength design: Mn = Mp for a wall that
 *         is compact (D/t no more than 0.07·E/Fy); seen as quoted in check-values, 3.3
 * Holds   compact wall; the values of one wall, nominal or design, throughout
 * Omits   local crushing at a clamp, holes and corrosion, each of which weakens the pipe
 * Check   VAL-BEM-05
 */
export const allowableMoment = ({
  yieldStrength,
  plasticModulus,
  sectionModulus,
}: Pipe): Allowable | null => {
  if (yieldStrength === undefined) return null;
  if (plasticModulus !== undefined) {
    return { method: 'plastic', moment: (yieldStrength * plasticModulus) / FACTOR, factor: FACTOR };
  }
  if (sectionModulus === undefined) return null;
  return {
    method: 'firstYield',
    moment: (yieldStrength * sectionModulus) / FACTOR,
    factor: FACTOR,
  };
};

/** The place where bending uses the largest share of what is allowed there. */
export const utilisationOf = (
  allowable: Allowable | null,
  moments: readonly At[],
  atSplices: readonly (Splice & { readonly moment: number })[],
): Utilisation | null => {
  if (allowable === null) return null;
  const along = moments.map(({ x, value }) => ({
    x,
    value: Math.abs(value) / allowable.moment,
    allowed: allowable.moment,
    atSplice: false,
  }));
  const jointed = atSplices.map(({ x, strength, moment }) => ({
    x,
    value: Math.abs(moment) / (allowable.moment * strength),
    allowed: allowable.moment * strength,
    atSplice: true,
  }));
  return [...along, ...jointed].reduce((worst, each) => (each.value > worst.value ? each : worst));
};
