/** What a judge of orders wants seen or counted by hand at a step. */
import { message } from '#texts';

export const PROOFS: readonly string[] = [
  message('count the plates aloud'),
  message('inch test before it is flown: an inch out, an inch in, then lock and look'),
  message('watch the landing from its own level, and stop on the mark, no lower'),
  message('two steady pulls with a gauge, out and in, before it is flown'),
  message('see every pick tight while the piece still rests'),
  message('see that what it rests on is rated, stands firm and is manned'),
  message('see the item held before it is unclipped'),
  message('see {restraintWords} taut and tagged at the rail'),
  message('see every steel tight and its shackle moused'),
  message('see the steel easing and not slack before the first shackle is opened'),
  message('the marshal says: clear'),
];
