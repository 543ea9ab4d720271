import { describe, expect, it } from 'vitest';
import type { Command, Heartbeat, HouseEvent, Pinned } from '#events';
import { boxesIn, passingBox } from './boxes.ts';
import { Live } from './live.ts';
import type { Asked, Sent } from './server.ts';
import type { Ears } from './tabs.ts';

const T = 1_790_000_000_000;
const beat = (seq: number, recordKey = 'record'): Heartbeat => ({
  seq,
  hash: `h${seq}`,
  serverMs: T,
  build: 'aaaaaaaaaaaa',
  houseKey: 'house',
  recordKey,
});
const saved = (seq: number, document: string, revision: number): HouseEvent =>
  ({
    seq,
    id: `e${seq}`,
    atMs: T,
    kind: 'document saved',
    target: `document:${document}`,
    by: null,
    device: null,
    commandId: null,
    previous: `h${seq - 1}`,
    hash: `h${seq}`,
    payload: { document, kind: 'show', revision, savedBy: 'TD', why: '', sha256: '' },
  }) as HouseEvent;
const note = { kind: 'note written', target: 'set:11', seen: null } as const;
const payload = { text: 'a note', writtenMs: T } as const;

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

type Air = Record<'ears', Ears | null> &
  Record<'after', number | null> &
  Record<'tick', () => void>;

const quietAir = (): Air => ({ ears: null, after: null, tick: () => undefined });

const stage = (answer: () => Sent = () => ({ is: 'unheard' })) => {
  const box = passingBox();
  const boxes = boxesIn(box);
  const air = quietAir();
  const sent: Command[] = [];
  const asked: string[] = [];
  const givenUp: string[] = [];
  const revisions = new Map([['show:vell', 1]]);
  const clock = { nowMs: T, refreshed: 0, ids: 0, answer: 'notThere' as Asked };
  const open = (): Live =>
    new Live({
      stream: {
        open: (after, ears) => {
          air.ears = ears;
          air.after = after;
        },
        close: () => {
          air.ears = null;
        },
      },
      askPage: async () => null,
      send: async (command) => {
        sent.push(command);
        return answer();
      },
      askAnswer: async (id) => {
        asked.push(id);
        return clock.answer;
      },
      giveUp: async (commandId) => {
        givenUp.push(commandId);
        const words = 'given up';
        return { outcome: 'refused', commandId, code: 'EVT-013', words, current: null };
      },
      boxes,
      device: 'device-1',
      newId: () => {
        clock.ids += 1;
        return `command-${clock.ids}`;
      },
      nowMs: () => clock.nowMs,
      steadyMs: () => clock.nowMs - T,
      chance: () => 0,
      ticks: (call) => {
        air.tick = call;
        return () => {
          air.tick = () => undefined;
        };
      },
      revisionOf: (document) => revisions.get(document) ?? null,
      refresh: async () => {
        clock.refreshed += 1;
      },
      heardBuild: () => undefined,
    });
  return { open, air, sent, asked, givenUp, revisions, clock, boxes };
};

const pinned: Pinned = { houseKey: 'house', recordKey: 'record', seq: 4, hash: 'h4' };

