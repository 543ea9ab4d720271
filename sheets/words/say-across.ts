/** Places across the stage: by side and distance, never by sign. */

import { fromCentre } from '#drawings';
import type { House } from '#house';
import { phrase } from '#texts';

/** `SR 22'-6"`, `centre line`. */
export const sideAndDistance = (xM: number, house: House): string => {
  if (xM === 0) return phrase(house, 'centre line');
  const distance = fromCentre(xM, house);
  return xM < 0
    ? phrase(house, 'SR {distance}', { distance })
    : phrase(house, 'SL {distance}', { distance });
};

/** Lines typed in feet come back from metres with the last figure off. */
const SAME_M = 1e-9;

const isMirrored = (xs: readonly number[]): boolean =>
  xs.every((xM) => xs.some((other) => Math.abs(other + xM) <= SAME_M));

/** `centre line, 9'-0", 18'-0" each side`; where it is not alike, every place with its side. */
export const placesAcross = (xs: readonly number[], house: House): string => {
  if (xs.length === 0) return phrase(house, 'none');
  if (!isMirrored(xs)) return xs.map((xM) => sideAndDistance(xM, house)).join(', ');
  const sided = xs.filter((xM) => xM > SAME_M).map((xM) => fromCentre(xM, house));
  const centre = xs.some((xM) => Math.abs(xM) <= SAME_M) ? [phrase(house, 'centre line')] : [];
  const each =
    sided.length === 0 ? [] : [phrase(house, '{sided} each side', { sided: sided.join(', ') })];
  return [...centre, ...each].join(', ');
};
