/** The units of a sheet, for its header; one system a sheet, never both. */
import type { UnitSystem } from '#quantities';

export const unitWords = (units: UnitSystem): string =>
  units === 'customary' ? 'ft, in, lb, lbf' : 'm, kg, N';

/** Forces on the hand line and masses of bricks, where a person writes the number. */
export const forceUnit = (units: UnitSystem): string => (units === 'customary' ? 'lbf' : 'N');
export const massUnit = (units: UnitSystem): string => (units === 'customary' ? 'lb' : 'kg');
export const lengthUnit = (units: UnitSystem): string => (units === 'customary' ? 'ft' : 'm');
