import { describe, expect, it } from 'vitest';
import type { Asked } from '#documents';
import { countsOf, countWords, mostWaitedFor, placeOfValue } from './asked-words.ts';
import { PARTS } from './parts.ts';

const asked = (path: string, sets: number, isUnknown = true): Asked => ({
  path,
  what: path,
  blocks: 'the balance',
  parts: { field: path, owner: { says: 'the house', names: {} }, why: '' },
  isUnknown,
  sets,
});

const some = [
  asked('rules.lockLimit', 8),
  asked('rules.pullBrief', 8, false),
  asked('setTypes.SP6.arbor.panAtLow', 8),
  asked('lineSets["a.b"].y', 1),
  asked('hangs.9.trims.in', 1),
];

describe('what is asked', () => {
  it('is counted part by part of the form', () => {
    const counts = countsOf(some);
    const words = (id: string) =>
      PARTS.filter((part) => part.id === id).map((part) =>
        countWords(part, counts, { eyes: [{}, {}] }),
      );
    expect(words('rules')).toEqual(['1 of 2 unknown']);
    expect(words('sets')).toEqual(['1 of 1 unknown']);
    expect(words('house')).toEqual(['nothing is asked']);
    expect(words('clear')).toEqual(['2 entered']);
    expect(words('galleries')).toEqual(['nothing entered yet']);
    expect(countsOf([asked('rules.pullBrief', 8, false)]).get('rules')).toEqual({
      unknown: 0,
      asked: 1,
    });
  });

  it('leads to its field, or to the set on which it hangs', () => {
    expect(placeOfValue('setTypes.SP6.arbor.panAtLow')).toEqual({
      kind: 'house',
      part: 'enter',
      at: null,
      inside: 'kinds',
      field: 'setTypes.SP6.arbor.panAtLow',
    });
    expect(placeOfValue('hangs.9.trims.in')).toEqual({ kind: 'set', set: '9' });
  });

  it('is measured next where most sets wait, and never what is known', () => {
    expect(mostWaitedFor(some)?.path).toBe('rules.lockLimit');
    expect(mostWaitedFor(some.slice(3))?.path).toBe('lineSets["a.b"].y');
    expect(mostWaitedFor([asked('rules.pullBrief', 8, false)])).toBe(null);
  });
});
