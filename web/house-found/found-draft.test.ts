import { describe, expect, it } from 'vitest';
import type { Json } from '../keeping/json.ts';
import { draftOf, foundOf } from './found-draft.ts';

const WHO = { at: '2026-11-25T14:31:00Z', by: 'loader' };

const written: Json = {
  height: '30.5 ft',
  lock: 'closed',
  ring: 'on',
  collar: 'secured',
  stack: [{ kind: 'O', count: 3, tag: 'pipe' }],
  items: { cloth: 'flying' },
  restraints: [],
  service: 'in',
  knowledge: { basis: 'counted', at: WHO.at, by: 'loader', second: 'head flyperson' },
};

describe('what is written down of a set', () => {
  it('goes into the record as it came out of it, who and when anew', () => {
    const { restraints: _beside, ...rest } = written as Record<string, Json>;
    expect(foundOf(draftOf(written), WHO)).toEqual({ ...rest, tag: undefined });
  });

  it('keeps bare and not counted apart, and one height and two', () => {
    const nothing = draftOf(undefined);
    expect(nothing).toMatchObject({ stack: null, items: null, basis: 'unknown', height: '' });
    expect(foundOf(nothing, WHO)).toMatchObject({ stack: undefined, height: undefined });
    expect(foundOf({ ...nothing, stack: [] }, WHO)['stack']).toEqual([]);
    expect(draftOf({ height: ['1 m', '2 m'] })).toMatchObject({ height: '1 m', upTo: '2 m' });
    expect(foundOf({ ...nothing, height: '1 m', upTo: '2 m' }, WHO)['height']).toEqual([
      '1 m',
      '2 m',
    ]);
  });

  it('has a tag with number and reason', () => {
    const tagged = {
      ...draftOf(undefined),
      service: 'lockedOut',
      tagNumber: '7',
      tagReason: 'jaw',
    };
    expect(foundOf(tagged, WHO)).toMatchObject({ tag: { number: '7', reason: 'jaw' } });
  });
});
