/** The order of one set as the pair needs it: what is done, without the zones, which are shared. */
import type { Standing, Step, WorkZone } from '#state';
import type { OrderPlan, RestraintNeeded } from '../types.ts';

type Found = Extract<OrderPlan, { readonly found: unknown }>['found'];

/** The set after so many deeds of its own. */
export type Point = {
  readonly standing: Standing;
  /** Its own order has the run open at some time while it stands so. */
  readonly mayBeOpen: boolean;
};

export type CourseDeed = {
  readonly step: Step;
  /** Its own order has the run closed while this is done. */
  readonly inClosedRun: boolean;
};

export type Course = {
  /** One more than there are deeds: `points[k]` is how it stands after k of them. */
  readonly points: readonly Point[];
  readonly deeds: readonly CourseDeed[];
  readonly restraint: RestraintNeeded | null;
};

export const isRunClosed = (closed: readonly WorkZone[]): boolean =>
  closed.some(({ zone }) => zone === 'run');

/** Whether the first thing that is done is done with the run open. */
const nextIsOpen = (states: Found['states'], steps: Found['steps']): boolean =>
  steps.length === 0 || !isRunClosed(states[1]?.standing.closed ?? []);

export const courseOf = ({ steps, states, restraint }: Found): Course => {
  const points: Point[] = [];
  const deeds: CourseDeed[] = [];
  states.forEach(({ standing }, index) => {
    const step = steps[index - 1];
    const isOpen = !isRunClosed(standing.closed);
    const last = points.at(-1);
    if (step === undefined || last === undefined) {
      // As it is found is not as anybody would leave it: only what comes next tells.
      points.push({ standing, mayBeOpen: isOpen && nextIsOpen(states, steps) });
    } else if (step.act === 'close' || step.act === 'reopen') {
      points[points.length - 1] = { standing, mayBeOpen: last.mayBeOpen || isOpen };
    } else {
      // A deed leaves the zones as they were when it was done.
      deeds.push({ step, inClosedRun: !isOpen });
      points.push({ standing, mayBeOpen: isOpen });
    }
  });
  return { points, deeds, restraint };
};
