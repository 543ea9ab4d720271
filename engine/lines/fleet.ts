import { type Radians, radians } from '#quantities';

/**
 * Angle at which a line leaves the plane of its sheave.
 *
 *     φ = atan(offset / distance)
 *
 *     offset    m  offsetM    out of the plane, at the next block
 *     distance  m  distanceM  along the plane, to that block
 *
 * Source  geometry
 * Check   VAL-LIN-07
 */
export const fleetAngle = ({
  offsetM,
  distanceM,
}: {
  readonly offsetM: number;
  readonly distanceM: number;
}): Radians => radians(Math.atan2(Math.abs(offsetM), distanceM));

/** One out for so many along: what is taught for 1.5°; exactly it is 1.43°, so it errs safe. */
const FLEET_RULE = 40;

/** Feet and inches come back from metres with the last figure off. */
const ROUNDING = 1 + 1e-9;

/**
 * Whether a line keeps the taught rule of one out for forty along.
 *
 * Source  published: "Rigging Math (Made Simple)", lesson 12: at most 1.5°, or 1 in 40
 * Check   VAL-LIN-07
 */
export const keepsFleetRule = ({
  offsetM,
  distanceM,
}: {
  readonly offsetM: number;
  readonly distanceM: number;
}): boolean => Math.abs(offsetM) * FLEET_RULE <= distanceM * ROUNDING;
