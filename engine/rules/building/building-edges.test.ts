import { describe, expect, it } from 'vitest';
import type { BayTotal } from '#assessment';
import { blocked, reckoned } from '#findings';
import type { Bay, LoftWell } from '#house';
import { kilograms, metres, newtons, newtonsPerMetre, pascals } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
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

const well: LoftWell = {
  id: 'SR 1',
  x: metres(-4),
  width: metres(0.3),
  limit: given(newtons(10_000)),
};

const floors = (...changes: readonly Parameters<typeof floorOf>[0][]): Scene => ({
  totals: { floors: changes.map(floorOf) },
});

const withGallery = (changes: Partial<(typeof exampleHouse.galleries)[number]>): Scene => {
  const [first] = exampleHouse.galleries;
  return { house: { galleries: first === undefined ? [] : [{ ...first, ...changes }] } };
};

describe('what the building carries, in full', () => {
  it('[STL-001] shows the set that puts most on it, and all others', () => {
    expect(
      full('STL-001', withBays([bayOf('planned', 20_400, 0, { wireN: 600 })])),
    ).toMatchInlineSnapshot(`
      "STL-001 stop at the house
      measured 20400 force, limit 20000 force (house rule, example)
      - carrier: bay A, downward
      - when: as planned
      - sets: 2 count
      - share: 1.02 ratio
      - full: 20000 force
      - most: 8
      - mostForce: 15300 force
      - wire: 600 force
      - what: past the limit then
      load of bay A, downward: m + r
        m = 15300 force: set 8, which puts most on it
        r = 5100 force: all other sets, hung or bare
        F = 20400 force: load of bay A, downward, as planned
        limit 20000 force (house rule, example)
        by trade formulas C39, C41: Σ g · (arbor + hand line)
        leaves out the blocks and the steel itself, and pulls on hand lines, which add to it"
    `);
    expect(full('STL-001', withBays([bayOf('bare', 0, 15_200)]))).toMatchInlineSnapshot(`
      "STL-001 stop at the house
      measured 15200 force, limit 15000 force (house rule, example)
      - carrier: bay A, sideways
      - when: with nothing hung
      - sets: 2 count
      - share: 1.01333333 ratio
      - full: 15000 force
      - most: 8
      - mostForce: 11400 force
      - wire: 0 force
      - what: past the limit then
      load of bay A, sideways: m + r
        m = 11400 force: set 8, which puts most on it
        r = 3800 force: all other sets, hung or bare
        F = 15200 force: load of bay A, sideways, with nothing hung
        limit 15000 force (house rule, example)
        by trade formulas C39, C41: Σ g · arbor / r
        leaves out the blocks and the steel itself, and pulls on hand lines, which add to it"
    `);
  });

  it('[STL-002] shows nine tenths as the limit, or the lines as what would pass it', () => {
    expect(full('STL-002', withBays([bayOf('recorded', 18_400, 0)]))).toMatchInlineSnapshot(`
      "STL-002 caution at the house
      measured 18400 force, limit 18000 force (90 % of the limit: common practice, no
          source)
      - carrier: bay A, downward
      - when: as recorded
      - sets: 2 count
      - share: 0.92 ratio
      - full: 20000 force
      - most: 8
      - mostForce: 13800 force
      - wire: 0 force
      - what: within the limit then too
      load of bay A, downward: m + r
        m = 13800 force: set 8, which puts most on it
        r = 4600 force: all other sets, hung or bare
        F = 18400 force: load of bay A, downward, as recorded
        limit 18000 force (90 % of the limit: common practice, no source)
        by trade formulas C39, C41: Σ g · (arbor + hand line)
        leaves out the blocks and the steel itself, and pulls on hand lines, which add to it"
    `);
    const wire = { ...bayOf('planned', 18_400, 0), wire: blocked(['mass of the lines']) };
    expect(full('STL-002', withBays([wire]))).toContain(
      '- wire: an unknown force\n- what: not judged',
    );
  });

  it('[STL-003] shows the set that moves', () => {
    const moving = bayOf('planned', 17_000, 0, { movingN: 20_400 });
    expect(full('STL-003', withBays([moving]))).toMatchInlineSnapshot(`
      "STL-003 caution at the house
      measured 20400 force, limit 20000 force (house rule, example)
      - carrier: bay A, downward
      - moving: 8
      - share: 0.25 ratio"
    `);
    const rules = { movingShare: nobodyKnows };
    expect(full('STL-003', { ...withBays([moving]), rules })).toContain('- share: not known');
  });

  it('[STL-004] [STL-005] show the loft well', () => {
    const carries = (valueN: number): Scene => ({
      house: { loftWells: [well] },
      totals: { wells: [{ well: 'SR 1', when: 'planned', force: totalOf(valueN) }] },
    });
    expect(full('STL-004', carries(10_400))).toMatchInlineSnapshot(`
      "STL-004 stop at the house
      measured 10400 force, limit 10000 force (house rule, example)
      - carrier: loft well SR 1
      - when: as planned
      - sets: 2 count
      - share: 1.04 ratio
      - full: 10000 force
      - most: 8
      - mostForce: 7800 force
      - wire: 0 force
      - what: past the limit then
      load of loft well SR 1: m + r
        m = 7800 force: set 8, which puts most on it
        r = 2600 force: all other sets, hung or bare
        F = 10400 force: load of loft well SR 1, as planned
        limit 10000 force (house rule, example)
        by trade formula C42: Σ pull of the lines at their loft blocks
        leaves out the blocks and the steel itself, and pulls on hand lines, which add to it"
    `);
    expect(full('STL-005', carries(9200))).toMatchInlineSnapshot(`
      "STL-005 caution at the house
      measured 9200 force, limit 9000 force (90 % of the limit: common practice, no source)
      - carrier: loft well SR 1
      - when: as planned
      - sets: 2 count
      - share: 0.92 ratio
      - full: 10000 force
      - most: 8
      - mostForce: 6900 force
      - wire: 0 force
      - what: within the limit then too
      load of loft well SR 1: m + r
        m = 6900 force: set 8, which puts most on it
        r = 2300 force: all other sets, hung or bare
        F = 9200 force: load of loft well SR 1, as planned
        limit 9000 force (90 % of the limit: common practice, no source)
        by trade formula C42: Σ pull of the lines at their loft blocks
        leaves out the blocks and the steel itself, and pulls on hand lines, which add to it"
    `);
  });

  it('[STL-006] counts the lines and lists the sets', () => {
    const linesOnNoWell = [{ set: '7', x: metres(1) }];
    const otherSets = [{ ...exampleSet, id: '8' }];
    expect(full('STL-006', { totals: { linesOnNoWell }, otherSets })).toMatchInlineSnapshot(`
      "STL-006 note at the house
      measured 1 count, limit none (house rule)
      - sets: 7"
    `);
  });

  it('[FLR-001] [FLR-002] show what lies on the floor', () => {
    expect(full('FLR-001', floors({ pressure: reckoned(pascals(7700)) }))).toMatchInlineSnapshot(`
      "FLR-001 stop at gallery upper
      measured 7700 pressure, limit 7000 pressure (house rule, example)
      - gallery: upper gallery
      - when: as counted
      - what: bricks, people and tools over the whole floor
      - full: 7000 pressure
      - bricks: 1000 mass"
    `);
    const back = { when: 'allBack', lineLoad: reckoned(newtonsPerMetre(6650)) } as const;
    expect(
      full('FLR-002', floors({ ...back, bricks: blocked(['mass of brick C']) })),
    ).toMatchInlineSnapshot(`
      "FLR-002 note at gallery upper
      measured 6650 forcePerLength, limit 6300 forcePerLength (90 % of the limit: common
          practice, no source)
      - gallery: upper gallery
      - when: with every show brick of the house on it
      - what: bricks in one row along it
      - full: 7000 forcePerLength
      - bricks: not known"
    `);
  });
});

