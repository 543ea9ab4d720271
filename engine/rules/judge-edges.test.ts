import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { known, type Provenance, unknownValue } from '#house';
import { FOOT, metres, POUND } from '#quantities';
import type { Cue } from '#show';
import { acrossStage } from './across-stage.ts';
import {
  assessmentOf,
  found,
  judgeScene,
  planOf,
  type Scene,
  trimOf,
} from './example-assessment.ts';
import {
  exampleArbor,
  exampleHang,
  exampleHouse,
  exampleRecord,
  exampleSet,
  given,
  nobodyKnows,
  playingTrim,
} from './example-house.ts';
import { AMONG_RULES, HOUSE_RULES, PLAN_RULES, STANDING_RULES } from './in-force.ts';
import { judge } from './judge.ts';
import { byAllKnown, byKnown, lack, sourceOf } from './known-values.ts';
import { isAbove, isBelow, isPastEitherWay, isSameHeight, POUNDS_PER_KILOGRAM } from './limits.ts';
import { raise } from './raise.ts';
import { cueHeights, trimHeights } from './rest-heights.ts';
import { isLack, type SetCase } from './rule.ts';
import { setList, setsBy } from './set-list.ts';
import { fact, knownTerm, term, workedOut } from './show-working.ts';
import { worstBy } from './worst.ts';

const sets = (...ids: readonly string[]) => ids.map((id) => ({ ...exampleSet, id }));

describe('judging a house', () => {
  it('puts what is of the house first, then each set in rail order, its unknowns last', () => {
    const arbor = { ...exampleArbor, massLimit: nobodyKnows };
    const lineSet = { ...exampleSet, arbor };
    const scene: Scene = {
      lineSet,
      rules: { sagLimit: nobodyKnows },
      otherSets: [{ ...lineSet, id: '8', arbor: { ...arbor, topClearance: nobodyKnows } }],
    };
    const text = judgeScene(scene).map(({ code, at }) => `${code} ${at.set ?? 'house'}`);
    expect(text).toEqual(['STA-005 house', 'UNK-001 house', 'BAL-008 7', 'UNK-001 7', 'UNK-001 8']);
    const unknown = found('UNK-001', scene).map(({ facts }) => facts['what']);
    expect(unknown).toEqual([
      'limit of the sag between lines (nobody looked)',
      'mass limit of the arbor (nobody looked)',
      'clearance above the arbor (nobody looked)',
    ]);
  });

  it('judges no age of a record unless a moment is given', () => {
    const assessment = {
      sets: [assessmentOf({ record: exampleRecord })],
      bricks: [],
      totals: { bays: [], wells: [], floors: [], linesOnNoWell: [] },
    };
    const state = { sets: { '7': exampleRecord }, galleries: {} } as never;
    const codes = (options?: { readonly nowMs?: number }) =>
      judge(exampleHouse, null, state, assessment, options).map(({ code }) => code);
    expect(codes()).not.toContain('STA-002');
    expect(codes({})).not.toContain('STA-002');
    expect(codes({ nowMs: Date.UTC(2030, 0, 1) })).toContain('STA-002');
  });

  it('has every rule in force once', () => {
    expect(new Set(HOUSE_RULES).size).toBe(HOUSE_RULES.length);
    const ofSets = [...STANDING_RULES, ...AMONG_RULES, ...PLAN_RULES];
    expect(new Set(ofSets).size).toBe(ofSets.length);
  });

  it('takes the source of its rule where a finding has none of its own', () => {
    expect(raise('BAL-001', { at: { set: '7' } })).toEqual({
      code: 'BAL-001',
      level: 'stop',
      at: { set: '7' },
      measured: null,
      limit: null,
      limitSource: 'trade formula; limit of the lock by house rule',
      facts: {},
      working: null,
    });
  });

  it('refuses a code that no rule has', () => {
    expect(() => raise('BAL-999' as never, { at: {} })).toThrow('rule BAL-999 is declared');
  });

  it('tells a lack from a finding', () => {
    expect(isLack(lack('mass', 'all'))).toBe(true);
    expect(isLack(raise('BAL-001', { at: {} }))).toBe(false);
  });
});

