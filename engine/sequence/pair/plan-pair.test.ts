/**
 * Pairs of sets with one header on both, in the numbers of the demo's house; the answers are
 * argued beside each, so there is no outside check.
 */
import { describe, expect, it } from 'vitest';
import { FOOT } from '#quantities';
import { asked, bare, clearItem, ft, lb, setWith } from '../example-jobs.contract.ts';
import {
  AWAY,
  askedPair,
  at,
  FLYING,
  foundPair,
  front,
  loading,
  nonePair,
  ON,
  pairOf,
  pairWords,
  rear,
  standsAt,
} from './example-pairs.contract.ts';

const striking = {
  front: { set: front, start: standsAt(52, { F: 9, H: 1 }, FLYING), goal: { items: AWAY } },
  rear: { set: rear, start: standsAt(57.5, { F: 8 }, FLYING), goal: { items: AWAY } },
};

describe('a header on two sets', () => {
  it('goes on both, is loaded on both from one gallery, and goes out on one word', () => {
    const found = foundPair(askedPair(pairOf(loading.front, loading.rear, [-0.5, 6])));
    expect(found.optimal).toBe(false);
    const words = pairWords(found).filter((word) => !word.startsWith('reopen'));
    expect(words.slice(0, 2).toSorted()).toEqual(['A attach header', 'B attach header']);
    expect(words[2]).toBe('close upper');
    expect(words.filter((word) => word.includes(' add '))).toHaveLength(3);
    expect(words.slice(-2)).toEqual(['close run', 'A to 52, B to 57.5']);
  });

  it('comes in on one word, and off both with nothing done between', () => {
    const found = foundPair(askedPair(pairOf(striking.front, striking.rear, [-0.5, 6])));
    const words = pairWords(found);
    expect(words.slice(0, 2)).toEqual(['close run', 'A to 3, B to 3']);
    expect(words.slice(-2).toSorted()).toEqual(['A release header', 'B release header']);
    expect(words.at(-3)).toBe('reopen run');
  });

  it('tells one state for the start and one for each step, zones alike on both', () => {
    const { steps, states } = foundPair(askedPair(pairOf(loading.front, loading.rear, [-0.5, 6])));
    expect(states).toHaveLength(steps.length + 1);
    for (const { first, second } of states) expect(first.closed).toEqual(second.closed);
    expect(states.at(-1)).toMatchObject({
      first: { height: ft(52), items: FLYING },
      second: { height: ft(57.5), items: FLYING },
    });
  });

  it('moves from trim to trim in one flight, as its cue does', () => {
    const keep = (set: typeof front, from: number, to: number, bricks: Record<string, number>) => ({
      set,
      start: standsAt(from, bricks, FLYING),
      goal: { bricks, height: at(to) },
    });
    const pair = pairOf(
      keep(front, 52, 18, { F: 9, H: 1 }),
      keep(rear, 57.5, 23.5, { F: 8 }),
      [5, 6],
    );
    expect(pairWords(foundPair(askedPair(pair)))).toEqual([
      'close run',
      'A to 18, B to 23.5',
      'reopen run',
    ]);
  });
});

describe('a pair of which one needs a stop', () => {
  /** The cloth of the harbour drop in place of the front share: bricks at 24 ft too. */
  const cloth = setWith({
    header: { kind: 'cloth', mass: lb(119), drop: ft(28), tie: 0, hem: lb(56), uncertainty: 0 },
  });
  const light = setWith({ header: clearItem(50) });
  const pair = pairOf(
    { set: cloth, goal: { items: ON, bricks: { F: 6, H: 1 }, height: at(60) } },
    { set: light, goal: { items: ON, bricks: { F: 2 }, height: at(60) } },
    [-1, 1],
  );

  it('takes the other one along, as far apart as they were or nearly', () => {
    const found = foundPair(askedPair(pair));
    const flights = found.steps.filter((step) => 'together' in step);
    expect(flights.length).toBeGreaterThan(1);
    expect(found.steps.some((step) => 'set' in step && step.step.act === 'fly')).toBe(false);
    for (const { first, second } of found.states) {
      expect(Math.abs(second.height - first.height)).toBeLessThanOrEqual(FOOT + 1e-9);
    }
    // The mid gallery has bricks in hand only after the upper one is done.
    const words = pairWords(found);
    const [upper, mid] = [words.indexOf('reopen upper'), words.indexOf('close mid')];
    expect(upper).toBeGreaterThan(0);
    expect(mid).toBeGreaterThan(upper);
  });

  it('goes by itself while it shares nothing', () => {
    const apart = { ...pair, shared: [] };
    const words = pairWords(foundPair(askedPair(apart)));
    expect(words.some((word) => word.includes(', '))).toBe(false);
  });
});

