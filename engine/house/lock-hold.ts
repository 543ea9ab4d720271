import { type Newtons, newtons } from '#quantities';
import type { HouseRules } from './house.ts';
import { type Known, known, unknownValue } from './known.ts';
import type { LineSet } from './line-set.ts';

type Lock = Pick<LineSet, 'lock' | 'handLinePerBatten'>;

/** Whether anybody has tested it: a grip that was measured, or a plain pass or fail. */
export const isLockTested = ({ lock: { grip, failed } }: Pick<LineSet, 'lock'>): boolean =>
  grip.known || failed.known;

/**
 * What the grip test of a lock says it holds at the batten; null where no grip was measured. The
 * test is made on the hand line, which runs k times as far as the batten and so pulls k times as
 * hard on it.
 *
 *     K = k · (G − Δ)
 *
 *     G  N  grip               what it held at the hand line
 *     Δ  N  grip.tolerance     what the gauge may be off by; nothing where nobody has said
 *     k  -  handLinePerBatten  travel of the hand line for that of the batten
 *
 * Source  virtual work, as in the pull test of the-job.md C25
 * Omits   friction of blocks and guides between hand line and batten, which holds as well
 */
export const grippedAtBatten = ({ lock, handLinePerBatten }: Lock): Known<Newtons> | null => {
  const { grip } = lock;
  if (!grip.known) return null;
  if (!handLinePerBatten.known) return unknownValue('travel of the hand line');
  const heldN = Math.max(0, grip.value - (grip.tolerance ?? 0));
  return known(newtons(handLinePerBatten.value * heldN), grip.provenance);
};

/**
 * What the lock of one set counts for, at the batten, at rest: never more than the house allows a
 * lock, never more than its grip test, and nothing where it failed its last test.
 *
 *     K = 0 if it failed, else min(L, k · (G − Δ))
 *
 *     L  N  lockLimit  most that the house lets any lock hold
 *
 * Source  the-job.md V3: never counted above the lock limit, and never if its inspection failed
 * Holds   at rest with the lever closed and the ring on; a moving set has no lock
 * Omits   a hand line that is wet or oily since the test; that is for who works the set to see
 * Check   lock-hold.test.ts, by hand
 */
export const lockHoldOf = (
  lineSet: Lock,
  { lockLimit }: Pick<HouseRules, 'lockLimit'>,
): Known<Newtons> => {
  const { failed } = lineSet.lock;
  if (failed.known && failed.value) return known(newtons(0), failed.provenance);
  const gripped = grippedAtBatten(lineSet);
  if (!lockLimit.known || gripped === null) return lockLimit;
  return gripped.known && gripped.value > lockLimit.value ? lockLimit : gripped;
};
