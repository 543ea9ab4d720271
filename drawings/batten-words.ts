/** Places, small lengths, tensions and moments as they are lettered along a batten. */

import type { House } from '#house';
import {
  decimalMarkOf,
  formatForce,
  formatLength,
  formatQuantity,
  INCH,
  metres,
  NO_BREAK_SPACE,
  newtons,
  type Rounding,
} from '#quantities';
import { phrase } from '#texts';

const MILLIMETRE = 1e-3;
const CENTIMETRE = 1e-2;
/** Nearer to it than half an eighth of an inch is on it. */
const ON_CENTRE_M = 0.0016;

/** A distance across the stage with its side: 4'-6" stage left. */
export const placeWords = (house: House, acrossM: number): string => {
  if (Math.abs(acrossM) < ON_CENTRE_M) return phrase(house, 'on the centre line');
  const side = acrossM < 0 ? phrase(house, 'stage right') : phrase(house, 'stage left');
  return `${formatLength(metres(Math.abs(acrossM)), house)} ${side}`;
};

/** Where something comes out of a reckoning: to an inch or a centimetre, more would be a pose. */
export const roughPlaceWords = (house: House, acrossM: number): string => {
  if (house.units === 'customary') return placeWords(house, Math.round(acrossM / INCH) * INCH);
  if (Math.abs(acrossM) < CENTIMETRE / 2) return phrase(house, 'on the centre line');
  const side = acrossM < 0 ? phrase(house, 'stage right') : phrase(house, 'stage left');
  const metresSaid = Math.abs(acrossM).toFixed(2).replace('.', decimalMarkOf(house));
  return `${metresSaid}${NO_BREAK_SPACE}m ${side}`;
};

/** A sag or a turnbuckle's throw: inches in eighths, or whole millimetres. No sign. */
export const smallLengthWords = (
  house: House,
  lengthM: number,
  round: Rounding = 'nearest',
): string => {
  const sizeM = Math.abs(lengthM);
  if (house.units === 'customary') {
    return formatLength(metres(sizeM), house, { round, customaryLength: 'inches' });
  }
  const steps = { up: Math.ceil, down: Math.floor, nearest: Math.round }[round];
  // A millimetre that binary fractions made a hair more than itself is one millimetre.
  return phrase(house, '{steps}\u00A0mm', {
    steps: steps(Number((sizeM / MILLIMETRE).toFixed(6))),
  });
};

export const tensionWords = (house: House, tensionN: number, round: Rounding = 'up'): string =>
  formatForce(newtons(tensionN), house, { round });

export const momentWords = (house: House, momentNm: number, round: Rounding = 'up'): string =>
  formatQuantity('moment', Math.abs(momentNm), house, { round });

export const shareWords = (share: number, round: Rounding = 'up'): string =>
  formatQuantity('ratio', share, 'metric', { round });
