/** Forces on steel: one unit down a whole table, so that a column can be added up by eye. */
import type { House } from '#house';
import { formatForce, NO_BREAK_SPACE, newtons, type Rounding } from '#quantities';

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
export const steelForce = (forceN: number, { units }: House, round: Rounding = 'up'): string =>
  units === 'customary'
    ? formatForce(newtons(forceN), units, { round })
    : `${(hundredthsOf(forceN, round) / HUNDREDTHS).toFixed(2)}${NO_BREAK_SPACE}kN`;

/** Of single lines and blocks, for an engineer: the nearest tenth, newtons whatever their size. */
export const lineForce = (forceN: number, { units }: House): string => {
  if (units === 'customary') {
    return formatForce(newtons(forceN), units, { style: 'fine' });
  }
  return `${forceN.toFixed(1)}${NO_BREAK_SPACE}N`;
};

export const steelUnit = ({ units }: House): string => (units === 'customary' ? 'lbf' : 'kN');
