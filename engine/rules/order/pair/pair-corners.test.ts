/** Corners of a pair: half-done work of every kind, hands and lines in its path, strange steps. */
import { describe, expect, it } from 'vitest';
import type { PairStep, Standing, Step } from '#state';
import {
  add,
  attach,
  BARE,
  bullLine,
  DROPS,
  ease,
  fly,
  plantOf,
  RUN,
  remove,
  standingAt,
} from '../example-order.ts';
import {
  close,
  flownPair,
  HEADER,
  of7,
  of8,
  type PairTrial,
  pairBreach,
  pairRules,
  setPhysics,
  together,
  triedPair,
} from './example-pair.ts';

const CHECK = { faults: 'check' } as const;
const countOf = (rule: string, trial: PairTrial): number =>
  pairRules(trial).filter((each) => each === rule).length;
const allOf = (trial: PairTrial) => {
  const { broken, alsoBroken } = triedPair(trial);
  return broken === null ? [] : [broken, ...alsoBroken];
};

describe('other work on a pair that is half done', () => {
  const seven: Standing = { ...BARE, items: HEADER };

  it.each<[Step['act'], Step, Partial<Standing>]>([
    ['add', add(1), { closed: DROPS }],
    ['remove', remove(1), { closed: DROPS }],
    ['fly', fly(2), { closed: [RUN] }],
    ['unrig', { act: 'unrig', restraint: bullLine() }, { restraints: [bullLine()] }],
    ['hangOnSteel', { act: 'hangOnSteel' }, {}],
    ['takeOffSteel', { act: 'takeOffSteel' }, { service: 'deadHung' }],
    ['ease', ease(10, false), { closed: [RUN] }],
  ])('[ORD-042] refuses to %s', (_act, step, changes) => {
    const starts = [seven, { ...BARE, ...changes }] as const;
    expect(countOf('ORD-042', { starts, steps: [of8(step)] })).toBe(1);
  });

  it('[ORD-043] is asked again when a second piece is begun on the same set', () => {
    // 200 N of header in all, which the lock holds, and then 100 N of lamp as well.
    const shared = [
      { first: 'header', second: 'header' },
      { first: 'lamp', second: 'lamp' },
    ];
    const pair = {
      first: { physics: setPhysics('7', 100), start: standingAt(5, 0, { items: HEADER }) },
      second: { physics: setPhysics('8', 100), start: standingAt(5, 0) },
      shared,
    };
    expect(pairRules({ pair })).toEqual([]);
    const breach = pairBreach('ORD-043', { pair, steps: [of7(attach('lamp'))] });
    expect(breach).toMatchObject({ step: 0, byN: 100, finding: { measured: { value: 300 } } });
  });
});

describe('a flight of one alone', () => {
  it('[ORD-040] leaves the band on its way as a flight of both would', () => {
    const rules = pairRules({ starts: flownPair(5, 7), steps: [of7(fly(3))] });
    expect(rules).toEqual(expect.arrayContaining(['ORD-040', 'ORD-041']));
    expect(rules).not.toContain('ORD-039');
  });
});

describe('one of a pair stops, further', () => {
  const numbers = (trial: PairTrial) =>
    triedPair(trial).oneStops.map(({ all, nothing }) => ({ all, nothing }));
  const at = (imbalance: number, height: number) => ({ imbalance, at: height });

  it('[ORD-045] is heaviest where a way in ends', () => {
    // Set 7 without the header: 40 − 10 (h − 1) − 300; set 8: 40 − 10 (h − 1) − 200.
    expect(numbers({ starts: flownPair(5, 7), steps: [together(4, 6)] })).toEqual([
      { all: at(210, 4), nothing: at(-300, 5) },
      { all: at(290, 6), nothing: at(-220, 7) },
    ]);
  });

  it('[ORD-045] counts what hangs there of one set alone', () => {
    const items = { ...HEADER, lamp: 'flying' } as const;
    const starts = [standingAt(5, 3, { items, closed: [RUN] }), flownPair(5, 7)[1]] as const;
    expect(numbers({ starts, steps: [together(6, 8)] })[0]).toEqual({
      all: at(250, 5),
      nothing: at(-260, 6),
    });
  });

  it('[ORD-045] follows a doubt that grows on the way', () => {
    const { at: asListed } = plantOf({ pieces: { header: { weightN: 250 } } });
    const growing = (standing: Standing) => ({
      ...asListed(standing),
      doubtN: 20 * standing.height,
    });
    const physics = (set: string) => setPhysics(set, 250, { at: growing });
    const [seven, eight] = flownPair(5, 7);
    const pair = {
      first: { physics: physics('7'), start: seven },
      second: { physics: physics('8'), start: eight },
    };
    // 200 and 100 N at 5 m, 190 and 120 N at 6 m; −300 and −100, −310 and −120 N with nothing.
    const [first] = triedPair({
      pair,
      steps: [together(6, 8)],
      options: { doubt: 'worst' },
    }).oneStops;
    expect(first?.all.at).toBe(6);
    expect(first?.all.imbalance).toBeCloseTo(310, 9);
    expect(first?.nothing.imbalance).toBeCloseTo(-430, 9);
  });

  it('[ORD-045] has one height of a set that stands on its high stop meanwhile', () => {
    const trial = { starts: flownPair(19, 19), steps: [together(19, 18)] };
    expect(numbers(trial)[0]).toEqual({ all: at(60, 19), nothing: at(-440, 19) });
  });

  it('[ORD-045] counts a bull line against what is left with nothing', () => {
    const restraints = [bullLine()];
    const [seven, eight] = flownPair(5, 7);
    const starts = [
      { ...seven, closed: [], restraints },
      { ...eight, closed: [] },
    ] as const;
    const trial: PairTrial = { starts, steps: [together(6, 8)], options: CHECK };
    const found = allOf(trial).filter(({ rule }) => rule === 'ORD-045');
    expect(found.map(({ finding, byN }) => [finding.at.set, byN])).toEqual([['8', 80]]);
    expect(triedPair(trial).assumed.join()).not.toContain('keep pace');
  });
});