describe('an order of a pair, whole', () => {
  const whole = askedPair(pairOf(loading.front, loading.rear, [-0.5, 6]));

  it('says every step, zones too', () => {
    expect(pairWords(foundPair(whole))).toEqual([
      'B attach header',
      'A attach header',
      'close upper',
      'A add 9 F upper',
      'A add 1 H upper',
      'B add 8 F upper',
      'close run',
      'A to 52, B to 57.5',
      'reopen upper',
      'reopen run',
    ]);
    expect(
      pairWords(foundPair(askedPair(pairOf(striking.front, striking.rear, [-0.5, 6])))),
    ).toEqual([
      'close run',
      'A to 3, B to 3',
      'close upper',
      'A remove 1 H upper',
      'A remove 9 F upper',
      'B remove 8 F upper',
      'reopen upper',
      'reopen run',
      'B release header',
      'A release header',
    ]);
  });

  it('says what was closed and what hung after each step', () => {
    const { states } = foundPair(whole);
    const zones = states.map(({ first }) =>
      first.closed.map((zone) => (zone.zone === 'run' ? 'run' : zone.gallery)).join(' '),
    );
    expect(zones).toEqual([
      ...['', '', '', 'upper', 'upper', 'upper', 'upper'],
      ...['upper run', 'upper run', 'run', ''],
    ]);
    const plates = ({ stack }: (typeof states)[number]['first']): string =>
      stack.map(({ kind, count }) => `${count} ${kind}`).join(' ');
    expect(states.map(({ first }) => plates(first)).slice(3, 6)).toEqual(['', '9 F', '9 F 1 H']);
    expect(states.map(({ second }) => plates(second)).slice(5, 7)).toEqual(['', '8 F']);
  });

  it('needs no restraint, and counts what was searched for each and for both', () => {
    const { restraints, searched } = foundPair(whole);
    expect(restraints).toEqual({ first: null, second: null });
    const alone = ({ set, goal }: typeof loading.front | typeof loading.rear) => {
      const plan = asked(set, bare, goal, { neatM: FOOT / 4 });
      return 'found' in plan ? plan.found.searched : Number.NaN;
    };
    // The two orders alone, and 13 spots in which they were matched.
    expect(searched - alone(loading.front) - alone(loading.rear)).toBe(13);
  });

  it('has hands on one batten at a time where one goes up for the band', () => {
    const small = (height: number) => ({
      set: { ...setWith({ header: clearItem(1) }), bareKg: lb(10) },
      goal: { items: ON, height: at(height) },
    });
    expect(pairWords(foundPair(askedPair(pairOf(small(8), small(8.8), [0.5, 1]))))).toEqual([
      'close run',
      'B to 4',
      'reopen run',
      'B attach header',
      'A attach header',
      'close run',
      'A to 8, B to 8.8',
      'reopen run',
    ]);
    expect(pairWords(foundPair(askedPair(pairOf(small(8.8), small(8), [-1, -0.5]))))).toEqual([
      'close run',
      'A to 4',
      'reopen run',
      'A attach header',
      'B attach header',
      'close run',
      'A to 8.8, B to 8',
      'reopen run',
    ]);
  });
});

describe('a pair that is not where its work is', () => {
  it('brings each batten in by itself before the header is on both', () => {
    const pair = pairOf(
      { ...loading.front, start: { ...bare, height: at(20) } },
      { ...loading.rear, start: { ...bare, height: at(40) } },
      [-0.5, 6],
    );
    const words = pairWords(foundPair(askedPair(pair)));
    const flights = words.filter((word) => word.includes(' to '));
    expect(flights.slice(0, 2).toSorted()).toEqual(['A to 3', 'B to 3']);
    expect(flights.at(-1)).toBe('A to 52, B to 57.5');
  });

  it('looks for a height of riggers that suits the band, where there is one', () => {
    // Light enough to go on at the lock, an inch or two above the stop.
    const small = setWith({ header: clearItem(1) });
    const light = (height: number) => ({
      set: { ...small, bareKg: lb(10) },
      goal: { items: ON, height: at(height) },
    });
    const found = foundPair(askedPair(pairOf(light(8), light(8.8), [0.5, 1])));
    const on = found.states.find(
      ({ first, second }) =>
        first.items['header'] === 'flying' && second.items['header'] === 'flying',
    );
    expect(on).toBeDefined();
    const apartM = (on?.second.height ?? 0) - (on?.first.height ?? 0);
    expect(apartM).toBeGreaterThanOrEqual(ft(0.5) - 1e-9);
    expect(apartM).toBeLessThanOrEqual(ft(1) + 1e-9);
  });
});

describe('a band in which the second is the lower one', () => {
  it('puts riggers of the first where it suits the second', () => {
    const light = (height: number) => ({
      set: { ...setWith({ header: clearItem(1) }), bareKg: lb(10) },
      goal: { items: ON, height: at(height) },
    });
    const found = foundPair(askedPair(pairOf(light(8.8), light(8), [-1, -0.5])));
    const on = found.states.find(
      ({ first, second }) =>
        first.items['header'] === 'flying' && second.items['header'] === 'flying',
    );
    expect((on?.first.height ?? 0) - (on?.second.height ?? 0)).toBeGreaterThanOrEqual(
      ft(0.5) - 1e-9,
    );
  });
});

