import { describe, expect, it } from 'vitest';
import {
  alarmsOf,
  backOffMs,
  clockOffsetMs,
  type DeviceEffect,
  type DeviceInput,
  type DeviceState,
  deviceStanding,
  deviceStep,
  type Heartbeat,
  newDevice,
  type Pinned,
  type Sequenced,
} from './index.ts';

const T = 1_790_000_000_000;
const hashOf = (seq: number): string => `h${seq}`;
const one = (seq: number): Sequenced => ({ seq, previous: hashOf(seq - 1), hash: hashOf(seq) });
const some = (from: number, to: number): readonly Sequenced[] =>
  Array.from({ length: to - from + 1 }, (_, index) => one(from + index));
const beat = (seq: number, serverMs = T, changes: Partial<Heartbeat> = {}): Heartbeat => ({
  seq,
  hash: hashOf(seq),
  serverMs,
  build: 'aaaaaaaaaaaa',
  houseKey: 'house-1',
  recordKey: 'record-1',
  ...changes,
});
const PINNED: Pinned = { houseKey: 'house-1', recordKey: 'record-1', seq: 10, hash: hashOf(10) };

/** A machine with what it asked to be done since it was last looked at. */
const device = (pinned: Pinned | null = PINNED) => {
  let state: DeviceState = newDevice(pinned);
  return {
    put: (input: DeviceInput<Sequenced>): readonly DeviceEffect<Sequenced>[] => {
      const [next, effects] = deviceStep(state, input);
      state = next;
      return effects;
    },
    state: () => state,
    is: (nowMs = T) => deviceStanding(state, nowMs),
  };
};

const kinds = (effects: readonly DeviceEffect<Sequenced>[]) => effects.map(({ kind }) => kind);

/** Open, at event 10, live at T. */
const live = (pinned: Pinned | null = PINNED) => {
  const it = device(pinned);
  it.put({ kind: 'woke', nowMs: T });
  it.put({ kind: 'heartbeat', stream: 1, heartbeat: beat(10), nowMs: T });
  return it;
};

describe('where a device stands', () => {
  it('is catching up until the first heartbeat, then live since that one', () => {
    const it = device();
    expect(kinds(it.put({ kind: 'woke', nowMs: T }))).toEqual([
      'closeStream',
      'openStream',
      'startTicks',
    ]);
    expect(it.is()).toEqual({ is: 'catchingUp', sinceServerMs: null });
    it.put({ kind: 'heartbeat', stream: 1, heartbeat: beat(10), nowMs: T });
    expect(it.is()).toEqual({ is: 'live', sinceServerMs: T });
    it.put({ kind: 'heartbeat', stream: 1, heartbeat: beat(10, T + 5000), nowMs: T + 5000 });
    expect(it.is(T + 5000)).toEqual({ is: 'live', sinceServerMs: T });
  });

  it('is live while the last heartbeat is younger than 15 s, and stale from then on', () => {
    const it = live();
    expect(it.is(T + 14_999).is).toBe('live');
    expect(it.is(T + 15_000)).toEqual({ is: 'stale', sinceServerMs: T });
  });

  it('is offline after two failures, since the last heartbeat, and live after the next', () => {
    const it = live();
    it.put({ kind: 'streamFailed', stream: 1, nowMs: T + 100, chance: 0 });
    expect(it.is(T + 100).is).toBe('catchingUp');
    it.put({ kind: 'tick', nowMs: T + 1000, passedMs: null, chance: 0 });
    it.put({ kind: 'streamFailed', stream: 2, nowMs: T + 1100, chance: 0 });
    expect(it.is(T + 1100)).toEqual({ is: 'offline', sinceServerMs: T });
    it.put({ kind: 'tick', nowMs: T + 3000, passedMs: null, chance: 0 });
    it.put({ kind: 'heartbeat', stream: 3, heartbeat: beat(10, T + 3000), nowMs: T + 3000 });
    expect(it.is(T + 3000).is).toBe('live');
  });

  it('never calls itself live on a heartbeat that lay in a buffer', () => {
    const it = live();
    it.put({ kind: 'heartbeat', stream: 1, heartbeat: beat(10, T + 5000), nowMs: T + 65_000 });
    expect(it.is(T + 65_000).is).toBe('stale');
    it.put({ kind: 'heartbeat', stream: 1, heartbeat: beat(10, T + 65_000), nowMs: T + 65_001 });
    expect(it.is(T + 65_001).is).toBe('live');
  });

  it('is stale at once after a freeze, and asks anew from where it was', () => {
    const it = live();
    const effects = it.put({ kind: 'tick', nowMs: T + 60_000, passedMs: null, chance: 0 });
    expect(it.is(T + 60_000)).toEqual({ is: 'stale', sinceServerMs: T });
    expect(effects).toContainEqual({ kind: 'openStream', stream: 2, after: 10 });
    it.put({ kind: 'heartbeat', stream: 2, heartbeat: beat(10, T + 60_010), nowMs: T + 60_010 });
    expect(it.is(T + 60_010).is).toBe('live');
  });

  it('asks anew when its clock is set back, and is not live by what it heard in the future', () => {
    const it = live();
    it.put({ kind: 'tick', nowMs: T, passedMs: null, chance: 0 });
    const effects = it.put({ kind: 'tick', nowMs: T - 86_400_000, passedMs: null, chance: 0 });
    expect(kinds(effects)).toContain('openStream');
    expect(it.is(T - 86_400_000).is).toBe('stale');
    it.put({ kind: 'heartbeat', stream: 2, heartbeat: beat(10, T + 1), nowMs: T - 86_399_999 });
    expect(it.is(T - 86_399_999).is).toBe('live');
  });
});

