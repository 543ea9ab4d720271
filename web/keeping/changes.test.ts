import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changesBetween, withChanges, withoutChanges } from './changes.ts';
import { isSame, type Json } from './json.ts';

const json = fc.jsonValue({ maxDepth: 4 }) as fc.Arbitrary<Json>;
const SEED = 20_261;

describe('changes of a document', () => {
  it('finds nothing between a document and itself', () => {
    const show = { hangs: [{ set: '1' }] };
    expect(changesBetween(show, show)).toEqual([]);
  });

  it('keeps one small step for one changed figure', () => {
    const before = { hangs: [{ set: '1', mass: '35 lb' }, { set: '2' }] };
    const after = { hangs: [{ set: '1', mass: '40 lb' }, before.hangs[1] ?? null] };
    expect(changesBetween(before, after)).toEqual([
      { kind: 'put', path: ['hangs', 0, 'mass'], before: '35 lb', after: '40 lb' },
    ]);
  });

  it('tells a set put between two others as one step, not as all that follow', () => {
    const hangs = ['1', '3', '4'].map((set) => ({ set }));
    const after = [hangs[0] ?? null, { set: '2' }, ...hangs.slice(1)];
    expect(changesBetween({ hangs }, { hangs: after })).toEqual([
      { kind: 'splice', path: ['hangs'], at: 1, removed: [], added: [{ set: '2' }] },
    ]);
  });

  it(`goes there and back between any two documents, also through storage (seed ${SEED})`, () => {
    fc.assert(
      fc.property(json, json, (before, after) => {
        const kept = JSON.parse(JSON.stringify(changesBetween(before, after))) as ReturnType<
          typeof changesBetween
        >;
        expect(isSame(withChanges(before, kept), after)).toBe(true);
        expect(isSame(withoutChanges(after, kept), before)).toBe(true);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});
