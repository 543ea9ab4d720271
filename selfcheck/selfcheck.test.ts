import { describe, expect, it } from 'vitest';
import { CASES, judgeCase, selfCheckSteps, type ValidationCase } from './index.ts';

const caseOf = (changes: Partial<ValidationCase>): ValidationCase => ({
  id: 'VAL-BAL-99',
  title: 'A case of this test',
  calculation: 'balance',
  unit: 'kg',
  tolerance: 0.5,
  run: () => [0.1, 0.25],
  ...changes,
});

const reportOf = (cases?: readonly ValidationCase[]) => {
  const steps = selfCheckSteps(cases);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
};

const rowOf = (cases: readonly ValidationCase[], name = 'balance') =>
  reportOf(cases).calculations.find(({ calculation }) => calculation === name);

describe('a case', () => {
  it('is judged by its worst error against its tolerance', () => {
    expect(judgeCase(caseOf({}))).toMatchObject({
      comparisons: 2,
      worst: { case: 'VAL-BAL-99', error: 0.25, tolerance: 0.5, unit: 'kg' },
      fault: null,
    });
  });

  it('may be as far off as its tolerance and no further', () => {
    expect(judgeCase(caseOf({ run: () => [0.5] })).fault).toBeNull();
    expect(judgeCase(caseOf({ run: () => [0.51] })).fault).toBe('0.51 kg is over 0.5 kg');
  });

  it.each([
    ['throws', () => JSON.parse('{'), /^it stopped: /],
    ['compares nothing', () => [], /compared nothing/],
    ['gives no number', () => [0.1, Number.NaN], /NaN kg/],
    ['gives an answer of the wrong kind', () => [Number.POSITIVE_INFINITY], /Infinity/],
    ['gives an error with a sign', () => [-0.1], /-0\.1/],
  ])('fails where it %s', (_, run, fault) => {
    expect(judgeCase(caseOf({ run })).fault).toMatch(fault);
  });

  it('is judged by all of its comparisons, and by the one nearest to its tolerance', () => {
    const close = { what: 'by hand', unit: 'lb', tolerance: 1, run: () => [0.9] };
    expect(judgeCase(caseOf({ also: [close] }))).toMatchObject({
      comparisons: 3,
      worst: { error: 0.9, unit: 'lb' },
      fault: null,
    });
    const over = { ...close, run: () => [1.1] };
    expect(judgeCase(caseOf({ also: [over] })).fault).toBe('by hand: 1.1 lb is over 1 lb');
  });

  it('with a tolerance of nothing takes nothing else', () => {
    expect(judgeCase(caseOf({ tolerance: 0, run: () => [0, 0] })).fault).toBeNull();
    expect(judgeCase(caseOf({ tolerance: 0, run: () => [0, 1] })).fault).not.toBeNull();
  });
});

describe('a run', () => {
  it('goes on after a case that stopped, and names it', () => {
    const stops = caseOf({
      id: 'VAL-BAL-98',
      run: () => {
        throw new Error('no curve');
      },
    });
    expect(rowOf([stops, caseOf({})])).toMatchObject({ cases: 2, comparisons: 2, failed: 1 });
    expect(reportOf([stops, caseOf({})]).failed).toEqual([
      {
        id: 'VAL-BAL-98',
        title: 'A case of this test',
        calculation: 'balance',
        fault: 'it stopped: no curve',
      },
    ]);
  });

  it('finds the worst of a calculation by its share of the tolerance, not by its size', () => {
    const near = caseOf({ id: 'VAL-BAL-97', unit: 'N', tolerance: 1e-6, run: () => [9e-7] });
    expect(rowOf([caseOf({}), near])?.worst?.case).toBe('VAL-BAL-97');
  });

  it('says how far it is after each case, and runs no further than it is asked', () => {
    let runs = 0;
    const counted = caseOf({
      run: () => {
        runs += 1;
        return [0];
      },
    });
    const steps = selfCheckSteps([counted, counted, counted]);
    expect(steps.next().value).toEqual({ done: 0, total: 3 });
    expect(steps.next().value).toEqual({ done: 1, total: 3 });
    expect(runs).toBe(1);
  });

  it('finds every case of this program within its tolerance', () => {
    const report = reportOf();
    expect(report.failed).toEqual([]);
    const run = report.calculations.reduce((sum, { cases }) => sum + cases, 0);
    expect(run).toBe(CASES.length);
    expect(run).toBeGreaterThanOrEqual(58);
  });
});
