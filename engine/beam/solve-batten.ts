/** A batten on its lines: the whole answer, or the reason why there is none. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { battenFaults } from './batten-faults.ts';
import { hold, modelOf } from './model.ts';
import { solutionOf } from './solution.ts';
import type { BattenAnswer, BattenCase } from './types.ts';
import { whyLoose, whyUnstable } from './why-unstable.ts';

/**
 * Tensions of the lift lines of a batten, and how it bends.
 *
 *     E·I·y'''' = q      y(x_i) + trim_i = T_i / k_i  where tight,  ≤ 0 where slack (T_i = 0)
 *     Σ T = Σ m·g        Σ T·x = Σ m·g·x
 *
 *     y  m, down from the level of unstretched true lines     T  N     trim  m, a short line lifts
 *
 * Source  Euler-Bernoulli beam; tension-only lines as least energy with T ≥ 0, worked in
 *         docs/derivations/batten-on-lines.md; check-values sections 4.1 to 4.9
 * Holds   small bending; lines upright; the arbor end of all lines level and still
 * Omits   shear bending of the pipe and the sway of the lines (both far below a line's stretch);
 *         twist where a load hangs up or down stage of the pipe, which bends nothing here
 * Check   VAL-BEM-01 to VAL-BEM-15
 *
 * Refuses (BEM codes) what is no batten. A batten that would move is no refusal: it is `unstable`,
 * with its reason and without a number.
 */
export const solveBatten = (the: BattenCase): Result<BattenAnswer, readonly Refusal[]> => {
  const faults = battenFaults(the);
  return faults.length > 0 ? fail(faults) : ok(reckoned(the));
};

const reckoned = (the: BattenCase): BattenAnswer => {
  const model = modelOf(the);
  const unstable = whyUnstable(the, model);
  if (unstable !== null) return { unstable };
  const held = hold(the, model);
  if (held === null) {
    return {
      unstable: {
        code: 'notDetermined',
        reason:
          'Lines, supports and picks that do not stretch share the load in more ways than one. ' +
          'Give some of them a stiffness.',
      },
    };
  }
  const loose = whyLoose(the, model, held);
  return loose === null ? solutionOf(the, held, model) : { unstable: loose };
};
