import { type Metres, metres } from '#quantities';

/** A span of batten heights; null in its place means that there is none. */
export type HeightSpan = { readonly from: Metres; readonly to: Metres };

/** What a loader on a gallery can handle of one arbor; all metres. */
export type ReachGeometry = {
  readonly panAtLowM: number;
  readonly panThicknessM: number;
  readonly lowStopM: number;
  readonly highStopM: number;
  readonly purchase: 1 | 2;
  readonly galleryFloorM: number;
  readonly reachLowM: number;
  readonly reachHighM: number;
};

/**
 * Heights closer than this are one height: feet turned into metres and added differ in the last
 * binary place, and a window of one height must not be lost to that.
 */
const SAME_HEIGHT_M = 1e-6;

/**
 * Height of the top of the stack, where the next plate is handled (C3). When taking off, the
 * stack includes the plate to be taken; when putting on, not the one to be put.
 *
 *     z_n = z_p(h) + pan + Σ τ
 *
 * Source  the-job.md C3
 */
export const nextPlateHeight = (panM: number, panThicknessM: number, stackM: number): Metres =>
  metres(panM + panThicknessM + stackM);

/**
 * Batten heights at which a gallery reaches the next plate, cut to the travel of the set.
 *
 *     h ∈ [ h_lo + r·(z_p0 + pan + stack − z_q − e),  h_lo + r·(z_p0 + pan + stack − z_q − a) ]
 *
 *     stack  m  stackM         thickness of the plates on the arbor
 *     z_q    m  galleryFloorM  floor of the gallery
 *     a, e   m  reachLowM, reachHighM  lowest and highest plate a loader handles, above the floor
 *
 * Source  the-job.md C4, from C1 and C3
 * Holds   reachLowM <= reachHighM
 * Check   the table of reach windows of the demo house, VAL-HSE-02 and VAL-HSE-07
 */
export const reachWindow = (geometry: ReachGeometry, stackM: number): HeightSpan | null => {
  const { panAtLowM, panThicknessM, lowStopM, highStopM, purchase, galleryFloorM } = geometry;
  const plateAboveFloorM = panAtLowM + panThicknessM + stackM - galleryFloorM;
  const fromM = Math.max(lowStopM, lowStopM + purchase * (plateAboveFloorM - geometry.reachHighM));
  const toM = Math.min(highStopM, lowStopM + purchase * (plateAboveFloorM - geometry.reachLowM));
  if (fromM > toM + SAME_HEIGHT_M) return null;
  const startM = Math.min(fromM, highStopM);
  return { from: metres(startM), to: metres(Math.max(startM, toM)) };
};

/**
 * Spans of the travel that no gallery reaches (C5): no brick can be handled there.
 *
 * Source  the-job.md C5; what is left of the travel between the windows
 * Check   VAL-HSE-08
 */
export const deadBands = (
  windows: readonly (HeightSpan | null)[],
  travel: HeightSpan,
): readonly HeightSpan[] => {
  const open = windows
    .filter((window) => window !== null)
    .toSorted((one, other) => one.from - other.from);
  const bands: HeightSpan[] = [];
  let reachedM: number = travel.from;
  for (const { from, to } of [...open, { from: travel.to, to: travel.to }]) {
    if (from > reachedM + SAME_HEIGHT_M) bands.push({ from: metres(reachedM), to: from });
    reachedM = Math.max(reachedM, to);
  }
  return bands;
};
