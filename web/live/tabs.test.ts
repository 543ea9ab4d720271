import { describe, expect, it } from 'vitest';
import type { Heartbeat } from '#events';
import type { StreamEars } from './server.ts';
import { type Channel, type TabParts, TabStream } from './tabs.ts';

const T = 1_790_000_000_000;
const beat = (seq: number): Heartbeat => ({
  seq,
  hash: `h${seq}`,
  serverMs: T,
  build: null,
  houseKey: 'house',
  recordKey: 'record',
});

type Timer = { readonly at: number; readonly call: () => void };

/** A clock that goes on by hand, and calls what is due on the way. */
const clock = () => {
  let nowMs = T;
  let timers: readonly Timer[] = [];
  const later = (call: () => void, milliseconds: number): (() => void) => {
    const timer = { at: nowMs + milliseconds, call };
    timers = [...timers, timer];
    return () => {
      timers = timers.filter((each) => each !== timer);
    };
  };
  const turn = async (milliseconds: number): Promise<void> => {
    const until = nowMs + milliseconds;
    for (let count = 0; count < 1000; count++) {
      await Promise.resolve();
      const due = timers.filter(({ at }) => at <= until).toSorted((a, b) => a.at - b.at)[0];
      if (due === undefined) break;
      timers = timers.filter((each) => each !== due);
      nowMs = Math.max(nowMs, due.at);
      due.call();
    }
    nowMs = until;
    await Promise.resolve();
  };
  return { now: () => nowMs, later, turn };
};

/** A browser with several tabs, its channel and its clock. */
const browser = () => {
  const { now, later, turn } = clock();
  const hearers: { readonly tab: string; readonly call: (said: never) => void }[] = [];
  const streams = new Map<string, StreamEars>();
  const heard: Record<string, string[]> = {};
  const polls: string[] = [];
  const channelOf = (tab: string): Channel => ({
    post: (said) => {
      for (const each of [...hearers]) if (each.tab !== tab) each.call(said as never);
    },
    hear: (call) => void hearers.push({ tab, call: call as (said: never) => void }),
  });
  const open = (tab: string, { hasChannel = true } = {}): TabStream => {
    const said: string[] = [];
    heard[tab] = said;
    const parts: TabParts = {
      tab,
      channel: hasChannel ? channelOf(tab) : null,
      openEvents: (_after, ears) => {
        streams.set(tab, ears);
        return () => streams.delete(tab);
      },
      askPage: async () => {
        polls.push(tab);
        return { events: [], heartbeat: beat(1) };
      },
      later,
      nowMs: now,
      chance: () => 0.5,
    };
    const stream = new TabStream(parts);
    stream.open(1, {
      heartbeat: ({ seq }) => void said.push(`beat ${seq}`),
      event: ({ seq }) => void said.push(`event ${seq}`),
      page: (asked) => void said.push(`page ${asked}`),
      failed: () => void said.push('failed'),
      position: () => 1,
    });
    return stream;
  };
  /** It has its stream yet, and hears nobody. */
  const freeze = (tab: string): void => {
    const at = hearers.findIndex((each) => each.tab === tab);
    if (at >= 0) hearers.splice(at, 1);
  };
  const of = (tab: string): readonly string[] => heard[tab] ?? [];
  return { open, turn, streams, heard: of, polls, freeze };
};

describe('seven tabs of one device', () => {
  it('have one stream, and all hear of it what it tells', async () => {
    const it = browser();
    for (let tab = 1; tab <= 7; tab++) {
      it.open(`tab-${tab}`);
      await it.turn(50);
    }
    await it.turn(1000);
    expect([...it.streams.keys()]).toEqual(['tab-1']);
    it.streams.get('tab-1')?.heartbeat(beat(2));
    for (let tab = 2; tab <= 7; tab++) {
      expect(it.heard(`tab-${tab}`)).toEqual(['page 1', 'beat 1', 'beat 2']);
    }
  });

  it('agree on one, where all are opened in one instant', async () => {
    const it = browser();
    for (let tab = 1; tab <= 7; tab++) it.open(`tab-${tab}`);
    await it.turn(2000);
    expect([...it.streams.keys()]).toEqual(['tab-1']);
  });

  it('have another leader when theirs goes, and when it falls silent', async () => {
    const it = browser();
    const first = it.open('tab-1');
    await it.turn(500);
    it.open('tab-2');
    it.open('tab-3');
    await it.turn(500);
    first.close();
    await it.turn(2000);
    expect(it.streams.size).toBe(1);
    const [second] = it.streams.keys();
    expect(second).not.toBe('tab-1');
    it.freeze(second ?? '');
    await it.turn(6000);
    expect(it.streams.size).toBe(1);
    await it.turn(3000);
    expect(it.streams.size).toBe(2);
  });

  it('take no word of another before they have asked the server themselves', async () => {
    const it = browser();
    it.open('tab-1');
    await it.turn(500);
    it.open('tab-2');
    it.streams.get('tab-1')?.heartbeat(beat(0));
    expect(it.heard('tab-2')).toEqual([]);
    await it.turn(500);
    expect(it.heard('tab-2').slice(0, 2)).toEqual(['page 1', 'beat 1']);
  });
});

describe('a tab by itself', () => {
  it('leads where there is no channel', async () => {
    const it = browser();
    it.open('tab-1', { hasChannel: false });
    expect([...it.streams.keys()]).toEqual(['tab-1']);
  });

  it('says that its stream failed, and closes it', async () => {
    const it = browser();
    it.open('tab-1');
    await it.turn(300);
    it.streams.get('tab-1')?.failed();
    expect(it.heard('tab-1')).toEqual(['failed']);
    expect(it.streams.size).toBe(0);
  });

  it('asks every 5 s where the server has streams enough of its device', async () => {
    const it = browser();
    it.open('tab-1');
    await it.turn(300);
    it.streams.get('tab-1')?.crowded();
    await it.turn(10_500);
    expect(it.polls).toHaveLength(3);
    expect(it.heard('tab-1').slice(0, 4)).toEqual(['page 1', 'beat 1', 'page 1', 'beat 1']);
  });
});
