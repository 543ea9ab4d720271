import { describe, expect, it } from 'vitest';
import type { Json } from '../keeping/json.ts';
import {
  type SourcedText,
  sourcedJson,
  sourcedText,
  withTyped,
  writtenWords,
} from './sourced-text.ts';

const ALONE = { hasGiven: false, hasKind: false };
const UNDER = { hasGiven: true, hasKind: false };
const OF_KIND = { hasGiven: false, hasKind: true };

const row = (text: Partial<SourcedText>): SourcedText => ({
  value: '',
  tolerance: '',
  how: 'unknown',
  source: '',
  by: '',
  on: '',
  ...text,
});

const mass = { of: 'mass', before: undefined } as const;

describe('a sourced value in a row', () => {
  it('starts as unknown, or as what its kind of set says', () => {
    expect(sourcedText(undefined, ALONE).how).toBe('unknown');
    expect(sourcedText(undefined, OF_KIND).how).toBe('kind');
  });

  it.each<Json>([
    '35 lb',
    12,
    { value: '25 lb', tolerance: '0.5 lb', basis: 'weighed', source: 'sample', on: '2026-08-31' },
    { value: '25 lb', tolerance: '2 %' },
    { unknown: 'not surveyed' },
  ])('is written back as it was read: %j', (json) => {
    const of = json === 12 ? 'count' : 'mass';
    const text = sourcedText(json, UNDER);
    expect(sourcedJson(text, { ...UNDER, of, before: json })).toEqual({ json });
  });

  it('is not kept before somebody says how it is known', () => {
    const typed = withTyped(row({}), '35 lb', ALONE);
    expect(typed.how).toBe('open');
    expect(sourcedJson(typed, { ...ALONE, ...mass })).toEqual({ missing: 'how it is known' });
    const said = { ...typed, how: 'weighed' } as const;
    expect(sourcedJson(said, { ...ALONE, ...mass })).toEqual({
      json: { value: '35 lb', basis: 'weighed' },
    });
  });

  it('stands bare under a "given"; a source of its own needs a basis of its own', () => {
    const typed = withTyped(row({}), '35 lb', UNDER);
    expect(sourcedJson(typed, { ...UNDER, ...mass })).toEqual({ json: '35 lb' });
    const sourced = { ...typed, source: 'scales' };
    expect(sourcedJson(sourced, { ...UNDER, ...mass })).toEqual({ missing: 'how it is known' });
  });

  it('waits for its value where the basis was chosen first', () => {
    const chosen = row({ how: 'measured' });
    expect(sourcedJson(chosen, { ...ALONE, ...mass })).toEqual({ missing: 'the value' });
    const emptied = { ...ALONE, of: 'mass', before: '35 lb' } as const;
    expect(sourcedJson(chosen, emptied)).toEqual({ json: undefined });
  });

  it('is unknown with a reason, or without; over its kind only with one', () => {
    expect(sourcedJson(row({}), { ...ALONE, ...mass })).toEqual({ json: undefined });
    const why = row({ source: 'not weighed' });
    expect(sourcedJson(why, { ...ALONE, ...mass })).toEqual({ json: { unknown: 'not weighed' } });
    expect(sourcedJson(row({}), { ...OF_KIND, ...mass })).toEqual({
      missing: 'why this set has it unknown',
    });
  });

  it('is a number where the document has one, and yes or no', () => {
    const two = row({ value: ' 2 ', how: 'houseRule' });
    const people = { ...ALONE, of: 'count', before: undefined } as const;
    expect(sourcedJson(two, people)).toEqual({ json: { value: 2, basis: 'houseRule' } });
    const words = { ...two, value: 'two' };
    expect(sourcedJson(words, people)).toEqual({ json: { value: 'two', basis: 'houseRule' } });
    const yes = row({ value: 'yes', how: 'houseRule' });
    const flag = { ...ALONE, of: 'flag', before: undefined } as const;
    expect(sourcedJson(yes, flag)).toEqual({ json: { value: true, basis: 'houseRule' } });
  });

  it('is said in one line where its kind has it', () => {
    const say = (basis: string): string => basis;
    expect(writtenWords({ value: '7 ft', basis: 'measured' }, say)).toBe('7 ft, measured');
    expect(writtenWords('7 ft', say)).toBe('7 ft');
    expect(writtenWords({ unknown: 'worn off' }, say)).toBe('unknown: worn off');
  });
});
