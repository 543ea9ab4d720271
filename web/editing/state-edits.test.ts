import { describe, expect, it } from 'vitest';
import { blankState, readStateValue } from '#documents';
import { withFound, withoutFound, withStock } from './state-edits.ts';

const blank = blankState({
  house: 'hall',
  demo: false,
  at: '2026-11-25T14:00:00Z',
  by: 'flyman',
});
const LATER = { at: '2026-11-25T14:31:00Z', by: 'upper loader' };
const EARLIER = { at: '2026-11-24T09:00:00Z', by: 'somebody' };

describe('what was found of a set', () => {
  const knowledge = { basis: 'counted', at: LATER.at, by: LATER.by };
  const stack = [{ kind: 'F', count: 8, tag: 'show' }];
  const found = withFound(blank, '1', { height: '1.2 m', lock: 'closed', stack, knowledge }, LATER);

  it('is in the record with who and when, and reads', () => {
    expect(found).toMatchObject({ at: LATER.at, by: LATER.by });
    const read = readStateValue(found);
    expect(read.ok && read.value.state.sets['1']).toMatchObject({
      lock: 'closed',
      stack,
      knowledge: { basis: 'counted', by: 'upper loader', second: null },
    });
  });

  it('leaves what was not looked at, and takes away what nobody knows', () => {
    const next = withFound(found, '1', { height: undefined, ring: 'on' }, LATER);
    expect(next['sets']).toEqual({ '1': { lock: 'closed', stack, knowledge, ring: 'on' } });
    expect(withoutFound(found, '1')['sets']).toEqual({});
    expect(withoutFound(found, '2')).toBe(found);
  });

  it('makes no record older than it is', () => {
    expect(withFound(found, '2', { lock: 'open' }, EARLIER)).toMatchObject({ at: LATER.at });
  });
});

describe('loose bricks of a gallery', () => {
  it('are written by kind, with who counted them; what was not counted is not there', () => {
    const counted = withStock(blank, 'upper', { F: 40, H: undefined }, LATER);
    expect(counted['galleries']).toEqual({
      upper: { stock: { F: 40 }, countedAt: LATER.at, countedBy: LATER.by },
    });
    expect(readStateValue(counted).ok).toBe(true);
  });
});
