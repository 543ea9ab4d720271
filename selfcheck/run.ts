import { CASES, type ValidationCase } from '../validation/cases.ts';
import { type CaseVerdict, judgeCase } from './judge-case.ts';
import { reportOf, type SelfCheckReport } from './report.ts';

export type SelfCheckProgress = { readonly done: number; readonly total: number };

/**
 * Runs one case a step, so that whoever drives it decides when: all at once in a terminal, between
 * requests in a server, in idle time in a browser. To leave off is to ask for no further step.
 */
export function* selfCheckSteps(
  cases: readonly ValidationCase[] = CASES,
): Generator<SelfCheckProgress, SelfCheckReport, void> {
  const total = cases.length;
  const verdicts: CaseVerdict[] = [];
  yield { done: 0, total };
  for (const one of cases) {
    verdicts.push(judgeCase(one));
    yield { done: verdicts.length, total };
  }
  return reportOf(verdicts);
}
