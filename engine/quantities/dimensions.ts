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
