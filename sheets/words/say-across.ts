/** Places across the stage: by side and distance, never by sign. */
import { fromCentre } from '#drawings';
import type { House } from '#house';

/** `SR 22'-6"`, `centre line`. */
export const sideAndDistance = (xM: number, house: House): string => {
  if (xM === 0) return 'centre line';
  return `${xM < 0 ? 'SR' : 'SL'} ${fromCentre(xM, house)}`;
};

/** Lines typed in feet come back from metres with the last figure off. */
const SAME_M = 1e-9;

const isMirrored = (xs: readonly number[]): boolean =>
  xs.every((xM) => xs.some((other) => Math.abs(other + xM) <= SAME_M));

/** `centre line, 9'-0", 18'-0" each side`; where it is not alike, every place with its side. */
export const placesAcross = (xs: readonly number[], house: House): string => {
  if (xs.length === 0) return 'none';
  if (!isMirrored(xs)) return xs.map((xM) => sideAndDistance(xM, house)).join(', ');
  const sided = xs.filter((xM) => xM > SAME_M).map((xM) => fromCentre(xM, house));
  const centre = xs.some((xM) => Math.abs(xM) <= SAME_M) ? ['centre line'] : [];
  const each = sided.length === 0 ? [] : [`${sided.join(', ')} each side`];
  return [...centre, ...each].join(', ');
};
