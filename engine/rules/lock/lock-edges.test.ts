import { describe, expect, it } from 'vitest';
import { known, type RopeLock } from '#house';
import { newtons } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import { exampleSet, given, nobodyKnows } from '../example-house.ts';
import { momentMs } from '../record/moment.ts';

const DAY_S = 86_400;
const onDay = (on: string) => ({ basis: 'measured', source: 'gauge', on }) as const;

const gripOf = (forceN: number, changes: Partial<RopeLock> = {}): RopeLock => ({
  grip: known(newtons(forceN), onDay('2026-03-01')),
  failed: nobodyKnows,
  ...changes,
});

/** Passed, as somebody wrote down without a figure and without the day. */
const passedOnce: RopeLock = { grip: nobodyKnows, failed: given(false) };

const untested: RopeLock = { grip: nobodyKnows, failed: nobodyKnows };

const locked = (...locks: readonly RopeLock[]): Scene => {
  const lineSets = locks.map((lock, index) => ({ ...exampleSet, id: `${7 + index}`, lock }));
  const [lineSet = exampleSet] = lineSets;
  return { lineSet, house: { lineSets } };
};

const monthly = { rules: { lockTestEverySeconds: given(30 * DAY_S) } };

const atMoment = (text: string) => ({ nowMs: momentMs(text) ?? Number.NaN });

describe('the rope locks, in full', () => {
  it('[LCK-001] names the sets', () => {
    expect(full('LCK-001', locked(untested, gripOf(250), untested))).toMatchInlineSnapshot(`
      "LCK-001 caution at the house
      measured 2 count, limit none (common practice, no source)
      - sets: sets 7, 9"
    `);
  });

  it('[LCK-002] names the sets, the days and the oldest test', () => {
    // 1 March and 30 days, to the end of the last of them: 31 March is the last good day.
    const late = atMoment('2026-04-01T08:00:00Z');
    const older = { grip: known(newtons(250), onDay('2026-02-27')), failed: nobodyKnows };
    const newer = { grip: known(newtons(250), onDay('2026-03-02')), failed: nobodyKnows };
    const scene = { ...locked(gripOf(250), older, newer), ...monthly, ...late };
    expect(full('LCK-002', scene)).toMatchInlineSnapshot(`
      "LCK-002 caution at the house
      measured 2 count, limit 2592000 duration (house rule, example)
      - sets: sets 7, 8
      - days: 30 count
      - oldest: 2026-02-27"
    `);
  });

  it('[LCK-003] says which test it failed, and why', () => {
    const failed = known(true, onDay('2026-03-02'));
    const scene = locked(gripOf(250, { failed, remark: 'glazed rope' }));
    expect(full('LCK-003', scene)).toMatchInlineSnapshot(`
      "LCK-003 stop at set 7
      measured none, limit none (common practice, no source)
      - test: measured, gauge, 2026-03-02
      - remark: : glazed rope"
    `);
  });

  it('[LCK-004] says what it grips, and what the house lets a lock hold', () => {
    expect(full('LCK-004', locked(gripOf(199)))).toMatchInlineSnapshot(`
      "LCK-004 caution at set 7
      measured 199 force, limit 200 force (house rule, example)
      - test: measured, gauge, 2026-03-01"
    `);
  });
});

describe('the rope locks, at their edges', () => {
  it('[LCK-002] judges none without a moment or an age, though a test has no day at all', () => {
    const { rules: _, ...ageless } = { ...monthly, ...atMoment('2030-01-01T00:00:00Z') };
    expect(found('LCK-002', { ...locked(passedOnce), ...ageless })).toEqual([]);
    expect(found('LCK-002', { ...locked(passedOnce), ...monthly })).toEqual([]);
  });

  it('[LCK-002] takes a test without its day for an old one, however early it is judged', () => {
    const scene = { ...locked(passedOnce), ...monthly, ...atMoment('1970-01-01T00:00:00Z') };
    expect(found('LCK-002', scene)).toMatchObject([{ facts: { oldest: 'an unknown day' } }]);
  });

  it('[LCK-002] names no day as the oldest where one of them has none', () => {
    const scene = {
      ...locked(gripOf(250), passedOnce),
      ...monthly,
      ...atMoment('2026-05-01T00:00:00Z'),
    };
    expect(found('LCK-002', scene)).toMatchObject([
      { measured: { value: 2 }, facts: { sets: 'sets 7, 8', oldest: 'an unknown day' } },
    ]);
  });

  it('[LCK-004] judges a grip that was measured and passed as well', () => {
    expect(found('LCK-004', locked(gripOf(199, { failed: given(false) })))).toHaveLength(1);
    expect(found('LCK-004', locked(gripOf(200, { failed: given(false) })))).toEqual([]);
  });

  it('[UNK-001] misses what turns a grip on the hand line into one at the batten', () => {
    const { lineSet = exampleSet } = locked(gripOf(199));
    const scene = { lineSet: { ...lineSet, handLinePerBatten: nobodyKnows }, hang: null };
    // First by this rule, then by the balance, which asks what holds the set.
    expect(missed(scene).split(/ \| |; /)).toEqual([
      'travel of the hand line (travel of the hand line)',
      'what the rope lock holds (travel of the hand line)',
      'what the rope lock holds',
      'imbalance against what the lock holds',
    ]);
    expect(found('LCK-004', scene)).toEqual([]);
  });
});
