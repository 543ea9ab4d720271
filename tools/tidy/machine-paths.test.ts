import { describe, expect, it } from 'vitest';
import { machinePaths } from './machine-paths.ts';

/** Put together here, so that this file itself names no machine. */
const under = (folder: string): string => ['', folder, 'x.json'].join('/');
const faultsOf = (text: string, path = 'docs/a.md') => machinePaths([{ path, text }]);

describe('machine paths', () => {
  it.each(['root', 'tmp', 'work', 'farm', 'home/ada', 'Users/ada'])('refuses /%s', (folder) => {
    expect(faultsOf(`see\n"${under(folder)}"`)).toMatchObject([{ line: 2 }]);
  });

  it('takes folders of this project and addresses', () => {
    expect(faultsOf('tools/tmp/x, ./work/x, https://example.org/root/x, /rooted/x')).toEqual([]);
  });

  it('refuses the host of a registry, and a lock file that names one', () => {
    expect(faultsOf(['registry', 'example', 'org'].join('.'))).toHaveLength(1);
    const lock = `"resolved": "${'https'}://packages.example.org/a.tgz"`;
    expect(faultsOf(lock, 'package-lock.json')).toHaveLength(1);
    expect(faultsOf('"integrity": "sha512-ab/tmp/cd"', 'package-lock.json')).toEqual([]);
  });
});
