import { describe, expect, it } from 'vitest';
import type { Calculation, SelfCheckRecord, SelfCheckState } from '#selfcheck';
import { openExample } from '../examples/open-example.ts';
import { ordersOf } from './example-orders.ts';
import { allSheets, failedOf, type Sheet, type SheetContext, selfCheckSheet } from './index.ts';
import { RESTS_ON } from './rests-on.ts';

const stamp = { revision: '4', printedAt: '2026-11-25T18:55:00+01:00', printedBy: 'TD' };
const example = openExample('kestlemere');
const { state: passed, installation } = example.selfCheck;

const failedIn = (calculation: Calculation): SelfCheckState => {
  if (passed.is !== 'done') throw new Error('the example is done');
  const fault = '0.02 kg is over 0.005 kg';
  const failed = [{ id: 'VAL-BAL-99', title: 'A wrong case', calculation, fault }];
  const calculations = passed.report.calculations.map((each) =>
    each.calculation === calculation ? { ...each, failed: 1 } : each,
  );
  return { ...passed, report: { calculations, failed } };
};

/** One set that is loaded and struck without a restraint, so that every kind is there. */
const orders = ordersOf(example, ['34']);

const recordOf = (state: SelfCheckState): SelfCheckRecord => ({ ...example.selfCheck, state });

const sheetsWith = (state: SelfCheckState): readonly Sheet[] => {
  const round = { findings: [], stamp, selfCheck: recordOf(state), orders };
  const context: SheetContext = { ...example, ...round };
  return allSheets(context);
};

/** Those of the ordinary case, which most of the others are held against. */
const ofPassed = sheetsWith(passed);

const saysFirst = ({ blocks: [first] }: Sheet): boolean =>
  first?.kind === 'notice' &&
  first.degree === 'danger' &&
  first.heading === 'SELF-CHECK FAILED: DO NOT WORK BY THIS' &&
  first.words.join('').includes('VAL-BAL-99');

const kindsOf = (sheets: readonly Sheet[]): ReadonlySet<string> =>
  new Set(sheets.map(({ kind }) => kind));
const kindsWith = (sheets: readonly Sheet[]): ReadonlySet<string> =>
  kindsOf(sheets.filter(saysFirst));

describe('a failed case', () => {
  it('stands before anything else on every sheet that rests on its calculation', () => {
    const kinds = kindsWith(sheetsWith(failedIn('balance')));
    expect(kinds).toContain('balance-card');
    expect(kinds).toContain('schedule');
    expect(kinds).not.toContain('take-off');
    const all = kindsOf(ofPassed);
    expect(kindsWith(sheetsWith(failedIn('quantities')))).toEqual(all);
  });

  it('of what a set sets free is on the sheets that a crew works by', () => {
    expect(kindsWith(sheetsWith(failedIn('motion')))).toEqual(
      new Set(['strike-sheet', 'loading-sheet', 'unloading-sheet', 'permit', 'briefing']),
    );
  });

  it('is on every sheet of a kind or on none of it', () => {
    for (const sheet of sheetsWith(failedIn('takeoff'))) {
      expect([sheet.id, saysFirst(sheet)]).toEqual([
        sheet.id,
        RESTS_ON[sheet.kind].includes('takeoff'),
      ]);
    }
  });

  it('is not said while nothing failed', () => {
    expect(kindsWith(ofPassed)).toEqual(new Set());
    expect(failedOf({ is: 'running', done: 1, total: 2 }, ['balance'])).toEqual([]);
  });
});

describe('the foot of a sheet', () => {
  const feetOf = (sheets: readonly Sheet[]) => sheets.map(({ footer }) => footer.cautions.at(-1));
  const feet = (state: SelfCheckState) => feetOf(sheetsWith(state));

  it('says in a few words that the self-check is not finished, or was not run', () => {
    const running = feet({ is: 'running', done: 3, total: 42 });
    expect(new Set(running)).toEqual(new Set(['Self-check not finished.']));
    expect(new Set(feet({ is: 'notRun' }))).toEqual(new Set(['Self-check not run.']));
    expect(feetOf(ofPassed).join(' ')).not.toContain('elf-check');
  });
});

describe('the report as a sheet', () => {
  const reportOf = (state: SelfCheckState): Sheet => selfCheckSheet(recordOf(state), stamp);
  const textOf = (sheet: Sheet): string => JSON.stringify([sheet.name, sheet.facts, sheet.blocks]);

  it('names version, build and platform, each calculation, and what it does not prove', () => {
    const text = textOf(reportOf(passed));
    for (const words of [
      '0.0.0',
      '0123456789ab',
      'an invented machine',
      'pull tests',
      '0.0041 kg',
      'VAL-DEMO-01',
      '18 cases within tolerance',
      '9 further cases need a development tool',
      'certifies nothing',
    ]) {
      expect(text).toContain(words);
    }
    expect(text).not.toContain('FAILED');
  });

  it('says what failed, by how much, and that nobody may work by it', () => {
    const text = textOf(reportOf(failedIn('balance')));
    expect(text).toContain('balance: 1 FAILED');
    expect(text).toContain('0.02 kg is over 0.005 kg');
    expect(text).toContain('Do not work by');
    expect(reportOf(failedIn('balance')).name).toBe('1 case FAILED');
  });

  it('is no report before the last case is run', () => {
    const running = reportOf({ is: 'running', done: 3, total: 42 });
    expect(textOf(running)).toContain('3 of 42 cases are run');
    expect(running.data).toBeNull();
    expect(textOf(reportOf({ is: 'notRun' }))).toContain('was not run');
  });

  it('has another code for another build or another result', () => {
    const codes = [
      reportOf(passed),
      reportOf(failedIn('balance')),
      selfCheckSheet(
        { ...recordOf(passed), installation: { ...installation, build: 'ff' } },
        stamp,
      ),
    ].map(({ footer }) => footer.code);
    expect(new Set(codes).size).toBe(3);
    expect(reportOf(passed).footer.code).toBe(codes[0]);
  });
});
