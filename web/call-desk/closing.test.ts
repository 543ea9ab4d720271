import { describe, expect, it } from 'vitest';
import { assess } from '#assessment';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { leavesOf } from './closing.ts';
import { openedOn, setOf, withSets } from './opened-for-tests.ts';

const { example: EXAMPLE, now: OPENED } = openedOn({
  house: kestlemere,
  show: clockmaker,
  state: record,
});

const { house, show, state } = EXAMPLE;
const SETS = assess(house, show, state).sets.map((set) => ({
  ...{ id: set.lineSet.id, set, written: null, findings: [], keptEmpty: null },
}));
const NOW = OPENED;

describe('what a call leaves behind', () => {
  it('counts each set once as known or as unknown', () => {
    const leaves = leavesOf(NOW, SETS);
    const all = [...leaves.known, ...leaves.unknown];
    expect(all.length).toBe(house.lineSets.length);
    expect(new Set(all)).toEqual(new Set(house.lineSets.map(({ id }) => id)));
  });

  it('has a set with leave out as unknown, as the record will have it', () => {
    const { standing } = setOf(NOW, '9');
    if (standing === null) throw new Error('set 9 of the demo is known');
    const leave = {
      ...{ seq: 3, post: 'rail', atMs: 1, by: null, device: null, second: null, plates: 0 },
      ...{ step: { act: 'hangOnSteel' } as const, before: standing, expects: standing },
    };
    const leaves = leavesOf(withSets(NOW, { '9': { leave } }), SETS);
    expect(leaves.unknown).toContain('9');
    expect(leaves.known).not.toContain('9');
    expect(leaves.underWay).toEqual(['9']);
  });

  it('says how a set is otherwise than the show plans it', () => {
    const { standing } = setOf(NOW, '9');
    if (standing === null) throw new Error('set 9 of the demo is known');
    const [item = ''] = Object.keys(standing.items);
    const onNine = (items: typeof standing.items, stack = standing.stack) => {
      const now = withSets(NOW, { '9': { standing: { ...standing, items, stack } } });
      return leavesOf(now, SETS).otherwise.find(({ id }) => id === '9')?.how;
    };
    expect(onNine(standing.items)).toBe(undefined);
    expect(onNine({})).toEqual({ is: 'pieces', missing: [item] });
    expect(onNine({ ...standing.items, ghost: 'flying' })).toEqual({
      ...{ is: 'notInShow', pieces: ['ghost'] },
    });
    const one = { kind: 'full', count: 1, tag: 'show' } as const;
    // The demo has three old cast of pipe weight, six full and a half on set 9: ten plates.
    expect(onNine(standing.items, [...standing.stack, one])).toEqual({
      ...{ is: 'plates', on: 11, byShow: 10 },
    });
  });
});
