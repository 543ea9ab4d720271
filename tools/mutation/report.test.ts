import { describe, expect, it } from 'vitest';
import { allFolders, foldersIn, isMutated } from './folders.ts';
import { type LookedAt, readLookedAt } from './looked-at.ts';
import { merged, notLookedAt, reportText, talliesIn } from './report.ts';
import { scoreOf, survivorsOf, type Tally, type ToolReport, tallyOf } from './result.ts';

const SOURCE = ['const one = 1;', 'const two = one +', '  2;', 'export { two };'].join('\n');

const mutant = (status: string, line = 1, column = 13) => ({
  status,
  mutatorName: 'x',
  replacement: '0',
  location: { start: { line, column }, end: { line, column: column + 1 } },
});

const reportOf = (...mutants: ToolReport['files'][string]['mutants']): ToolReport => ({
  files: { 'engine/rules/one.ts': { source: SOURCE, mutants } },
});

const tally = (folder: string, killed: number, survived: number): Tally => ({
  folder,
  mutants: killed + survived,
  killed,
  timeouts: 0,
  survived,
  noCoverage: 0,
});

describe('the tool’s report', () => {
  it('is counted by status; what did not load counts neither way', () => {
    const report = reportOf(
      mutant('Killed'),
      mutant('Killed'),
      mutant('Timeout'),
      mutant('Survived'),
      mutant('NoCoverage'),
      mutant('CompileError'),
      mutant('Ignored'),
    );
    expect(tallyOf('engine/rules', report)).toEqual({
      folder: 'engine/rules',
      mutants: 5,
      killed: 2,
      timeouts: 1,
      survived: 1,
      noCoverage: 1,
    });
    expect(scoreOf(tallyOf('engine/rules', report))).toBe(60);
    expect(scoreOf(tallyOf('engine/rules', reportOf()))).toBeNull();
  });

  it('gives the code of a survivor on one line, wherever it ends', () => {
    const over = {
      ...mutant('Survived'),
      location: { start: { line: 2, column: 13 }, end: { line: 3, column: 4 } },
    };
    expect(survivorsOf(reportOf(mutant('Killed'), mutant('NoCoverage'), over))).toEqual([
      { file: 'engine/rules/one.ts', line: 1, on: 'const one = 1;', code: '1', becomes: '0' },
      {
        file: 'engine/rules/one.ts',
        line: 2,
        on: 'const two = one +',
        code: 'one + 2',
        becomes: '0',
      },
    ]);
  });

  it('leaves out the survivors that somebody has looked at', () => {
    const survivors = survivorsOf(reportOf(mutant('Survived'), mutant('Survived', 3, 3)));
    const same: LookedAt = {
      file: 'engine/rules/one.ts',
      mutants: [{ on: 'const one = 1;', code: '1', becomes: '0' }],
      reason: 'It is.',
    };
    expect(notLookedAt(survivors, [same])).toEqual(['engine/rules/one.ts:3 2 => 0']);
    expect(notLookedAt(survivors, [{ ...same, file: 'engine/rules/two.ts' }])).toHaveLength(2);
  });
});

describe('docs/mutation.md', () => {
  const rows = [tally('engine/rules', 90, 10), tally('engine/rules/arbor', 102, 0)];

  it('reads back the rows that it wrote, and no sums', () => {
    expect(talliesIn(reportText(rows, []))).toEqual(rows);
  });

  it('keeps the row of a folder that was not measured this time', () => {
    const fresh = [tally('engine/rules', 95, 5), tally('engine/sequence', 1, 1)];
    expect(merged(rows, fresh)).toEqual([fresh[0], rows[1], fresh[1]]);
  });

  it('adds up each room, and rounds no score up', () => {
    const text = reportText([...rows, tally('engine/sequence', 8999, 1001)], []);
    expect(text).toContain('| `engine/sequence` | 10000 | 8999 | 0 | 1001 | 0 | 89.9 % |');
    expect(text).toContain(
      '| **engine/rules, these together** | 202 | 192 | 0 | 10 | 0 | 95.0 % |',
    );
    expect(text).not.toContain('## Survivors');
  });

  it('names the folders that were not measured', () => {
    const names = ['engine/rules', 'engine/rules/arbor', 'engine/rules/lines'];
    expect(reportText(rows, [], names)).toContain('Not measured yet:\n\n- `engine/rules/lines`\n');
    expect(reportText(rows, [], names.slice(0, 2))).not.toContain('Not measured');
  });

  it('lists what was looked at, with the reason', () => {
    const one: LookedAt = {
      file: 'a.ts',
      mutants: [{ on: 'if (x > 1) stop();', code: 'x > 1', becomes: 'x >= 1' }],
      reason: 'x is never 1.',
    };
    expect(reportText(rows, [one])).toContain('\n- `a.ts`\n  - 1: x is never 1.\n');
  });
});

describe('the survivors that were looked at', () => {
  it('have a reason that is a sentence, and are of files that are still there', () => {
    const files = new Set(allFolders().flatMap(({ sources }) => sources));
    const all = readLookedAt();
    expect(all.length).toBeGreaterThan(0);
    for (const { file, reason, mutants } of all) {
      expect(files, file).toContain(file);
      expect(reason).toMatch(/^[A-Z].{1,90}[.]$/);
      expect(mutants.length).toBeGreaterThan(0);
    }
  });
});

describe('what is mutated', () => {
  it('is code, and no test, example, door or declaration', () => {
    const names = ['judge.ts', 'a.test.ts', 'a.laws.test.ts', 'a.contract.ts', 'example-a.ts'];
    const more = ['rule-codes.ts', 'refusal-codes.ts', 'index.ts', 'README.md', 'barrule-codes.ts'];
    expect([...names, ...more].filter(isMutated)).toEqual(['judge.ts', 'barrule-codes.ts']);
  });

  it('is asked for by a folder and what lies below it', () => {
    const names = (...asked: readonly string[]) => foldersIn(asked).map(({ folder }) => folder);
    expect(names('engine/rules/arbor')).toEqual(['engine/rules/arbor']);
    expect(names('engine/rules/')).toContain('engine/rules/arbor');
    expect(names('engine/rules')).not.toContain('engine/sequence');
    expect(names('engine/rul')).toEqual([]);
    expect(names()).toContain('engine/sequence');
  });

  it('is measured in parts where files are asked for', () => {
    const asked = ['engine/sequence/span.ts', 'engine/sequence/pair/stock.ts', 'engine/none.ts'];
    expect(foldersIn(asked).map(({ folder, sources }) => [folder, sources])).toEqual([
      ['engine/sequence', ['engine/sequence/span.ts']],
      ['engine/sequence/pair', ['engine/sequence/pair/stock.ts']],
    ]);
  });
});
