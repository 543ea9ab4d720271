/**
 * Bounds beyond which a value is a slip of the pen in any theatre there is. They are wide on
 * purpose: what is merely unusual is for the rules to ask about, with the document in hand.
 *
 * Source  common practice, no source: each is several times the largest value known of a theatre.
 */

export type Limits = {
  /** Least value in SI; a negative value is refused unless this is below zero. */
  readonly min: number;
  readonly max: number;
  /** Whether nothing is a value; a batten of no length is none. */
  readonly zero: boolean;
  /** The largest value in words, in units of both systems. */
  readonly most: string;
};

const upTo = (max: number, most: string, { zero }: { readonly zero: boolean }): Limits => ({
  min: 0,
  max,
  zero,
  most,
});
const eitherWay = (max: number, most: string): Limits => ({ min: -max, max, zero: true, most });

const SOME = { zero: false };
const NONE_OR_SOME = { zero: true };

export const HEIGHT = upTo(100, '100 m (328 ft) above the deck', NONE_OR_SOME);
/** Eyes and keep-outs may lie below the deck. */
export const LEVEL = eitherWay(100, '100 m (328 ft) above or below the deck');
export const ACROSS = eitherWay(100, '100 m (328 ft) from the centre line');
export const UPSTAGE = eitherWay(200, '200 m (656 ft) from the plaster line');
export const LENGTH = upTo(200, '200 m (656 ft)', SOME);
export const GAP = upTo(200, '200 m (656 ft)', NONE_OR_SOME);
export const MASS = upTo(50_000, '50 t (110 000 lb)', SOME);
/** Masses of which there may be none: fittings, clearances left over, a hem. */
export const MASS_OR_NONE = upTo(50_000, '50 t (110 000 lb)', NONE_OR_SOME);
export const MASS_PER_LENGTH = upTo(200, '200 kg/m (134 lb/ft)', SOME);
/** A hem may have no pipe or chain in it. */
export const MASS_PER_LENGTH_OR_NONE = upTo(200, '200 kg/m (134 lb/ft)', NONE_OR_SOME);
export const MASS_PER_AREA = upTo(500, '500 kg/m² (102 lb/ft²)', SOME);
export const AREA = upTo(10_000, '10 000 m² (108 000 ft²)', SOME);
export const FORCE = upTo(1e7, '10 MN (2 200 000 lbf)', SOME);
/** A stop that is not rated for a standing load has a rating of nothing. */
export const FORCE_OR_NONE = upTo(1e7, '10 MN (2 200 000 lbf)', NONE_OR_SOME);
export const PULL = eitherWay(1e5, '100 kN (22 500 lbf) either way');
export const PRESSURE = upTo(1e6, '1 MPa (145 psi)', SOME);
/** Wire ropes of a fly house have 0.5 to 5 MN. */
export const AXIAL_STIFFNESS = upTo(1e9, '1 GN (225 000 kip)', SOME);
/** A truss batten of some size has 10 000 cm⁴. */
export const SECOND_MOMENT = upTo(1e-3, '100 000 cm⁴ (2400 in⁴)', SOME);
export const SECTION_MODULUS = upTo(1e-2, '10 000 cm³ (610 in³)', SOME);
/** Steel has 200 GPa. */
export const ELASTIC_MODULUS = upTo(5e11, '500 GPa (72 500 ksi)', SOME);
export const STRENGTH = upTo(5e9, '5 GPa (725 ksi)', SOME);
export const CABLE = upTo(0.2, '200 mm (8 in)', SOME);
export const SHEAVE = upTo(5, '5 m (16 ft)', SOME);
/** How far a line is shorter or longer than true; a turnbuckle has a few inches. */
export const LINE_TRIM = eitherWay(2, '2 m (6.6 ft) either way');
export const FLEET_ANGLE = upTo(Math.PI / 2, '90 deg', NONE_OR_SOME);
export const FORCE_PER_LENGTH = upTo(1e6, '1 MN/m (68 500 lbf/ft)', SOME);
export const CUE_DURATION = upTo(3600, '1 h', SOME);
export const STALE_AFTER = upTo(31 * 86_400, '31 days (744 h)', SOME);
/** Locks are tested by the quarter or the year. */
export const TEST_EVERY = upTo(10 * 366 * 86_400, '3660 days', SOME);
export const SHARE = upTo(1, '100 %', NONE_OR_SOME);
/** Fullness, paint, water: what is added may be more than what was there. */
export const ADDED = upTo(5, '500 %', NONE_OR_SOME);
export const HAND_LINE = upTo(4, '4 of hand line for 1 of batten', SOME);
export const COURSES = upTo(100, '100 courses', NONE_OR_SOME);
/** Below one a thing would break under what it may carry. */
export const DESIGN_FACTOR: Limits = { ...upTo(50, '50, and not below 1', SOME), min: 1 };
export const SHEAVE_RATIO: Limits = { ...upTo(500, '500, and not below 1', SOME), min: 1 };
export const PEOPLE = upTo(20, '20 people', SOME);
export const OWNED = upTo(100_000, '100 000', NONE_OR_SOME);
export const TIES = upTo(10_000, '10 000', NONE_OR_SOME);
