/** The drill as steps of an order: people away, bricks one by one, and a pull after each. */
import { newtons } from '#quantities';
import type { OrderPhysics, Standing, Step, WorkZone } from '#state';
import type { Pulled } from './pulls-on-stop.ts';
import type { From } from './types.ts';

const RUN: WorkZone = { zone: 'run' };

export type DrillSteps = {
  readonly steps: readonly Step[];
  /** Indexes of the pulls. */
  readonly easeAt: readonly number[];
};

/**
 * For the heaviest that it may be. The run is open while riggers are at the batten, and closed
 * from before the first brick until the set lies on its stop with what it weighs known.
 *
 * Omits   the two steady pulls with a gauge: they change nothing, and the judge asks for them
 */
export const drillSteps = (
  physics: OrderPhysics,
  start: Standing,
  { from, pulled, attach }: { from: From; pulled: Pulled; attach: readonly string[] },
): DrillSteps => {
  const { kind, gallery } = from;
  const drop: WorkZone = { zone: 'drop', gallery };
  const bricks = (count: number): readonly Step[] =>
    count === 0 ? [] : [{ act: 'add', kind, count, gallery }];
  const ease = (lifted: boolean): Step => ({ act: 'ease', pull: newtons(pulled.pullN), lifted });
  const before: readonly Step[] = [
    ...start.closed.map((zone): Step => ({ act: 'reopen', zone })),
    ...attach.map((item): Step => ({ act: 'attach', item, as: 'flying' })),
    { act: 'close', zone: RUN },
    { act: 'close', zone: drop },
    ...bricks(pulled.base),
  ];
  const more = pulled.most - pulled.base;
  const rounds = Array.from({ length: more }, () => [ease(false), ...bricks(1)]);
  const steps: readonly Step[] = [
    ...before,
    ...rounds.flat(),
    ease(true),
    { act: 'reopen', zone: drop },
    ...(isHeldWithPeople(physics) ? [{ act: 'reopen', zone: RUN } as const] : []),
  ];
  const easeAt = steps.flatMap(({ act }, index) => (act === 'ease' ? [index] : []));
  return { steps, easeAt };
};

/** On its stop and batten heavy, one brick more than was counted has to be held by the lock. */
const isHeldWithPeople = ({ bricks, lockLimitN }: OrderPhysics): boolean =>
  Math.max(0, ...bricks.map(({ atBattenN }) => atBattenN)) <= lockLimitN;