describe('a bay, where several things are wrong or not known', () => {
  it('[STL-001] judges each bay by its own totals', () => {
    const other = { ...bayOf('planned', 30_000, 0), bay: 'B' };
    expect(found('STL-001', withBays([bayOf('planned', 1000, 0), other]))).toEqual([]);
    expect(found('STL-003', withBays([bayOf('planned', 1000, 0), other]))).toEqual([]);
  });

  it('[STL-001] judges nothing where no total is known, and names no set where none is', () => {
    const unknown = { ...bayOf('planned', 0, 0), vertical: blocked(['arbor of set 8']) };
    expect(found('STL-001', withBays([unknown]))).toEqual([]);
    const empty = reckoned({ id: 'A', sets: [], value: newtons(20_001), dynamic: newtons(0) });
    const [finding] = found('STL-001', withBays([{ ...bayOf('planned', 0, 0), vertical: empty }]));
    expect(finding?.facts).toMatchObject({ most: 'none', mostForce: { value: 0 } });
    expect(finding?.working?.terms[0]?.meaning).toBe('set none, which puts most on it');
  });

  it('[STL-001] takes the heaviest of the states that are known', () => {
    const unknown = { ...bayOf('bare', 0, 0), vertical: blocked(['arbor of set 8']) };
    const scene = withBays([unknown, bayOf('planned', 20_001, 0), bayOf('recorded', 20_001, 0)]);
    expect(found('STL-001', scene)).toMatchObject([{ facts: { when: 'as planned' } }]);
  });

  it('[UNK-001] says what a missing limit or total blocks', () => {
    expect(missed(withBays([bayOf('planned', 1, 1)], { verticalLimit: nobodyKnows }))).toBe(
      'vertical limit of bay A (nobody looked) | load of bay A, downward',
    );
    const unknown = { ...bayOf('bare', 0, 0), horizontal: blocked(['arbor of set 8']) };
    expect(missed(withBays([unknown]))).toBe('arbor of set 8 | load of bay A, sideways');
  });

  it('[UNK-001] misses what nobody knows of a set that moves, of its own bay as planned', () => {
    const still = { moving: blocked(['moving share']) };
    expect(missed(withBays([{ ...bayOf('planned', 1, 1), ...still }]))).toBe(
      'moving share | bays with a set moving',
    );
    expect(missed(withBays([{ ...bayOf('bare', 1, 1), ...still }]))).toBe('');
    expect(missed(withBays([{ ...bayOf('planned', 1, 1), ...still, bay: 'B' }]))).toBe('');
  });

  it('[STL-003] judges a set that moves sideways by the sideways limit', () => {
    const moving = {
      ...bayOf('planned', 1000, 1000),
      moving: reckoned({ set: '8', vertical: newtons(15_500), horizontal: newtons(15_500) }),
    };
    expect(found('STL-003', withBays([moving]))).toMatchObject([
      { facts: { carrier: 'bay A, sideways' }, limit: { value: 15_000 } },
    ]);
  });

  it('[STL-003] says what is furthest past its limit, of both ways and of all states', () => {
    const moving = (verticalN: number, horizontalN: number) => ({
      moving: reckoned({
        set: '8',
        vertical: newtons(verticalN),
        horizontal: newtons(horizontalN),
      }),
    });
    // 22 of 20 kN are 10 % past; 16 of 15 kN are 7 % past, and 18 of 15 kN 20 %.
    const both = { ...bayOf('planned', 1000, 1000), ...moving(22_000, 16_000) };
    expect(found('STL-003', withBays([both]))).toMatchObject([
      { facts: { carrier: 'bay A, downward' } },
    ]);
    const side = { ...bayOf('planned', 1000, 1000), ...moving(22_000, 18_000) };
    expect(found('STL-003', withBays([side]))).toMatchObject([
      { facts: { carrier: 'bay A, sideways' } },
    ]);
    const bare = { ...bayOf('bare', 1000, 1000), ...moving(23_000, 0) };
    expect(found('STL-003', withBays([both, bare]))).toMatchObject([
      { measured: { value: 23_000 } },
    ]);
  });

  it('[STL-003] judges nothing without a limit, a total, or a set that moves', () => {
    const moving = bayOf('planned', 1000, 0, { movingN: 30_000 });
    const unlimited = { verticalLimit: nobodyKnows };
    expect(found('STL-003', withBays([moving], unlimited))).toEqual([]);
    const unknown = blocked(['arbor of set 8']);
    expect(found('STL-003', withBays([{ ...moving, vertical: unknown }]))).toEqual([]);
    expect(found('STL-003', withBays([{ ...moving, moving: unknown }]))).toEqual([]);
    expect(found('STL-003', withBays([]))).toEqual([]);
  });

  it('[STL-003] judges the state in which the set that moves is known', () => {
    const unknown = { ...bayOf('bare', 1000, 0), moving: blocked(['moving share']) };
    const moving = bayOf('planned', 1000, 0, { movingN: 30_000 });
    expect(found('STL-003', withBays([unknown, moving]))).toHaveLength(1);
  });

  it('[STL-003] still judges a bay that is just at its limit standing', () => {
    const moving = bayOf('planned', 20_000, 0, { movingN: 20_001 });
    expect(found('STL-003', withBays([moving]))).toHaveLength(1);
  });
});

