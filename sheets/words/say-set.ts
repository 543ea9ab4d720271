/** Short phrases about one set that several sheets share. */
import type { SetAssessment } from '#assessment';
import { tradeWord } from '#drawings';
import type { Basis, House, LineSet } from '#house';
import { unreachable } from '#outcome';
import { formatLength, formatMass, kilograms, metres } from '#quantities';
import type { TakeoffLine } from '#takeoff';

/** A mass of counted bricks: half pounds are real there, since half bricks are. */
export const brickMass = (massKg: number, house: House): string =>
  formatMass(kilograms(massKg), house.units, {
    style: house.units === 'customary' ? 'fine' : 'sheet',
    round: 'up',
  });

export const loadMass = (massKg: number, house: House): string =>
  formatMass(kilograms(massKg), house.units, { round: 'up' });

/** A stack against its rod, in inches: the tape at the arbor is read in inches. */
export const stackLength = (lengthM: number, house: House, round: 'up' | 'down' = 'up'): string =>
  formatLength(metres(lengthM), house.units, { round, customaryLength: 'inches' });

export const height = (heightM: number, house: House): string =>
  formatLength(metres(heightM), house.units);

export const kindOfSet = (lineSet: LineSet, house: House): string => {
  switch (lineSet.suspension) {
    case 'singlePurchase':
      return 'single purchase';
    case 'doublePurchase':
      return 'double purchase';
    case 'motor':
      return 'motor';
    case 'hemp':
      return 'hemp';
    case 'deadHung':
      return tradeWord(house, 'deadHung');
    default:
      return unreachable(lineSet.suspension);
  }
};

export const basisWords = (basis: Basis): string => {
  switch (basis) {
    case 'weighed':
    case 'measured':
    case 'published':
    case 'calculated':
    case 'estimated':
    case 'invented':
      return basis;
    case 'houseRule':
      return 'house rule';
    case 'commonPractice':
      return 'common practice';
    case 'assumption':
      return 'assumed';
    default:
      return unreachable(basis);
  }
};

/** Basis and source of one line of a take-off; one without either says so. */
export const takeoffSource = ({ basis, source }: TakeoffLine): string => {
  const given = source ?? '';
  if (basis === null) return given === '' ? 'no source' : given;
  return groundsWords({ basis, source: given });
};

/** Basis and source; a source that begins with its basis says it once. */
export const groundsWords = ({
  basis,
  source,
}: {
  readonly basis: Basis;
  readonly source?: string | null;
}): string => {
  const word = basisWords(basis);
  const given = source ?? '';
  if (given === '') return word;
  return given.startsWith(word) ? given : `${word}: ${given}`;
};

/** `640 lb, off by 13 lb at most`; says so where a mass or its tolerance is not known. */
export const hungWords = ({ hung }: SetAssessment, house: House): string => {
  if (!hung.known) return `not known: ${hung.needs.join('; ')}`;
  const { withoutLoom, loom, uncertainty } = hung.value;
  const doubt =
    uncertainty === null ? 'tolerance not given' : `\u00B1 ${loadMass(uncertainty, house)}`;
  const cable = loom > 0 ? `, and ${loadMass(loom, house)} of loom` : '';
  return `${loadMass(withoutLoom, house)}${cable}, ${doubt}`;
};