describe('what the two together take on trust', () => {
  it('is nothing of two bare sets on their stops', () => {
    expect(triedPair({}).assumed).toEqual([]);
  });

  it('is said in full of a flight through a closed run', () => {
    const trial = { starts: flownPair(5, 7), steps: [together(6, 8)], options: CHECK };
    expect(triedPair(trial).assumed).toEqual([
      'the lock grips what its limit says, and its rope is dry',
      'anywhere in the band each set carries the share of a piece on both that is listed for it',
      'both battens keep pace on one word: the closed zone is empty, ' +
        'for if one stops and the other goes on, one of them has all of the piece',
    ]);
  });

  it('[ORD-046] is the empty zone, in a closed run only', () => {
    const small = (closed: Standing['closed']): PairTrial => {
      const start = standingAt(5, 0, { items: HEADER, closed });
      return {
        pair: {
          first: { physics: setPhysics('7', 80), start },
          second: { physics: setPhysics('8', 150), start },
        },
        steps: [of7(attach('lamp'))],
        options: CHECK,
      };
    };
    expect(allOf(small([RUN]))).toEqual([]);
    expect(triedPair(small([RUN])).assumed.at(-1)).toBe(
      'the closed zone is empty, for if a piece is let go on one set the other has all of it',
    );
    expect(triedPair(small([])).assumed.join()).not.toContain('let go');
  });

  it('does not hide what is to be seen of one set alone', () => {
    const lands = plantOf({
      pieces: { header: { weightN: 300, contactM: 4 } },
      more: { set: '7' },
    });
    const [start, eight] = flownPair(5, 7);
    const pair = {
      first: { physics: lands, start },
      second: { physics: setPhysics('8', 200), start: eight },
    };
    expect(triedPair({ pair, steps: [together(4, 6)] }).proofsDue).toEqual([
      {
        step: 0,
        proof: 'inch test before it is flown: an inch out, an inch in, then lock and look',
      },
      {
        step: 0,
        proof: 'watch the landing from its own level, and stop on the mark, no lower',
      },
    ]);
  });
});

describe('galleries of a pair', () => {
  it('[ORD-015] counts the shelf of the very gallery', () => {
    const starts = [standingAt(9, 0), standingAt(9, 0)] as const;
    const steps = [of7(close('mid')), of7(add(3, 'B', 'mid')), of8(add(3, 'B', 'mid'))];
    expect(countOf('ORD-015', { starts, steps })).toBe(1);
    expect(pairBreach('ORD-015', { starts, steps })).toMatchObject({
      step: 2,
      finding: { measured: { value: 3 }, limit: { value: 2 }, facts: { gallery: 'Mid gallery' } },
    });
  });

  it('[ORD-044] names one by its id that the other set’s list does not have', () => {
    const only = (id: string) => plantOf().galleries.filter((each) => each.id === id);
    const zone = (gallery: string) => [{ zone: 'drop', gallery }] as const;
    const pair = {
      first: {
        physics: setPhysics('7', 300, { galleries: only('upper') }),
        start: standingAt(1, 0, { closed: zone('upper') }),
      },
      second: {
        physics: setPhysics('8', 200, { galleries: only('mid') }),
        start: standingAt(9, 0, { closed: zone('mid') }),
      },
    };
    const steps = [of7(add(1)), of8(add(1, 'B', 'mid'))];
    expect(pairBreach('ORD-044', { pair, steps }).finding.facts).toMatchObject({
      gallery: 'Mid gallery',
      other: 'upper',
    });
  });
});

describe('an order that ends before it begins', () => {
  const strange: PairStep = { set: '9', step: attach('lamp') };

  it('[ORD-107] by the start of the first as well as of the second', () => {
    const { refused, sets } = triedPair({ starts: [standingAt(30, 0), BARE] });
    expect(refused).toMatchObject({ step: -1, refusal: { code: 'ORD-107' } });
    expect(sets.first.states).toEqual([]);
    expect(sets.second.states).toHaveLength(1);
  });

  it('[ORD-107] comes before a step that is for neither', () => {
    const { refused } = triedPair({ starts: [BARE, standingAt(30, 0)], steps: [strange] });
    expect(refused).toMatchObject({ step: -1, refusal: { code: 'ORD-107' } });
  });

  it('[ORD-111] replays nothing after a first step that is for neither', () => {
    const { refused, sets } = triedPair({ steps: [strange, of7(attach('header'))] });
    expect(refused?.step).toBe(0);
    expect([sets.first.states.length, sets.second.states.length]).toEqual([1, 1]);
  });

  it('[ORD-111] judges nothing of the step that is for neither', () => {
    const steps = [of7(attach('header')), strange];
    expect(triedPair({ steps }).refused?.step).toBe(1);
    expect(pairRules({ steps })).toEqual([]);
  });
});
