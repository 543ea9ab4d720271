import { describe, expect, it } from 'vitest';
import { newtons } from '#quantities';
import { type Known, known, unknownValue } from './known.ts';
import type { LineSet, RopeLock } from './line-set.ts';
import { grippedAtBatten, isLockTested, lockHoldOf } from './lock-hold.ts';

const gauge = { basis: 'measured', source: 'gauge', on: '2026-09-14' } as const;
const rule = { basis: 'houseRule' } as const;

const setWith = (
  lock: Partial<RopeLock>,
  handLinePerBatten: Known<number> = known(1, gauge),
): Pick<LineSet, 'lock' | 'handLinePerBatten'> => ({
  lock: { grip: unknownValue(), failed: unknownValue(), ...lock },
  handLinePerBatten,
});

const grip = (forceN: number, tolerance?: number) => ({
  grip: known(newtons(forceN), gauge, tolerance),
});

/** 222.4 N is the 50 lbf of the demo; all expected figures are by hand. */
const LIMIT = { lockLimit: known(newtons(222.4), rule) };
const holds = (...of: Parameters<typeof setWith>) => lockHoldOf(setWith(...of), LIMIT);

describe('what a rope lock counts for', () => {
  it('is the limit of the house where its grip test found as much or more', () => {
    expect(holds(grip(300))).toEqual(LIMIT.lockLimit);
    expect(holds(grip(222.4))).toMatchObject({ value: 222.4 });
  });

  it('is its grip where that is less, with the day of the test', () => {
    expect(holds(grip(222.3))).toMatchObject({ value: 222.3, provenance: { on: '2026-09-14' } });
  });

  it('counts the gauge at its worst', () => {
    expect(holds(grip(230, 7.5))).toMatchObject({ value: 222.4 });
    expect(holds(grip(230, 7.7))).toMatchObject({ value: expect.closeTo(222.3, 9) });
    expect(holds(grip(5, 9))).toMatchObject({ value: 0 });
  });

  it('counts a pull on a hand line that runs half as far for half at the batten', () => {
    expect(holds(grip(300), known(0.5, gauge))).toMatchObject({ value: 150 });
    expect(holds(grip(120), known(2, gauge))).toMatchObject({ value: 222.4 });
  });

  it('is nothing where it failed, whatever it held before and whatever the house says', () => {
    const failed = { failed: known(true, gauge) };
    expect(holds({ ...grip(300), ...failed })).toMatchObject({ known: true, value: 0 });
    expect(lockHoldOf(setWith(failed), { lockLimit: unknownValue() })).toMatchObject({ value: 0 });
    expect(holds({ ...grip(300), failed: known(false, gauge) })).toEqual(LIMIT.lockLimit);
  });

  it('is the limit of the house where nobody has tested it', () => {
    expect(holds({})).toEqual(LIMIT.lockLimit);
  });

  it('is not known where the house gives no limit: a grip alone allows nothing', () => {
    const nobody = unknownValue('not said');
    expect(lockHoldOf(setWith(grip(100)), { lockLimit: nobody })).toEqual(nobody);
  });

  it('is not known where nobody knows what a pull on the hand line is at the batten', () => {
    expect(holds(grip(100), unknownValue())).toEqual(unknownValue('travel of the hand line'));
  });
});

describe('grippedAtBatten', () => {
  it('is none where no grip was measured, though the lock passed', () => {
    expect(grippedAtBatten(setWith({ failed: known(false, gauge) }))).toBeNull();
  });
});

describe('isLockTested', () => {
  it('is so by a grip, a pass or a failure', () => {
    const tested = [{}, grip(1), { failed: known(false, gauge) }, { failed: known(true, gauge) }];
    expect(tested.map((lock) => isLockTested(setWith(lock)))).toEqual([false, true, true, true]);
  });
});
