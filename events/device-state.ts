/**
 * What one device knows of the house's record, and what it may say of itself. Pure: the time of
 * the device, the chance of a back-off and all that comes over the air are given in.
 */

/** What the order of events rests on. */
export type Sequenced = {
  readonly seq: number;
  /** Hash of the event before it, so that another history is noticed where it parts. */
  readonly previous: string;
  readonly hash: string;
};

/** Sent by the server every 5 s, at the start of every stream and with every page. */
export type Heartbeat = {
  readonly seq: number;
  /** Hash of the event `seq`. */
  readonly hash: string;
  readonly serverMs: number;
  /** The newest build of the screens that the server has; null where it has none. */
  readonly build: string | null;
  /** Made on the first start of a house, the same in its backups. */
  readonly houseKey: string;
  /** Made anew when a restored or copied database is made the record. */
  readonly recordKey: string;
};

/** How far this device has come in whose record; kept on the device, over a restart of it too. */
export type Pinned = {
  readonly houseKey: string;
  readonly recordKey: string;
  readonly seq: number;
  readonly hash: string;
};

/** What stops a device until a person has decided: it goes on with no record but its own. */
export type Stop = 'anotherHouse' | 'anotherRecord' | 'wentBackwards';

export type DeviceState = {
  /** Null before the first heartbeat of all. */
  readonly pinned: Pinned | null;
  /** Newest event that the server is known to have. */
  readonly head: number;
  /** Number of the stream that is listened to; what others say is not heard. */
  readonly stream: number;
  readonly streamIs: 'closed' | 'asked' | 'heard';
  /** Where the stream was asked from: an answer with less is proof of a record that went back. */
  readonly askedAfter: number | null;
  readonly askedMs: number;
  readonly isFetching: boolean;
  /** The latest time, by this device, at which what it heard was true; null before any. */
  readonly trueAtMs: number | null;
  readonly heardServerMs: number | null;
  readonly liveSinceServerMs: number | null;
  readonly failures: number;
  readonly retryAtMs: number | null;
  readonly isHidden: boolean;
  readonly tickMs: number | null;
  /** Device time less server time of the last heartbeats; delay only makes them larger. */
  readonly differencesMs: readonly number[];
  /**
   * The least that device time less server time can be, by the last question: its answer was made
   * after it was asked. Null where nothing was asked since the clocks can be trusted.
   */
  readonly leastDifferenceMs: number | null;
  readonly stop: Stop | null;
};

/** A heartbeat older than this is no word on how things stand now. */
export const FRESH_MS = 15_000;
/** A device's clock further off than this is said aloud. */
export const CLOCK_OFF_MS = 30_000;
/** From here on the server counts as not there: once may be a restart of a switch. */
export const OFFLINE_FAILURES = 2;

export const newDevice = (pinned: Pinned | null): DeviceState => ({
  pinned,
  head: pinned?.seq ?? 0,
  stream: 0,
  streamIs: 'closed',
  askedAfter: null,
  askedMs: 0,
  isFetching: false,
  trueAtMs: null,
  heardServerMs: null,
  liveSinceServerMs: null,
  failures: 0,
  retryAtMs: null,
  isHidden: false,
  tickMs: null,
  differencesMs: [],
  leastDifferenceMs: null,
  stop: null,
});

export type DeviceStanding = {
  readonly is: 'live' | 'catchingUp' | 'stale' | 'offline';
  /** Server time: when it became live, else of the last heartbeat; null where none was heard. */
  readonly sinceServerMs: number | null;
};

const isFresh = ({ trueAtMs }: DeviceState, nowMs: number): boolean => {
  if (trueAtMs === null) return false;
  // A clock that was put back says nothing about the age of what was heard before.
  const ageMs = nowMs - trueAtMs;
  return ageMs >= 0 && ageMs < FRESH_MS;
};

/** What the screen says of itself at a moment: one of four, and since when. */
export const deviceStanding = (state: DeviceState, nowMs: number): DeviceStanding => {
  const sinceServerMs = state.heardServerMs;
  if (state.stop !== null) return { is: 'stale', sinceServerMs };
  if (state.failures >= OFFLINE_FAILURES) return { is: 'offline', sinceServerMs };
  if (!isFresh(state, nowMs) && state.trueAtMs !== null) return { is: 'stale', sinceServerMs };
  const isCaughtUp = state.pinned !== null && state.pinned.seq >= state.head;
  if (state.streamIs !== 'heard' || !isCaughtUp || state.isFetching || state.isHidden) {
    return { is: 'catchingUp', sinceServerMs };
  }
  return { is: 'live', sinceServerMs: state.liveSinceServerMs ?? sinceServerMs };
};

/**
 * How far this device's clock is ahead of the server's, as evidence; no order rests on it. The
 * smallest of the last differences, since a delay on the way only adds to it. Null before any.
 */
export const clockOffsetMs = ({ differencesMs }: DeviceState): number | null =>
  differencesMs.length === 0 ? null : Math.min(...differencesMs);

export type Alarm =
  | { readonly kind: Stop }
  | { readonly kind: 'clockOff'; readonly offsetMs: number };

/** What needs a person, the gravest first. */
export const alarmsOf = (state: DeviceState): readonly Alarm[] => {
  const { stop } = state;
  const offsetMs = clockOffsetMs(state) ?? 0;
  return [
    ...(stop === null ? [] : [{ kind: stop } as const]),
    ...(Math.abs(offsetMs) > CLOCK_OFF_MS ? [{ kind: 'clockOff', offsetMs } as const] : []),
  ];
};
