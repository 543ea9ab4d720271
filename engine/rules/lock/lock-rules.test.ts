import { describe, expect, it } from 'vitest';
import { type Known, known, type RopeLock } from '#house';
import { newtons } from '#quantities';
import { found, planOf, trimOf } from '../example-assessment.ts';
import { exampleSet, given, motorSet, nobodyKnows, playingTrim } from '../example-house.ts';
import { momentMs } from '../record/moment.ts';

const DAY_S = 86_400;
const onDay = (on: string) => ({ basis: 'measured', source: 'gauge', on }) as const;

const gripOf = (forceN: number, on = '2026-03-01'): RopeLock => ({
  grip: known(newtons(forceN), onDay(on)),
  failed: nobodyKnows,
});

const untested: RopeLock = { grip: nobodyKnows, failed: nobodyKnows };

const scene = (lock: RopeLock, more: Partial<Parameters<typeof found>[1] & object> = {}) => ({
  lineSet: { ...exampleSet, lock },
  ...more,
});

describe('locks that nobody has tested', () => {
  it('[LCK-001] takes a grip and a plain pass', () => {
    expect(found('LCK-001', scene(gripOf(250)))).toEqual([]);
    expect(found('LCK-001', scene({ ...untested, failed: given(false) }))).toEqual([]);
  });

  it('[LCK-001] cautions once for the house, with the sets that have none', () => {
    expect(found('LCK-001', scene(untested))).toMatchObject([
      { level: 'caution', at: {}, measured: { value: 1, kind: 'count' }, facts: { sets: 'set 7' } },
    ]);
    const others = ['8', '9'].map((id) => ({ ...exampleSet, id, lock: untested }));
    const house = { lineSets: [{ ...exampleSet, lock: untested }, ...others] };
    expect(found('LCK-001', scene(untested, { house }))).toMatchObject([
      { measured: { value: 3 }, facts: { sets: 'sets 7 to 9' } },
    ]);
  });

  it('[LCK-001] asks for none of a motor, which has no rope lock', () => {
    expect(found('LCK-001', { lineSet: { ...motorSet, lock: untested } })).toEqual([]);
  });
});

describe('grip tests that are due', () => {
  const every = (days: number, nowText: string, lock = gripOf(250)) =>
    scene(lock, {
      rules: { lockTestEverySeconds: given(days * DAY_S) },
      nowMs: momentMs(nowText) ?? Number.NaN,
    });

  it('[LCK-002] takes a test up to the last moment of its last day', () => {
    expect(found('LCK-002', every(30, '2026-04-01T00:00:00Z'))).toEqual([]);
  });

  it('[LCK-002] cautions a second later, with the oldest day', () => {
    expect(found('LCK-002', every(30, '2026-04-01T00:00:01Z'))).toMatchObject([
      {
        level: 'caution',
        at: {},
        measured: { value: 1 },
        limit: { value: 30 * DAY_S, kind: 'duration' },
        facts: { sets: 'set 7', days: { value: 30 }, oldest: '2026-03-01' },
      },
    ]);
  });

  it('[LCK-002] takes a test without its day for an old one', () => {
    const lock = { ...untested, failed: given(false) };
    const [finding] = found('LCK-002', every(30, '2026-03-02T00:00:00Z', lock));
    expect(finding?.facts['oldest']).toBe('an unknown day');
  });

  it('[LCK-002] goes by the day of a pass that has no figure', () => {
    const lock = { ...untested, failed: known(false, onDay('2026-03-20')) };
    expect(found('LCK-002', every(30, '2026-04-10T00:00:00Z', lock))).toEqual([]);
    expect(found('LCK-002', every(30, '2026-04-21T00:00:00Z', lock))).toHaveLength(1);
  });

  it('[LCK-002] names the oldest of several', () => {
    const lineSets = ['2026-02-03', '2026-02-01', '2026-02-02'].map((on, index) => ({
      ...exampleSet,
      id: `${7 + index}`,
      lock: gripOf(250, on),
    }));
    const [finding] = found('LCK-002', {
      ...every(30, '2026-04-10T00:00:00Z'),
      house: { lineSets },
    });
    expect(finding).toMatchObject({ measured: { value: 3 }, facts: { oldest: '2026-02-01' } });
  });

  it('[LCK-002] leaves what was never tested to LCK-001', () => {
    expect(found('LCK-002', every(30, '2030-01-01T00:00:00Z', untested))).toEqual([]);
  });

  it('[LCK-002] judges none without a moment, or where the house sets no age', () => {
    const { nowMs: _, ...timeless } = every(30, '2030-01-01T00:00:00Z');
    expect(found('LCK-002', timeless)).toEqual([]);
    const { rules: __, ...ageless } = every(30, '2030-01-01T00:00:00Z');
    expect(found('LCK-002', ageless)).toEqual([]);
  });
});

