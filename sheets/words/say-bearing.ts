/** What carries the lines that an order rigs, and what nobody has reckoned of them. */
import type { House } from '#house';
import { type Bearing, whyNotBorne } from '#orders';
import { message } from '#texts';
import { filled } from './fill-words.ts';
import { placesAcross } from './say-across.ts';
import { whyWords } from './why-words.ts';

const BORNE = message(
  'Reckoned: batten, lift lines and blocks bear it, tied to the batten at {places}. Arbor, ' +
    'anchor, the line and what it is tied with are not reckoned.',
);

const NOT_RECKONED = message(
  'A wish and not a leave: nobody has checked batten, lift lines, blocks, arbor and anchor at ' +
    'that load.',
);

/** A finished sentence; null is an order whose restraint is no line to the batten. */
export const sayBearing = (bearing: Bearing, house: House): string => {
  const why = whyNotBorne(bearing);
  if (why !== null) return filled('NOT TO BE RIGGED: {why}.', house, { why: whyWords(why, house) });
  return bearing === null || 'needs' in bearing
    ? filled(NOT_RECKONED, house)
    : filled(BORNE, house, { places: placesAcross(bearing.at, house) });
};