describe('loft wells and floors, where several are', () => {
  it('[STL-004] judges each loft well by its own lines', () => {
    const scene: Scene = {
      house: { loftWells: [well, { ...well, id: 'SR 2' }] },
      totals: {
        wells: [
          { well: 'SR 1', when: 'planned', force: totalOf(1000) },
          { well: 'SR 2', when: 'planned', force: totalOf(10_001) },
        ],
      },
    };
    expect(found('STL-004', scene)).toMatchObject([{ facts: { carrier: 'loft well SR 2' } }]);
  });

  it('[UNK-001] says what a missing limit of a well blocks', () => {
    const house = { loftWells: [{ ...well, limit: nobodyKnows }] };
    expect(missed({ house })).toBe(
      'limit of loft well SR 1 (nobody looked) | load of loft well SR 1',
    );
  });

  it('[FLR-001] judges each gallery by its own floor', () => {
    const scene = floors({ gallery: 'lower', pressure: reckoned(pascals(9000)) });
    expect(found('FLR-001', scene)).toEqual([]);
  });

  it('[FLR-001] judges what is known beside what is not', () => {
    const scene = floors({ pressure: blocked(['mass of brick C']), courses: reckoned(9) });
    expect(found('FLR-001', scene)).toHaveLength(1);
    const gallery = withGallery({ floorLimit: nobodyKnows });
    expect(found('FLR-001', { ...scene, ...gallery })).toHaveLength(1);
    const nothing = blocked(['mass of brick C']);
    const all = floors({ pressure: nothing, courses: nothing, lineLoad: nothing });
    expect(found('FLR-001', all)).toEqual([]);
  });

  it('[FLR-001] takes what is furthest past its limit', () => {
    const scene = floors({
      pressure: reckoned(pascals(14_000)),
      lineLoad: reckoned(newtonsPerMetre(7700)),
      bricks: reckoned(kilograms(9000)),
    });
    expect(found('FLR-001', scene)).toMatchObject([{ measured: { value: 14_000 } }]);
  });

  it('[FLR-002] cautions for a row of bricks also where eight of eight courses lie there', () => {
    const scene = floors({ courses: reckoned(8), lineLoad: reckoned(newtonsPerMetre(6900)) });
    // Eight courses of eight are nearer to their limit than the row is, and say nothing.
    expect(found('FLR-002', scene)).toMatchObject([
      { measured: { value: 6900, kind: 'forcePerLength' } },
    ]);
  });

  it('[UNK-001] names each limit of a gallery that is missing, and what that blocks', () => {
    const gallery = withGallery({
      floorLimit: nobodyKnows,
      lineLoadLimit: nobodyKnows,
      coursesAllowed: nobodyKnows,
    });
    expect(missed({ ...floors({}), ...gallery })).toBe(
      'floor limit of upper gallery (nobody looked); ' +
        'limit of upper gallery along its length (nobody looked); ' +
        'courses of bricks allowed on upper gallery (nobody looked) | floors of the galleries',
    );
    const unknown = floors({ when: 'allBack', courses: blocked(['floor length of brick B']) });
    expect(missed(unknown)).toBe('floor length of brick B | floors of the galleries');
  });
});
