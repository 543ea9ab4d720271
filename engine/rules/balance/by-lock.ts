import { byKnown } from '../known-values.ts';
import type { Opinion, SetCase } from '../rule.ts';

/** Judges by what the lock may hold. A house that does not say so is missed once, not per set. */
export const byLock = (
  { house }: Pick<SetCase, 'house'>,
  judge: (lockN: number, source: string) => readonly Opinion[],
): readonly Opinion[] =>
  byKnown(
    house.rules.lockLimit,
    'limit of the rope lock',
    'imbalance against what the lock holds',
    judge,
    'house',
  );
