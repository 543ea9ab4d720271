import { type Metres, metres, type NewtonsPerMetre, newtonsPerMetre } from '#quantities';

/**
 * How hard a line pulls for each metre that it is stretched.
 *
 *     k = EA / ℓ
 *
 *     EA  N  axialStiffnessN  of the rope as laid, not of steel times an area of metal
 *     ℓ   m  freeLengthM      all of the line, batten to arbor
 *
 * Source  Hooke; the-job.md C30
 * Holds   a line that has settled: a new one first grows for good by up to 1 % (constructional
 *         stretch), which is a trim and not a spring
 * Check   VAL-LIN-04: 20 m of 1/4 in 7x19 give 99.29 kN/m
 */
export const lineStiffness = ({
  axialStiffnessN,
  freeLengthM,
}: {
  readonly axialStiffnessN: number;
  readonly freeLengthM: number;
}): NewtonsPerMetre => newtonsPerMetre(axialStiffnessN / freeLengthM);

/**
 * How much longer a line is under load.
 *
 *     δ = T·ℓ / EA
 *
 * Far lines are longer and stretch more, so a loaded batten tilts away from the head blocks.
 *
 * Source  Hooke; the-job.md C35
 * Omits   the line's own weight, a few parts in a hundred of the tension (it stretches more)
 * Check   VAL-LIN-03
 */
export const lineStretch = ({
  tensionN,
  axialStiffnessN,
  lengthM,
}: {
  readonly tensionN: number;
  readonly axialStiffnessN: number;
  readonly lengthM: number;
}): Metres => metres((tensionN * lengthM) / axialStiffnessN);
