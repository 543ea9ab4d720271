import { measure } from '#findings';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenFlown } from '../rule.ts';

/**
 * BAL-009: friction holds a set still at a trim although it is out of balance there, so that
 * standing still proves nothing (C26). One note a set, at the trim where friction hides most.
 */
export const hiddenByFriction = whenFlown(({ plan, set: { lineSet } }) => {
  // A friction that nobody knows is missed by UNK-001.
  if (!plan.friction.known) return [];
  const { force, measured } = plan.friction.value;
  const [hidden] = plan.trims
    .filter(({ imbalance }) => imbalance !== 0 && !isAbove(Math.abs(imbalance), force))
    .toSorted((one, other) => Math.abs(other.imbalance) - Math.abs(one.imbalance));
  if (hidden === undefined) return [];
  return [
    raise('BAL-009', {
      at: { set: lineSet.id, heightM: hidden.height },
      measured: measure(force, 'force'),
      facts: {
        basis: measured ? 'from a pull test' : 'assumed by the house',
        trim: hidden.trim.name,
        height: measure(hidden.height, 'length'),
        imbalance: measure(hidden.imbalance, 'imbalance'),
      },
    }),
  ];
});
