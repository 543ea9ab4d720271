/** The verdicts of a run put together, calculation by calculation. */
import { CALCULATIONS, type Calculation } from '../validation/cases.ts';
import { DEVELOPMENT_CASES } from '../validation/development-cases.ts';
import { type CaseVerdict, type Measure, worseOf } from './judge-case.ts';

export type CheckedCalculation = {
  readonly calculation: Calculation;
  readonly cases: number;
  readonly comparisons: number;
  /** Of all cases the worst error as a share of its tolerance, with the case that has it. */
  readonly worst: Measure | null;
  readonly failed: number;
  /** Cases that need a development tool: they were not run here. */
  readonly developmentOnly: number;
};

export type FailedCase = {
  readonly id: string;
  readonly title: string;
  readonly calculation: Calculation;
  readonly fault: string;
};

export type SelfCheckReport = {
  readonly calculations: readonly CheckedCalculation[];
  readonly failed: readonly FailedCase[];
};

const checked = (
  calculation: Calculation,
  verdicts: readonly CaseVerdict[],
): CheckedCalculation => ({
  calculation,
  cases: verdicts.length,
  comparisons: verdicts.reduce((sum, { comparisons }) => sum + comparisons, 0),
  worst: verdicts.reduce<Measure | null>((worst, each) => worseOf(worst, each.worst), null),
  failed: verdicts.filter(({ fault }) => fault !== null).length,
  developmentOnly: DEVELOPMENT_CASES[calculation].length,
});

export const reportOf = (verdicts: readonly CaseVerdict[]): SelfCheckReport => ({
  calculations: CALCULATIONS.map((calculation) =>
    checked(
      calculation,
      verdicts.filter((each) => each.calculation === calculation),
    ),
  ),
  failed: verdicts.flatMap(({ id, title, calculation, fault }) =>
    fault === null ? [] : [{ id, title, calculation, fault }],
  ),
});
