import { describe, expect, it } from 'vitest';
import type { BayTotal } from '#assessment';
import { blocked, reckoned } from '#findings';
import type { Bay, LoftWell } from '#house';
import { metres, newtons, newtonsPerMetre, pascals } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import { exampleHouse, exampleSet, given, nobodyKnows } from '../example-house.ts';
import { bayOf, floorOf, totalOf } from '../example-structure.ts';

const bay: Bay = {
  id: 'A',
  sets: ['7', '8'],
  verticalLimit: given(newtons(20_000)),
  horizontalLimit: given(newtons(15_000)),
};

const withBays = (bays: readonly BayTotal[], changes: Partial<Bay> = {}): Scene => ({
  house: { bays: [{ ...bay, ...changes }] },
  totals: { bays },
});

const whatIs = (scene: Scene) => found('UNK-001', scene)[0]?.facts['what'];

describe('a bay of the head-block beam', () => {
  it('[STL-001] takes what is at both its limits', () => {
    expect(found('STL-001', withBays([bayOf('planned', 20_000, 15_000)]))).toEqual([]);
  });

  it('[STL-001] stops a newton more downward, and names the set that puts most on it', () => {
    expect(found('STL-001', withBays([bayOf('planned', 20_001, 15_000)]))).toMatchObject([
      {
        level: 'stop',
        measured: { value: 20_001, kind: 'force' },
        limit: { value: 20_000 },
        facts: { carrier: 'bay A, downward', when: 'as planned', sets: { value: 2 }, most: '8' },
      },
    ]);
  });

  it('[STL-001] stops a newton more sideways, in the state that is worst', () => {
    const states = [
      bayOf('planned', 1000, 15_001),
      bayOf('bare', 1000, 2000),
      bayOf('recorded', 1000, 16_000),
    ];
    expect(found('STL-001', withBays(states))).toMatchObject([
      { measured: { value: 16_000 }, facts: { carrier: 'bay A, sideways', when: 'as recorded' } },
    ]);
  });

  it('[STL-002] cautions above nine tenths, and leaves what is too much to STL-001', () => {
    expect(found('STL-002', withBays([bayOf('planned', 18_000, 0)]))).toEqual([]);
    expect(found('STL-002', withBays([bayOf('planned', 18_001, 0)]))).toMatchObject([
      {
        level: 'caution',
        limit: { value: 18_000 },
        facts: { full: { value: 20_000 }, what: 'within the limit then too' },
      },
    ]);
    expect(found('STL-002', withBays([bayOf('planned', 20_001, 0)]))).toEqual([]);
  });

  it('[STL-002] cautions too where the lines of battens all out would pass the limit', () => {
    const withWire = (wireN: number) =>
      found('STL-002', withBays([bayOf('planned', 17_000, 0, { wireN })]));
    expect(withWire(3000)).toEqual([]);
    expect(withWire(3001)).toMatchObject([
      {
        level: 'caution',
        measured: { value: 17_000 },
        facts: { wire: { value: 3001 }, what: 'past the limit then' },
      },
    ]);
  });

  it('[STL-003] takes a set that moves up to the limit, and cautions a newton more', () => {
    expect(found('STL-003', withBays([bayOf('planned', 17_000, 0, { movingN: 20_000 })]))).toEqual(
      [],
    );
    expect(
      found('STL-003', withBays([bayOf('planned', 17_000, 0, { movingN: 20_001 })])),
    ).toMatchObject([
      {
        level: 'caution',
        measured: { value: 20_001 },
        limit: { value: 20_000 },
        limitSource: 'house rule, example',
        facts: { moving: '8', carrier: 'bay A, downward', share: { value: 0.25, kind: 'ratio' } },
      },
    ]);
  });

  it('[STL-003] leaves a bay that is past its limit standing to STL-001', () => {
    const past = withBays([bayOf('planned', 20_001, 0, { movingN: 22_000 })]);
    expect(found('STL-003', past)).toEqual([]);
    expect(found('STL-001', past)).toHaveLength(1);
  });

  it('[UNK-001] misses limits, arbors and the moving share, each once for the house', () => {
    const limits = { verticalLimit: nobodyKnows, horizontalLimit: nobodyKnows };
    expect(whatIs(withBays([bayOf('planned', 1, 1)], limits))).toBe(
      'vertical limit of bay A (nobody looked); horizontal limit of bay A (nobody looked)',
    );
    const unknown = blocked(['carriage of the arbor of set 8']);
    const planned = { ...bayOf('planned', 1, 1), vertical: unknown, horizontal: unknown };
    expect(whatIs(withBays([{ ...planned, moving: unknown }]))).toBe(
      'carriage of the arbor of set 8',
    );
    const still = { ...bayOf('planned', 1, 1), moving: blocked(['moving share']) };
    expect(whatIs(withBays([still]))).toBe('moving share');
  });

  it('[UNK-001] leaves what nobody recorded to the record', () => {
    const unknown = blocked(['stack of set 8']);
    const recorded = { ...bayOf('recorded', 1, 1), vertical: unknown, horizontal: unknown };
    expect(found('UNK-001', withBays([bayOf('planned', 1, 1), recorded]))).toEqual([]);
  });
});

