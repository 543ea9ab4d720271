/** What the drawing says of bending and sag, in sentences. */
import type { BattenSolution } from '#beam';
import { unreachable } from '#outcome';
import type { BattenSubject } from './batten-frame.ts';
import { momentWords, roughPlaceWords, shareWords, smallLengthWords } from './batten-words.ts';

const methodWords = (method: 'plastic' | 'firstYield'): string => {
  switch (method) {
    case 'plastic':
      return 'full plastic moment';
    case 'firstYield':
      return 'first yield';
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
    return 'How much bending the pipe may take is not known.';
  }
  const { value, x, allowed, atSplice } = utilisation;
  const place = roughPlaceWords(house, x);
  const most = momentWords(house, allowed, 'down');
  const share =
    value > 1
      ? `Bending is past what is allowed: ${shareWords(value)} of ${most}`
      : `Bending uses ${shareWords(value)} of the ${most} allowed`;
  const where = `${atSplice ? ' at the splice' : ''} ${place}`;
  const wall = structure.wall === null ? 'wall not said' : `${structure.wall} wall`;
  const method = `${methodWords(allowable.method)} over ${allowable.factor}, ${wall}`;
  return isNarrow ? `${share},${where}.` : `${share},${where} (${method}).`;
};

export const sagWords = ({ sag, deflection }: BattenSolution, { house }: BattenSubject): string => {
  const { max, min } = deflection;
  const place = roughPlaceWords(house, max.x);
  const lowest =
    max.value > 0
      ? `lowest ${smallLengthWords(house, max.value, 'up')} below level, ${place}`
      : `nowhere below level, least above it ${smallLengthWords(house, min.value, 'up')}`;
  const between =
    sag === null
      ? ''
      : `; sags ${smallLengthWords(house, sag.value, 'up')} at most between two lines`;
  return `${lowest}${between}`;
};