describe('numbers and their limits', () => {
  it('are one number within a share of a thousand millionth of the larger, or of one', () => {
    expect(isAbove(1e6 + 0.0009, 1e6)).toBe(false);
    expect(isAbove(1e6 + 0.0011, 1e6)).toBe(true);
    expect(isAbove(1e-10, 0)).toBe(false);
    expect(isAbove(1e-9, 0)).toBe(false);
    expect(isAbove(2e-9, 0)).toBe(true);
    expect(isAbove(-1e6 + 0.0009, -1e6)).toBe(false);
    expect(isAbove(-1e6, -1e6 - 0.0011)).toBe(true);
    expect(isBelow(1, 1)).toBe(false);
    expect(isBelow(0.999, 1)).toBe(true);
    expect(isBelow(1.001, 1)).toBe(false);
  });

  it('are one height within a micrometre', () => {
    expect(isSameHeight(5, 5 + 9e-7)).toBe(true);
    expect(isSameHeight(5 + 9e-7, 5)).toBe(true);
    expect(isSameHeight(5, 5 + 2e-6)).toBe(false);
    expect(isSameHeight(5 + 2e-6, 5)).toBe(false);
    // Just the micrometre itself, in numbers that a binary machine holds exactly.
    expect(isSameHeight(0, 1e-6)).toBe(true);
  });

  it('are past a limit either way by their size', () => {
    expect(isPastEitherWay(-200.1, 200)).toBe(true);
    expect(isPastEitherWay(200.1, 200)).toBe(true);
    expect(isPastEitherWay(-200, 200)).toBe(false);
  });

  it('go from kilograms to pounds by the exact ratio', () => {
    // 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959).
    expect(POUNDS_PER_KILOGRAM * POUND).toBeCloseTo(1, 15);
    expect(POUNDS_PER_KILOGRAM).toBeCloseTo(2.204_622_621_8, 9);
  });

  it('are the worst by their size, the first of equals', () => {
    expect(worstBy([1, 3, 2], (one) => one)).toBe(3);
    expect(worstBy(['ab', 'cd', 'e'], ({ length }) => length)).toBe('ab');
    expect(worstBy([], () => 0)).toBeUndefined();
  });
});

describe('where a thing lies across the stage', () => {
  it('is on the centre line within a millimetre', () => {
    expect(acrossStage(0.000_9)).toEqual({ distance: 'on', side: 'the centre line' });
    expect(acrossStage(-0.000_9)).toEqual({ distance: 'on', side: 'the centre line' });
    expect(acrossStage(0.001)).toEqual({
      distance: { value: 0.001, kind: 'length' },
      side: 'stage left',
    });
    expect(acrossStage(-2)).toEqual({
      distance: { value: 2, kind: 'length' },
      side: 'stage right',
    });
  });
});

describe('sets in few words', () => {
  const house = { ...exampleHouse, lineSets: sets('1', '2', '3', '4', '5', '6', 'D1') };
  const list = (...ids: readonly string[]) => setList(house, sets(...ids));

  it('says from where to where from three in a row on', () => {
    expect(list('1', '2')).toBe('1, 2');
    expect(list('1', '2', '3')).toBe('1 to 3');
    expect(list('2', '3', '4', '6', 'D1')).toBe('2 to 4, 6, D1');
    expect(list('1', '2', '3', '4', '5', '6', 'D1')).toBe('1 to D1');
    expect(list('3')).toBe('3');
    expect(list()).toBe('');
  });

  it('goes by the rail, whatever order it is given', () => {
    expect(list('4', '2', '3')).toBe('2 to 4');
  });

  it('groups sets by a value, and leaves out one without', () => {
    const groups = setsBy(house, ({ id }) => (id === 'D1' ? null : Number(id) % 2));
    expect([...groups].map(([value, found]) => [value, found.map(({ id }) => id)])).toEqual([
      [1, ['1', '3', '5']],
      [0, ['2', '4', '6']],
    ]);
  });
});

describe('values with somebody behind them', () => {
  const by = (provenance: Provenance) => {
    const value = known(1, provenance);
    return value.known ? sourceOf(value) : '';
  };

  it.each([
    ['weighed', 'weighed'],
    ['measured', 'measured'],
    ['published', 'published'],
    ['calculated', 'calculated'],
    ['estimated', 'estimated'],
    ['houseRule', 'house rule'],
    ['commonPractice', 'common practice, no source'],
    ['assumption', 'assumption'],
    ['invented', 'invented'],
  ] as const)('say %s as words', (basis, words) => {
    expect(by({ basis })).toBe(words);
  });

  it('say source, person and day where they are known', () => {
    expect(by({ basis: 'weighed', source: 'scale', by: 'loader', on: '2026-11-25' })).toBe(
      'weighed, scale, loader, 2026-11-25',
    );
    expect(by({ basis: 'weighed', by: 'loader' })).toBe('weighed, loader');
  });

  it('are missed by name, with the reason where somebody gave one', () => {
    const none = () => [];
    expect(byKnown(unknownValue(), 'mass', 'all', none)).toEqual([
      { lacks: 'mass', blocks: 'all', of: 'set' },
    ]);
    expect(byKnown(unknownValue('no scale'), 'mass', 'all', none, 'house')).toEqual([
      { lacks: 'mass (no scale)', blocks: 'all', of: 'house' },
    ]);
  });

  it('are all named where several are missing, and judged only together', () => {
    const judged: unknown[] = [];
    const both = (one: Parameters<typeof byKnown>[0], other: Parameters<typeof byKnown>[0]) =>
      byAllKnown({ a: [one, 'first'], b: [other, 'second'] }, 'all', (values) => {
        judged.push(values);
        return [];
      });
    expect(both(unknownValue(), unknownValue('no scale'))).toEqual([
      { lacks: 'first', blocks: 'all', of: 'set' },
      { lacks: 'second (no scale)', blocks: 'all', of: 'set' },
    ]);
    expect(both(given(1), unknownValue())).toEqual([{ lacks: 'second', blocks: 'all', of: 'set' }]);
    expect(judged).toEqual([]);
    expect(both(given(1), given(2))).toEqual([]);
    expect(judged).toEqual([{ a: 1, b: 2 }]);
  });
});

