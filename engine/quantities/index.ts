export type {
  CubicMetres,
  Joules,
  Kilograms,
  KilogramsPerMetre,
  KilogramsPerSquareMetre,
  Metres,
  MetresPerSecond,
  MetresToTheFourth,
  NewtonMetres,
  Newtons,
  NewtonsPerMetre,
  Pascals,
  Radians,
  Seconds,
  SquareMetres,
} from './brands.ts';
export {
  cubicMetres,
  joules,
  kilograms,
  kilogramsPerMetre,
  kilogramsPerSquareMetre,
  metres,
  metresPerSecond,
  metresToTheFourth,
  newtonMetres,
  newtons,
  newtonsPerMetre,
  pascals,
  radians,
  seconds,
  squareMetres,
} from './brands.ts';
export {
  FOOT,
  GRAVITY,
  INCH,
  massToWeight,
  OUNCE,
  POUND,
  POUND_FORCE,
  weightToMass,
  YARD,
} from './conversions.ts';
export type { DecimalMark, Dimension, Reader, UnitSystem } from './dimensions.ts';
export { decimalMarkOf } from './dimensions.ts';
export type { FormatOptions, ImbalanceOptions, ImbalanceWords } from './format-quantity.ts';
export {
  formatForce,
  formatImbalance,
  formatLength,
  formatMass,
  formatQuantity,
} from './format-quantity.ts';
export type { ParseOptions, QuantityRefusal } from './parse-quantity.ts';
export { parseQuantity } from './parse-quantity.ts';
export type { Rounding } from './print-number.ts';
export { MINUS, NO_BREAK_SPACE } from './print-number.ts';
export type { RefusalCode } from './refusal-codes.ts';
export { QUANTITY_REFUSALS } from './refusal-codes.ts';
export { unitsOf } from './units.ts';
