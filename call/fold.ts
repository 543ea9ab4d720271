/**
 * The state of a house while a call runs, folded from the record: the same on the server and on
 * every device. It judges nothing and works nothing out: what a step leads to was worked out when
 * leave was given for it, and is in the record.
 */
import type { EventKind, EventOf, HouseEvent } from '#events';
import type {
  Actor,
  GalleryNow,
  HouseNow,
  PostNow,
  SetNow,
  StopNow,
  WorkZone,
  ZoneNow,
} from '#state';
import { foldOfSet } from './fold-set.ts';
import { isBrickStep } from './plates.ts';
import { inDoubt, UNKNOWN_SET } from './set-now.ts';

export const NOTHING_OPEN: HouseNow = {
  seq: 0,
  call: null,
  sets: {},
  galleries: {},
  posts: {},
  zones: [],
  stops: [],
};

/** `set:<house>/<id>` of the house of the call; null for every other target. */
export const setOfTarget = (target: string, house: string): string | null => {
  const before = `set:${house}/`;
  return target.startsWith(before) ? target.slice(before.length) : null;
};

export const targetOfSet = (house: string, set: string): string => `set:${house}/${set}`;

/** `now` with one event more; events of another call, and of no call, change nothing. */
export const foldEvent = (now: HouseNow, event: HouseEvent): HouseNow => {
  if (event.kind === 'call opened') return opened(event);
  const { call } = now;
  const next = { ...now, seq: event.seq };
  if (call === null || ('call' in event.payload && event.payload.call !== call.id)) return next;
  const set = setOfTarget(event.target, call.house);
  return set === null ? foldOfHouse(next, event) : foldOnSet(next, event, set);
};

export const foldAll = (events: Iterable<HouseEvent>, from: HouseNow = NOTHING_OPEN): HouseNow => {
  let now = from;
  for (const event of events) now = foldEvent(now, event);
  return now;
};

type Opened = Extract<HouseEvent, { readonly kind: 'call opened' }>;

const opened = ({ seq, atMs, payload }: Opened): HouseNow => {
  const { call, house, show, isDrill, documents, sets, galleries } = payload;
  return {
    ...NOTHING_OPEN,
    seq,
    call: { id: call, seq, house, show, isDrill, documents, openedMs: atMs },
    sets: Object.fromEntries(
      Object.entries(sets).map(([id, each]) => [id, openedSet(each)] as const),
    ),
    galleries: Object.fromEntries(
      Object.entries(galleries).map(([id, { stock, countedMs, by }]): [string, GalleryNow] => [
        id,
        { stock, countedMs, countedBy: by },
      ]),
    ),
  };
};

const openedSet = ({
  standing,
  doubt,
  knowledge,
  tag,
}: Opened['payload']['sets'][string]): SetNow => {
  return {
    ...UNKNOWN_SET,
    standing,
    last: standing,
    doubt: standing === null ? (doubt ?? UNKNOWN_SET.doubt) : null,
    knowledge,
    tag,
    since: standing === null ? null : { start: standing, steps: [] },
  };
};

const RESTORED = 'the record was restored, and what was done since its backup is not in it';

type Folds = {
  readonly [K in EventKind]?: (now: HouseNow, event: EventOf<K>) => HouseNow;
};

const FOLDS: Folds = {
  // A backup knows nothing of what was done after it: the house stands as nobody has written.
  'record made': (now) => ({
    ...now,
    sets: Object.fromEntries(
      Object.entries(now.sets).map(([id, set]) => [id, inDoubt(set, RESTORED)] as const),
    ),
    posts: {},
    zones: [],
  }),
  'call closed': (now) => ({ ...now, call: null }),
  'post taken': (now, { by, device, atMs, payload: { post, name, answeredBy } }) => {
    const taken: PostNow = { by, device, name, answeredBy, sinceMs: atMs, isClear: false };
    return { ...now, posts: { ...now.posts, [post]: taken } };
  },
  'post left': (now, { payload }) => ({ ...now, posts: without(now.posts, payload.post) }),
  'post said': (now, { payload: { post, isClear } }) => {
    const held = now.posts[post];
    return held === undefined
      ? now
      : { ...now, posts: { ...now.posts, [post]: { ...held, isClear } } };
  },
  'gallery counted': (now, { by, atMs, payload: { gallery, stock } }) => ({
    ...now,
    galleries: { ...now.galleries, [gallery]: { stock, countedMs: atMs, countedBy: by } },
  }),
  'stop called': (now, { seq, by, device, atMs, payload: { post, set, words } }) => {
    const heard = post === null ? {} : { [post]: atMs };
    const stop = { seq, by, device, post, set, words, atMs, heard, isAgreed: false };
    return { ...now, stops: [...now.stops, stop] };
  },
  'stop heard': (now, { atMs, payload: { post, stop } }) =>
    withStop(now, stop, (each) => ({
      ...each,
      heard: { ...each.heard, [post]: each.heard[post] ?? atMs },
    })),
  'stop agreed': (now, event) =>
    withStop(now, event.payload.stop, (each) =>
      isSameActor(each, event) ? { ...each, isAgreed: true } : each,
    ),
  'stop lifted': (now, { payload }) => ({
    ...now,
    stops: now.stops.filter(({ seq }) => seq !== payload.stop),
  }),
};

