import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { metres, newtons } from '#quantities';
import type { Restraint, SetState } from '#state';
import { found, type Scene } from '../example-assessment.ts';
import {
  exampleArbor,
  exampleHang,
  exampleRecord,
  exampleSet,
  nobodyKnows,
} from '../example-house.ts';
import { momentMs } from './moment.ts';

const stacked = (...stack: NonNullable<SetState['stack']>): Scene => ({
  record: { ...exampleRecord, stack },
});

describe('the recorded stack', () => {
  it('[STA-001] takes a stack that is the plan’s, in whatever order', () => {
    const scene = stacked(
      { kind: 'B', count: 4, tag: 'show' },
      { kind: 'B', count: 1, tag: 'pipe' },
      { kind: 'S', count: 1, tag: 'spreader' },
      { kind: 'B', count: 6, tag: 'show' },
    );
    expect(found('STA-001', scene)).toEqual([]);
  });

  it('[STA-001] cautions for one brick more, and for one kind in place of another', () => {
    const pipe = { kind: 'B', count: 1, tag: 'pipe' } as const;
    expect(found('STA-001', stacked(pipe, { kind: 'B', count: 11, tag: 'show' }))).toMatchObject([
      {
        level: 'caution',
        measured: { value: 11, kind: 'count' },
        limit: { value: 10 },
        facts: { tag: 'Show bricks', recorded: '11 B', planned: '10 B' },
      },
    ]);
    expect(found('STA-001', stacked(pipe, { kind: 'C', count: 10, tag: 'show' }))).toHaveLength(1);
  });

  it('[STA-001] notes a set that waits to be loaded', () => {
    const [finding] = found('STA-001', stacked({ kind: 'B', count: 1, tag: 'pipe' }));
    expect(finding).toMatchObject({ level: 'note', facts: { recorded: 'none' } });
  });

  it('[STA-001] cautions where pipe weight is not what the house says', () => {
    const show = { kind: 'B', count: 10, tag: 'show' } as const;
    expect(found('STA-001', stacked(show, { kind: 'B', count: 2, tag: 'pipe' }))).toMatchObject([
      { level: 'caution', facts: { tag: 'Pipe weight', recorded: '2 B', planned: '1 B' } },
    ]);
    const arbor = { ...exampleArbor, pipeWeight: null };
    const unknown = { ...stacked(show), lineSet: { ...exampleSet, arbor } };
    expect(found('STA-001', unknown)).toEqual([]);
  });

  it('[STA-001] cautions for show bricks where nothing hangs', () => {
    const scene = { record: exampleRecord, hang: null };
    expect(found('STA-001', scene)).toMatchObject([{ facts: { planned: 'none' } }]);
  });

  it('[STA-001] is quiet where nobody counted, and where the plan is not known', () => {
    expect(found('STA-001', { record: { ...exampleRecord, stack: null } })).toEqual([]);
    const hang = { ...exampleHang, bricks: null };
    expect(found('STA-001', { record: exampleRecord, hang, plan: null })).toEqual([]);
  });
});

describe('the age of a record', () => {
  const nowMs = (momentMs('2026-11-25T12:00:00Z') ?? Number.NaN) + 14_400_000;

  it('[STA-002] takes a record that is just four hours old, the period of this house', () => {
    expect(found('STA-002', { record: exampleRecord, nowMs })).toEqual([]);
  });

  it('[STA-002] cautions a millisecond later', () => {
    expect(found('STA-002', { record: exampleRecord, nowMs: nowMs + 1 })).toMatchObject([
      {
        level: 'caution',
        measured: { value: 14_400.001, kind: 'duration' },
        limit: { value: 14_400 },
        facts: { confirmed: '2026-11-25T12:00:00Z' },
      },
    ]);
  });

  it('[STA-002] cautions for a record without a time, or with one that cannot be read', () => {
    const at = (text: string | null) =>
      found('STA-002', {
        record: { ...exampleRecord, knowledge: { ...exampleRecord.knowledge, at: text } },
        nowMs,
      });
    expect(at(null)).toMatchObject([{ facts: { confirmed: 'at no recorded time' } }]);
    expect(at('noon')).toMatchObject([{ facts: { age: 'not known' } }]);
  });

  it('[STA-002] judges nothing without a moment to judge at, or without a record', () => {
    const old = { ...exampleRecord.knowledge, at: '1999-01-01T00:00:00Z' };
    expect(found('STA-002', { record: { ...exampleRecord, knowledge: old } })).toEqual([]);
    expect(found('STA-002', { galleries: {}, nowMs })).toEqual([]);
  });

  it('[UNK-001] misses the period once for the house', () => {
    const scene = { record: exampleRecord, nowMs, rules: { staleAfterSeconds: nobodyKnows } };
    expect(found('UNK-001', scene)).toMatchObject([
      { at: {}, facts: { what: 'how long a record of a set holds good (nobody looked)' } },
    ]);
  });
});

describe('lock-out', () => {
  it('[STA-003] stops a set with a tag, and a set that is locked out without one', () => {
    const tag = { number: '7', reason: 'broken strand' };
    expect(found('STA-003', { record: { ...exampleRecord, tag } })).toMatchObject([
      { level: 'stop', facts: { tag: '7', reason: 'broken strand' } },
    ]);
    const record = { ...exampleRecord, service: 'lockedOut' as const };
    expect(found('STA-003', { record })).toMatchObject([{ facts: { tag: 'not recorded' } }]);
  });

  it('[STA-003] has nothing to say of a set that is in service or paused', () => {
    expect(found('STA-003', { record: exampleRecord })).toEqual([]);
    expect(found('STA-003', { record: { ...exampleRecord, service: 'paused' } })).toEqual([]);
  });
});

