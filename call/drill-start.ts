/** From what a drill begins: one set of the show as it is before the work, and its order. */
import { isAccepted, type WorkedOrder } from '#orders';
import type { GalleryState, HouseState, Standing, Step } from '#state';
import type { CallDocuments } from './desk-types.ts';
import { isBrickStep } from './plates.ts';

export type DrillJob = 'load' | 'strike';

export type DrillStart = {
  readonly set: string;
  readonly job: DrillJob;
  /** With the set as it is before the work, and the bricks for it on the galleries. */
  readonly documents: CallDocuments;
  readonly steps: readonly Step[];
};

/** A search gives a restraint neither owner nor tag: the crew has both, or it gets no leave. */
export const signedSteps = (steps: readonly Step[], set: string): readonly Step[] =>
  steps.map((step) =>
    step.act === 'rig' || step.act === 'unrig'
      ? { ...step, restraint: { ...step.restraint, owner: 'bull line lead', tag: `B${set}` } }
      : step,
  );

/** Bricks of the order that a gallery has not: they are taken to have been carried there. */
const withBricks = (
  galleries: HouseState['galleries'],
  steps: readonly Step[],
): HouseState['galleries'] => {
  const wanted = steps.filter(isBrickStep).filter(({ act }) => act === 'add');
  return Object.fromEntries(
    Object.entries(galleries).map(([id, gallery]): readonly [string, GalleryState] => {
      const stock: Record<string, number> = { ...gallery.stock };
      for (const { kind } of wanted) {
        const count = wanted
          .filter((step) => step.gallery === id && step.kind === kind)
          .reduce((sum, step) => sum + step.count, 0);
        const kept = gallery.reserved
          .filter((each) => each.kind === kind)
          .reduce((sum, each) => sum + each.count, 0);
        stock[kind] = Math.max(stock[kind] ?? 0, count + kept);
      }
      return [id, { ...gallery, stock }];
    }),
  );
};

const withStart = (
  documents: CallDocuments,
  {
    set,
    standing,
    at,
    steps,
  }: {
    readonly set: string;
    readonly standing: Standing;
    readonly at: string;
    readonly steps: readonly Step[];
  },
): CallDocuments => {
  const { state } = documents;
  const { height, stack, items, restraints, service } = standing;
  return {
    ...documents,
    state: {
      ...state,
      at,
      galleries: withBricks(state.galleries, steps),
      sets: {
        ...state.sets,
        [set]: {
          ...{ lock: 'closed', ring: 'on', collar: 'secured', tag: null, pullTest: null },
          ...{ height: { low: height, high: height }, stack, restraints, service },
          items: Object.entries(items).map(([item, phase]) => ({ item, phase })),
          knowledge: { basis: 'counted', at, by: 'drill', second: 'drill' },
        },
      },
    },
  };
};

/** Null where the order is none that the judge takes: there is nothing to practise by then. */
export const drillStart = (
  documents: CallDocuments,
  { question, order }: WorkedOrder,
  at: string,
): DrillStart | null => {
  const { set, job } = order;
  if (!isAccepted(order) || order.steps.length === 0 || job === 'change') return null;
  const steps = signedSteps(order.steps, set);
  const { standing } = question.start;
  return { set, job, steps, documents: withStart(documents, { set, standing, at, steps }) };
};
