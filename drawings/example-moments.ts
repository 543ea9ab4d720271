/** Moments of a strike of set 9 of the example house, for the tests of this room. */
import { type Assessment, orderPhysicsOf, type SetAssessment, setFreeAt } from '#assessment';
import type { House } from '#house';
import { assert } from '#outcome';
import { FOOT, metres } from '#quantities';
import { verifyOrder } from '#rules';
import type { HouseState, OrderPhysics, Standing, Step } from '#state';
import type { OrderMoment } from './order-step.ts';

type Example = {
  readonly house: House;
  readonly state: HouseState;
  readonly assessment: Assessment;
};

export type Drop = {
  readonly set: SetAssessment;
  readonly physics: OrderPhysics;
  /** Out at its trim, with 6 full and 1 half on, nothing closed. */
  readonly out: Standing;
};

export const dropOf = ({ house, state, assessment }: Example): Drop => {
  const set = assessment.sets.find(({ lineSet }) => lineSet.id === '9');
  assert(set !== undefined, 'set 9 is in the house');
  const physics = orderPhysicsOf(set, house, state);
  assert(physics.known, 'the physics of set 9 is known');
  const pipe = set.lineSet.arbor?.pipeWeight ?? [];
  const out: Standing = {
    height: metres(60.5 * FOOT),
    stack: [
      ...pipe.map((run) => ({ ...run, tag: 'pipe' as const })),
      { kind: 'F', count: 6, tag: 'show' },
      { kind: 'H', count: 1, tag: 'show' },
    ],
    items: { cloth: 'flying' },
    restraints: [],
    service: 'in',
    closed: [],
  };
  return { set, physics: physics.value, out };
};

/** How it stands after the last step, with what the judge finds; masses as they are listed. */
export const momentAfter = (
  { set, physics, out }: Drop,
  steps: readonly Step[],
  start: Standing = out,
): OrderMoment => {
  const { states, broken } = verifyOrder(physics, start, steps, {
    doubt: 'none',
    faults: 'skip',
    releasableJ: (standing) => setFreeAt(physics, standing).energy,
  });
  const last = states.length - 1;
  const state = states[last];
  assert(state !== undefined, 'an order has a start');
  return {
    set,
    physics,
    state,
    step: steps[last - 1] ?? null,
    before: states[last - 1]?.standing ?? null,
    isHeld: broken === null || broken.step !== last - 1,
  };
};
