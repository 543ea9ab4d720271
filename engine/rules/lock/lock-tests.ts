/** Whether the rope locks were tested, when, and what came of it. What they hold is `#house`. */
import { measure } from '#findings';
import { grippedAtBatten, isLockTested, type LineSet, purchaseOf } from '#house';
import { byKnown, sourceOf } from '../known-values.ts';
import { isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import { momentMs } from '../record/moment.ts';
import type { HouseCase, HouseRule, SetRule } from '../rule.ts';
import { setList } from '../set-list.ts';

const DAY_S = 86_400;

/** Only a set that is balanced has a lock that holds what is left of it. */
const lockedSets = ({ house }: HouseCase): readonly LineSet[] =>
  house.lineSets.filter(({ suspension }) => purchaseOf(suspension) !== null);

/** LCK-001: each rope lock has had a grip test. Once for the house, with the sets. */
export const locksUntested: HouseRule = (the) => {
  const untested = lockedSets(the).filter((lineSet) => !isLockTested(lineSet));
  if (untested.length === 0) return [];
  return [
    raise('LCK-001', {
      at: {},
      measured: measure(untested.length, 'count'),
      facts: { sets: setsWords(the, untested) },
    }),
  ];
};

/**
 * LCK-002: no grip test is older than the house allows. Where the house sets no age, or nobody
 * gave a moment to judge at, none is; a test without its day is as good as an old one. A test is
 * as old as the end of its day, read as UTC.
 */
export const lockTestsDue: HouseRule = (the) => {
  const { lockTestEverySeconds: every } = the.house.rules;
  const { nowMs } = the;
  if (nowMs === null || !every.known) return [];
  const due = lockedSets(the).flatMap((lineSet) => {
    const day = testDay(lineSet);
    if (!isLockTested(lineSet) || !isPast(day, nowMs, every.value)) return [];
    return [{ lineSet, day }];
  });
  if (due.length === 0) return [];
  const days = due.map(({ day }) => day ?? '').toSorted();
  return [
    raise('LCK-002', {
      at: {},
      measured: measure(due.length, 'count'),
      limit: measure(every.value, 'duration'),
      limitSource: sourceOf(every),
      facts: {
        sets: setsWords(
          the,
          due.map(({ lineSet }) => lineSet),
        ),
        days: measure(every.value / DAY_S, 'count'),
        oldest: days[0] === '' || days[0] === undefined ? 'an unknown day' : days[0],
      },
    }),
  ];
};

/** LCK-003: a lock that failed is not counted on. */
export const lockFailed: SetRule = ({ set: { lineSet } }) => {
  const { failed, remark } = lineSet.lock;
  if (purchaseOf(lineSet.suspension) === null || !failed.known || !failed.value) return [];
  return [
    raise('LCK-003', {
      at: { set: lineSet.id },
      facts: { test: sourceOf(failed), remark: remark === undefined ? '' : `: ${remark}` },
    }),
  ];
};

/** LCK-004: the lock of each set grips as much as the house lets a lock hold. */
export const lockBelowLimit: SetRule = ({ house, set: { lineSet } }) => {
  const { lock, suspension } = lineSet;
  const gripped = grippedAtBatten(lineSet);
  const hasFailed = lock.failed.known && lock.failed.value;
  if (purchaseOf(suspension) === null || gripped === null || hasFailed) return [];
  return byKnown(gripped, 'travel of the hand line', 'what the rope lock holds', (heldN, test) => {
    const { lockLimit } = house.rules;
    if (!lockLimit.known || !isBelow(heldN, lockLimit.value)) return [];
    return [
      raise('LCK-004', {
        at: { set: lineSet.id },
        measured: measure(heldN, 'force'),
        limit: measure(lockLimit.value, 'force'),
        limitSource: sourceOf(lockLimit),
        facts: { test },
      }),
    ];
  });
};

/** The day of the grip test, else of the plain pass or fail; null where none is written. */
const testDay = ({ lock: { grip, failed } }: LineSet): string | null =>
  (grip.known ? grip.provenance.on : undefined) ??
  (failed.known ? failed.provenance.on : undefined) ??
  null;

const isPast = (day: string | null, nowMs: number, everyS: number): boolean => {
  const startMs = day === null ? null : momentMs(`${day}T00:00:00Z`);
  return startMs === null || nowMs - startMs > (everyS + DAY_S) * 1000;
};

const setsWords = ({ house }: HouseCase, sets: readonly LineSet[]): string =>
  sets.length === 1 ? `set ${setList(house, sets)}` : `sets ${setList(house, sets)}`;
