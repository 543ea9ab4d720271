import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { metres, newtons } from '#quantities';
import type { Restraint, SetState } from '#state';
import { exampleStack, found, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  exampleHang,
  exampleRecord,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';
import { momentMs } from './moment.ts';

const recorded = (changes: Partial<SetState>): Scene => ({
  record: { ...exampleRecord, ...changes },
});

const stacked = (...stack: NonNullable<SetState['stack']>): Scene => recorded({ stack });

const pipe = { kind: 'B', count: 1, tag: 'pipe' } as const;

const standing = (
  lowN: number,
  highN: number,
  lowM: number,
  changes: Partial<SetState> = {},
  highM = lowM,
): Scene => ({
  ...recorded({ height: { low: metres(lowM), high: metres(highM) }, ...changes }),
  recorded: { imbalance: reckoned({ low: newtons(lowN), high: newtons(highN) }) },
});

describe('the record, in full', () => {
  it('[STA-001] lists both stacks', () => {
    const show = [
      { kind: 'B', count: 9, tag: 'show' },
      { kind: 'C', count: 2, tag: 'show' },
    ] as const;
    expect(full('STA-001', stacked({ ...pipe, count: 2 }, ...show))).toMatchInlineSnapshot(`
      "STA-001 caution at set 7
      measured 2 count, limit 1 count (the plan)
      - tag: Pipe weight
      - recorded: 2 B
      - planned: 1 B

      STA-001 caution at set 7
      measured 11 count, limit 10 count (the plan)
      - tag: Show bricks
      - recorded: 9 B, 2 C
      - planned: 10 B"
    `);
  });

  it('[STA-002] says when, by whom and how old', () => {
    const nowMs = (momentMs('2026-11-25T12:00:00Z') ?? Number.NaN) + 18_000_000;
    expect(full('STA-002', { record: exampleRecord, nowMs })).toMatchInlineSnapshot(`
      "STA-002 caution at set 7
      measured 18000 duration, limit 14400 duration (house rule, example)
      - confirmed: 2026-11-25T12:00:00Z
      - by: loader
      - age: 18000 duration"
    `);
  });

  it('[STA-002] says what nobody recorded', () => {
    const nowMs = 0;
    const knowledge = { ...exampleRecord.knowledge, at: null, by: null };
    expect(full('STA-002', { ...recorded({ knowledge }), nowMs })).toMatchInlineSnapshot(`
      "STA-002 caution at set 7
      measured none, limit 14400 duration (house rule, example)
      - confirmed: at no recorded time
      - by: nobody recorded
      - age: not known"
    `);
  });

  it('[STA-003] says tag and reason, or that neither is recorded', () => {
    const tag = { number: '7', reason: 'broken strand' };
    expect(full('STA-003', recorded({ tag }))).toMatchInlineSnapshot(`
      "STA-003 stop at set 7
      measured none, limit none (house rule)
      - tag: 7
      - reason: broken strand"
    `);
    expect(full('STA-003', recorded({ service: 'lockedOut' }))).toMatchInlineSnapshot(`
      "STA-003 stop at set 7
      measured none, limit none (house rule)
      - tag: not recorded
      - reason: no reason recorded"
    `);
  });

  it('[STA-004] says what holds, and by whose word', () => {
    expect(full('STA-004', standing(250, 250, 10))).toMatchInlineSnapshot(`
      "STA-004 stop at set 7, heightM 10
      measured 250 imbalance, limit 200 force (house rule, example)
      - holder: the rope lock
      - height: 10 length"
    `);
    expect(full('STA-004', standing(6500, 6500, 1))).toMatchInlineSnapshot(`
      "STA-004 stop at set 7, heightM 1
      measured 6500 imbalance, limit 6000 force (house rule, example)
      - holder: the low stop
      - height: 1 length"
    `);
    expect(full('STA-004', standing(-6500, -6500, 19))).toMatchInlineSnapshot(`
      "STA-004 stop at set 7, heightM 19
      measured -6500 imbalance, limit 6000 force (house rule, example)
      - holder: the high stop
      - height: 19 length"
    `);
  });

  it('[STA-005] lists what is not recorded', () => {
    const nothing = { height: null, items: null, stack: null, lock: null, ring: null };
    expect(full('STA-005', recorded(nothing))).toMatchInlineSnapshot(`
      "STA-005 note at set 7
      measured none, limit none (house rule)
      - what: height of the batten, what hangs, bricks on the arbor, rope lock, ring of the
          rope lock"
    `);
    expect(full('STA-005', { ...recorded(nothing), lineSet: motorSet })).toMatchInlineSnapshot(`
      "STA-005 note at set 7
      measured none, limit none (house rule)
      - what: height of the batten, what hangs"
    `);
    const knowledge = { ...exampleRecord.knowledge, basis: 'unknown' as const };
    expect(full('STA-005', recorded({ ...nothing, knowledge }))).toMatchInlineSnapshot(`
      "STA-005 note at set 7
      measured none, limit none (house rule)
      - what: how this set stands; nobody has confirmed it"
    `);
  });
});

describe('the recorded stack, plan by plan', () => {
  it('[STA-001] takes no show brick for none, whatever kinds are named', () => {
    const bricks = { counts: { B: 0, C: 0 }, reason: 'steel' };
    expect(found('STA-001', { ...stacked(pipe), hang: { ...exampleHang, bricks } })).toEqual([]);
  });

  it('[STA-001] expects no show brick on a set on steel, unless a person fixed some', () => {
    const hang = { ...exampleHang, bricks: null, deadHungAt: given(metres(6)) };
    expect(found('STA-001', { ...stacked(pipe), hang })).toEqual([]);
    expect(found('STA-001', { ...recorded({}), hang })).toMatchObject([
      { level: 'caution', facts: { planned: 'none' } },
    ]);
    expect(
      found('STA-001', { ...recorded({}), hang: { ...hang, bricks: exampleHang.bricks } }),
    ).toEqual([]);
  });

  it('[STA-001] goes by the plan where nobody fixed the bricks', () => {
    const hang = { ...exampleHang, bricks: null };
    expect(found('STA-001', { ...recorded({}), hang })).toEqual([]);
    const stack = {
      ...exampleStack,
      show: [
        { kind: 'B', count: 8 },
        { kind: 'B', count: 1 },
      ],
    };
    expect(found('STA-001', { ...recorded({}), hang, plan: { stack } })).toMatchObject([
      { measured: { value: 10 }, limit: { value: 9 } },
    ]);
  });

  it('[STA-001] cautions for pipe weight on a set that waits to be loaded', () => {
    expect(found('STA-001', stacked({ ...pipe, count: 2 }))).toMatchObject([
      { level: 'caution', facts: { tag: 'Pipe weight' } },
      { level: 'note', facts: { tag: 'Show bricks' } },
    ]);
  });

  it('[STA-001] lists no kind of which there is none', () => {
    const bricks = { counts: { C: 0, B: 9 }, reason: 'as weighed' };
    const scene = { ...recorded({}), hang: { ...exampleHang, bricks } };
    expect(found('STA-001', scene)).toMatchObject([
      { facts: { recorded: '10 B', planned: '9 B' } },
    ]);
  });

  it('[STA-001] knows no pipe weight on a set without an arbor', () => {
    const scene = { ...stacked({ ...pipe, count: 2 }), lineSet: motorSet, hang: null };
    expect(found('STA-001', scene)).toEqual([]);
  });
});

describe('a record out of date, at its edges', () => {
  const timeless = { ...exampleRecord.knowledge, at: null };

  it('[STA-002] judges nothing without a moment to judge at, though a record has no time', () => {
    expect(found('STA-002', recorded({ knowledge: timeless }))).toEqual([]);
    expect(found('STA-002', { ...recorded({ knowledge: timeless }), nowMs: 0 })).toHaveLength(1);
  });

  it('[STA-002] judges nothing where no record was read at all', () => {
    expect(found('STA-002', { nowMs: momentMs('2030-01-01T00:00:00Z') ?? Number.NaN })).toEqual([]);
  });

  it('[UNK-001] says what the missing period blocks', () => {
    const rules = { staleAfterSeconds: nobodyKnows };
    expect(missed({ ...recorded({}), nowMs: 0, rules })).toBe(
      'how long a record of a set holds good (nobody looked) | age of the records',
    );
  });
});

describe('what holds a recorded set, each way', () => {
  const restraint = (changes: Partial<Restraint>): Partial<SetState> => ({
    restraints: [
      {
        kind: 'winch',
        resists: 'both',
        rating: newtons(2000),
        from: metres(9),
        to: metres(11),
        owner: 'deck lead',
        tag: '3',
        ...changes,
      },
    ],
  });

  it('[STA-004] counts a restraint that resists both ways either way', () => {
    expect(found('STA-004', standing(2000, 2000, 10, restraint({})))).toEqual([]);
    expect(found('STA-004', standing(-2000, -2000, 10, restraint({})))).toEqual([]);
    expect(found('STA-004', standing(2001, 2001, 10, restraint({})))).toMatchObject([
      {
        limit: { value: 2000 },
        limitSource: 'rating, as recorded',
        facts: { holder: 'the winch' },
      },
    ]);
  });

  it('[STA-004] counts a restraint that resists one way for that way alone', () => {
    const wayIn = restraint({ resists: 'in' });
    expect(found('STA-004', standing(2000, 2000, 10, wayIn))).toEqual([]);
    expect(found('STA-004', standing(-2000, -2000, 10, wayIn))).toHaveLength(1);
  });

  it.each([
    ['bullLine', 'the bull line'],
    ['arborSling', 'the sling on the arbor'],
    ['stands', 'the stands'],
    ['choke', 'the choke on the hand line'],
    ['deadHangSteel', 'the dead-hang steel'],
    ['pinnedPiece', 'the pinned piece'],
  ] as const)('[STA-004] names %s', (kind, holder) => {
    const scene = standing(2001, 2001, 10, restraint({ kind }));
    expect(found('STA-004', scene)).toMatchObject([{ facts: { holder } }]);
  });

  it('[STA-004] counts a restraint at the very ends of its heights, and where it has none', () => {
    const at = (from: number | null, to: number | null) =>
      standing(
        2000,
        2000,
        10,
        restraint({
          from: from === null ? null : metres(from),
          to: to === null ? null : metres(to),
        }),
      );
    expect(found('STA-004', at(10, 10))).toEqual([]);
    expect(found('STA-004', at(null, null))).toEqual([]);
    expect(found('STA-004', at(10.001, null))).toHaveLength(1);
    expect(found('STA-004', at(null, 9.999))).toHaveLength(1);
  });

  it('[STA-004] counts a restraint only where it holds over the whole height in doubt', () => {
    const doubt = (lowM: number, highM: number) => standing(2000, 2000, lowM, restraint({}), highM);
    expect(found('STA-004', doubt(9, 11))).toEqual([]);
    expect(found('STA-004', doubt(8.9, 11))).toHaveLength(1);
    expect(found('STA-004', doubt(9, 11.1))).toHaveLength(1);
  });

  it('[STA-004] takes the first of two that hold as much', () => {
    const scene = standing(201, 201, 10, restraint({ rating: newtons(200) }));
    expect(found('STA-004', scene)).toMatchObject([{ facts: { holder: 'the rope lock' } }]);
    const weaker = standing(201, 201, 10, restraint({ rating: newtons(100) }));
    expect(found('STA-004', weaker)).toMatchObject([{ facts: { holder: 'the rope lock' } }]);
  });

  it('[STA-004] counts a stop past which the batten was recorded', () => {
    expect(found('STA-004', standing(6000, 6000, 0.9))).toEqual([]);
    expect(found('STA-004', standing(-6000, -6000, 19.1))).toEqual([]);
  });

  it('[STA-004] counts a stop only where the whole height in doubt lies on it', () => {
    expect(found('STA-004', standing(201, 201, 0.9, {}, 1.1))).toHaveLength(1);
    expect(found('STA-004', standing(201, 201, 0.8, {}, 1))).toEqual([]);
    expect(found('STA-004', standing(-201, -201, 18.9, {}, 19.1))).toHaveLength(1);
    expect(found('STA-004', standing(-201, -201, 19, {}, 19.1))).toEqual([]);
  });

  it('[STA-004] counts no stop whose height or rating nobody knows', () => {
    const with_ = (lowStop: Partial<typeof exampleSet.lowStop>) => ({
      ...standing(201, 201, 1),
      lineSet: { ...exampleSet, lowStop: { ...exampleSet.lowStop, ...lowStop } },
    });
    expect(found('STA-004', with_({ height: nobodyKnows }))).toHaveLength(1);
    expect(found('STA-004', with_({ rated: nobodyKnows }))).toHaveLength(1);
    expect(found('STA-004', with_({ rated: given(newtons(300)) }))).toEqual([]);
  });

  it('[STA-004] judges both ways, coming in first', () => {
    const doubt = standing(-250, 250, 5, {}, 6);
    expect(found('STA-004', doubt)).toMatchObject([{ measured: { value: 250 } }]);
    expect(found('STA-004', standing(-250, 200, 5, {}, 6))).toMatchObject([
      { measured: { value: -250 }, at: { heightM: 5 } },
    ]);
  });

  it('[STA-004] judges nothing where imbalance or height is not known', () => {
    const imbalance = blocked(['mass of the lamp']);
    expect(found('STA-004', { record: exampleRecord, recorded: { imbalance } })).toEqual([]);
    const { recorded: known } = standing(900, 900, 10);
    expect(
      found('STA-004', { ...recorded({ height: null }), ...{ recorded: known ?? {} } }),
    ).toEqual([]);
  });
});

describe('moments in text, at their edges', () => {
  it.each([
    ['2026-12-31T23:59:59Z', Date.UTC(2026, 11, 31, 23, 59, 59)],
    ['2026-01-01T00:00:00Z', Date.UTC(2026, 0, 1)],
    ['2026-04-30T00:00:00Z', Date.UTC(2026, 3, 30)],
    ['2026-01-31T00:00:00Z', Date.UTC(2026, 0, 31)],
    ['2024-02-29T00:00:00Z', Date.UTC(2024, 1, 29)],
    ['2100-03-01T00:00:00Z', Date.UTC(2100, 2, 1)],
    ['2026-11-25T14:31:00+23:59', Date.UTC(2026, 10, 24, 14, 32)],
  ])('reads %s', (text, moment) => {
    expect(momentMs(text)).toBe(moment);
  });

  it.each([
    '2026-00-10T00:00:00Z',
    '2026-06-31T00:00:00Z',
    '2026-09-31T00:00:00Z',
    '2026-11-31T00:00:00Z',
    '2026-01-32T00:00:00Z',
    '2026-11-25T14:31:00+00:60',
    ' 2026-11-25T14:31:00Z',
    '2026-11-25T14:31:00Z ',
    '2026-11-25T14:31:00.Z',
    '2026-11-25T14:31:00.0123456789Z',
  ])('does not read %s', (text) => {
    expect(momentMs(text)).toBeNull();
  });
});
