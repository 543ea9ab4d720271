/**
 * The exact factors from which every other factor of this room is made. Nothing here is rounded.
 *
 * Source  yard and pound: the international yard and pound agreement of 1959, exact by definition;
 *         standard gravity: third General Conference on Weights and Measures (1901), exact.
 * Check   VAL-QTY-04, VAL-QTY-05
 */
import type { Kilograms, Newtons } from './brands.ts';
import { kilograms, newtons } from './brands.ts';

/** m/s². The standard value, not the local one, which differs from it by up to 0.3 %. */
export const GRAVITY = 9.80665;

/** m */
export const YARD = 0.9144;
/** m, a third of a yard. */
export const FOOT = 0.3048;
/** m, a twelfth of a foot. */
export const INCH = 0.0254;
/** kg, avoirdupois. */
export const POUND = 0.45359237;
/** kg, a sixteenth of a pound. A power of two, so the division loses no digit. */
export const OUNCE = POUND / 16;
/** N, the weight of one pound at standard gravity: 4.4482216152605 N. */
export const POUND_FORCE = POUND * GRAVITY;

/** The weight of a mass at standard gravity: W = m·g, in N. */
export const massToWeight = (mass: Kilograms): Newtons => newtons(mass * GRAVITY);

/** The mass that has this weight at standard gravity: m = W/g, in kg. */
export const weightToMass = (weight: Newtons): Kilograms => kilograms(weight / GRAVITY);