describe('a lock that failed', () => {
  const failed = (remark?: string): RopeLock => ({
    ...gripOf(250),
    failed: known(true, onDay('2026-03-02')),
    ...(remark === undefined ? {} : { remark }),
  });

  it('[LCK-003] is not counted on, and the set is stopped', () => {
    expect(found('LCK-003', scene(failed('glazed rope')))).toMatchObject([
      {
        level: 'stop',
        at: { set: '7' },
        facts: { test: 'measured, gauge, 2026-03-02', remark: ': glazed rope' },
      },
    ]);
  });

  it('[LCK-003] needs no remark', () => {
    expect(found('LCK-003', scene(failed()))[0]?.facts['remark']).toBe('');
  });

  it('[LCK-003] has nothing to say of one that passed, or of a motor', () => {
    expect(found('LCK-003', scene({ ...failed(), failed: given(false) }))).toEqual([]);
    expect(found('LCK-003', scene({ ...failed(), failed: nobodyKnows }))).toEqual([]);
    expect(found('LCK-003', { lineSet: { ...motorSet, lock: failed() } })).toEqual([]);
  });

  it('[BAL-001] leaves any imbalance at a trim past what holds it', () => {
    const plan = planOf({ trims: [trimOf(playingTrim, [10, 3])] });
    expect(found('BAL-001', scene(failed(), { plan }))).toMatchObject([
      { level: 'stop', measured: { value: 3 }, limit: { value: 0 } },
    ]);
    expect(found('BAL-001', scene(gripOf(250), { plan }))).toEqual([]);
  });
});

describe('a lock that grips less than the house allows', () => {
  it('[LCK-004] takes 200 N, the limit of this house', () => {
    expect(found('LCK-004', scene(gripOf(200)))).toEqual([]);
  });

  it('[LCK-004] cautions a newton less, and the lower counts everywhere', () => {
    expect(found('LCK-004', scene(gripOf(199)))).toMatchObject([
      { level: 'caution', at: { set: '7' }, measured: { value: 199 }, limit: { value: 200 } },
    ]);
    const plan = planOf({ trims: [trimOf(playingTrim, [10, -199.5])] });
    expect(found('BAL-001', scene(gripOf(199), { plan }))).toMatchObject([
      { limit: { value: 199 }, limitSource: 'measured, gauge, 2026-03-01' },
    ]);
    expect(found('BAL-001', scene(gripOf(200), { plan }))).toEqual([]);
  });

  it('[LCK-004] leaves one that failed to LCK-003', () => {
    expect(found('LCK-004', scene({ ...gripOf(199), failed: given(true) }))).toEqual([]);
  });

  it('[LCK-004] has no limit to hold it against where the house has none, nor of a motor', () => {
    const rules = { lockLimit: nobodyKnows };
    expect(found('LCK-004', scene(gripOf(199), { rules }))).toEqual([]);
    expect(found('LCK-004', { lineSet: { ...motorSet, lock: gripOf(199) } })).toEqual([]);
  });

  it('[UNK-001] misses the travel of the hand line where a grip was measured on it', () => {
    const handLinePerBatten: Known<number> = nobodyKnows;
    const lineSet = { ...exampleSet, handLinePerBatten, lock: gripOf(199) };
    const plan = planOf({ trims: [trimOf(playingTrim, [10, -150])] });
    const [finding] = found('UNK-001', { lineSet, plan }).filter(({ at }) => at.set === '7');
    expect(finding?.facts['what']).toContain('travel of the hand line');
    expect(finding?.facts['what']).toContain('what the rope lock holds');
  });
});
