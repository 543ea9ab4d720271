import { fail, ok, type Refusal, type Result } from '#outcome';
import { travelRefusals } from './refusals.ts';
import { type Releasable, releasable } from './releasable.ts';
import type { Travel } from './types.ts';

/** Everything that `compute releasable` says of one set. */
export const answerReleasable = (
  asked: Travel & { readonly hold?: number },
): Result<Releasable, readonly Refusal[]> => {
  const { hold, ...travel } = asked;
  const refusals = travelRefusals(travel);
  return refusals.length > 0 ? fail(refusals) : ok(releasable(travel, hold));
};
