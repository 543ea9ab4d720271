import { describe, expect, it } from 'vitest';
import type { Copy } from '../keeping/copies.ts';
import { keyOf, toWrite } from './copy-parts.ts';

const stored = {
  id: 'show:vell',
  kind: 'show',
  revision: 1,
  savedAt: '2026-11-25T14:00:00Z',
  savedBy: 'head flyperson',
  why: 'first loaded',
  remark: '',
  document: { name: 'Vell' },
} as const;

describe('where a copy is kept', () => {
  it('is of one house and one database', () => {
    const copy = (databases: Partial<Copy['databases']>): Copy => ({
      databases: { inHand: 'house', hasHouse: true, ...databases },
      documents: [],
      read: { serverMs: 0, deviceMs: 0 },
    });
    const keys = [
      copy({ houseKey: 'one' }),
      copy({ houseKey: 'other' }),
      copy({ houseKey: 'one', inHand: 'demo' }),
      copy({}),
    ].map(keyOf);
    expect(new Set(keys).size).toBe(4);
  });

  it('writes only what changed, and lets go of what is gone', () => {
    const copy: Copy = {
      databases: { inHand: 'demo', hasHouse: false },
      documents: [stored],
      read: { serverMs: 0, deviceMs: 0 },
    };
    expect(toWrite(copy, [stored])).toEqual({ put: [], gone: [] });
    expect(toWrite(copy, [{ ...stored, revision: 7 }]).put).toEqual([stored]);
    // The same number of another history, as after a restore, is another document.
    expect(toWrite(copy, [{ ...stored, savedAt: '2026-11-01T10:00:00Z' }]).put).toEqual([stored]);
    expect(toWrite(copy, [{ ...stored, id: 'show:gone' }])).toEqual({
      put: [stored],
      gone: ['show:gone'],
    });
  });
});