const foldOfHouse = (now: HouseNow, event: HouseEvent): HouseNow => {
  // The fold of a kind takes events of that kind, and is looked up by the kind of this one.
  const fold = FOLDS[event.kind] as ((now: HouseNow, event: HouseEvent) => HouseNow) | undefined;
  return fold === undefined ? now : fold(now, event);
};

/** The word that work may go on is of whoever called the stop, from whichever device of theirs. */
const isSameActor = (one: Actor, other: Actor): boolean =>
  one.by === null ? one.device === other.device && other.by === null : one.by === other.by;

const without = <T>(record: Readonly<Record<string, T>>, name: string): Record<string, T> =>
  Object.fromEntries(Object.entries(record).filter(([each]) => each !== name));

const withStop = (now: HouseNow, seq: number, change: (stop: StopNow) => StopNow): HouseNow => ({
  ...now,
  stops: now.stops.map((each) => (each.seq === seq ? change(each) : each)),
});

/** A set, and with it the bricks of a gallery and the zones that its steps close and open. */
const foldOnSet = (now: HouseNow, event: HouseEvent, id: string): HouseNow => {
  const before = now.sets[id] ?? UNKNOWN_SET;
  const after = foldOfSet(before, event);
  if (after === before) return now;
  const on = { id, before, after, event };
  const next = { ...now, sets: { ...now.sets, [id]: after } };
  return withHandsOn(withZones(withBricks(next, on), on), on);
};

const plates = (set: SetNow): Readonly<Record<string, number>> => {
  const counts: Record<string, number> = {};
  for (const { kind, count, tag } of (set.standing ?? set.last)?.stack ?? []) {
    if (tag !== 'spreader') counts[kind] = (counts[kind] ?? 0) + count;
  }
  return counts;
};

/**
 * What goes onto an arbor came from the gallery of the step, and what comes off lies there. Where
 * nobody knows how many went, nobody knows either how many of the kind lie there now.
 */
const withBricks = (now: HouseNow, { before, after, event }: OnSet): HouseNow => {
  const { leave } = before;
  if (leave === null || !isBrickStep(leave.step)) return now;
  const { gallery, kind } = leave.step;
  const there = now.galleries[gallery];
  const loose = there?.stock[kind];
  if (there === undefined || loose === undefined) return now;
  const withStock = (stock: GalleryNow['stock']): HouseNow => ({
    ...now,
    galleries: { ...now.galleries, [gallery]: { ...there, stock } },
  });
  if (after.standing === null || event.kind === 'set found') {
    return withStock(without(there.stock, kind));
  }
  const moved = (plates(after)[kind] ?? 0) - (plates(before)[kind] ?? 0);
  // More than lay there by the count: the count was wrong.
  if (moved > loose) return withStock(without(there.stock, kind));
  return moved === 0 ? now : withStock({ ...there.stock, [kind]: loose - moved });
};

type OnSet = {
  readonly id: string;
  readonly before: SetNow;
  readonly after: SetNow;
  readonly event: HouseEvent;
};

/**
 * A zone is closed by the report of its marshal, and kept until it is reported open. A find says
 * which zones are closed, as it says everything else.
 */
const withZones = (now: HouseNow, { id, before, after, event }: OnSet): HouseNow => {
  if (event.kind === 'set found') return zonesFound(now, id, event);
  const { leave } = before;
  if (event.kind !== 'step reported' || leave === null || after.leave !== null) return now;
  const { as, leave: of, post } = event.payload;
  // Said of another leave, or from another post, it closes and opens nothing.
  if (as !== 'done' || of !== leave.seq || post !== leave.post) return now;
  const { step } = leave;
  if (step.act !== 'close' && step.act !== 'reopen') return now;
  const others = now.zones.filter(({ zone, set }) => set !== id || !isSameZone(zone, step.zone));
  const closed = { zone: step.zone, set: id, post: leave.post, sinceMs: event.atMs };
  return { ...now, zones: step.act === 'close' ? [...others, closed] : others };
};

const zonesFound = (now: HouseNow, id: string, event: EventOf<'set found'>): HouseNow => ({
  ...now,
  zones: [
    ...now.zones.filter(({ set }) => set !== id),
    ...event.payload.standing.closed.map((zone): ZoneNow => {
      const kept = now.zones.find((each) => each.set === id && isSameZone(each.zone, zone));
      return kept ?? { zone, set: id, post: marshalPost(zone), sinceMs: event.atMs };
    }),
  ],
});

const isSameZone = (one: WorkZone, other: WorkZone): boolean =>
  one.zone === 'run' || other.zone === 'run'
    ? one.zone === other.zone
    : one.gallery === other.gallery;

const marshalPost = (zone: WorkZone): string =>
  zone.zone === 'run' ? 'marshal:run' : `marshal:drop:${zone.gallery}`;

/** Whoever goes to a line or a batten is no longer out of every drop zone, and says so anew. */
const withHandsOn = (now: HouseNow, { after, before, event }: OnSet): HouseNow => {
  const { leave } = after;
  if (event.kind !== 'leave given' || leave === null || leave === before.leave) return now;
  const { act } = leave.step;
  const held = now.posts[leave.post];
  if (held === undefined || isBrickStep(leave.step) || act === 'close' || act === 'reopen') {
    return now;
  }
  return { ...now, posts: { ...now.posts, [leave.post]: { ...held, isClear: false } } };
};
