/** What can be measured, and the words for it in a message. */

export type Dimension =
  | 'length'
  | 'mass'
  | 'force'
  | 'massPerLength'
  | 'massPerArea'
  | 'energy'
  | 'duration'
  | 'speed'
  | 'pressure'
  | 'forcePerLength'
  | 'moment'
  | 'area'
  | 'sectionModulus'
  | 'secondMoment'
  | 'angle'
  | 'ratio'
  | 'count';

/** `customary` is feet, pounds and seconds as in the United States. */
export type UnitSystem = 'customary' | 'metric';

export const DIMENSION_WORDS: Readonly<Record<Dimension, string>> = {
  length: 'length',
  mass: 'mass',
  force: 'force',
  massPerLength: 'mass per length',
  massPerArea: 'mass per area',
  energy: 'energy',
  duration: 'duration',
  speed: 'speed',
  pressure: 'pressure',
  forcePerLength: 'force per length',
  moment: 'moment',
  area: 'area',
  sectionModulus: 'section modulus',
  secondMoment: 'second moment of area',
  angle: 'angle',
  ratio: 'ratio',
  count: 'count',
};

/** Between a number and its decimals. */
export type DecimalMark = '.' | ',';

/** Who reads: the units, and the mark of decimals where a language has another than a point. */
export type Reader =
  | UnitSystem
  | {
      readonly units: UnitSystem;
      readonly tongue?: { readonly decimalMark: DecimalMark } | undefined;
    };

export const unitsRead = (reader: Reader): UnitSystem =>
  typeof reader === 'string' ? reader : reader.units;

export const decimalMarkOf = (reader: Reader): DecimalMark =>
  typeof reader === 'string' ? '.' : (reader.tongue?.decimalMark ?? '.');