describe('a loft well', () => {
  const well: LoftWell = {
    id: 'SR 1',
    x: metres(-4),
    width: metres(0.3),
    limit: given(newtons(10_000)),
  };
  const carries = (valueN: number, changes: Partial<LoftWell> = {}): Scene => ({
    house: { loftWells: [{ ...well, ...changes }] },
    totals: { wells: [{ well: 'SR 1', when: 'planned', force: totalOf(valueN) }] },
  });

  it('[STL-004] takes its limit, and stops a newton more', () => {
    expect(found('STL-004', carries(10_000))).toEqual([]);
    expect(found('STL-004', carries(10_001))).toMatchObject([
      { level: 'stop', facts: { carrier: 'loft well SR 1' } },
    ]);
  });

  it('[STL-005] cautions above nine tenths', () => {
    expect(found('STL-005', carries(9000))).toEqual([]);
    expect(found('STL-005', carries(9001))).toMatchObject([{ level: 'caution' }]);
    expect(found('STL-005', carries(10_001))).toEqual([]);
  });

  it('[UNK-001] misses its limit', () => {
    expect(whatIs(carries(1, { limit: nobodyKnows }))).toBe(
      'limit of loft well SR 1 (nobody looked)',
    );
  });

  it('[STL-006] notes the lines that stand on no well, with their sets', () => {
    expect(found('STL-006')).toEqual([]);
    const linesOnNoWell = [
      { set: '7', x: metres(1) },
      { set: '7', x: metres(2) },
      { set: '8', x: metres(1) },
    ];
    const otherSets = [{ ...exampleSet, id: '8' }];
    expect(found('STL-006', { totals: { linesOnNoWell }, otherSets })).toMatchObject([
      { level: 'note', at: {}, measured: { value: 3 }, facts: { sets: '7, 8' } },
    ]);
  });
});

describe('the floor of a gallery', () => {
  // 7000 Pa over the floor, 7000 N/m along it, eight courses.
  const carries = (changes: Parameters<typeof floorOf>[0]): Scene => ({
    totals: { floors: [floorOf(changes)] },
  });

  it('[FLR-001] takes what is at each of its limits', () => {
    expect(found('FLR-001', carries({ pressure: reckoned(pascals(7000)) }))).toEqual([]);
    expect(found('FLR-001', carries({ lineLoad: reckoned(newtonsPerMetre(7000)) }))).toEqual([]);
    expect(found('FLR-001', carries({ courses: reckoned(8) }))).toEqual([]);
  });

  it('[FLR-001] stops what is counted there and too much, in each of three ways', () => {
    const what = (changes: Parameters<typeof floorOf>[0]) =>
      found('FLR-001', carries(changes)).map(({ level, facts, at }) => [
        level,
        at.gallery,
        facts['what'],
      ]);
    expect(what({ pressure: reckoned(pascals(7001)) })).toEqual([
      ['stop', 'upper', 'bricks, people and tools over the whole floor'],
    ]);
    expect(what({ lineLoad: reckoned(newtonsPerMetre(7001)) })).toEqual([
      ['stop', 'upper', 'bricks in one row along it'],
    ]);
    expect(what({ courses: reckoned(9) })).toEqual([
      ['stop', 'upper', 'courses of bricks in one row along it'],
    ]);
  });

  it('[FLR-001] names the worst of them, and cautions of what a strike may bring back', () => {
    const floor = {
      when: 'allBack',
      pressure: reckoned(pascals(7001)),
      courses: reckoned(16),
    } as const;
    expect(found('FLR-001', carries(floor))).toMatchObject([
      {
        level: 'caution',
        measured: { value: 16, kind: 'count' },
        facts: { when: 'with every show brick of the house on it', bricks: { value: 1000 } },
      },
    ]);
  });

  it('[FLR-002] cautions above nine tenths as counted, and notes what may come back', () => {
    const near = (when: 'recorded' | 'allBack', valuePa: number) =>
      found('FLR-002', carries({ when, pressure: reckoned(pascals(valuePa)) }));
    expect(near('recorded', 6300)).toEqual([]);
    expect(near('recorded', 6301)).toMatchObject([
      { level: 'caution', facts: { full: { value: 7000 } } },
    ]);
    expect(near('allBack', 6301)).toMatchObject([{ level: 'note' }]);
    expect(near('recorded', 7001)).toEqual([]);
  });

  it('[FLR-002] does not count a whole number of courses as near', () => {
    expect(found('FLR-002', carries({ courses: reckoned(8) }))).toEqual([]);
  });

  it('[UNK-001] misses limits and masses of bricks once for the house, and no record', () => {
    const [first] = exampleHouse.galleries;
    const galleries = first === undefined ? [] : [{ ...first, coursesAllowed: nobodyKnows }];
    expect(whatIs({ ...carries({}), house: { galleries } })).toBe(
      'courses of bricks allowed on upper gallery (nobody looked)',
    );
    const unknown = blocked(['floor length of brick B']);
    expect(whatIs(carries({ when: 'allBack', courses: unknown }))).toBe('floor length of brick B');
    expect(found('UNK-001', carries({ courses: unknown }))).toEqual([]);
  });
});