describe('the stream', () => {
  it('is closed and opened anew on waking, and what the old one says is not heard', () => {
    const it = live();
    expect(kinds(it.put({ kind: 'wentAway' }))).toEqual(['closeStream', 'stopTicks']);
    expect(it.put({ kind: 'tick', nowMs: T + 1000, passedMs: null, chance: 0 })).toEqual([]);
    it.put({ kind: 'woke', nowMs: T + 2000 });
    const late = { kind: 'event', stream: 1, event: one(11), nowMs: T + 2000 } as const;
    expect(it.put(late)).toEqual([]);
    expect(kinds(it.put({ ...late, stream: 2 }))).toEqual(['apply', 'keep']);
  });

  it('is opened anew when nothing comes over it for 15 s, though it looks open', () => {
    const it = live();
    let effects: readonly DeviceEffect<Sequenced>[] = [];
    for (let nowMs = T; nowMs <= T + 15_000; nowMs += 1000) {
      effects = it.put({ kind: 'tick', nowMs, passedMs: null, chance: 0 });
    }
    expect(kinds(effects)).toEqual(['closeStream']);
    expect(kinds(it.put({ kind: 'tick', nowMs: T + 15_900, passedMs: null, chance: 0 }))).toContain(
      'openStream',
    );
  });

  it('waits from 0.5 s to 10 s before it is tried again, by chance, and not after waking', () => {
    expect(backOffMs(1, 0)).toBe(500);
    expect(backOffMs(2, 0)).toBe(1000);
    expect(backOffMs(3, 0.5)).toBe(3000);
    expect(backOffMs(9, 0.999_999)).toBeCloseTo(10_000, 1);
    expect(backOffMs(40, 0)).toBe(5000);
    const it = live();
    it.put({ kind: 'streamFailed', stream: 1, nowMs: T, chance: 0.5 });
    expect(it.put({ kind: 'tick', nowMs: T + 700, passedMs: null, chance: 0 })).toEqual([]);
    expect(kinds(it.put({ kind: 'woke', nowMs: T + 710 }))).toContain('openStream');
    expect(it.state().failures).toBe(0);
  });
});

