import { ok } from '#outcome';
import { POUND_FORCE } from '#quantities';
import { type DrillPlan, planDrill } from '#sequence';
import { type CheckedOrder, isAccepted } from './checked-order.ts';
import { type Answer, notKnown, type OrderJob } from './job.ts';
import { withBricksBack } from './kept-stock.ts';
import type { OrderStart } from './start.ts';
import { judgedOrder } from './work-out.ts';

export type WorkedDrill = {
  readonly job: OrderJob;
  readonly start: OrderStart;
  readonly plan: DrillPlan;
  /** Without steps where no drill can be done: `plan` says why. */
  readonly order: CheckedOrder;
  readonly handLinePerBatten: number;
};

/** Pulls that are called on the rail: so many pounds or newtons at a time. */
const CALL_N = { customary: 5 * POUND_FORCE, metric: 20 } as const;

/**
 * The drill for masses that nobody knows, with all that the show hangs on the set, and what the
 * judge says of it for the heaviest. It is judged with every mass at its worst, or it is none.
 */
export const workOutDrill = (
  job: OrderJob,
  start: OrderStart,
  { anyway }: { readonly anyway: boolean },
): Answer<WorkedDrill> => {
  const { house, set } = job;
  const path = `set ${set.lineSet.id}`;
  if (set.hang === null) return notKnown(path, ['what the show hangs on it']);
  const perBatten = set.lineSet.handLinePerBatten;
  if (!perBatten.known) return notKnown(path, ['travel of the hand line']);
  const handLinePerBatten = perBatten.value;
  const physics = withBricksBack(job.physics, start.assumed);
  const plan = planDrill(physics, start.standing, {
    items: set.hang.items.map(({ id }) => id),
    kinds: showKinds(job),
    handLinePerBatten,
    callN: CALL_N[house.units],
    anyway,
  });
  const steps = 'drill' in plan ? plan.drill.steps : [];
  const order = judgedOrder(job, start, steps, 'load', { doubt: 'worst', faults: 'check' });
  return ok({ job, start, plan, order, handLinePerBatten });
};

/** A drill to work by: one was found, and the judge finds nothing wrong with it. */
export const isDrill = ({ plan, order }: WorkedDrill): boolean =>
  'drill' in plan && isAccepted(order);

/** The heaviest first: fewest pulls. */
const showKinds = ({ house, physics }: OrderJob): readonly string[] =>
  physics.bricks
    .filter(({ id }) => house.brickKinds.some((kind) => kind.id === id && kind.serves.show))
    .toSorted((one, other) => other.massKg - one.massKg)
    .map(({ id }) => id);
