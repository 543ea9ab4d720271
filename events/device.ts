/**
 * A device as a machine: what comes in, the state after it, and what is to be done. It applies
 * events strictly in sequence, never twice and never past a gap; it calls itself live only while
 * a heartbeat says so; and it stops for a person where the record is not the one it knows.
 */
import { assert, unreachable } from '#outcome';
import {
  type DeviceState,
  deviceStanding,
  FRESH_MS,
  type Heartbeat,
  type Pinned,
  type Sequenced,
  type Stop,
} from './device-state.ts';

export type DeviceInput<E extends Sequenced> =
  /** The page is there, or comes back to the front: all that was open counts as dead. */
  | { readonly kind: 'woke'; readonly nowMs: number }
  | { readonly kind: 'wentAway' }
  | {
      readonly kind: 'tick';
      readonly nowMs: number;
      /** Since the tick before, by a clock that nobody sets; null where there is none. */
      readonly passedMs: number | null;
      readonly chance: number;
    }
  | {
      readonly kind: 'heartbeat';
      readonly stream: number;
      readonly heartbeat: Heartbeat;
      readonly nowMs: number;
    }
  | {
      readonly kind: 'event';
      readonly stream: number;
      readonly event: E;
      readonly nowMs: number;
    }
  | {
      readonly kind: 'streamFailed';
      readonly stream: number;
      readonly nowMs: number;
      readonly chance: number;
    }
  | ({ readonly kind: 'page' } & Page<E>)
  | { readonly kind: 'pageFailed'; readonly nowMs: number; readonly chance: number }
  /** A person took the record that the server has now for the one of this device. */
  | { readonly kind: 'taken'; readonly nowMs: number };

/** What the server has after `asked`, and its heartbeat at that moment. */
export type Page<E extends Sequenced> = {
  readonly asked: number;
  readonly events: readonly E[];
  readonly heartbeat: Heartbeat;
  readonly askedMs: number;
  readonly nowMs: number;
};

export type DeviceEffect<E extends Sequenced> =
  /** After null means: from where the record is now. */
  | { readonly kind: 'openStream'; readonly stream: number; readonly after: number | null }
  | { readonly kind: 'closeStream' }
  | { readonly kind: 'fetch'; readonly after: number }
  | { readonly kind: 'apply'; readonly events: readonly E[] }
  /** Read the documents anew: what is shown may be from before. */
  | { readonly kind: 'reload' }
  | { readonly kind: 'keep'; readonly pinned: Pinned }
  | { readonly kind: 'startTicks' }
  | { readonly kind: 'stopTicks' };

export type Step<E extends Sequenced> = readonly [
  state: DeviceState,
  effects: readonly DeviceEffect<E>[],
];

/** Between two ticks; a jump of the clock is told from it. */
export const TICK_MS = 1000;
const JUMP_MS = 5000;
const RETRY_FIRST_MS = 500;
const RETRY_MAX_MS = 10_000;
const DIFFERENCES = 5;

/** From 0.5 s to 10 s, half of it by chance, so that a room of tablets does not come at once. */
export const backOffMs = (failures: number, chance: number): number => {
  assert(chance >= 0 && chance < 1, 'a chance is from 0 to below 1');
  const wholeMs = Math.min(RETRY_MAX_MS, 2 * RETRY_FIRST_MS * 2 ** Math.max(0, failures - 1));
  return wholeMs / 2 + (chance * wholeMs) / 2;
};

export const deviceStep = <E extends Sequenced>(
  state: DeviceState,
  input: DeviceInput<E>,
): Step<E> => {
  const [next, effects] = taken(state, input);
  if (!('nowMs' in input)) return [next, effects];
  const isLive = deviceStanding(next, input.nowMs).is === 'live';
  const since = isLive ? (next.liveSinceServerMs ?? next.heardServerMs) : null;
  return [{ ...next, liveSinceServerMs: since }, effects];
};

const taken = <E extends Sequenced>(state: DeviceState, input: DeviceInput<E>): Step<E> => {
  switch (input.kind) {
    case 'woke':
      return woke(state, input.nowMs);
    case 'wentAway':
      return [{ ...closed(state), isHidden: true, tickMs: null }, AWAY];
    case 'tick':
      return ticked(state, input);
    case 'heartbeat':
      return isHeard(state, input.stream) ? beat(state, input) : [state, []];
    case 'event':
      return isHeard(state, input.stream) ? event(state, input.event) : [state, []];
    case 'streamFailed':
      return isHeard(state, input.stream) ? failed(state, input) : [state, []];
    case 'page':
      return state.stop !== null || state.isHidden ? [state, []] : paged(state, input);
    case 'pageFailed':
      return state.isFetching ? failed({ ...state, isFetching: false }, input) : [state, []];
    case 'taken':
      return woke({ ...state, pinned: null, stop: null, head: 0 }, input.nowMs);
    default:
      return unreachable(input);
  }
};

