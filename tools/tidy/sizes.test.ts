import { describe, expect, it } from 'vitest';
import { sizes } from './sizes.ts';

const faultsOf = (text: string, path = 'engine/a.ts') => sizes([{ path, text }]);
const body = (lines: number): string => 'count += 1;\n'.repeat(lines);

describe('sizes', () => {
  it('takes a file of 400 lines and refuses one more', () => {
    expect(faultsOf(body(400))).toEqual([]);
    expect(faultsOf(body(401))).toMatchObject([{ what: '401 lines' }]);
  });

  it('takes a function of 60 lines and refuses one more, by its name', () => {
    expect(faultsOf(`const sum = () => {\n${body(58)}};\n`)).toEqual([]);
    expect(faultsOf(`\nconst sum = () => {\n${body(59)}};\n`)).toMatchObject([
      { line: 2, what: 'sum has 61 lines' },
    ]);
  });

  it('lets a group of tests be long, but not a test', () => {
    const group = (inner: string): string => `describe('x', () => {\n${inner}});\n`;
    expect(faultsOf(group(body(80)))).toEqual([]);
    expect(faultsOf(`const contract = () => {\n${body(80)}it('y', f);\n};\n`)).toEqual([]);
    expect(faultsOf(group(`it('y', () => {\n${body(80)}});\n`))).toHaveLength(1);
  });
});