describe('events', () => {
  it('are applied in sequence, and dropped when they come twice', () => {
    const it = live();
    const put = (seq: number) => it.put({ kind: 'event', stream: 1, event: one(seq), nowMs: T });
    expect(put(11)).toEqual([
      { kind: 'apply', events: [one(11)] },
      { kind: 'keep', pinned: { ...PINNED, seq: 11, hash: hashOf(11) } },
    ]);
    expect(put(11)).toEqual([]);
    expect(put(3)).toEqual([]);
  });

  it('are fetched where one is missing, and the one after it is not applied before', () => {
    const it = live();
    const put = (seq: number) => it.put({ kind: 'event', stream: 1, event: one(seq), nowMs: T });
    expect(put(13)).toEqual([{ kind: 'fetch', after: 10 }]);
    expect(put(14)).toEqual([]);
    expect(it.is().is).toBe('catchingUp');
    const page = { asked: 10, heartbeat: beat(14), askedMs: T, nowMs: T };
    const effects = it.put({ kind: 'page', ...page, events: some(11, 13) });
    expect(effects[0]).toEqual({ kind: 'apply', events: some(11, 13) });
    expect(effects.at(-1)).toEqual({ kind: 'fetch', after: 13 });
    it.put({ kind: 'page', ...page, asked: 13, events: some(14, 14) });
    expect(it.is().is).toBe('live');
  });

  it('are fetched where a heartbeat names more than came', () => {
    const it = live();
    const heartbeat = beat(12, T + 5000);
    const effects = it.put({ kind: 'heartbeat', stream: 1, heartbeat, nowMs: T + 5000 });
    expect(effects).toEqual([{ kind: 'fetch', after: 10 }]);
    expect(it.is(T + 5000).is).toBe('catchingUp');
  });

  it('begin from how things stand where the server has no longer what comes next', () => {
    const it = live();
    it.put({ kind: 'event', stream: 1, event: one(30), nowMs: T });
    const heartbeat = beat(30);
    const page = { asked: 10, events: some(25, 30), heartbeat, askedMs: T, nowMs: T };
    const effects = it.put({ kind: 'page', ...page });
    expect(kinds(effects)).toEqual(['keep', 'reload']);
    expect(it.is().is).toBe('live');
  });

  it('are not waited for by a new device: it reads the documents as they are', () => {
    const it = device(null);
    expect(it.put({ kind: 'woke', nowMs: T })).toContainEqual({
      kind: 'openStream',
      stream: 1,
      after: null,
    });
    const effects = it.put({ kind: 'heartbeat', stream: 1, heartbeat: beat(10), nowMs: T });
    expect(effects).toEqual([{ kind: 'keep', pinned: PINNED }, { kind: 'reload' }]);
    expect(it.is().is).toBe('live');
  });

  it('are asked for again after a page that did not come', () => {
    const it = live();
    it.put({ kind: 'event', stream: 1, event: one(13), nowMs: T });
    expect(kinds(it.put({ kind: 'pageFailed', nowMs: T, chance: 0 }))).toEqual(['closeStream']);
    expect(kinds(it.put({ kind: 'tick', nowMs: T + 600, passedMs: null, chance: 0 }))).toContain(
      'openStream',
    );
  });
});

