import { measure } from '#findings';
import { isPastEitherWay, isSameHeight } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenFlown } from '../rule.ts';
import { byLock } from './by-lock.ts';
import { type Curve, furthest, passesBelow, type Reading } from './curve-reading.ts';
import { imbalanceWorking } from './imbalance-working.ts';

/**
 * BAL-003: a set whose piece lands is held by the lock all the way in with every brick on. Where
 * it is not, the bricks cannot all be on below lift-off, and only an order of work says which.
 * A contact is counted on its lower side: what the deck has taken it has taken.
 */
export const pastLockBelowLiftOff = whenFlown((the) => {
  const { curve, liftOff, set } = the.plan;
  if (liftOff === null) return [];
  return byLock(the, (lockN, source) => {
    const worst = furthest(readingsUpTo(curve, liftOff));
    if (worst === null || !isPastEitherWay(worst.imbalanceN, lockN)) return [];
    const limit = measure(lockN, 'force');
    return [
      raise('BAL-003', {
        at: { set: the.set.lineSet.id, heightM: worst.heightM },
        measured: measure(worst.imbalanceN, 'imbalance'),
        limit,
        limitSource: source,
        facts: {
          height: measure(worst.heightM, 'length'),
          passes: measure(passesBelow(curve, liftOff, lockN) ?? worst.heightM, 'length'),
          liftOff: measure(liftOff, 'length'),
        },
        working: imbalanceWorking(set, worst, { value: limit, source }),
      }),
    ];
  });
});

/** Both sides of every node under a height, and the lower side of the node at it. */
const readingsUpTo = ({ nodes }: Curve, topM: number): readonly Reading[] =>
  nodes
    .filter(({ height }) => height < topM || isSameHeight(height, topM))
    .flatMap(({ height, below, above, uncertainty }, index) => {
      const reading = { heightM: height, toleranceN: uncertainty };
      return [
        // The lowest node has nothing under it on this travel.
        ...(index === 0 ? [] : [{ ...reading, imbalanceN: below }]),
        ...(isSameHeight(height, topM) ? [] : [{ ...reading, imbalanceN: above }]),
      ];
    });
