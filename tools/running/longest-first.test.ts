import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LONGEST, longestFirst } from './longest-first.ts';
import { ROOT } from './program.ts';

const files = (...names: readonly string[]) =>
  names.map((name) => ({ moduleId: join(ROOT, name) }));

describe('the order of test files', () => {
  it('begins with the longest in the order they are named, and leaves the others', () => {
    const [first = '', second = ''] = LONGEST;
    expect(longestFirst(files('web/b.test.ts', second, 'cli/a.test.ts', first))).toEqual(
      files(first, second, 'web/b.test.ts', 'cli/a.test.ts'),
    );
  });

  it('names no file that is not there', () => {
    expect(LONGEST.filter((name) => !existsSync(join(ROOT, name)))).toEqual([]);
  });
});