describe('the live side of a page', () => {
  it('reads the documents anew when another device saved, and not after its own save', async () => {
    const it = stage();
    it.boxes.keepPinned(pinned);
    const live = it.open();
    live.start();
    expect(it.air.after).toBe(4);
    it.air.ears?.heartbeat(beat(4));
    expect(live.view().standing.is).toBe('live');
    it.air.ears?.event(saved(5, 'show:vell', 1));
    expect(it.clock.refreshed).toBe(0);
    expect(live.isSettled()).toBe(true);
    it.air.ears?.event(saved(6, 'show:vell', 2));
    await settled();
    expect(it.clock.refreshed).toBe(1);
    // It was not reached: what is shown is older than what was told, and is asked for again.
    expect(live.isSettled()).toBe(false);
    for (let count = 0; count < 5; count++) it.air.tick();
    expect(it.clock.refreshed).toBe(2);
    it.revisions.set('show:vell', 2);
    await settled();
    expect(live.isSettled()).toBe(true);
    expect(it.boxes.pinned()).toMatchObject({ seq: 6, hash: 'h6' });
  });

  it('keeps a note until it is answered, over a restart of the page', async () => {
    const it = stage();
    it.boxes.keepPinned(pinned);
    const first = it.open();
    first.start();
    first.give({ ...note, payload });
    expect(first.view().outbox).toMatchObject([{ way: 'held' }]);
    expect(it.boxes.unsent()).toHaveLength(1);
    const second = it.open();
    second.start();
    it.air.ears?.heartbeat(beat(4));
    it.air.tick();
    await settled();
    // Whether it still holds is a person's to say.
    expect(it.sent).toEqual([]);
    second.decide('command-1', 'released');
    it.air.tick();
    await settled();
    expect(it.sent.map(({ commandId }) => commandId)).toEqual(['command-1']);
    // The answer was lost; it is asked for, and was there.
    it.clock.answer = { outcome: 'accepted', commandId: 'command-1', seqs: [5] };
    it.clock.nowMs = T + 1000;
    it.air.tick();
    await settled();
    expect(it.asked).toEqual(['command-1']);
    expect(second.view().outcomes['command-1']).toMatchObject({ outcome: 'accepted' });
    expect(second.view().outbox).toEqual([]);
    expect(it.boxes.unsent()).toEqual([]);
  });

  it('sends nothing that rests on a state while it is not live', () => {
    const it = stage();
    const live = it.open();
    live.start();
    const id = live.give({
      kind: 'withdrawn',
      target: 'set:11',
      seen: 4,
      payload: { seq: 4, event: 'e4', why: 'wrong set' },
    });
    expect(live.view().outcomes[id]).toMatchObject({ outcome: 'notSent', why: 'notLive' });
    expect(it.sent).toEqual([]);
    expect(it.boxes.unsent()).toEqual([]);
  });

  it('gives up what rests on a state and did not arrive in time, and tells it', async () => {
    const it = stage();
    it.boxes.keepPinned(pinned);
    const live = it.open();
    live.start();
    it.air.ears?.heartbeat(beat(4));
    const payload = { seq: 4, event: 'e4', why: 'wrong set' };
    const id = live.give({ kind: 'withdrawn', target: 'set:11', seen: 4, payload });
    await settled();
    for (let second = 1; second <= 60; second++) {
      it.clock.nowMs = T + second * 1000;
      it.air.ears?.heartbeat({ ...beat(4), serverMs: it.clock.nowMs });
      it.air.tick();
      await settled();
    }
    expect(it.sent.every(({ commandId }) => commandId === id)).toBe(true);
    expect(it.givenUp).toEqual([id]);
    expect(live.view().outcomes[id]).toMatchObject({ outcome: 'refused', code: 'EVT-013' });
    expect(it.boxes.unsent()).toEqual([]);
  });

  it('stops at another record, and goes on when a person takes it', () => {
    const it = stage();
    it.boxes.keepPinned(pinned);
    const live = it.open();
    live.start();
    it.air.ears?.heartbeat(beat(4, 'another'));
    expect(live.view().alarms).toEqual([{ kind: 'anotherRecord' }]);
    expect(it.air.ears).toBeNull();
    live.taken();
    expect(it.air.after).toBeNull();
    it.air.ears?.heartbeat(beat(2, 'another'));
    expect(live.view()).toMatchObject({ alarms: [], seq: 2, standing: { is: 'live' } });
    expect(it.clock.refreshed).toBe(1);
  });

  it('tells who listens only when something changed', () => {
    const it = stage();
    const live = it.open();
    let told = 0;
    live.subscribe(() => {
      told += 1;
    });
    live.start();
    it.air.ears?.heartbeat(beat(4));
    const before = told;
    for (let count = 0; count < 3; count++) it.air.tick();
    expect(told).toBe(before);
  });
});

describe('what a device keeps', () => {
  it('is how far it has come, and does not shrink within one record', () => {
    const boxes = boxesIn(passingBox());
    expect(boxes.pinned()).toBeNull();
    boxes.keepPinned(pinned);
    boxes.keepPinned({ ...pinned, seq: 3, hash: 'h3' });
    expect(boxes.pinned()).toEqual(pinned);
    boxes.keepPinned({ ...pinned, recordKey: 'another', seq: 1, hash: 'x1' });
    expect(boxes.pinned()).toMatchObject({ recordKey: 'another', seq: 1 });
  });

  it('is nothing, where what is kept is no record of ours', () => {
    const box = passingBox();
    box.setItem('counterpoise.record', '{"seq":"many"');
    box.setItem('counterpoise.unsent.x', 'null');
    const boxes = boxesIn(box);
    expect(boxes.pinned()).toBeNull();
    expect(boxes.unsent()).toEqual([]);
  });
});
