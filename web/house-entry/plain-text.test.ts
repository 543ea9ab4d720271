import { describe, expect, it } from 'vitest';
import { pairJson, pairTexts, plainJson, plainText, whyUnknown } from './plain-text.ts';

describe('a value without a source', () => {
  const lengths = {
    kind: 'list',
    of: { kind: 'measure', of: 'length' },
    mayBeUnknown: true,
  } as const;
  const ids = { kind: 'list', of: { kind: 'id' }, mayBeUnknown: false } as const;

  it('is a list where the document has one, parted where a measure has no comma', () => {
    const written = ['-13.5 ft', '1\'-6 1/2"', '1,5 m'];
    expect(plainText(written)).toBe('-13.5 ft; 1\'-6 1/2"; 1,5 m');
    expect(plainJson(plainText(written), lengths)).toEqual(written);
    expect(plainJson('1, 2 3;D1', ids)).toEqual(['1', '2', '3', 'D1']);
    expect(plainJson(' ; ', ids)).toBe(undefined);
  });

  it('is a whole number or yes and no, and a text where it reads as neither', () => {
    expect(plainJson('12', { kind: 'count' })).toBe(12);
    expect(plainJson('twelve', { kind: 'count' })).toBe('twelve');
    expect(plainJson('no', { kind: 'flag' })).toBe(false);
    expect(plainJson('  ', { kind: 'id' })).toBe(undefined);
  });

  it('has two ends, of which one may go on', () => {
    expect(pairTexts(['2 m', null])).toEqual(['2 m', '']);
    expect(pairJson(['2 m', ''], { mayGoOn: true })).toEqual({ json: ['2 m', null] });
    expect(pairJson(['2 m', ''], { mayGoOn: false })).toEqual({ missing: 'both ends' });
    expect(pairJson(['', ' '], { mayGoOn: false })).toEqual({ json: undefined });
  });

  it('says why a list is not known', () => {
    expect(whyUnknown({ unknown: 'lines not counted' })).toBe('lines not counted');
    expect(whyUnknown(['1 m'])).toBe(null);
  });
});
