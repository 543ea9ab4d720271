/** Short phrases about one set that several sheets share. */

import type { SetAssessment } from '#assessment';
import { tradeWord } from '#drawings';
import type { Basis, House, LineSet } from '#house';
import { unreachable } from '#outcome';
import { formatLength, formatMass, kilograms, metres } from '#quantities';
import type { TakeoffLine } from '#takeoff';
import { ENGLISH, message, phrase, told, type Voice } from '#texts';

/** A mass of counted bricks: half pounds are real there, since half bricks are. */
export const brickMass = (massKg: number, house: House): string =>
  formatMass(kilograms(massKg), house, {
    style: house.units === 'customary' ? 'fine' : 'sheet',
    round: 'up',
  });

export const loadMass = (massKg: number, house: House): string =>
  formatMass(kilograms(massKg), house, { round: 'up' });

/** A stack against its rod, in inches: the tape at the arbor is read in inches. */
export const stackLength = (lengthM: number, house: House, round: 'up' | 'down' = 'up'): string =>
  formatLength(metres(lengthM), house, { round, customaryLength: 'inches' });

export const height = (heightM: number, house: House): string =>
  formatLength(metres(heightM), house);

export const kindOfSet = (lineSet: LineSet, house: House): string => {
  switch (lineSet.suspension) {
    case 'singlePurchase':
      return phrase(house, 'single purchase');
    case 'doublePurchase':
      return phrase(house, 'double purchase');
    case 'motor':
      return phrase(house, 'motor');
    case 'hemp':
      return phrase(house, 'hemp');
    case 'deadHung':
      return tradeWord(house, 'deadHung');
    default:
      return unreachable(lineSet.suspension);
  }
};

const BASIS_WORDS = {
  weighed: message('weighed'),
  measured: message('measured'),
  published: message('published'),
  calculated: message('calculated'),
  estimated: message('estimated'),
  invented: message('invented'),
} as const;

export const basisWords = (basis: Basis, voice: Voice = ENGLISH): string => {
  switch (basis) {
    case 'weighed':
    case 'measured':
    case 'published':
    case 'calculated':
    case 'estimated':
    case 'invented':
      return phrase(voice, BASIS_WORDS[basis]);
    case 'houseRule':
      return phrase(voice, 'house rule');
    case 'commonPractice':
      return phrase(voice, 'common practice');
    case 'assumption':
      return phrase(voice, 'assumed');
    default:
      return unreachable(basis);
  }
};

/** Basis and source of one line of a take-off; one without either says so. */
export const takeoffSource = ({ basis, source }: TakeoffLine, house: House): string => {
  const given = source ?? '';
  if (basis === null) return given === '' ? phrase(house, 'no source') : given;
  return groundsWords({ basis, source: given }, house);
};

/** Basis and source; a source that begins with its basis says it once. */
export const groundsWords = (
  { basis, source }: { readonly basis: Basis; readonly source?: string | null },
  house: House,
): string => {
  const word = basisWords(basis, house);
  const given = source ?? '';
  if (given === '') return word;
  return given.startsWith(basisWords(basis)) ? given : `${word}: ${given}`;
};

/** `640 lb, off by 13 lb at most`; says so where a mass or its tolerance is not known. */
export const hungWords = ({ hung }: SetAssessment, house: House): string => {
  if (!hung.known) {
    return phrase(house, 'not known: {needs}', { needs: told(house, hung.needs.join('; ')) });
  }
  const { withoutLoom, loom, uncertainty } = hung.value;
  const doubt =
    uncertainty === null
      ? phrase(house, 'tolerance not given')
      : `\u00B1 ${loadMass(uncertainty, house)}`;
  const cable =
    loom > 0 ? phrase(house, ', and {loom} of loom', { loom: loadMass(loom, house) }) : '';
  return `${loadMass(withoutLoom, house)}${cable}, ${doubt}`;
};
