/** Answers for pairs whole: what is asked, what is searched, and where hands may be. */
import { describe, expect, it } from 'vitest';
import { POUND_FORCE } from '#quantities';
import { bare, clearItem, ft, lb, setWith } from '../example-jobs.contract.ts';
import {
  AWAY,
  askedPair,
  at,
  FLYING,
  foundPair,
  front,
  frontOn,
  loading,
  nonePair,
  ON,
  pairOf,
  pairWords,
  rear,
  rearOn,
  standsAt,
} from './example-pairs.contract.ts';
import { planPair } from './plan-pair.ts';

const striking = {
  front: { set: front, start: standsAt(52, { F: 9, H: 1 }, FLYING) },
  rear: { set: rear, start: standsAt(57.5, { F: 8 }, FLYING) },
};

/** A pound of header on 10 lb of set: its lock holds it at the working height too. */
const small = (height: number) => ({
  set: { ...setWith({ header: clearItem(1) }), bareKg: lb(10) },
  goal: { items: ON, height: at(height) },
});

describe('a band', () => {
  const ruleOf = (leastFt: number, mostFt: number) => {
    const none = nonePair(askedPair(pairOf(loading.front, loading.rear, [leastFt, mostFt])));
    return none.why === 'asked' ? none.what : none.why;
  };

  it('has two ends, and may have them at one height', () => {
    expect(ruleOf(Number.NEGATIVE_INFINITY, 6)).toBe('band');
    expect(ruleOf(-6, Number.POSITIVE_INFINITY)).toBe('band');
    const asked = nonePair(askedPair(pairOf(loading.front, loading.rear, [5, 4.9])));
    expect(asked).toEqual({ why: 'asked', what: 'band', searched: 0 });
    const one = { first: striking.front, second: striking.rear };
    const plan = askedPair(
      pairOf(
        { ...one.first, goal: { items: AWAY } },
        { ...one.second, goal: { items: AWAY } },
        [5.5, 5.5],
      ),
    );
    expect(nonePair(plan)).toMatchObject({ why: 'band', at: 'hands' });
  });

  it('says where it starts and where it ends, and by how much they are apart', () => {
    const start = nonePair(
      askedPair(
        pairOf(
          { ...striking.front, goal: { items: AWAY } },
          { ...striking.rear, goal: { items: AWAY } },
          [0, 5],
        ),
      ),
    );
    expect(start).toEqual({
      why: 'band',
      at: 'start',
      first: ft(52),
      second: ft(57.5),
      apartM: expect.closeTo(ft(5.5), 9),
      searched: 0,
    });
    const end = nonePair(askedPair(pairOf(loading.front, loading.rear, [0, 5])));
    expect(end).toEqual({ ...start, at: 'goal' });
  });

  it('is nobody\u2019s matter at heights where the piece is on neither', () => {
    const plan = askedPair(
      pairOf(
        { ...striking.front, goal: { items: AWAY, height: at(3) } },
        { ...striking.rear, goal: { items: AWAY, height: at(40) } },
        [-0.5, 6],
      ),
    );
    expect(pairWords(foundPair(plan)).at(-2)).toBe('B to 40');
  });

  it('is not judged by a height that nobody asked for', () => {
    for (const [first, second] of [
      [null, at(57.5)],
      [at(52), null],
    ] as const) {
      const plan = askedPair(
        pairOf(
          { ...loading.front, goal: { ...frontOn, height: first } },
          { ...loading.rear, goal: { ...rearOn, height: second } },
          [-0.5, 6],
        ),
      );
      // It is searched: each order alone ends where it has work, and those ends do not match.
      expect(nonePair(plan)).toMatchObject({ why: 'unmatched' });
      expect(nonePair(plan).searched).toBeGreaterThan(100);
    }
  });
});

describe('zones that are found closed', () => {
  it('on the second set only are closed for both', () => {
    const run = { zone: 'run' } as const;
    const upper = { zone: 'drop', gallery: 'upper' } as const;
    const closed = (first: readonly (typeof run | typeof upper)[]) =>
      foundPair(
        askedPair(
          pairOf(
            { ...loading.front, start: { ...bare, closed: first } },
            { ...loading.rear, start: { ...bare, closed: [run] } },
            [-0.5, 6],
          ),
        ),
      );
    for (const { first, second } of closed([]).states) {
      expect(first.closed[0]).toEqual(run);
      expect(second.closed[0]).toEqual(run);
    }
    expect(pairWords(closed([])).filter((word) => word.endsWith('run'))).toEqual([]);
    expect(closed([upper]).states[0]?.second.closed).toEqual([upper, run]);
  });
});

