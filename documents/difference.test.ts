import { describe, expect, it } from 'vitest';
import { differenceOf } from './difference.ts';
import { house, show } from './provocations/specimens.ts';

describe('the difference of two revisions', () => {
  it('is nothing between a document and its copy', () => {
    expect(differenceOf(house, structuredClone(house))).toEqual([]);
  });

  it('is one line for one changed value', () => {
    const after = structuredClone(show);
    const takeoff = after.hangs[0]?.items[0]?.takeoff;
    if (takeoff && 'mass' in takeoff) takeoff.mass = '210 lb';
    expect(differenceOf(show, after)).toEqual([
      { path: 'hangs[0].items[0].takeoff.mass', before: '200 lb', after: '210 lb' },
    ]);
  });

  it('is one line for a set put in before others', () => {
    const added = { id: '0', type: 'single', y: '9 in' };
    const after = { ...house, lineSets: [added, ...house.lineSets] };
    expect(differenceOf(house, after)).toEqual([
      { path: 'lineSets[0]', before: undefined, after: added },
    ]);
  });

  it('is one line for a hang taken away', () => {
    const [, ...rest] = show.hangs;
    expect(differenceOf(show, { ...show, hangs: rest })).toEqual([
      { path: 'hangs[0]', before: show.hangs[0], after: undefined },
    ]);
  });

  it('tells a new order as an order', () => {
    const after = { ...house, rails: [], galleries: house.galleries.toReversed() };
    expect(differenceOf({ ...house, rails: [] }, after)).toEqual([
      { path: 'galleries', before: ['upper', 'mid'], after: ['mid', 'upper'] },
    ]);
  });

  it('matches cues by number and set', () => {
    const [first, second] = show.cues;
    const again = { ...first, set: '3' };
    const changed = differenceOf(
      { cues: [first, again, second] },
      { cues: [first, { ...again, to: '50 ft' }, second] },
    );
    expect(changed).toEqual([{ path: 'cues[1].to', before: '58 ft', after: '50 ft' }]);
  });

  it('goes by place where entries have no names or share one', () => {
    expect(differenceOf(['a', 'b'], ['a', 'c', 'd'])).toEqual([
      { path: '[1]', before: 'b', after: 'c' },
      { path: '[2]', before: undefined, after: 'd' },
    ]);
    expect(differenceOf([{ id: 'a' }, { id: 'a' }], [{ id: 'a' }, { id: 'b' }])).toEqual([
      { path: '[1].id', before: 'a', after: 'b' },
    ]);
  });

  it('tells a field that came and one that went', () => {
    expect(differenceOf({ a: 1, b: 2 }, { b: 2, c: 3 })).toEqual([
      { path: 'c', before: undefined, after: 3 },
      { path: 'a', before: 1, after: undefined },
    ]);
  });
});