describe('what holds a set as it stands', () => {
  const standing = (lowN: number, highN = lowN, changes: Partial<SetState> = {}): Scene => ({
    record: { ...exampleRecord, ...changes },
    recorded: { imbalance: reckoned({ low: newtons(lowN), high: newtons(highN) }) },
  });

  it('[STA-004] takes 200 N either way on the lock alone', () => {
    expect(found('STA-004', standing(200))).toEqual([]);
    expect(found('STA-004', standing(-200))).toEqual([]);
  });

  it('[STA-004] stops past it', () => {
    expect(found('STA-004', standing(201))).toMatchObject([
      {
        level: 'stop',
        at: { heightM: 10 },
        measured: { value: 201, kind: 'imbalance' },
        limit: { value: 200, kind: 'force' },
        facts: { holder: 'the rope lock' },
      },
    ]);
    expect(found('STA-004', standing(-201))).toMatchObject([{ measured: { value: -201 } }]);
  });

  it('[STA-004] counts the low stop for batten heavy only, and only on it', () => {
    const onStop = { height: { low: metres(1), high: metres(1) } };
    expect(found('STA-004', standing(6000, 6000, onStop))).toEqual([]);
    expect(found('STA-004', standing(6001, 6001, onStop))).toMatchObject([
      { facts: { holder: 'the low stop' }, limit: { value: 6000 } },
    ]);
    expect(found('STA-004', standing(-201, -201, onStop))).toHaveLength(1);
    const above = { height: { low: metres(1.01), high: metres(1.01) } };
    expect(found('STA-004', standing(201, 201, above))).toHaveLength(1);
  });

  it('[STA-004] counts the high stop for arbor heavy only', () => {
    const out = { height: { low: metres(19), high: metres(19) } };
    expect(found('STA-004', standing(-6000, -6000, out))).toEqual([]);
    expect(found('STA-004', standing(201, 201, out))).toHaveLength(1);
  });

  const bull: Restraint = {
    kind: 'bullLine',
    resists: 'out',
    rating: newtons(2000),
    from: metres(5),
    to: metres(10),
    owner: 'deck lead',
    tag: '3',
  };

  it('[STA-004] counts a restraint for its way, its heights and its rating', () => {
    const holding = (restraint: Restraint) => ({ restraints: [restraint] });
    expect(found('STA-004', standing(-2000, -2000, holding(bull)))).toEqual([]);
    expect(found('STA-004', standing(-2001, -2001, holding(bull)))).toMatchObject([
      { facts: { holder: 'the bull line' } },
    ]);
    expect(found('STA-004', standing(201, 201, holding(bull)))).toHaveLength(1);
    const lower = { ...bull, to: metres(9.9) };
    expect(found('STA-004', standing(-201, -201, holding(lower)))).toHaveLength(1);
    const higher = { ...bull, from: metres(10.1), to: null };
    expect(found('STA-004', standing(-201, -201, holding(higher)))).toHaveLength(1);
    const unrated = { ...bull, rating: null };
    expect(found('STA-004', standing(-201, -201, holding(unrated)))).toHaveLength(1);
  });

  it('[STA-004] never adds restraints up', () => {
    const restraints = [bull, { ...bull, kind: 'winch' as const, rating: newtons(1900) }];
    expect(found('STA-004', standing(-2001, -2001, { restraints }))).toHaveLength(1);
  });

  it('[STA-004] lets the system choose at a contact, and nature where nobody measured', () => {
    // The same −1400 to +25 N: a piece on the deck at a measured height, or a height in doubt.
    expect(found('STA-004', standing(-1400, 25))).toEqual([]);
    const doubt = { height: { low: metres(4), high: metres(6) } };
    expect(found('STA-004', standing(-1400, 25, doubt))).toMatchObject([
      { measured: { value: -1400 } },
    ]);
    expect(found('STA-004', standing(-1400, -201))).toMatchObject([{ measured: { value: -201 } }]);
  });

  it('[STA-004] leaves a set that was recorded as dead-hung to its steel', () => {
    expect(found('STA-004', standing(900, 900, { service: 'deadHung' }))).toEqual([]);
  });

  it('[UNK-001] misses what was recorded and cannot be worked out', () => {
    const imbalance = blocked(['item lamp, which the show does not list']);
    const scene = { record: exampleRecord, recorded: { imbalance } };
    expect(found('UNK-001', scene)).toMatchObject([{ facts: { blocks: 'recorded imbalance' } }]);
  });
});

describe('what is not recorded', () => {
  it('[STA-005] notes once that no record was read', () => {
    expect(found('STA-005')).toMatchObject([
      { level: 'note', at: {}, facts: { what: 'how the sets stand; no record was read' } },
    ]);
  });

  it('[STA-005] notes a set that is not in the record, or that nobody has confirmed', () => {
    expect(found('STA-005', { galleries: {} })).toMatchObject([
      { at: { set: '7' }, facts: { what: 'how this set stands; it is not in the record' } },
    ]);
    const knowledge = { ...exampleRecord.knowledge, basis: 'unknown' as const };
    expect(found('STA-005', { record: { ...exampleRecord, knowledge } })).toHaveLength(1);
  });

  it('[STA-005] names what a record leaves out, and is quiet about a whole one', () => {
    expect(found('STA-005', { record: exampleRecord })).toEqual([]);
    const record = { ...exampleRecord, lock: null, stack: null };
    expect(found('STA-005', { record })).toMatchObject([
      { facts: { what: 'bricks on the arbor, rope lock' } },
    ]);
  });

  it('[STA-005] stands for what nobody recorded, so that UNK-001 does not', () => {
    const record = { ...exampleRecord, height: null, items: null };
    expect(found('UNK-001', { record })).toEqual([]);
  });
});
