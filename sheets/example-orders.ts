/** Orders on set 9 of the example house, as the worked orders of its plan have them. */
import { orderPhysicsOf, type SetAssessment } from '#assessment';
import type { House } from '#house';
import {
  type CheckedOrder,
  type OrderSource,
  openJob,
  type ShowWork,
  showOrders,
  strikeGoal,
  type WorkedOrder,
} from '#orders';
import { assert, type Result } from '#outcome';
import { FOOT, type Metres, metres } from '#quantities';
import { type OrderOptions, verifyOrder } from '#rules';
import type { OrderPhysics, StackRun, Standing, Step } from '#state';
import { setOf } from './context.ts';
import type { SheetContext } from './index.ts';

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
  const rest = { checked: asked, assumed: [], restraint: null, bearing: null };
  return { set: '9', job: 'strike', physics, steps, verdict, ...rest };
};

const mustBe = <T>(answer: Result<T, unknown>): T => {
  assert(answer.ok, 'the example can be asked for');
  return answer.value;
};

/** As if the search had found the order. */
const workedFrom = (context: SheetContext, order: CheckedOrder): WorkedOrder => {
  const { house, show, state } = context;
  assert(show !== null, 'the example has a show');
  const job = mustBe(openJob({ house, show, state }, order.set));
  const standing = order.verdict.states[0]?.standing ?? dropOut(context);
  const found = {
    steps: order.steps,
    states: [],
    restraint: null,
    exposedJ: 0,
    searched: 1,
    optimal: true,
  };
  return {
    question: {
      job,
      start: { standing, assumed: order.assumed },
      goal: mustBe(strikeGoal(job, standing, null)),
      kind: order.job,
      doubt: order.checked.doubt,
      lock: 'planning',
      restraint: 'either',
      steelN: null,
    },
    plan: { found },
    order,
  };
};

/** The context with these orders for all that the show is asked for. */
export const withOrders = (
  context: SheetContext,
  orders: readonly CheckedOrder[],
): SheetContext => {
  const jobs = orders.flatMap(({ set, job }) => (job === 'change' ? [] : [{ set, kind: job }]));
  const of = (set: string, kind: ShowWork['kind']) => {
    const order = orders.find((each) => each.set === set && each.job === kind);
    return order === undefined ? { refusals: [] } : workedFrom(context, order);
  };
  return { ...context, orders: { jobs, of } };
};

/** The show's own orders of a few sets: to search for all takes longer than a test should. */
export const ordersOf = (
  { house, show, state }: Pick<SheetContext, 'house' | 'show' | 'state'>,
  sets: readonly string[],
): OrderSource => {
  assert(show !== null, 'the example has a show');
  const { jobs, of } = showOrders(house, show, state);
  return { jobs: jobs.filter(({ set }) => sets.includes(set)), of };
};

/** The same house as a stage in the United Kingdom would write it. */
export const inUkWords = (house: House): House => ({ ...house, words: 'UK', units: 'metric' });
