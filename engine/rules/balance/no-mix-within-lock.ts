import { measure } from '#findings';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { Opinion, SetRule } from '../rule.ts';
import { byLock } from './by-lock.ts';
import { foundChoice, gaveUp, mixText, noMix } from './mixes.ts';

/**
 * BAL-006: some mix of the bricks at hand keeps the set within the lock on its whole free travel,
 * before and after each release. Where none does, another set, a restraint or another load does.
 */
export const noMixWithinLock: SetRule = (the) => {
  const none = noMix(the.set);
  if (none?.code === 'notFound') return [gaveUp(none.reason)];
  const found = foundChoice(the.set);
  if (none === null && found === null) return [];
  return byLock(the, (lockN, source): readonly Opinion[] => {
    const least = found?.leastWorst;
    if (least !== undefined && !isAbove(least.worstN, lockN)) return [];
    return [
      raise('BAL-006', {
        at: { set: the.set.lineSet.id },
        ...(least === undefined ? {} : { measured: measure(least.worstN, 'force') }),
        limit: measure(lockN, 'force'),
        limitSource: source,
        facts: {
          why: none?.reason ?? 'Its imbalance changes too much over the travel.',
          least: least === undefined ? 'none' : measure(least.worstN, 'force'),
          best: least === undefined ? 'no mix is within the limits' : mixText(least.counts),
        },
      }),
    ];
  });
};
