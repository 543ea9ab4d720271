/** An order that somebody tells for a set: replayed whole from how the set stands now. */
import { verifyOrder } from '#rules';
import type { OrderPhysics, SetNow, Step } from '#state';

/**
 * What is wrong with the first step that breaks a rule, in words; null where none does. Masses are
 * as written: an order that holds only so is taken, and each of its steps is judged again, with
 * every mass at its worst, when leave is asked for it.
 */
export const judgePlan = (
  { standing }: Pick<SetNow, 'standing'>,
  physics: OrderPhysics | null,
  steps: readonly Step[],
): string | null => {
  if (standing === null) return 'How the set stands is not known: find that out first.';
  if (physics === null) return 'A value of the set is not known, so that nothing can be judged.';
  const { broken, alsoBroken, refused } = verifyOrder(physics, standing, steps, {
    doubt: 'none',
    faults: 'check',
  });
  const [first] = [broken, ...alsoBroken].filter((each) => each !== null && each.step >= 0);
  if (first !== undefined && first !== null) {
    return `Step ${first.step + 1} breaks ${first.rule}: ${first.says}.`;
  }
  if (refused === null) return null;
  const { step, refusal } = refused;
  return `Step ${step + 1}: found ${refusal.found}; accepted ${refusal.accepted}.`;
};
