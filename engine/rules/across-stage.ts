import { type Measure, measure } from '#findings';

/** Nearer than a millimetre to the centre line is on it. */
const CENTRE_M = 0.001;

/** Where along a batten: `4'-6" stage right`, `on the centre line`. */
export const acrossStage = (
  xM: number,
): { readonly distance: Measure | string; readonly side: string } =>
  Math.abs(xM) < CENTRE_M
    ? { distance: 'on', side: 'the centre line' }
    : {
        distance: measure(Math.abs(xM), 'length'),
        side: xM < 0 ? 'stage right' : 'stage left',
      };
