/**
 * Measures as types. A brand costs nothing at run time; it keeps a mass out of a place that asks
 * for a weight. Only the makers below give one, and they refuse what is not a finite number.
 */
import { assert } from '#outcome';

declare const unit: unique symbol;
type Branded<Unit extends string> = number & { readonly [unit]: Unit };

export type Metres = Branded<'m'>;
export type SquareMetres = Branded<'m2'>;
export type Kilograms = Branded<'kg'>;
export type Newtons = Branded<'N'>;
export type KilogramsPerMetre = Branded<'kg/m'>;
export type KilogramsPerSquareMetre = Branded<'kg/m2'>;
export type Joules = Branded<'J'>;
export type Seconds = Branded<'s'>;
export type MetresPerSecond = Branded<'m/s'>;
export type Pascals = Branded<'Pa'>;
export type NewtonsPerMetre = Branded<'N/m'>;
export type NewtonMetres = Branded<'N m'>;
export type Radians = Branded<'rad'>;
/** Second moment of area, and section modulus, of a tube. */
export type MetresToTheFourth = Branded<'m4'>;
export type CubicMetres = Branded<'m3'>;

/** Adding zero turns −0 into 0, so that no sheet can print a zero with a sign. */
const maker =
  <Quantity extends number>(name: string) =>
  (n: number): Quantity => {
    // The words are made only when they are needed: thousands of numbers pass here in a frame.
    if (!Number.isFinite(n)) assert(false, `${name} must be a finite number, and it is ${n}`);
    return (n + 0) as Quantity;
  };

export const metres = maker<Metres>('metres');
export const squareMetres = maker<SquareMetres>('square metres');
export const kilograms = maker<Kilograms>('kilograms');
export const newtons = maker<Newtons>('newtons');
export const kilogramsPerMetre = maker<KilogramsPerMetre>('kilograms per metre');
export const kilogramsPerSquareMetre = maker<KilogramsPerSquareMetre>('kilograms per square metre');
export const joules = maker<Joules>('joules');
export const seconds = maker<Seconds>('seconds');
export const metresPerSecond = maker<MetresPerSecond>('metres per second');
export const pascals = maker<Pascals>('pascals');
export const newtonsPerMetre = maker<NewtonsPerMetre>('newtons per metre');
export const newtonMetres = maker<NewtonMetres>('newton metres');
export const radians = maker<Radians>('radians');
export const metresToTheFourth = maker<MetresToTheFourth>('metres to the fourth');
export const cubicMetres = maker<CubicMetres>('cubic metres');
