/**
 * Words that the engine gives with its numbers, in English. They are listed here, so that a
 * catalogue has them; what is not listed stays English in another language.
 */
import { message } from '#texts';

/** What the judge finds to hold a set. */
export const HOLDS: ReadonlySet<string> = new Set([
  message('the rope lock'),
  message('the bull line'),
  message('the sling on the arbor'),
  message('the stands under the batten'),
  message('the winch on the hand line'),
  message('the choke on the hand line'),
  message('the dead-hang steel'),
  message('the pinned piece'),
  message('its balance'),
  message('the rest that carries a share of it'),
]);

/** What the judge took for granted, and why the program chose its bricks. */
export const GRANTED: ReadonlySet<string> = new Set([
  message('the lock grips what its limit says, and its rope is dry'),
  message('slack picks are long enough up to the working height, and watched as the set moves'),
  message('what a piece rests on is rated, stands firm and is manned'),
  message('friction is no more than the house reckons, where a pull moved nothing'),
  message('the bull line runs through a device that holds by itself, and hauls'),
  message('least imbalance while it hangs free'),
]);
