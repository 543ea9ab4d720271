/** Orders on set 9 of the example house, as the worked orders of its plan have them. */
import { orderPhysicsOf, type SetAssessment } from '#assessment';
import type { House } from '#house';
import { assert } from '#outcome';
import { FOOT, type Metres, metres } from '#quantities';
import { type OrderOptions, verifyOrder } from '#rules';
import type { OrderPhysics, StackRun, Standing, Step } from '#state';
import { setOf } from './context.ts';
import type { SheetContext } from './index.ts';
import type { CheckedOrder } from './order.ts';

export const feet = (heightFt: number): Metres => metres(heightFt * FOOT);

const mustHave = (context: SheetContext, id: string): SetAssessment => {
  const set = setOf(context, id);
  assert(set !== undefined, `set ${id} is in the house`);
  return set;
};

export const drop = (context: SheetContext): SetAssessment => mustHave(context, '9');

export const dropPhysics = (context: SheetContext): OrderPhysics => {
  const physics = orderPhysicsOf(drop(context), context.house, context.state);
  assert(physics.known, 'the physics of set 9 is known');
  return physics.value;
};

export const MID = { zone: 'drop', gallery: 'mid' } as const;
export const UPPER = { zone: 'drop', gallery: 'upper' } as const;
export const RUN = { zone: 'run' } as const;

export const CLOTH = 'cloth';

const SHOW: readonly StackRun[] = [
  { kind: 'F', count: 6, tag: 'show' },
  { kind: 'H', count: 1, tag: 'show' },
];

/** At its out trim with all its bricks on, the run closed and empty. */
export const dropOut = (context: SheetContext): Standing => ({
  height: feet(60.5),
  stack: [
    ...(drop(context).lineSet.arbor?.pipeWeight ?? []).map((run) => ({
      ...run,
      tag: 'pipe' as const,
    })),
    ...SHOW,
  ],
  items: { [CLOTH]: 'flying' },
  restraints: [],
  service: 'in',
  closed: [RUN],
});

/** The right strike of the worked order S4. */
export const RIGHT: readonly Step[] = [
  { act: 'fly', to: feet(24) },
  { act: 'close', zone: MID },
  { act: 'remove', kind: 'H', count: 1, gallery: 'mid' },
  { act: 'remove', kind: 'F', count: 2, gallery: 'mid' },
  { act: 'fly', to: feet(3) },
  { act: 'reopen', zone: MID },
  { act: 'close', zone: UPPER },
  { act: 'remove', kind: 'F', count: 4, gallery: 'upper' },
  { act: 'reopen', zone: UPPER },
  { act: 'reopen', zone: RUN },
  { act: 'release', item: CLOTH },
];

/** The wrong one: in first, then the bricks. */
export const WRONG: readonly Step[] = [
  { act: 'fly', to: feet(4) },
  { act: 'close', zone: UPPER },
  { act: 'remove', kind: 'H', count: 1, gallery: 'upper' },
];

export const strikeOf = (
  context: SheetContext,
  steps: readonly Step[],
  options: Partial<OrderOptions> = {},
): CheckedOrder => {
  const physics = dropPhysics(context);
  const asked: OrderOptions = { doubt: 'none', faults: 'check', ...options };
  const verdict = verifyOrder(physics, dropOut(context), steps, asked);
  return { set: '9', job: 'strike', physics, steps, verdict, checked: asked };
};

/** The same house as a stage in the United Kingdom would write it. */
export const inUkWords = (house: House): House => ({ ...house, words: 'UK', units: 'metric' });
