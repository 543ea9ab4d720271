import { describe, expect, it } from 'vitest';
import { codes } from './codes.ts';
import type { Source } from './fault.ts';

const rules = (text: string, room = 'rules'): Source => ({
  path: `engine/${room}/rule-codes.ts`,
  text,
});
const tests = (text: string): Source => ({ path: 'engine/rules/a.test.ts', text });
const whatOf = (...sources: readonly Source[]) => codes(sources).map(({ what }) => what);

const DECLARED = rules("export const RULES = [{ code: 'BAL-003', level: 'stop' }];");

describe('codes', () => {
  it('takes a rule that a title names', () => {
    expect(whatOf(DECLARED, tests("it('[BAL-003] refuses the brick', f);"))).toEqual([]);
  });

  it('misses the test of a rule', () => {
    expect(whatOf(DECLARED)).toEqual(['no test names BAL-003']);
    expect(whatOf(DECLARED, tests("it('holds', () => g('BAL-003'));"))).toHaveLength(1);
  });

  it('takes a table of codes under a title made from them', () => {
    const table = "const T = ['BAL-003']; for (const c of T) it(`[${c}] refuses`, f);";
    expect(whatOf(DECLARED, tests(table))).toEqual([]);
  });

  it('takes a table in a file of its own, but not one that the program opens too', () => {
    const test = tests("import { T } from './cases.ts'; for (const c of T) it(`[${c}] x`, f);");
    const cases = { path: 'engine/rules/cases.ts', text: "export const T = ['BAL-003'];" };
    const program = { path: 'engine/rules/judge.ts', text: "import { T } from './cases.ts';" };
    expect(whatOf(DECLARED, test, cases)).toEqual([]);
    expect(whatOf(DECLARED, test, cases, program)).toEqual(['no test names BAL-003']);
  });

  it('refuses a title whose code nobody declares', () => {
    const text = "it('[BAL-003] a', f); it('[BAL-099] b', f);";
    expect(whatOf(DECLARED, tests(text))).toEqual([
      'the test names BAL-099, which nobody declares',
    ]);
  });

  it('refuses a code in the program that nobody declares', () => {
    const text = "const a = { code: 'BAL-003' }; const b = { code: 'CLI-004' };";
    const program = { path: 'cli/main.ts', text };
    const named = tests("it('[BAL-003] a', f);");
    expect(whatOf(DECLARED, named, program)).toEqual(['CLI-004 is declared nowhere']);
  });

  it('refuses a code declared twice, in one room or in two', () => {
    const named = tests("it('[BAL-003] a', f);");
    const again = 'BAL-003 is also declared in engine/rules/rule-codes.ts:1';
    expect(whatOf(DECLARED, rules("const x = code('BAL-003');", 'house'), named)).toEqual([again]);
  });
});
