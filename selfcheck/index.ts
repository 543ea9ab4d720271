export type { Calculation, ValidationCase } from '../validation/cases.ts';
export { CALCULATIONS, CASES } from '../validation/cases.ts';
export type { CaseVerdict, Measure } from './judge-case.ts';
export { judgeCase, shareOf } from './judge-case.ts';
export type { Installation, SelfCheckRecord, SelfCheckState } from './record.ts';
export type { CheckedCalculation, FailedCase, SelfCheckReport } from './report.ts';
export type { SelfCheckProgress } from './run.ts';
export { selfCheckSteps } from './run.ts';
