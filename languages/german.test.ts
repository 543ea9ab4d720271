import { describe, expect, it } from 'vitest';
import { phraseCount } from '#texts';
import { fetchTongue } from './index.ts';
import { tongueOf } from './tongue-of.ts';

describe('a language', () => {
  it('is fetched when it is asked for; English stands in the code', async () => {
    expect(await fetchTongue('en')).toBeUndefined();
    const german = await fetchTongue('de');
    expect(german?.decimalMark).toBe(',');
    expect(german?.months).toHaveLength(12);
    expect(german?.date).toBe('{day}. {month} {year}');
    expect(german?.texts['batten']).toBe('Laststange');
  });

  it('can be cloned to another thread', async () => {
    const german = await fetchTongue('de');
    expect(structuredClone(german)).toStrictEqual(german);
  });

  it('has its own forms of number', () => {
    const key = '{count, plural, one {{count} row} other {{count} rows}}';
    // Polish tells 1, 2 to 4, and 5 or more apart (Unicode CLDR, plural rules).
    const polish = tongueOf({
      language: 'pl',
      texts: {
        [key]: '{count, plural, one {# rząd} few {# rzędy} many {# rzędów} other {# rzędu}}',
      },
    });
    const voice = { words: 'US', tongue: polish } as const;
    const say = (n: number): string => phraseCount(voice, n, ['{count} row', '{count} rows']);
    expect([1, 2, 5, 22].map(say)).toStrictEqual(['1 rząd', '2 rzędy', '5 rzędów', '22 rzędy']);
  });

  it('leaves English what it has not translated', () => {
    const empty = tongueOf({ language: 'de', texts: { batten: '' } });
    expect(empty.texts).toStrictEqual({});
  });
});
