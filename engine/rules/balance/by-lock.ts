import { lockHoldOf } from '#house';
import { byKnown } from '../known-values.ts';
import type { Opinion, SetCase } from '../rule.ts';

/**
 * Judges by what the lock of the set may hold: the limit of the house, or less where its grip test
 * says so. A house that does not say its limit is missed once, not once for every set.
 */
export const byLock = (
  { house, set }: Pick<SetCase, 'house' | 'set'>,
  judge: (lockN: number, source: string) => readonly Opinion[],
): readonly Opinion[] => {
  const hold = lockHoldOf(set.lineSet, house.rules);
  const isOfHouse = !house.rules.lockLimit.known;
  return byKnown(
    hold,
    isOfHouse ? 'limit of the rope lock' : 'what the rope lock holds',
    'imbalance against what the lock holds',
    judge,
    isOfHouse ? 'house' : 'set',
  );
};