describe('heights of hands', () => {
  it('are those of the question', () => {
    const work = [{ fromM: ft(3.5), toM: ft(4) }];
    const words = pairWords(foundPair(askedPair(pairOf(small(8), small(8.3), [-1, 1]), { work })));
    expect(words).toEqual([
      'close run',
      'A to 4',
      'B to 4',
      'reopen run',
      'B attach header',
      'A attach header',
      'close run',
      'A to 8, B to 8.3',
      'reopen run',
    ]);
  });

  it('are looked for anew where the band is narrow, on the one or the other', () => {
    const hands = (plan: ReturnType<typeof askedPair>) => {
      const { states } = foundPair(plan);
      const on = states.find(({ first, second }) =>
        [first, second].every(({ items }) => items['header'] === 'flying'),
      );
      return [(on?.first.height ?? 0) / ft(1), (on?.second.height ?? 0) / ft(1)];
    };
    const [low, high] = hands(askedPair(pairOf(small(8), small(8.3), [0.2, 0.4])));
    expect(low).toBeCloseTo(3, 9);
    expect(high).toBeCloseTo(3.25, 9);
    const other = hands(askedPair(pairOf(small(8.3), small(8), [-0.4, -0.2])));
    expect(other[0]).toBeCloseTo(3.25, 9);
    expect(other[1]).toBeCloseTo(3, 9);
    // Of two stretches that riggers reach only the second is half a foot over 3 ft.
    const work = [
      { fromM: ft(3), toM: ft(3.2) },
      { fromM: ft(3.4), toM: ft(3.7) },
    ];
    const two = hands(askedPair(pairOf(small(8), small(8.8), [0.5, 1]), { work }));
    expect(two[1]).toBeCloseTo(3.5, 9);
    // A foot over 3 ft is where riggers reach no higher: one height, and it does.
    const point = hands(askedPair(pairOf(small(8), small(9.2), [1, 1.5])));
    expect(point[1]).toBeCloseTo(4, 9);
  });

  it('are not looked for where the other batten does not come that low', () => {
    const searchedFor = (leastFt: number): number =>
      nonePair(askedPair(pairOf(loading.front, loading.rear, [leastFt, 6]))).searched;
    // Five feet over 3 ft nobody reaches; half a foot over it both are tried again: the front set
    // has its way after 64 states, and 4 tell that 190 lb are too much for the lock of the other.
    expect(searchedFor(0.5) - searchedFor(5)).toBe(68);
  });
});

describe('what is searched', () => {
  it('is counted up to the bound, alone or for both', () => {
    const bound = (statesMost: number) =>
      askedPair(pairOf(loading.front, loading.rear, [-0.5, 6]), { statesMost });
    expect(bound(11)).toEqual({ stopped: { searched: 11 } });
    // The two by themselves have a way; 12 spots are too few to match them.
    const both = bound(12);
    expect(both).toEqual({ stopped: { searched: 80 } });
    expect(bound(16)).toHaveProperty('found');
  });

  it('counts what was in vain before', () => {
    const { searched } = foundPair(askedPair(pairOf(small(8), small(8.8), [0.5, 1])));
    expect(searched).toBe(43);
  });
});

describe('restraints of a pair', () => {
  it('are said of the set that needs one', () => {
    const bridge = setWith({ header: { kind: 'standing', mass: 100, drop: ft(9), pick: ft(1) } });
    const light = setWith({ header: clearItem(50) });
    const step = { restraint: 'out', restraintStepN: 5 * POUND_FORCE } as const;
    const first = { set: bridge, goal: { items: ON, bricks: { F: 9 }, height: at(30) } };
    const second = { set: light, goal: { items: ON, bricks: { F: 2 }, height: at(30) } };
    const { restraints, ...plan } = foundPair(askedPair(pairOf(first, second, [-1, 1]), step));
    expect(restraints).toMatchObject({ first: { resists: 'out' }, second: null });
    expect((restraints.first?.rated ?? 0) / POUND_FORCE).toBeCloseTo(190, 6);
    expect(pairWords(plan)).toEqual([
      'A rig bullLine',
      'close upper',
      'A add 9 F upper',
      'B add 2 F upper',
      'reopen upper',
      'B attach header',
      'A attach header',
      'close run',
      'A to 30, B to 30',
      'A unrig bullLine',
      'reopen run',
    ]);
  });
});

describe('what is asked of a pair where nobody says', () => {
  it('is for people: all doubt, and the lock at its planning limit', () => {
    const pair = pairOf(loading.front, loading.rear, [-0.5, 6]);
    expect(planPair(pair)).toEqual(planPair(pair, { doubtShare: 1, lock: 'planning' }));
    expect(planPair(pair)).toHaveProperty('found');
    expect(pairWords(foundPair(planPair(pair))).slice(2, 4)).toEqual(['close run', 'close upper']);
  });
});
