/** Figures for an engineer's eye: small lengths in decimals, and how many times. */
import type { House } from '#house';
import { decimalMarkOf, INCH, NO_BREAK_SPACE } from '#quantities';
import { phrase } from '#texts';

const MILLIMETRE = 0.001;

/** A plain number with the decimal mark of the reader; as many digits as it has unless told. */
export const decimals = (value: number, house: House, digits?: number): string => {
  const text = digits === undefined ? `${value}` : value.toFixed(digits);
  return text.replace('.', decimalMarkOf(house));
};

/** A stretch or a sag, by size: `0.094 in`, `2.38 mm`. */
export const preciseLength = (lengthM: number, house: House): string =>
  house.units === 'customary'
    ? `${decimals(Math.abs(lengthM) / INCH, house, 3)}${NO_BREAK_SPACE}in`
    : `${decimals(Math.abs(lengthM) / MILLIMETRE, house, 2)}${NO_BREAK_SPACE}mm`;

/** What a turnbuckle is turned by on paper: an eighth of an inch, or a millimetre. */
export const turnStep = ({ units }: House): { readonly lengthM: number; readonly words: string } =>
  units === 'customary'
    ? { lengthM: INCH / 8, words: '1/8 in' }
    : { lengthM: MILLIMETRE, words: '1 mm' };

const TENTHS = 10;
/** A factor typed as 7.6 must not come out as 7.5. */
const HAIR = 1e-9;

/** A factor in tenths, never rounded up: 7.99 is 7.9 and not 8. */
export const timesWords = (times: number, house: House): string =>
  decimals(Math.floor(times * TENTHS * (1 + HAIR)) / TENTHS, house, 1);

/** A share as one part in so many: `1/480`; rounded down, so that a sag never looks smaller. */
export const onePartIn = (share: number, house: House): string =>
  share > 0 ? `1/${Math.floor(1 / share + HAIR)}` : phrase(house, 'none');

/** Raised figures as they are typed: the face of the sheets has no raised four. */
export const typedPowers = (words: string): string =>
  words.replaceAll('\u00B3', '^3').replaceAll('\u2074', '^4');