describe('what stops a device for a person', () => {
  const stopped = (heartbeat: Heartbeat) => {
    const it = device();
    it.put({ kind: 'woke', nowMs: T });
    it.put({ kind: 'heartbeat', stream: 1, heartbeat, nowMs: T });
    return it;
  };

  it('is another house, another record, and a record that went back', () => {
    const why = (heartbeat: Heartbeat) => alarmsOf(stopped(heartbeat).state())[0]?.kind;
    expect(why(beat(10))).toBeUndefined();
    expect(why(beat(10, T, { houseKey: 'house-2' }))).toBe('anotherHouse');
    expect(why(beat(10, T, { recordKey: 'record-2' }))).toBe('anotherRecord');
    expect(why(beat(9))).toBe('wentBackwards');
    expect(why(beat(10, T, { hash: 'other' }))).toBe('anotherRecord');
  });

  it('is a history that parted before the event that comes next', () => {
    const it = live();
    const event = { ...one(11), previous: 'other' };
    expect(kinds(it.put({ kind: 'event', stream: 1, event, nowMs: T }))).toEqual([
      'closeStream',
      'stopTicks',
    ]);
    expect(alarmsOf(it.state())).toEqual([{ kind: 'anotherRecord' }]);
  });

  it('is named by the heartbeat where what was replayed before it does not fit', () => {
    const it = device();
    it.put({ kind: 'woke', nowMs: T });
    const event = { ...one(11), previous: 'other' };
    expect(it.put({ kind: 'event', stream: 1, event, nowMs: T })).toEqual([]);
    const heartbeat = beat(11, T, { houseKey: 'house-2' });
    it.put({ kind: 'heartbeat', stream: 1, heartbeat, nowMs: T });
    expect(alarmsOf(it.state())).toEqual([{ kind: 'anotherHouse' }]);
  });

  it('is not a heartbeat that a page has overtaken: the server is asked', () => {
    const it = live();
    it.put({ kind: 'event', stream: 1, event: one(11), nowMs: T });
    const late = { kind: 'heartbeat', stream: 1, heartbeat: beat(10), nowMs: T } as const;
    expect(it.put(late)).toEqual([{ kind: 'fetch', after: 11 }]);
    const page = { asked: 11, events: [], askedMs: T, nowMs: T };
    it.put({ kind: 'page', ...page, heartbeat: beat(11) });
    expect(it.is().is).toBe('live');
    it.put(late);
    it.put({ kind: 'page', ...page, heartbeat: beat(10) });
    expect(alarmsOf(it.state())).toEqual([{ kind: 'wentBackwards' }]);
  });

  it('ends with a word of that person only, and the new record is read from its head', () => {
    const it = stopped(beat(4, T, { recordKey: 'record-2' }));
    expect(it.is()).toEqual({ is: 'stale', sinceServerMs: null });
    expect(it.put({ kind: 'woke', nowMs: T + 1 })).toEqual([]);
    expect(it.put({ kind: 'tick', nowMs: T + 2, passedMs: null, chance: 0 })).toEqual([]);
    const effects = it.put({ kind: 'taken', nowMs: T + 3 });
    expect(effects).toContainEqual({ kind: 'openStream', stream: 2, after: null });
    const heartbeat = beat(4, T, { recordKey: 'record-2' });
    it.put({ kind: 'heartbeat', stream: 2, heartbeat, nowMs: T + 4 });
    expect(it.state().pinned).toMatchObject({ seq: 4, recordKey: 'record-2' });
    expect(it.is(T + 4).is).toBe('live');
  });
});

describe('clocks', () => {
  it('takes the quickest of the last heartbeats for the offset, and warns above 30 s', () => {
    const it = live();
    const put = (aheadMs: number, step: number) => {
      const serverMs = T + step * 5000;
      const heartbeat = beat(10, serverMs);
      it.put({ kind: 'heartbeat', stream: 1, heartbeat, nowMs: serverMs + aheadMs });
    };
    put(40_000, 1);
    expect(alarmsOf(it.state())).toEqual([]);
    for (let step = 2; step < 7; step++) put(40_000 + step, step);
    expect(clockOffsetMs(it.state())).toBe(40_002);
    expect(alarmsOf(it.state())).toEqual([{ kind: 'clockOff', offsetMs: 40_002 }]);
  });

  it('does not let an hour or a day of a clock touch order or server times', () => {
    for (const offMs of [3_600_000, -86_400_000]) {
      const it = device();
      it.put({ kind: 'woke', nowMs: T + offMs });
      const heard = {
        kind: 'heartbeat',
        stream: 1,
        heartbeat: beat(10),
        nowMs: T + offMs,
      } as const;
      it.put(heard);
      expect(it.is(T + offMs)).toEqual({ is: 'live', sinceServerMs: T });
      expect(alarmsOf(it.state())).toEqual([{ kind: 'clockOff', offsetMs: offMs }]);
      const event = { kind: 'event', stream: 1, event: one(11), nowMs: T + offMs } as const;
      expect(kinds(it.put(event))).toEqual(['apply', 'keep']);
    }
  });
});
