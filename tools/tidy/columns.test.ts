import { describe, expect, it } from 'vitest';
import { columns } from './columns.ts';

const faultsOf = (path: string, text: string) => columns([{ path, text }]);

describe('columns', () => {
  it('takes 100 and refuses 101, and says which line', () => {
    expect(faultsOf('web/a.ts', 'x'.repeat(100))).toEqual([]);
    expect(faultsOf('web/a.ts', `\n${'x'.repeat(101)}`)).toMatchObject([
      { line: 2, what: '101 columns' },
    ]);
  });

  it('counts a letter outside the basic plane once', () => {
    expect(faultsOf('web/a.ts', '𝑈'.repeat(100))).toEqual([]);
  });

  it('takes a long address, a table and data', () => {
    const long = 'x'.repeat(200);
    expect(faultsOf('README.md', `https://example.org/${long}`)).toEqual([]);
    expect(faultsOf('README.md', `| ${long} |`)).toEqual([]);
    expect(faultsOf('examples/house.json', long)).toEqual([]);
    expect(faultsOf('README.md', long)).toHaveLength(1);
  });
});
