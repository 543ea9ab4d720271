import { describe, expect, it } from 'vitest';
import type { DeviceStanding, Heartbeat, HouseEvent } from '#events';
import { passingBox } from '../live/boxes.ts';
import { callBoxIn } from './kept-call.ts';
import { type CallParts, type CallSaid, CallStore } from './store.ts';

const T = 1_790_000_000_000;
const CALL = 'a'.repeat(32);
const SET = 'set:kestlemere/11';

type Draft = Pick<HouseEvent, 'kind' | 'target'> & { readonly payload: object };

const opening: Draft = {
  kind: 'call opened',
  target: 'house',
  payload: {
    ...{ call: CALL, house: 'kestlemere', show: 'vell', isDrill: false, documents: [] },
    ...{ sets: {}, galleries: {} },
  },
};
const taken = (post: string): Draft => ({
  kind: 'post taken',
  target: 'house',
  payload: { call: CALL, post, name: 'Ada', answeredBy: null },
});
const note: Draft = { kind: 'note written', target: 'house', payload: { text: 'n', writtenMs: 1 } };
const doubt: Draft = { kind: 'set doubted', target: SET, payload: { call: CALL, why: 'touched' } };

/** A house with its record, which answers for pages of it. */
const houseOf = () => {
  const events: HouseEvent[] = [];
  const house = { recordKey: 'record', isReached: true as boolean, pages: 0, seen: 0 };
  const heartbeat = (): Heartbeat => ({
    ...{ seq: events.length, hash: `h${events.length}`, serverMs: T, build: null },
    ...{ houseKey: 'house', recordKey: house.recordKey },
  });
  const happen = (draft: Draft, from: string | null = null): HouseEvent => {
    const seq = events.length + 1;
    const place = { seq, id: `e${seq}`, atMs: T + seq, by: null, device: from, commandId: null };
    // Only what the fold reads of it is given.
    const event = { ...draft, ...place, previous: `h${seq - 1}`, hash: `h${seq}` } as HouseEvent;
    events.push(event);
    return event;
  };
  const asks: Pick<CallParts, 'askPage' | 'askBegin' | 'askSeen'> = {
    askPage: async (after) => {
      if (!house.isReached) return null;
      house.pages += 1;
      const from = after ?? events.length;
      return { events: events.slice(from, from + 2), heartbeat: heartbeat() };
    },
    askBegin: async () => {
      if (!house.isReached) return null;
      const at = events.findLast(({ kind }) => kind.startsWith('call '));
      return { from: at?.kind === 'call opened' ? at.seq : null };
    },
    askSeen: async () => house.seen,
  };
  return { events, house, happen, asks };
};

/** The live side of a page, as far as a call asks of it; what it hears is given in. */
const liveOf = ({ events, house }: ReturnType<typeof houseOf>) => {
  const device = { pinned: 0 as number | null, standing: 'live' as DeviceStanding['is'] };
  const ears = new Set<(heard: readonly HouseEvent[]) => void>();
  const looks = new Set<() => void>();
  const given: unknown[] = [];
  const look = (): void => {
    for (const each of looks) each();
  };
  const keys = { houseKey: 'house', hash: '' };
  const live: CallParts['live'] = {
    view: () => ({
      standing: { is: device.standing, sinceServerMs: T },
      seq: device.pinned ?? 0,
    }),
    record: () =>
      device.pinned === null ? null : { ...keys, recordKey: house.recordKey, seq: device.pinned },
    subscribe: (call) => {
      looks.add(call);
      return () => looks.delete(call);
    },
    hear: (ear) => {
      ears.add(ear);
      return () => ears.delete(ear);
    },
    give: (command) => `command-${given.push(command)}`,
  };
  return {
    ...{ device, given, look, live },
    /** The stream brings what has happened, to the page and so to the call. */
    hear: (...heard: readonly HouseEvent[]): void => {
      for (const ear of ears) ear(heard);
      device.pinned = heard.at(-1)?.seq ?? device.pinned;
      look();
    },
    /** The page that was open before is gone. */
    leave: (): void => {
      ears.clear();
      looks.clear();
    },
    catchUp: (): void => {
      device.pinned = events.length;
    },
  };
};

const timersOf = () => {
  const timers: { call: () => void; ms: number }[] = [];
  return {
    later: (call: () => void, ms: number) => {
      const timer = { call, ms };
      timers.push(timer);
      return () => void timers.splice(timers.indexOf(timer), 1);
    },
    ring: (ms: number): void => {
      for (const timer of timers.filter((each) => each.ms === ms)) {
        timers.splice(timers.indexOf(timer), 1);
        timer.call();
      }
    },
  };
};

const stage = () => {
  const box = passingBox();
  const there = houseOf();
  const here = liveOf(there);
  const { later, ring } = timersOf();
  const open = (): CallStore => {
    here.leave();
    const store = new CallStore({
      ...{ ...there.asks, live: here.live, box: callBoxIn(box), device: 'mine', later },
      moment: () => ({ serverMs: T, deviceMs: T }),
    });
    store.start();
    return store;
  };
  const settle = async (): Promise<void> => {
    for (let turn = 0; turn < 50; turn++) await Promise.resolve();
  };
  return { ...there, ...here, box, open, settle, ring };
};

