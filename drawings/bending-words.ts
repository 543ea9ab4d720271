/** What the drawing says of bending and sag, in sentences. */

import type { BattenSolution } from '#beam';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { decimalMarkOf } from '#quantities';
import { phrase, told } from '#texts';
import type { BattenSubject } from './batten-frame.ts';
import { momentWords, roughPlaceWords, shareWords, smallLengthWords } from './batten-words.ts';

const methodWords = (method: 'plastic' | 'firstYield', house: House): string => {
  switch (method) {
    case 'plastic':
      return phrase(house, 'full plastic moment');
    case 'firstYield':
      return phrase(house, 'first yield');
    default:
      return unreachable(method);
  }
};

/** How much of what is allowed bending uses, where, and by what reckoning. */
export const utilisationWords = (
  { allowable, utilisation }: BattenSolution,
  { house, structure, isNarrow }: BattenSubject,
): string => {
  if (allowable === null || utilisation === null) {
    return phrase(house, 'How much bending the pipe may take is not known.');
  }
  const { value, x, allowed, atSplice } = utilisation;
  const place = roughPlaceWords(house, x);
  const most = momentWords(house, allowed, 'down');
  const share =
    value > 1
      ? phrase(house, 'Bending is past what is allowed: {share} of {most}', {
          share: shareWords(value),
          most,
        })
      : phrase(house, 'Bending uses {share} of the {most} allowed', {
          share: shareWords(value),
          most,
        });
  const where = atSplice ? phrase(house, ' at the splice {place}', { place }) : ` ${place}`;
  const wall =
    structure.wall === null
      ? phrase(house, 'wall not said')
      : phrase(house, '{wall} wall', { wall: told(house, structure.wall) });
  const method = phrase(house, '{method} over {factor}, {wall}', {
    method: methodWords(allowable.method, house),
    factor: `${allowable.factor}`.replace('.', decimalMarkOf(house)),
    wall,
  });
  return isNarrow ? `${share},${where}.` : `${share},${where} (${method}).`;
};

export const sagWords = ({ sag, deflection }: BattenSolution, { house }: BattenSubject): string => {
  const { max, min } = deflection;
  const place = roughPlaceWords(house, max.x);
  const lowest =
    max.value > 0
      ? phrase(house, 'lowest {smallLength} below level, {place}', {
          smallLength: smallLengthWords(house, max.value, 'up'),
          place,
        })
      : phrase(house, 'nowhere below level, least above it {smallLength}', {
          smallLength: smallLengthWords(house, min.value, 'up'),
        });
  const between =
    sag === null
      ? ''
      : phrase(house, '; sags {smallLength} at most between two lines', {
          smallLength: smallLengthWords(house, sag.value, 'up'),
        });
  return `${lowest}${between}`;
};
