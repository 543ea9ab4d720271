/** How a set is to stand when the work on it is done. */
import { ok } from '#outcome';
import type { Metres } from '#quantities';
import type { OrderGoal } from '#sequence';
import type { HouseState, ItemPhase, SetState, Standing } from '#state';
import { unknownSetState } from '#state';
import type { Assumption } from './assumption.ts';
import { type Answer, notKnown, type OrderJob } from './job.ts';
import { highestTrim } from './start.ts';

/**
 * All that the show hangs on the set, with the planned bricks; on its steel where it has one.
 * Where no height is said, its highest trim.
 */
export const loadGoal = ({ set }: OrderJob, at: Metres | null): Answer<OrderGoal> => {
  const { lineSet, hang, plan } = set;
  const path = `set ${lineSet.id}`;
  if (hang === null) return notKnown(path, ['what the show hangs on it']);
  const items = Object.fromEntries(hang.items.map(({ id }) => [id, 'on' as const]));
  const steelAt = hang.deadHungAt;
  if (steelAt !== null) {
    if (!steelAt.known) return notKnown(path, ['height at which it is dead-hung']);
    const bricks = hang.bricks?.counts ?? {};
    return ok({ items, bricks, height: steelAt.value, service: 'deadHung' });
  }
  if (!plan.known) return notKnown(path, plan.needs);
  const bricks = plan.value.stack.show.map(({ kind, count }) => [kind, count] as const);
  const height = at ?? highestTrim(set);
  return ok({ items, bricks: Object.fromEntries(bricks), height, service: 'in' });
};

/** What is taken for granted of the goal, where the show does not say it in so many words. */
export const goalAssumptions = (
  { set }: OrderJob,
  { service, bricks }: OrderGoal,
): readonly Assumption[] =>
  service === 'deadHung' && Object.keys(bricks).length === 0
    ? [{ is: 'steelWithPipeWeight', set: set.lineSet.id }]
    : [];

/** Everything away and the pipe weight alone on the arbor. */
export const strikeGoal = (
  { set }: OrderJob,
  start: Standing,
  at: Metres | null,
): Answer<OrderGoal> => {
  const known = (set.hang?.items ?? []).map(({ id }) => id);
  const ids = [...new Set([...known, ...Object.keys(start.items)])];
  return ok({
    items: Object.fromEntries(ids.map((id) => [id, 'away'])),
    bricks: {},
    height: at,
    service: 'in',
  });
};

/** As another record has the set: its bricks, its items, and its height where one is said. */
export const stateGoal = (
  { set }: OrderJob,
  wanted: HouseState,
  at: Metres | null,
): Answer<OrderGoal> => {
  const { id } = set.lineSet;
  const { height, stack, items, service }: SetState = wanted.sets[id] ?? unknownSetState;
  const needs = [
    ...(stack === null ? ['what is to be on the arbor'] : []),
    ...(items === null ? ['what is to hang'] : []),
  ];
  if (stack === null || items === null) return notKnown(`sets.${id}`, needs);
  return ok({
    items: Object.fromEntries(items.flatMap(({ item, phase }) => wantedOf(item, phase))),
    bricks: countsOf(stack),
    height: at ?? (height !== null && height.low === height.high ? height.low : null),
    service: service === 'deadHung' ? 'deadHung' : 'in',
  });
};

const wantedOf = (
  item: string,
  phase: ItemPhase,
): readonly (readonly [string, 'on' | 'away'])[] => {
  if (phase === 'heldElsewhere') return [];
  return [[item, phase === 'away' || phase === 'beside' ? 'away' : 'on']];
};

const countsOf = (stack: Standing['stack']): OrderGoal['bricks'] => {
  const counts: Record<string, number> = {};
  for (const { kind, count, tag } of stack) {
    if (tag === 'show') counts[kind] = (counts[kind] ?? 0) + count;
  }
  return counts;
};
