/** Forces on steel: one unit down a whole table, so that a column can be added up by eye. */
import type { House } from '#house';
import { formatForce, NO_BREAK_SPACE, newtons, type Rounding } from '#quantities';
import { decimals } from './say-precise.ts';

const KILONEWTON = 1000;
const HUNDREDTHS = 100;
/** A force this near to a whole hundredth of a kilonewton is one. */
const ON_STEP = 1e-9;

const hundredthsOf = (forceN: number, round: Rounding): number => {
  const steps = (forceN / KILONEWTON) * HUNDREDTHS;
  const whole = Math.round(steps);
  if (round === 'nearest' || Math.abs(steps - whole) <= ON_STEP * Math.max(1, steps)) return whole;
  return round === 'up' ? Math.ceil(steps) : Math.floor(steps);
};

/** Pounds-force, or kilonewtons whatever their size; not below nothing. */
export const steelForce = (forceN: number, house: House, round: Rounding = 'up'): string =>
  house.units === 'customary'
    ? formatForce(newtons(forceN), house, { round })
    : `${decimals(hundredthsOf(forceN, round) / HUNDREDTHS, house, 2)}${NO_BREAK_SPACE}kN`;

/** Of single lines and blocks, for an engineer: the nearest tenth, newtons whatever their size. */
export const lineForce = (forceN: number, house: House): string => {
  if (house.units === 'customary') {
    return formatForce(newtons(forceN), house, { style: 'fine' });
  }
  return `${decimals(forceN, house, 1)}${NO_BREAK_SPACE}N`;
};

export const steelUnit = ({ units }: House): string => (units === 'customary' ? 'lbf' : 'kN');