const AWAY = [{ kind: 'closeStream' }, { kind: 'stopTicks' }] as const;

const isHeard = ({ stream, streamIs, stop }: DeviceState, from: number): boolean =>
  stop === null && streamIs !== 'closed' && stream === from;

const closed = (state: DeviceState): DeviceState => ({
  ...state,
  streamIs: 'closed',
  isFetching: false,
  retryAtMs: null,
});

/** A new stream from where this device has come to; the old one may look open and be dead. */
const opened = <E extends Sequenced>(state: DeviceState, nowMs: number): Step<E> => {
  const stream = state.stream + 1;
  const after = state.pinned?.seq ?? null;
  const next: DeviceState = { ...closed(state), stream, streamIs: 'asked' };
  return [
    // By what is asked now the clocks are held against each other anew.
    { ...next, askedAfter: after, askedMs: nowMs, leastDifferenceMs: null },
    [{ kind: 'closeStream' }, { kind: 'openStream', stream, after }],
  ];
};

const woke = <E extends Sequenced>(state: DeviceState, nowMs: number): Step<E> => {
  // The clock may have been set meanwhile: how old is what was heard before, nobody knows.
  const trueAtMs = state.trueAtMs === null ? null : Number.NEGATIVE_INFINITY;
  const awake = {
    ...state,
    isHidden: false,
    failures: 0,
    differencesMs: [],
    tickMs: nowMs,
    trueAtMs,
  };
  if (state.stop !== null) return [awake, []];
  const [next, effects] = opened<E>(awake, nowMs);
  return [next, [...effects, { kind: 'startTicks' }]];
};

type Late = { readonly nowMs: number; readonly chance: number };

type Tick = Late & { readonly passedMs: number | null };

const ticked = <E extends Sequenced>(state: DeviceState, tick: Tick): Step<E> => {
  const { nowMs, passedMs, chance } = tick;
  if (state.isHidden || state.stop !== null) return [state, []];
  const sinceMs = nowMs - (state.tickMs ?? nowMs);
  const isLate = Math.max(sinceMs, passedMs ?? 0) > TICK_MS + JUMP_MS;
  // Slept, was frozen, or somebody set the clock: nothing that looks open can be trusted.
  if (isLate || sinceMs < -JUMP_MS) return woke(state, nowMs);
  const next = { ...state, tickMs: nowMs };
  if (next.retryAtMs !== null) return nowMs >= next.retryAtMs ? opened(next, nowMs) : [next, []];
  const lastMs = Math.max(next.askedMs, next.trueAtMs ?? next.askedMs);
  if (next.streamIs !== 'closed' && nowMs - lastMs >= FRESH_MS) {
    return failed(next, { nowMs, chance });
  }
  return [next, []];
};

const failed = <E extends Sequenced>(state: DeviceState, { nowMs, chance }: Late): Step<E> => {
  const failures = state.failures + 1;
  const retryAtMs = nowMs + backOffMs(failures, chance);
  return [{ ...closed(state), failures, retryAtMs }, [{ kind: 'closeStream' }]];
};

type Beat = { readonly heartbeat: Heartbeat; readonly nowMs: number };

const beat = <E extends Sequenced>(state: DeviceState, { heartbeat, nowMs }: Beat): Step<E> => {
  const before = state.streamIs === 'asked' ? state.askedAfter : null;
  const stop = whyStop(state, heartbeat, before);
  if (stop !== null) return stopped(state, stop);
  const { leastDifferenceMs } = state;
  // Sent later than now, by both clocks as they were: one of them was set since.
  if (leastDifferenceMs !== null && heartbeat.serverMs + leastDifferenceMs > nowMs + SET_MS) {
    return opened(state, nowMs);
  }
  const askedMs = state.streamIs === 'asked' ? state.askedMs : null;
  return goOn(heard({ ...state, streamIs: 'heard' }, { heartbeat, nowMs }, askedMs), heartbeat);
};

/** Clocks run apart by less than this while a stream is open. */
const SET_MS = 1000;

/** `asked`: the seq that the server was asked from, where this answer came after the question. */
const whyStop = (
  { pinned }: DeviceState,
  { houseKey, recordKey, seq, hash }: Heartbeat,
  asked: number | null,
): Stop | null => {
  if (pinned === null) return null;
  if (pinned.houseKey !== houseKey) return 'anotherHouse';
  if (pinned.recordKey !== recordKey) return 'anotherRecord';
  if (asked !== null && seq < asked) return 'wentBackwards';
  return seq === pinned.seq && hash !== pinned.hash ? 'anotherRecord' : null;
};

const stopped = <E extends Sequenced>(state: DeviceState, stop: Stop): Step<E> => [
  { ...closed(state), stop },
  AWAY,
];

