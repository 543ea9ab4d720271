import type { Refusal, Result } from '#outcome';
import { ok } from '#outcome';
import type { Metres } from '#quantities';
import type { OrderGoal } from '#sequence';
import { inHouseWords } from '#sheets';
import type { HouseState, ItemPhase, SetState, Standing } from '#state';
import { unknownSetState } from '#state';
import { notKnown, type OrderJob } from './order-job.ts';

type Answer = Result<OrderGoal, readonly Refusal[]>;

/** All that the show hangs on the set, with the planned bricks; on its steel where it has one. */
export const loadGoal = ({ set }: OrderJob, at: Metres | null): Answer => {
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
  return ok({ items, bricks: Object.fromEntries(bricks), height: at, service: 'in' });
};

/** What is taken for granted of the goal, where the show does not say it in so many words. */
export const goalWords = ({ house, set }: OrderJob, goal: OrderGoal): readonly string[] =>
  goal.service === 'deadHung' && Object.keys(goal.bricks).length === 0
    ? [
        inHouseWords(
          `Set ${set.lineSet.id} is to hang on steel with pipe weight only, no show bricks.`,
          house,
        ),
      ]
    : [];

/** Everything away and the pipe weight alone on the arbor. */
export const strikeGoal = ({ set }: OrderJob, start: Standing, at: Metres | null): Answer => {
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
export const stateGoal = ({ set }: OrderJob, wanted: HouseState, at: Metres | null): Answer => {
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
