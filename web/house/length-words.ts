import type { House } from '#house';
import { sayMeasure } from '#sheets';
import { phrase } from '#texts';

/** A length, m, in the house's units; what nobody knows is said so. */
export const lengthWords = (lengthM: number | null, house: House): string =>
  lengthM === null
    ? phrase(house, 'unknown')
    : sayMeasure({ value: lengthM, kind: 'length' }, house);
