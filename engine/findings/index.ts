export type { Finding, Level, Measure, MeasureKind, Place } from './finding.ts';
export { LEVELS, measure, worstLevel } from './finding.ts';
export type { Reckoned } from './reckoned.ts';
export { blocked, reckoned } from './reckoned.ts';
export type { Term, Working } from './working.ts';
