import { type Metres, metres } from '#quantities';

/**
 * Height of the bottom of the arbor's pan when the batten is at a height.
 *
 *     z_p(h) = z_p0 − (h − h_lo) / r
 *
 *     z_p0  m  panAtLowM   pan bottom with the batten on its low stop
 *     h     m  battenM     batten height above the deck
 *     h_lo  m  lowStopM    batten height on the low stop
 *     r     -  purchase    batten travel over arbor travel, 1 or 2
 *
 * Source  inextensible lines over fixed blocks; the-job.md C1
 * Omits   stretch of the lines, which lowers the batten by millimetres, not the arbor
 * Check   VAL-HSE-01
 */
export const panHeight = ({
  panAtLowM,
  battenM,
  lowStopM,
  purchase,
}: {
  readonly panAtLowM: number;
  readonly battenM: number;
  readonly lowStopM: number;
  readonly purchase: 1 | 2;
}): Metres => metres(panAtLowM - (battenM - lowStopM) / purchase);

/**
 * Room that is left above the arbor with the batten in, and below it with the batten out (C2).
 * A set listed with the wrong purchase shows here, for its arbor would leave the building.
 *
 * Source  the-job.md C2
 * Check   VAL-HSE-06
 */
export const travelRoom = ({
  panAtLowM,
  arborLengthM,
  headBlockM,
  lowStopM,
  highStopM,
  purchase,
}: {
  readonly panAtLowM: number;
  readonly arborLengthM: number;
  readonly headBlockM: number;
  readonly lowStopM: number;
  readonly highStopM: number;
  readonly purchase: 1 | 2;
}): { readonly above: Metres; readonly below: Metres } => ({
  above: metres(headBlockM - (panAtLowM + arborLengthM)),
  below: panHeight({ panAtLowM, battenM: highStopM, lowStopM, purchase }),
});

/**
 * Travel of a mark on the hand line for a travel of the batten (C8).
 *
 * Source  the-job.md C8; reeving of the hand line, `perBatten` 1, or 0.5 on a direct double
 *         purchase
 * Check   VAL-HSE-09
 */
export const handLineTravel = (battenTravelM: number, perBatten: number): Metres =>
  metres(battenTravelM * perBatten);
