import type { House } from '#house';
import { sayMeasure } from '#sheets';

/** A length, m, in the house's units; what nobody knows is said so. */
export const lengthWords = (lengthM: number | null, house: House): string =>
  lengthM === null ? 'unknown' : sayMeasure({ value: lengthM, kind: 'length' }, house);
