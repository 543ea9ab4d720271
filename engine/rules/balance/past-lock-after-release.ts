import { type Finding, measure } from '#findings';
import { isPastEitherWay, isSameHeight } from '../limits.ts';
import { raise } from '../raise.ts';
import { cueHeights } from '../rest-heights.ts';
import { type PlannedCase, whenFlown } from '../rule.ts';
import { byLock } from './by-lock.ts';
import { furthest, type Reading, readCurve } from './curve-reading.ts';
import { imbalanceWorking } from './imbalance-working.ts';

/**
 * BAL-007: after something has left in view the lock still holds the set, at every trim and
 * wherever a cue leaves it. That the release may fail is BAL-001: both must hold (C24).
 */
export const pastLockAfterRelease = whenFlown((the) =>
  byLock(the, (lockN, source) =>
    the.plan.after.flatMap(({ how, set, curve }): readonly Finding[] => {
      const worst = furthest(
        restHeights(the)
          .map((heightM) => readCurve(curve, heightM, 'above'))
          .filter((reading): reading is Reading => reading !== null),
      );
      if (worst === null || !isPastEitherWay(worst.imbalanceN, lockN)) return [];
      const limit = measure(lockN, 'force');
      return [
        raise('BAL-007', {
          at: { set: the.set.lineSet.id, heightM: worst.heightM },
          measured: measure(worst.imbalanceN, 'imbalance'),
          limit,
          limitSource: source,
          facts: { how, height: measure(worst.heightM, 'length') },
          working: imbalanceWorking(set, worst, { value: limit, source }),
        }),
      ];
    }),
  ),
);

/** Trims, and the ends of cues that are no trim. */
const restHeights = (the: PlannedCase): readonly number[] => {
  const trims = the.plan.trims.map(({ height }) => height as number);
  const cues = cueHeights(the)
    .map(({ heightM }) => heightM)
    .filter((heightM) => !trims.some((trimM) => isSameHeight(trimM, heightM)));
  return [...trims, ...cues];
};
