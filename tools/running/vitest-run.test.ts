import { describe, expect, it } from 'vitest';
import { countOf, type RunnerReport } from './vitest-run.ts';

const report: RunnerReport = {
  success: true,
  numPassedTests: 7,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [{ status: 'passed', assertionResults: [{}] }],
};

describe('the count of a run', () => {
  it('takes passed and failed from the runner', () => {
    const failed = { ...report, success: false, numFailedTests: 2 };
    expect(countOf(failed)).toEqual({ passed: 7, failed: 2, notRun: 0 });
  });

  it('counts a file that would not load as a failure', () => {
    const testResults = [{ status: 'failed', assertionResults: [] }];
    expect(countOf({ ...report, success: false, testResults }).failed).toBe(1);
  });

  it('counts an error outside any test as a failure', () => {
    expect(countOf({ ...report, success: false }).failed).toBe(1);
  });

  it('tells of tests that were not run', () => {
    expect(countOf({ ...report, numPendingTests: 1, numTodoTests: 2 }).notRun).toBe(3);
  });
});
