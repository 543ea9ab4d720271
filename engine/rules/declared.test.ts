import { describe, expect, it } from 'vitest';
import { LEVELS } from '#findings';
import { RULES, ruleOf } from './declared.ts';
import { found, judgeScene, unsaid } from './example-assessment.ts';
import { raise } from './raise.ts';

describe('the rules as declared', () => {
  it('declares each code once', () => {
    const codes = RULES.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes.length).toBeGreaterThan(0);
  });

  it('gives each rule a title, a source and its levels, gravest first', () => {
    for (const { code, title, source, levels } of RULES) {
      expect(title, code).not.toBe('');
      expect(source, code).not.toBe('');
      const grades = levels.map((level) => LEVELS.indexOf(level));
      expect(grades, code).toEqual(grades.toSorted((one, other) => other - one));
    }
  });

  it('calls nothing by a standard, and never says that a thing is safe', () => {
    for (const { code, source, says, title } of RULES) {
      expect(`${source} ${says} ${title}`, code).not.toMatch(
        /\bper\b (ANSI|EN|BS|DIN|ISO)|\bsafe\b|\bOK\b/i,
      );
    }
  });

  it('says each rule in one sentence or more that ends', () => {
    for (const { code, says } of RULES) expect(says, code).toMatch(/[.?]$/);
  });

  it('knows no rule of another name', () => {
    expect(ruleOf('BAL-001')?.cites).toBe('C15');
    expect(ruleOf('BAL-999')).toBeUndefined();
  });
});

describe('raising a rule', () => {
  it('holds a finding to the levels of its rule', () => {
    expect(() => raise('PER-001', { at: {}, level: 'note' })).toThrow('PER-001 may raise note');
    expect(raise('PER-001', { at: {} }).level).toBe('stop');
  });

  it('finds what a sentence lacks', () => {
    expect(unsaid(raise('STK-004', { at: {} }))).toEqual(['measured', 'limit']);
    const [finding] = found('BAL-008');
    expect(finding && unsaid(finding)).toEqual([]);
  });
});

describe('judging a set with nothing wrong', () => {
  it('raises only what is true and harmless', () => {
    const codes = judgeScene({}).map(({ code, level }) => `${code} ${level}`);
    expect(codes).toEqual(['STA-005 note', 'BAL-008 note']);
  });
});