describe('workings', () => {
  it('leave out a source, a limit and an omission that are not given', () => {
    const result = term('U', 'imbalance', 5, 'force');
    expect(result).toEqual({
      symbol: 'U',
      meaning: 'imbalance',
      value: { value: 5, kind: 'force' },
    });
    expect(Object.keys(result)).not.toContain('source');
    const bare = workedOut('t', 'f', [], result, { source: 's' });
    expect(bare).toEqual({ title: 't', formula: 'f', terms: [], result, limit: null, source: 's' });
    expect(Object.keys(bare)).not.toContain('omits');
    const limit = { value: { value: 9, kind: 'force' }, source: 'house' } as const;
    expect(workedOut('t', 'f', [], result, { source: 's', limit, omits: 'wear' })).toMatchObject({
      limit,
      omits: 'wear',
    });
  });

  it('keep a value that nobody knows as one', () => {
    expect(knownTerm('m', 'mass', nobodyKnows, 'mass')).toEqual({
      symbol: 'm',
      meaning: 'mass',
      value: null,
    });
    expect(knownTerm('m', 'mass', given(3), 'mass')).toEqual({
      symbol: 'm',
      meaning: 'mass',
      value: { value: 3, kind: 'mass' },
      source: 'house rule, example',
    });
    expect(fact(nobodyKnows, 'mass')).toBe('not known');
    expect(fact(given(3), 'mass')).toEqual({ value: 3, kind: 'mass' });
  });
});

describe('where a set comes to rest', () => {
  const caseOf = (scene: Scene, cues: readonly Cue[] = []): SetCase =>
    ({ set: assessmentOf(scene), show: { cues } }) as unknown as SetCase;

  const cue = (number: string, fromM: number, toM: number, set = '7'): Cue => ({
    number,
    set,
    from: metres(fromM),
    to: metres(toM),
    duration: null,
    releases: false,
  });

  it('is at the ends of its cues, each height once, by the cue that comes first', () => {
    const cues = [cue('1', 2, 10), cue('2', 10, 5), cue('3', 1, 3, '8'), cue('4', 5, 2)];
    expect(cueHeights(caseOf({}, cues))).toEqual([
      { name: 'before cue 1', heightM: 2 },
      { name: 'after cue 1', heightM: 10 },
      { name: 'after cue 2', heightM: 5 },
    ]);
    expect(cueHeights({ ...caseOf({}), show: null })).toEqual([]);
  });

  it('is at the trims of its plan, and where steel holds it', () => {
    const trims = [trimOf(playingTrim, [10, 0])];
    expect(trimHeights(caseOf({ plan: { trims } }))).toEqual({
      heights: [{ name: 'playing', heightM: 10 }],
      lacks: [],
    });
    const hang = { ...exampleHang, deadHungAt: given(metres(4)) };
    expect(trimHeights(caseOf({ hang, plan: null })).heights).toEqual([
      { name: 'playing', heightM: 10 },
      { name: 'dead-hung', heightM: 4 },
    ]);
    expect(trimHeights(caseOf({ hang: null }))).toEqual({ heights: [], lacks: [] });
  });

  it('is not known at a trim that is no batten height, or of no known height', () => {
    const trims = [
      { ...playingTrim, name: 'lens', reference: 'lens' as const },
      { ...playingTrim, name: 'unknown', height: nobodyKnows },
    ];
    const hang = { ...exampleHang, trims, deadHungAt: nobodyKnows };
    expect(trimHeights(caseOf({ hang, plan: null }))).toEqual({
      heights: [],
      lacks: [
        { lacks: 'height of the batten at lens trim', blocks: 'trims of the set', of: 'set' },
        { lacks: 'height of the batten at unknown trim', blocks: 'trims of the set', of: 'set' },
      ],
    });
  });
});

describe('which sets a rule is for', () => {
  it('[LFT-001] is none whose lines cannot be worked out', () => {
    const structure = blocked(['stretch of the lift lines']);
    const codes = judgeScene({ set: { structure } }).map(({ code }) => code);
    expect(codes).toEqual(['STA-005', 'UNK-001', 'BAL-008']);
  });

  it('[BAL-001] is none that is empty, unplanned or held by steel', () => {
    const plan = { trims: [trimOf(playingTrim, [10, 900])] };
    expect(found('BAL-001', { plan })).toHaveLength(1);
    expect(found('BAL-001', { plan: null })).toEqual([]);
    expect(found('BAL-001', { hang: null })).toEqual([]);
    const planned = reckoned(planOf(plan));
    expect(found('BAL-001', { hang: null, set: { plan: planned } })).toEqual([]);
    const hang = { ...exampleHang, deadHungAt: given(metres(10 * FOOT)) };
    expect(found('BAL-001', { plan, hang })).toEqual([]);
  });
});
