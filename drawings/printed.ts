/** Heights, masses and imbalances as they are lettered on a drawing of one house. */
import type { House } from '#house';
import {
  decimalMarkOf,
  FOOT,
  formatForce,
  formatImbalance,
  formatLength,
  formatMass,
  kilograms,
  metres,
  newtons,
  weightToMass,
} from '#quantities';
import { imbalanceWords as sidesOf } from '#texts';

export const heightWords = (house: House, heightM: number): string =>
  formatLength(metres(heightM), house);

/** A force at the batten as the mass that makes it, without its direction. */
export const loadWords = (house: House, forceN: number): string =>
  massWords(house, weightToMass(newtons(Math.abs(forceN))));

export const massWords = (house: House, massKg: number): string =>
  formatMass(kilograms(massKg), house, { round: 'up' });

/** Limits and margins, which never print larger than they are. */
export const limitWords = (house: House, forceN: number): string =>
  formatForce(newtons(forceN), house, { round: 'down' });

export const imbalanceWords = (house: House, imbalanceN: number): string =>
  formatImbalance(newtons(imbalanceN), house, { words: sidesOf(house) });

/** A height that a slope decides, to a foot or a tenth of a metre: more digits would be a pose. */
export const roughHeightWords = (
  house: House,
  heightM: number,
  round: 'up' | 'down' | 'nearest' = 'nearest',
): string => {
  const stepM = house.units === 'customary' ? FOOT : 0.1;
  const steps = { up: Math.ceil, down: Math.floor, nearest: Math.round }[round](heightM / stepM);
  return house.units === 'customary'
    ? `${steps} ft`
    : `${(steps / 10).toFixed(1).replace('.', decimalMarkOf(house))} m`;
};
