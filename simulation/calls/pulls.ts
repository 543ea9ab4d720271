/** What a pull on a stop shows of the doubt in the masses, in the witness's own words. */
import type { OrderPhysics, Standing, Step } from '#state';
import type { Seen } from './held.ts';
import { isSame } from './steps-done.ts';

type Done = { readonly before: Standing; readonly step: Step; readonly next: Standing };

const clipped = (doubtN: number, seen: Seen | null): Seen => ({
  leastN: Math.max(-doubtN, seen?.leastN ?? -doubtN),
  mostN: Math.min(doubtN, seen?.mostN ?? doubtN),
});

/** What is known after a step: nothing more once it was moved or its items changed. */
export const pulled = (
  physics: OrderPhysics,
  { before, step, next }: Done,
  seen: Seen | null,
): Seen | null => {
  switch (step.act) {
    case 'close':
    case 'reopen':
    case 'rig':
    case 'unrig':
      return seen;
    case 'ease':
      return eased(physics, before, { step, seen });
    case 'add':
    case 'remove': {
      if (seen === null) return null;
      const moreN = Math.abs(physics.at(next).doubtN - physics.at(before).doubtN);
      return { leastN: seen.leastN - moreN, mostN: seen.mostN + moreN };
    }
    default:
      return null;
  }
};

/** It stayed under P: there is at least P less friction. It left: there is at most P. */
const eased = (
  physics: OrderPhysics,
  standing: Standing,
  { step, seen }: { step: Extract<Step, { readonly act: 'ease' }>; seen: Seen | null },
): Seen | null => {
  const { lowN, highN, doubtN } = physics.at(standing);
  const had = clipped(doubtN, seen);
  const stayedN = step.pull - physics.frictionN(standing.items);
  const isLow = isSame(standing.height, physics.lowStop.heightM);
  if (!isLow && !isSame(standing.height, physics.highStop.heightM)) return seen;
  if (isLow) {
    return step.lifted
      ? { ...had, mostN: Math.min(had.mostN, step.pull - highN) }
      : { ...had, leastN: Math.max(had.leastN, stayedN - highN) };
  }
  return step.lifted
    ? { ...had, leastN: Math.max(had.leastN, -step.pull - lowN) }
    : { ...had, mostN: Math.min(had.mostN, -stayedN - lowN) };
};
