/** How a set stands when the work on it begins: as recorded, as a person says, or as planned. */
import { type SetAssessment, standingOf } from '#assessment';
import { ok } from '#outcome';
import { type Metres, metres } from '#quantities';
import type { OrderPhysics, Restraint, StackRun, Standing } from '#state';
import { unknownSetState } from '#state';
import type { Assumption, CountOfKind } from './assumption.ts';
import { type Answer, notKnown, type OrderJob } from './job.ts';

export type OrderStart = { readonly standing: Standing; readonly assumed: readonly Assumption[] };

/** Half a foot: how far a height read off at the rail may be off. */
const MEASURED_M = 0.15;

/** A batten that is recorded a hand past its stop stands on it. */
const onTravel = (heightM: number, { lowStop, highStop }: OrderPhysics): Metres => {
  if (heightM < lowStop.heightM && heightM > lowStop.heightM - MEASURED_M) {
    return metres(lowStop.heightM);
  }
  const isPastHigh = heightM > highStop.heightM && heightM < highStop.heightM + MEASURED_M;
  return metres(isPastHigh ? highStop.heightM : heightM);
};

/** As the record has the set. */
export const recordedStart = ({ state, set, physics }: OrderJob): Answer<OrderStart> => {
  const { id } = set.lineSet;
  const standing = standingOf(state.sets[id] ?? unknownSetState);
  if (!standing.known) return notKnown(`sets.${id}`, standing.needs);
  const { value } = standing;
  const strange = Object.keys(value.items).filter((item) => !isOnShow(set, item));
  if (strange.length > 0) {
    return notKnown(
      `sets.${id}.items`,
      strange.map((item) => `what ${item} is: the show has none`),
    );
  }
  const height = onTravel(value.height, physics);
  const assumed: readonly Assumption[] = [
    { is: 'recorded', set: id, at: state.at, by: state.by },
    ...(height === value.height ? [] : [{ is: 'onStop' } as const]),
  ];
  return ok({ standing: { ...value, height }, assumed });
};

const isOnShow = ({ hang }: SetAssessment, item: string): boolean =>
  (hang?.items ?? []).some(({ id }) => id === item);

/** Bare on its low stop, because the person who asks says so. */
export const bareStart = (job: OrderJob): Answer<OrderStart> => {
  const { set, physics } = job;
  const { id, arbor } = set.lineSet;
  if (arbor === null || arbor.pipeWeight === null) return notKnown(`set ${id}`, ['pipe weight']);
  const standing: Standing = {
    height: metres(physics.lowStop.heightM),
    stack: arbor.pipeWeight.map((run) => ({ ...run, tag: 'pipe' })),
    items: {},
    restraints: [],
    service: 'in',
    closed: [],
  };
  return ok({ standing, assumed: [{ is: 'saidBare', set: id }, ...bricksBack(job, standing)] });
};

/** As an order itself writes it, whatever the record says. */
export const writtenStart = (job: OrderJob, standing: Standing): OrderStart => ({
  standing,
  assumed: [{ is: 'asTheOrderWrites', set: job.set.lineSet.id }, ...bricksBack(job, standing)],
});

/** All that the show hangs, with the planned bricks on, at its highest trim or on its steel. */
export const plannedStart = (job: OrderJob): Answer<OrderStart> => {
  const { hang, plan, lineSet } = job.set;
  const path = `set ${lineSet.id}`;
  if (hang === null) return notKnown(path, ['what the show hangs on it']);
  if (hang.deadHungAt !== null) return steelStart(job);
  if (!plan.known) return notKnown(path, plan.needs);
  const height = highestTrim(job.set);
  if (height === null) return notKnown(path, ['a trim']);
  const standing: Standing = {
    height,
    stack: plan.value.stack.runs,
    items: Object.fromEntries(hang.items.map(({ id }) => [id, 'flying'])),
    restraints: [],
    service: 'in',
    closed: [],
  };
  return ok({ standing, assumed: [{ is: 'asPlanned', set: lineSet.id }] });
};

/** As a height of the batten; null where the show gives none. */
export const highestTrim = ({ plan }: SetAssessment): Metres | null => {
  const trims = plan.known ? plan.value.trims.map(({ height }) => height) : [];
  return trims.length === 0 ? null : metres(Math.max(...trims));
};

const steelStart = ({ set, state }: OrderJob): Answer<OrderStart> => {
  const { hang, lineSet } = set;
  const { id } = lineSet;
  const at = hang?.deadHungAt ?? null;
  const pipe = lineSet.arbor?.pipeWeight ?? null;
  if (hang === null || at === null || !at.known) {
    return notKnown(`set ${id}`, ['height at which it is dead-hung']);
  }
  if (pipe === null) return notKnown(`set ${id}`, ['pipe weight']);
  const recorded = (state.sets[id]?.restraints ?? []).find(({ kind }) => kind === 'deadHangSteel');
  const steel: Restraint = recorded ?? {
    kind: 'deadHangSteel',
    resists: 'in',
    rating: null,
    from: at.value,
    to: at.value,
    owner: null,
    tag: null,
  };
  const show = Object.entries(hang.bricks?.counts ?? {});
  const standing: Standing = {
    height: at.value,
    stack: [
      ...pipe.map((run): StackRun => ({ ...run, tag: 'pipe' })),
      ...show.map(([kind, count]): StackRun => ({ kind, count, tag: 'show' })),
    ],
    items: Object.fromEntries(hang.items.map((item) => [item.id, 'heldElsewhere'])),
    restraints: [steel],
    service: 'deadHung',
    closed: [],
  };
  return ok({ standing, assumed: [{ is: 'asPlanned', set: id }] });
};

const showBricks = (stack: readonly StackRun[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { kind, count, tag } of stack) {
    if (tag === 'show') counts.set(kind, (counts.get(kind) ?? 0) + count);
  }
  return counts;
};

/**
 * Show bricks that the record has on the arbor and the start has not: they lie somewhere else, and
 * where nobody has written. Said, since they have to be brought and counted before the work.
 */
const bricksBack = ({ set, state }: OrderJob, standing: Standing): readonly Assumption[] => {
  const { id } = set.lineSet;
  const recorded = showBricks(state.sets[id]?.stack ?? []);
  const there = showBricks(standing.stack);
  const bricks = [...recorded].flatMap(([kind, count]): readonly CountOfKind[] => {
    const off = count - (there.get(kind) ?? 0);
    return off > 0 ? [{ kind, count: off }] : [];
  });
  return bricks.length === 0 ? [] : [{ is: 'bricksBack', set: id, bricks }];
};
