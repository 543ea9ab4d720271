import { type Metres, metres } from '#quantities';
import type { LineRun, Place } from './types.ts';

/** Loft block, mule blocks, head block, in the order in which the line meets them. */
export const blockPlaces = (run: LineRun): readonly Place[] => [
  { x: run.lineX, z: run.loftZ },
  ...(run.mules ?? []),
  { x: run.headX, z: run.headZ },
];

/** From the loft block to the head block, straight from block to block. */
const acrossM = (run: LineRun): number => {
  const places = blockPlaces(run);
  return places.slice(1).reduce((sumM, place, index) => {
    const before = places[index] ?? place;
    return sumM + Math.hypot(place.x - before.x, place.z - before.z);
  }, 0);
};

/**
 * Free length of a lift line: all of it that stretches.
 *
 *     ℓ = (z_L − z_e) + Σ √(Δx² + Δz²) + r·(z_H − z_t)
 *
 *     z_L, z_H  m  loftZ, headZ  where the line meets its blocks
 *     z_e       m  wireEndZ      lower end of the wire
 *     z_t       m  attachZ       where it meets the arbor
 *     Δx, Δz    m  from block to block, mule blocks among them
 *     r         -  purchase      with double purchase the arbor hangs on two legs
 *
 * It is the same at every height of the batten: what one leg gains, the other gives.
 *
 * Source  geometry; the-job.md C30, calculations.md section 3
 * Holds   lines that hang plumb from their loft blocks; the way from block to block in the plane
 *         of the batten
 * Omits   the bow of the line over each sheave and the sag of a long run (each makes it longer, so
 *         softer, by well under 1 %); a step up- or downstage between the blocks (also longer)
 * Check   VAL-LIN-04
 */
export const freeLength = (run: LineRun): Metres =>
  metres(run.loftZ - run.wireEndZ + acrossM(run) + run.purchase * (run.headZ - run.attachZ));
