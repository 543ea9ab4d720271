/** Writes a measure for a person: rounded to what a crew can use, always with its unit. */
import { assert } from '#outcome';
import type { Kilograms, Metres, Newtons } from './brands.ts';
import { GRAVITY, INCH, POUND } from './conversions.ts';
import {
  type Dimension,
  decimalMarkOf,
  type Reader,
  type UnitSystem,
  unitsRead,
} from './dimensions.ts';
import type { Form } from './print-forms.ts';
import { FORMS } from './print-forms.ts';
import type { Rounding } from './print-number.ts';
import { decimalText, fractionText, MINUS, NO_BREAK_SPACE, wholeSteps } from './print-number.ts';
import { findUnit } from './units.ts';

export type FormatOptions = {
  /** Loads go `up`, margins go `down`; the default is the nearest. */
  readonly round?: Rounding;
  /** `sheet` is what a crew works to; `fine` shows half pounds, sixteenths and one more digit. */
  readonly style?: 'sheet' | 'fine';
  /** How a customary length is written; 24'-6 1/2" unless told. */
  readonly customaryLength?: 'feetInches' | 'decimalFeet' | 'inches';
};

/**
 * `si` is in the SI unit of the dimension, a ratio as a fraction of one, an angle in radians.
 * `units` is the reader's system. What comes back reads again with `parseQuantity` to within the
 * rounding.
 */
export const formatQuantity = (
  dimension: Dimension,
  si: number,
  reader: Reader,
  options: FormatOptions = {},
): string => {
  const units = unitsRead(reader);
  assert(Number.isFinite(si), `a ${dimension} to print must be finite, and it is ${si}`);
  const { round = 'nearest', style = 'sheet', customaryLength = 'feetInches' } = options;
  if (units === 'customary' && dimension === 'length' && customaryLength !== 'decimalFeet') {
    const parts = style === 'fine' ? 16 : 8;
    const steps = wholeSteps((si / INCH) * parts, round);
    return customaryLength === 'inches'
      ? withUnit(fractionText(steps, parts), 'in')
      : feetAndInches(steps, parts);
  }
  if (units === 'customary' && dimension === 'mass' && style === 'fine') {
    return withUnit(fractionText(wholeSteps((si / POUND) * 2, round), 2), 'lb');
  }
  const form = formFor(dimension, si, units);
  const decimals = form[style];
  const steps = wholeSteps((si / sizeOf(dimension, form)) * 10 ** decimals, round);
  const digits = decimalText(steps, decimals).replace('.', decimalMarkOf(reader));
  return withUnit(digits, form.unit);
};

export const formatLength = (length: Metres, reader: Reader, options: FormatOptions = {}): string =>
  formatQuantity('length', length, reader, options);

export const formatMass = (mass: Kilograms, reader: Reader, options: FormatOptions = {}): string =>
  formatQuantity('mass', mass, reader, options);

export const formatForce = (force: Newtons, reader: Reader, options: FormatOptions = {}): string =>
  formatQuantity('force', force, reader, options);

export type ImbalanceOptions = {
  /** `up`, the default, is away from zero. An imbalance is a load and never rounds down. */
  readonly round?: 'nearest' | 'up';
  readonly style?: 'sheet' | 'fine';
  /** What the two sides and less than can be said are called; US English unless told. */
  readonly words?: ImbalanceWords;
};

export type ImbalanceWords = {
  readonly batten: string;
  readonly arbor: string;
  readonly under: string;
};

const US_WORDS: ImbalanceWords = { batten: 'batten heavy', arbor: 'arbor heavy', under: 'under' };

/**
 * The imbalance referred to the batten as the mass that would make it, with its side in words:
 * `12 lb arbor heavy`. Positive newtons are batten heavy. Exactly none prints `0 lb`; one that
 * `nearest` would round to nothing prints `under 1 lb batten heavy`. It never says "in balance",
 * which is for a set that somebody has pulled.
 */
export const formatImbalance = (
  imbalance: Newtons,
  reader: Reader,
  { round = 'up', style = 'sheet', words = US_WORDS }: ImbalanceOptions = {},
): string => {
  const sizeKg = Math.abs(imbalance) / GRAVITY;
  const none = withUnit('0', unitsRead(reader) === 'customary' ? 'lb' : 'kg');
  const nothing = formatQuantity('mass', 0, reader, { style });
  const largest = formatQuantity('mass', sizeKg, reader, { round: 'up', style });
  if (largest === nothing) return none;
  const side = imbalance > 0 ? words.batten : words.arbor;
  const printed = formatQuantity('mass', sizeKg, reader, { round, style });
  return `${printed === nothing ? `${words.under} ${largest}` : printed} ${side}`;
};

const formFor = (dimension: Dimension, si: number, units: UnitSystem): Form => {
  const form = FORMS[dimension][units].find((each) => Math.abs(si) < each.belowSi);
  assert(form !== undefined, `no form to print a ${dimension} of ${si}`);
  return form;
};

const sizeOf = (dimension: Dimension, form: Form): number => {
  if (form.unit === '') return 1;
  const unit = findUnit(dimension, form.unit);
  assert(unit !== undefined, `the unit ${form.unit} of a ${dimension} is not known`);
  return unit.si;
};

const withUnit = (digits: string, unit: string): string =>
  unit === '' ? digits : `${digits}${NO_BREAK_SPACE}${unit}`;

/** 2356 eighths of an inch are 24'-6 1/2"; 481 are 5'-0 1/8", whose naught keeps the two apart. */
const feetAndInches = (steps: number, parts: number): string => {
  const size = Math.abs(steps);
  const feet = Math.floor(size / (12 * parts));
  const inches = fractionText(size % (12 * parts), parts);
  const whole = /^\d+\/\d+$/.test(inches) ? `0${NO_BREAK_SPACE}` : '';
  return `${steps < 0 ? MINUS : ''}${feet}'-${whole}${inches}"`;
};