/**
 * What a heartbeat says was true when the server sent it. It may have lain in a buffer since, and
 * so may all before it; but an answer to a question was made after it was asked, and by that it is
 * known how late a heartbeat can be at most. `askedMs`: when this one was asked for, if it was.
 */
const heard = (
  state: DeviceState,
  { heartbeat, nowMs }: Beat,
  askedMs: number | null,
): DeviceState => {
  const { serverMs, seq } = heartbeat;
  const differencesMs = [...state.differencesMs, nowMs - serverMs].slice(-DIFFERENCES);
  const leasts = [state.leastDifferenceMs, askedMs === null ? null : askedMs - serverMs];
  const leastDifferenceMs = Math.max(...leasts.filter((least) => least !== null));
  const evidenceMs = Math.min(nowMs, serverMs + leastDifferenceMs);
  // A late word does not undo an earlier one; one in the future is of a clock since put back.
  const beforeMs = state.trueAtMs === null || state.trueAtMs > nowMs ? evidenceMs : state.trueAtMs;
  return {
    ...state,
    differencesMs,
    leastDifferenceMs,
    trueAtMs: Math.max(evidenceMs, beforeMs),
    heardServerMs: Math.max(serverMs, state.heardServerMs ?? serverMs),
    head: Math.max(state.head, seq),
    failures: 0,
  };
};

/** After a heartbeat: takes the record for its own if it has none, else looks what is missing. */
const goOn = <E extends Sequenced>(state: DeviceState, heartbeat: Heartbeat): Step<E> => {
  if (state.pinned === null) return adopted(state, heartbeat);
  return fetchIfBehind(state, heartbeat.seq < state.pinned.seq);
};

const adopted = <E extends Sequenced>(state: DeviceState, heartbeat: Heartbeat): Step<E> => {
  const { houseKey, recordKey, seq, hash } = heartbeat;
  const pinned = { houseKey, recordKey, seq, hash };
  return [{ ...state, pinned, head: seq }, [{ kind: 'keep', pinned }, { kind: 'reload' }]];
};

/**
 * Asks for what is missing. `inDoubt`: a heartbeat named less than this device has, as one that a
 * page has overtaken does; the answer to a new question tells whether the record went back.
 */
const fetchIfBehind = <E extends Sequenced>(state: DeviceState, inDoubt = false): Step<E> => {
  const after = state.pinned?.seq ?? 0;
  if (state.isFetching || (state.head <= after && !inDoubt)) return [state, []];
  return [{ ...state, isFetching: true }, [{ kind: 'fetch', after }]];
};

const event = <E extends Sequenced>(state: DeviceState, one: E): Step<E> => {
  // Without a record of its own a device does not know whose event it is.
  if (state.pinned === null || one.seq <= state.pinned.seq) return [state, []];
  // What is replayed before the first heartbeat and does not fit: the heartbeat will say why.
  if (state.streamIs === 'asked' && one.previous !== state.pinned.hash) return [state, []];
  const next = { ...state, head: Math.max(state.head, one.seq) };
  return one.seq === state.pinned.seq + 1 ? applied(next, [one]) : fetchIfBehind(next);
};

const paged = <E extends Sequenced>(state: DeviceState, page: Page<E>): Step<E> => {
  const { asked, heartbeat, askedMs, nowMs } = page;
  const idle = { ...state, isFetching: false };
  const stop = whyStop(idle, heartbeat, asked);
  if (stop !== null) return stopped(idle, stop);
  const next = heard(idle, { heartbeat, nowMs }, askedMs);
  if (next.pinned === null) return adopted(next, heartbeat);
  const { seq } = next.pinned;
  const fresh = page.events.filter((one) => one.seq > seq);
  const isWhole = fresh.every((one, index) => one.seq === seq + 1 + index);
  // The server no longer has what comes next: begin from how things stand.
  if (!isWhole || (fresh.length === 0 && asked >= seq && heartbeat.seq > seq)) {
    return adopted(next, heartbeat);
  }
  const [then, effects] = applied(next, fresh);
  if (then.stop !== null) return [then, effects];
  const [last, more] = fetchIfBehind<E>(then);
  return [last, [...effects, ...more]];
};

/** In sequence by now; each must carry the hash of the one before it. */
const applied = <E extends Sequenced>(state: DeviceState, events: readonly E[]): Step<E> => {
  let { pinned } = state;
  if (pinned === null || events.length === 0) return [state, []];
  for (const { seq, previous, hash } of events) {
    if (previous !== pinned.hash) return stopped(state, 'anotherRecord');
    pinned = { ...pinned, seq, hash };
  }
  return [
    { ...state, pinned, head: Math.max(state.head, pinned.seq) },
    [
      { kind: 'apply', events },
      { kind: 'keep', pinned },
    ],
  ];
};
