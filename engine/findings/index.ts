export type { Finding, Level, Place } from './finding.ts';
export { LEVELS, worstLevel } from './finding.ts';
export type { Measure, MeasureKind } from './measure.ts';
export { measure } from './measure.ts';
export type { Reckoned } from './reckoned.ts';
export { blocked, reckoned } from './reckoned.ts';
export type { Term, Working } from './working.ts';
