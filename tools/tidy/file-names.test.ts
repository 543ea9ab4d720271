import { describe, expect, it } from 'vitest';
import { fileNames } from './file-names.ts';

const faultsOf = (...paths: readonly string[]) =>
  fileNames(paths.map((path) => ({ path, text: '' }))).map(({ file }) => file);

describe('file names', () => {
  it('refuses a drawer for everything, in a folder, a file, one of many or in camel case', () => {
    const paths = [
      'engine/utils/a.ts',
      'web/shared.ts',
      'cli/date-helper.ts',
      'web/setManager.tsx',
    ];
    expect(faultsOf(...paths)).toEqual(paths);
  });

  it('takes a word that only holds one', () => {
    expect(faultsOf('engine/balance/score.ts', 'web/management.md', 'web/commons.ts')).toEqual([
      'web/commons.ts',
    ]);
  });
});
