import { measure } from '#findings';
import { isPastEitherWay } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenFlown } from '../rule.ts';
import { byLock } from './by-lock.ts';
import { imbalanceWorking } from './imbalance-working.ts';

/**
 * BAL-001: at every trim the lock holds the set, with all that hangs free of the deck there.
 * Where a piece just touches at its trim this is the value above; the one below is BAL-003.
 */
export const pastLockAtTrim = whenFlown((the) =>
  byLock(the, (lockN, source) =>
    the.plan.trims
      .filter(({ imbalance }) => isPastEitherWay(imbalance, lockN))
      .map(({ trim, height, imbalance }) => {
        const limit = measure(lockN, 'force');
        return raise('BAL-001', {
          at: { set: the.set.lineSet.id, heightM: height },
          measured: measure(imbalance, 'imbalance'),
          limit,
          limitSource: source,
          facts: { trim: trim.name, height: measure(height, 'length') },
          working: imbalanceWorking(
            the.plan.set,
            { heightM: height, imbalanceN: imbalance },
            { value: limit, source },
          ),
        });
      }),
  ),
);