const KEEP_MS = 400;
const AGAIN_MS = 1500;

describe('the call on a device', () => {
  it('asks for the call from where it was opened, page by page, then follows', async () => {
    const it = stage();
    for (const draft of [note, note, opening, taken('deck'), note]) it.happen(draft);
    it.happen(taken('rail'), 'mine');
    it.catchUp();
    const store = it.open();
    expect(store.seen()).toMatchObject({ now: null, isLive: false });
    await it.settle();
    expect(store.seen().now?.seq).toBe(6);
    expect(store.seen()).toMatchObject({ isLive: true, posts: ['rail'] });
    expect(Object.keys(store.seen().now?.posts ?? {})).toEqual(['deck', 'rail']);
    it.hear(it.happen(doubt));
    expect(store.seen().now?.sets['11']?.doubt).toBe('nobody has recorded how it stands');
    expect(store.seen().isLive).toBe(true);
  });

  it('knows that no call is open, and takes one that is opened while it looks', async () => {
    const it = stage();
    it.happen(note);
    it.catchUp();
    const store = it.open();
    await it.settle();
    expect(store.seen()).toMatchObject({ now: { call: null, seq: 1 }, isLive: true, posts: [] });
    it.hear(it.happen(opening));
    expect(store.seen().now?.call?.id).toBe(CALL);
  });

  it('fills a gap by asking, and says until then that it is not live', async () => {
    const it = stage();
    it.happen(opening);
    it.catchUp();
    const store = it.open();
    await it.settle();
    it.happen(taken('deck'));
    const later = it.happen(taken('rail'), 'mine');
    it.hear(later);
    expect(store.seen()).toMatchObject({ isLive: false, posts: [] });
    await it.settle();
    expect(store.seen()).toMatchObject({ isLive: true, posts: ['rail'] });
  });

  it('shows after a restart without the server what it knew last, as not live', async () => {
    const it = stage();
    it.happen(opening);
    it.happen(taken('rail'), 'mine');
    it.catchUp();
    it.open();
    await it.settle();
    it.ring(KEEP_MS);
    it.house.isReached = false;
    it.device.standing = 'offline';
    const store = it.open();
    await it.settle();
    expect(store.seen()).toMatchObject({ isLive: false, posts: ['rail'], asOf: { deviceMs: T } });
    // It is heard again, and only what happened since is asked for.
    it.house.isReached = true;
    it.device.standing = 'live';
    const before = it.house.pages;
    it.happen(taken('deck'));
    it.catchUp();
    it.look();
    await it.settle();
    expect(store.seen()).toMatchObject({ isLive: true, now: { seq: 3 } });
    expect(it.house.pages - before).toBe(2);
  });

  it('drops what it knew of another record, and asks again until it is answered', async () => {
    const it = stage();
    it.happen(opening);
    it.happen(taken('rail'), 'mine');
    it.catchUp();
    it.open();
    await it.settle();
    it.ring(KEEP_MS);
    it.house.recordKey = 'restored';
    it.house.isReached = false;
    const store = it.open();
    expect(store.seen()).toMatchObject({ now: null, posts: [] });
    expect(callBoxIn(it.box).kept()).toBeNull();
    await it.settle();
    it.house.isReached = true;
    it.ring(AGAIN_MS);
    await it.settle();
    expect(store.seen()).toMatchObject({ isLive: true, posts: ['rail'] });
  });

  it('does not go on from a history that parted from the one it knows', async () => {
    const it = stage();
    it.happen(opening);
    it.happen(taken('rail'), 'mine');
    it.catchUp();
    it.open();
    await it.settle();
    it.ring(KEEP_MS);
    const other = it.happen(taken('deck'));
    // Another call had been opened in the place of the one that this device has seen.
    it.events.splice(1, 2, { ...other, seq: 2, previous: 'h1', hash: 'x2' } as HouseEvent);
    it.events.push({ ...other, seq: 3, previous: 'x2', hash: 'h3' } as HouseEvent);
    it.catchUp();
    const store = it.open();
    await it.settle();
    expect(store.seen()).toMatchObject({ isLive: true, posts: [], now: { seq: 3 } });
  });

  it('says a request with the last event that it knows of the set, a report without', async () => {
    const it = stage();
    it.happen(opening);
    it.catchUp();
    const store = it.open();
    await it.settle();
    it.house.seen = 1;
    const plan: CallSaid = {
      ...{ kind: 'plan told', set: '11' },
      payload: { job: 'load', steps: [] },
    };
    expect(await store.give(plan)).toBe('command-1');
    const told = it.happen(doubt);
    it.hear(told);
    await store.give(plan);
    await store.give({
      kind: 'stop called',
      set: null,
      payload: { post: null, set: null, words: '' },
    });
    expect(it.given).toMatchObject([
      { target: SET, seen: 1, payload: { call: CALL, job: 'load' } },
      { target: SET, seen: told.seq },
      { target: 'house', seen: null, payload: { call: CALL } },
    ]);
  });

  it('says nothing where no call is open', async () => {
    const it = stage();
    it.happen(note);
    it.catchUp();
    const store = it.open();
    await it.settle();
    const payload = { post: null, set: null, words: '' };
    expect(await store.give({ kind: 'stop called', set: null, payload })).toBeNull();
    expect(it.given).toEqual([]);
  });
});
