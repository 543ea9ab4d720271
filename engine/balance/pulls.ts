import {
  GRAVITY,
  type Kilograms,
  kilograms,
  massToWeight,
  type Newtons,
  newtons,
} from '#quantities';

/** Friction of a set as a force at the batten, and whether it was measured or is assumed. */
export type Friction = { readonly force: Newtons; readonly measured: boolean };

/**
 * Friction until a pull test exists: a share of what hangs and a constant.
 *
 *     f = share · g · m + constant
 *
 * Source  the house's assumption (demo: 5 % of load + 4 lb); marked as assumed wherever it shows
 */
export const assumedFriction = ({
  share,
  constantN,
  hangingKg,
}: {
  readonly share: number;
  readonly constantN: number;
  readonly hangingKg: number;
}): Friction => ({
  force: newtons(share * massToWeight(kilograms(hangingKg)) + constantN),
  measured: false,
});

/**
 * Steady pull on the hand line to take a set out and to take it in.
 *
 *     F_out = (U + f) / k        F_in = (f − U) / k
 *
 *     U  N  imbalanceN  at the batten, positive batten heavy
 *     f  N  frictionN   at the batten
 *     k  -  handLinePerBatten  travel of the hand line per travel of the batten
 *
 * A negative pull means that the set goes by itself and must be checked by that much.
 *
 * Source  work on the hand line equals work at the batten; the-job.md C8, C25
 * Check   VAL-PUL-01, VAL-PUL-02
 */
export const handLinePulls = ({
  imbalanceN,
  frictionN,
  handLinePerBatten,
}: {
  readonly imbalanceN: number;
  readonly frictionN: number;
  readonly handLinePerBatten: number;
}): { readonly out: Newtons; readonly in: Newtons } => ({
  out: newtons((imbalanceN + frictionN) / handLinePerBatten),
  in: newtons((frictionN - imbalanceN) / handLinePerBatten),
});

/**
 * True imbalance and friction from two steady pulls with a gauge, out and in, at one height.
 *
 *     U = k · (F_out − F_in) / 2        f = k · (F_out + F_in) / 2
 *
 * Source  the two equations of handLinePulls solved for U and f; the-job.md C25
 * Holds   both pulls steady, same height, same friction both ways
 * Omits   a friction that differs with direction: half the difference goes into U. Block friction
 *         does differ: it makes a set read more batten heavy than it is, by a third of a per cent
 *         of what hangs with rolling and 1.5 % with plain bearings (VAL-PUL-03, VAL-PUL-04)
 * Check   VAL-PUL-01; 47 lbf out and -11 lbf in give 29 lb batten heavy and 18 lb of friction
 */
export const pullTest = ({
  outN,
  inN,
  handLinePerBatten,
}: {
  readonly outN: number;
  readonly inN: number;
  readonly handLinePerBatten: number;
}): { readonly imbalance: Newtons; readonly friction: Newtons } => ({
  imbalance: newtons((handLinePerBatten * (outN - inN)) / 2),
  friction: newtons((handLinePerBatten * (outN + inN)) / 2),
});

/**
 * The mass that an item must have for the measured imbalance to be true, all else being as listed.
 *
 *     m' = m + (U_measured − U_listed) / (g · share)
 *
 *     share  -  part of the item that hangs at the height of the test
 *
 * Source  U is linear in the mass of an item; the-job.md C25, S10
 * Holds   share > 0: an item on the deck cannot be weighed by its rope
 * Check   VAL-PUL-07
 */
export const correctedMass = ({
  listedKg,
  carriedShare,
  measuredN,
  listedN,
}: {
  readonly listedKg: number;
  readonly carriedShare: number;
  readonly measuredN: number;
  readonly listedN: number;
}): Kilograms => kilograms(listedKg + (measuredN - listedN) / (GRAVITY * carriedShare));