describe('zones of a pair', () => {
  it('leaves closed what was found closed, on whichever of the two', () => {
    const run = { zone: 'run' } as const;
    const upper = { zone: 'drop', gallery: 'upper' } as const;
    const pair = pairOf(
      { ...loading.front, start: { ...bare, closed: [run] } },
      { ...loading.rear, start: { ...bare, closed: [run, upper] } },
      [-0.5, 6],
    );
    const found = foundPair(askedPair(pair));
    expect(pairWords(found).filter((word) => /^(close|reopen)/.test(word))).toEqual([]);
    for (const { first, second } of found.states) {
      expect(first.closed).toEqual([run, upper]);
      expect(second.closed).toEqual([run, upper]);
    }
  });

  it('closes the run before the first flight and not again before the next', () => {
    const pair = pairOf(
      { ...loading.front, start: { ...bare, height: at(20) } },
      { ...loading.rear, start: { ...bare, height: at(40) } },
      [-0.5, 6],
    );
    const words = pairWords(foundPair(askedPair(pair)));
    expect(words.slice(0, 4)).toEqual(['close run', 'A to 3', 'B to 3', 'reopen run']);
  });

  it('writes each zone to the set that works next', () => {
    const { steps } = foundPair(askedPair(pairOf(loading.front, loading.rear, [-0.5, 6])));
    steps.forEach((step, index) => {
      const next = steps[index + 1];
      if ('together' in step || step.step.act !== 'close') return;
      const isDrop = step.step.zone.zone === 'drop';
      if (isDrop && next !== undefined && 'set' in next) expect(step.set).toBe(next.set);
    });
    expect(steps.at(-1)).toMatchObject({ set: 'A', step: { act: 'reopen' } });
  });
});

describe('a pair without an order', () => {
  it('says where the band is too narrow for hands at both battens', () => {
    expect(nonePair(askedPair(pairOf(loading.front, loading.rear, [5, 6])))).toMatchObject({
      why: 'band',
      at: 'hands',
      first: ft(3),
      second: ft(3),
      apartM: 0,
    });
    expect(nonePair(askedPair(pairOf(striking.front, striking.rear, [5, 6])))).toMatchObject({
      why: 'band',
      at: 'hands',
    });
  });

  it('says so where it starts or ends out of the band', () => {
    expect(nonePair(askedPair(pairOf(striking.front, striking.rear, [0, 5])))).toMatchObject({
      why: 'band',
      at: 'start',
      searched: 0,
    });
    expect(nonePair(askedPair(pairOf(loading.front, loading.rear, [0, 5])))).toMatchObject({
      why: 'band',
      at: 'goal',
      searched: 0,
    });
  });

  it('says which set has no order by itself, and why', () => {
    const heavy = { ...loading.rear, goal: { ...loading.rear.goal, bricks: { F: 2 } } };
    expect(nonePair(askedPair(pairOf(loading.front, heavy, [-0.5, 6])))).toMatchObject({
      why: 'alone',
      set: 'B',
      none: { rule: 'HOLD' },
    });
  });

  it('says so where a piece is to stay on one of the two', () => {
    const stays = { ...striking.rear, goal: { items: {} } };
    expect(nonePair(askedPair(pairOf(striking.front, stays, [-0.5, 6])))).toMatchObject({
      why: 'asked',
      what: 'oneSided',
    });
  });

  it('says so of a band that is none', () => {
    for (const band of [
      [6, 5],
      [Number.NaN, 5],
    ] as const) {
      expect(nonePair(askedPair(pairOf(loading.front, loading.rear, band)))).toMatchObject({
        why: 'asked',
        what: 'band',
      });
    }
  });

  it('says where the flights cannot be matched', () => {
    // 23 is to go out and 27 to stay where nothing lets it go along.
    const stays = {
      set: { ...rear, highStopM: ft(3.5) },
      start: standsAt(3, { F: 8 }, FLYING),
      goal: { bricks: { F: 8 } },
    };
    const goes = {
      set: front,
      start: standsAt(3, { F: 9, H: 1 }, FLYING),
      goal: { bricks: { F: 9, H: 1 }, height: at(30) },
    };
    expect(nonePair(askedPair(pairOf(goes, stays, [-5, 5])))).toMatchObject({
      why: 'unmatched',
      first: ft(3),
      second: ft(3),
    });
  });

  it('stops, and does not say none, where the bound comes first', () => {
    const plan = askedPair(pairOf(loading.front, loading.rear, [-0.5, 6]), { statesMost: 3 });
    expect('stopped' in plan).toBe(true);
  });

  it('counts bricks once: what one set takes the other does not find', () => {
    const galleries = front.galleries.map((each) => ({ ...each, stock: { F: 12, H: 1 } }));
    const poor = pairOf(
      { ...loading.front, set: { ...front, galleries: galleries.slice(0, 1) } },
      { ...loading.rear, set: { ...rear, galleries: galleries.slice(0, 1) } },
      [-0.5, 6],
    );
    expect(nonePair(askedPair(poor))).toMatchObject({ why: 'alone', set: 'B' });
  });
});
