import { describe, expect, it } from 'vitest';
import { faultOfReport } from './biome.ts';
import { faultsOfIssue } from './dead-code.ts';

describe('the report of the linter', () => {
  const at = 'file=web/a.ts,line=3,endLine=3,col=1,endColumn=9';

  it('becomes one fault', () => {
    expect(faultOfReport(`::error title=lint/suspicious/noX,${at}::Do not x.`)).toEqual({
      file: 'web/a.ts',
      line: 3,
      what: 'Do not x',
      wanted: 'see lint/suspicious/noX',
    });
    expect(faultOfReport(`::warning title=format,${at}::Formatter would have:`)).toMatchObject({
      what: 'is not formatted',
    });
  });

  it('leaves other lines alone', () => {
    expect(faultOfReport('Checked 103 files in 219ms.')).toBeUndefined();
  });
});

describe('the report of the dead-code finder', () => {
  const none = {
    files: [],
    exports: [],
    types: [],
    duplicates: [],
    dependencies: [],
    devDependencies: [],
    unlisted: [],
    unresolved: [],
    binaries: [],
  };

  it('becomes a fault for each name', () => {
    const issue = { file: 'web/a.ts', ...none, exports: [{ name: 'sum', line: 4 }] };
    expect(faultsOfIssue(issue)).toEqual([
      {
        file: 'web/a.ts',
        line: 4,
        what: 'sum is exported and used by nobody',
        wanted: 'keep it in its file, or delete it',
      },
    ]);
  });

  it('throws on a report of another shape, so that no kind of fault gets lost', () => {
    expect(() => faultsOfIssue({ file: 'web/a.ts' })).toThrow();
  });
});
