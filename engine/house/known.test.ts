import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import { BASES, known, unknownValue } from './known.ts';

describe('known', () => {
  it('keeps value, basis and tolerance', () => {
    const provenance = { basis: 'weighed', source: 'sample of 24', by: 'head flyperson' } as const;
    expect(known(metres(3), provenance, 0.01)).toEqual({
      known: true,
      value: 3,
      provenance,
      tolerance: 0.01,
    });
  });

  it('has no tolerance where nobody has said one: absent, not zero', () => {
    const value = known(metres(3), { basis: 'published' });
    expect('tolerance' in value).toBe(false);
    expect(known(metres(3), { basis: 'published' }, 0).tolerance).toBe(0);
  });
});

describe('unknownValue', () => {
  it('holds no number, and says why where somebody said', () => {
    expect(unknownValue()).toEqual({ known: false });
    expect(unknownValue('not surveyed')).toEqual({ known: false, why: 'not surveyed' });
    expect('value' in unknownValue('not surveyed')).toBe(false);
  });
});

describe('BASES', () => {
  it('lists each basis once', () => {
    expect(new Set(BASES).size).toBe(BASES.length);
  });
});
