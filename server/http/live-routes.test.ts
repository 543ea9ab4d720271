import { connect } from 'node:net';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Command, memoryLog, recordEvents } from '#events';
import { NOW_MS, openStage } from './live-routes-stage.ts';

let stage: Awaited<ReturnType<typeof openStage>>;
beforeEach(async () => {
  stage = await openStage();
});
afterEach(() => stage.close());

const note = (commandId: string, changes: Partial<Command> = {}): Command =>
  ({
    kind: 'note written',
    target: 'set:11',
    payload: { text: 'a frayed hand line', writtenMs: null },
    commandId,
    device: 'device-1',
    seen: null,
    clientMs: NOW_MS,
    ...changes,
  }) as Command;

const signing = (
  commandId: string,
  { device = 'device-1', seen = 0, role = 'this machine' } = {},
) =>
  note(commandId, {
    kind: 'signed',
    payload: {
      statement: 'balance card of set 11 read',
      shown: 'a'.repeat(64),
      basis: seen,
      restsOn: ['document:show:vell'],
      role,
      second: null,
    },
    device,
    seen,
  } as Partial<Command>);

const post = async (body: unknown) => {
  const response = await fetch(`${stage.address}/api/commands`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  return { status: response.status, body: await response.json() };
};

const ask = async (path: string) => {
  const response = await fetch(stage.address + path);
  return { status: response.status, body: await response.json() };
};

describe('the stream', () => {
  it('is flushed at once, forbids proxies to gather it, and begins with a heartbeat', async () => {
    const stream = stage.stream('');
    const { headers, statusCode } = await stream.response;
    expect(statusCode).toBe(200);
    expect(headers).toMatchObject({
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-store, no-transform',
      'x-accel-buffering': 'no',
    });
    expect(headers['content-encoding']).toBeUndefined();
    expect(await stream.next()).toEqual({
      kind: 'heartbeat',
      heartbeat: {
        seq: 0,
        hash: '0'.repeat(64),
        serverMs: NOW_MS,
        build: 'aaaaaaaaaaaa',
        houseKey: 'house-1',
        recordKey: 'record-1',
      },
    });
    stage.turned.nowMs += 5000;
    stage.turned.beat();
    const beat = await stream.next();
    expect(beat).toMatchObject({ heartbeat: { serverMs: NOW_MS + 5000 } });
  });

  it('tells what was committed to all, once, by its number', async () => {
    const streams = [stage.stream(''), stage.stream('?after=0')];
    for (const each of streams) await each.next();
    expect((await post(note('command-1'))).status).toBe(200);
    expect((await post(note('command-2'))).status).toBe(200);
    for (const each of streams) {
      expect(await each.next()).toMatchObject({ kind: 'event', id: 1, event: { seq: 1 } });
      expect(await each.next()).toMatchObject({ id: 2, event: { commandId: 'command-2' } });
    }
    stage.turned.beat();
    for (const each of streams) expect((await each.next()).kind).toBe('heartbeat');
  });

  it('begins after the number asked for, and leaves what is far behind to be fetched', async () => {
    for (let count = 1; count <= 203; count++) await post(note(`command-${count}`));
    const near = stage.stream('?after=201');
    expect([await near.next(), await near.next(), await near.next()]).toMatchObject([
      { id: 202 },
      { id: 203 },
      { heartbeat: { seq: 203 } },
    ]);
    const far = stage.stream('?after=1');
    expect(await far.next()).toMatchObject({ kind: 'heartbeat', heartbeat: { seq: 203 } });
    const page = (await ask('/api/events?after=1&limit=3')).body;
    expect(page.events.map(({ seq }: { seq: number }) => seq)).toEqual([2, 3, 4]);
    expect(page.heartbeat).toMatchObject({ seq: 203, houseKey: 'house-1' });
  });

  it('of a device with too many is ended, the oldest first, with a word', async () => {
    const own = [];
    for (let count = 0; count < 5; count++) {
      const stream = stage.stream('?device=tablet-1');
      await stream.next();
      own.push(stream);
    }
    expect(await own[0]?.next()).toEqual({ kind: 'leave', why: 'crowded' });
    await own[0]?.ended;
    expect(stage.hub.streams()).toBe(4);
    const other = stage.stream('?device=tablet-2');
    await other.next();
    expect(stage.hub.streams()).toBe(5);
  });

  it('of a reader that takes nothing is ended, and keeps nobody else waiting', async () => {
    const written: string[] = [];
    let isEnded = false;
    const slow = {
      write: (text: string) => void written.push(text),
      waitingBytes: () => 300_000,
      mayRead: () => true,
      end: () => {
        isEnded = true;
      },
    };
    stage.hub.listen(slow, { device: null, after: null });
    const other = stage.stream('');
    await other.next();
    await post(note('command-1'));
    expect(await other.next()).toMatchObject({ id: 1 });
    expect(isEnded).toBe(true);
    expect(stage.hub.streams()).toBe(1);
    expect(written).toHaveLength(1);
  });

  it('is ended when the right of who opened it has ended', async () => {
    const stream = stage.stream('');
    await stream.next();
    stage.turned.mayRead = false;
    recordEvents(
      stage.log,
      [{ kind: 'person removed', target: 'person:p1', payload: { why: 'left the house' } }],
      { by: null, nowMs: NOW_MS, newId: () => 'event-x' },
    );
    stage.hub.look();
    await stream.ended;
    expect(stream.told).toEqual([]);
  });

  it('forgets who has gone', async () => {
    const stream = stage.stream('');
    await stream.next();
    stream.request.destroy();
    await expect.poll(() => stage.hub.streams()).toBe(0);
  });

  it('tells what others recorded as well: a document saved, a person invited', async () => {
    const stream = stage.stream('');
    await stream.next();
    recordEvents(
      stage.log,
      [{ kind: 'person invited', target: 'person:p1', payload: { name: 'Ada', role: 'run' } }],
      { by: null, nowMs: NOW_MS, newId: () => 'event-x' },
    );
    stage.turned.beat();
    expect(await stream.next()).toMatchObject({ id: 1, event: { kind: 'person invited' } });
  });
});

describe('a command', () => {
  it('whose reply was lost is one event, and has the same answer again (4.9, 2)', async () => {
    const body = JSON.stringify(note('command-1'));
    const head = `POST /api/commands HTTP/1.1\r\nHost: 127.0.0.1:${stage.port}\r\n`;
    const type = `Content-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n`;
    const socket = connect(stage.port, '127.0.0.1');
    socket.write(head + type + body);
    await expect.poll(() => stage.log.head().seq).toBe(1);
    socket.destroy();
    const stored = await ask('/api/commands/command-1');
    expect(stored).toMatchObject({ status: 200, body: { outcome: 'accepted', seqs: [1] } });
    const again = await post(note('command-1'));
    expect(again).toEqual(stored);
    expect(stage.log.head().seq).toBe(1);
  });

  it('sent twenty times at once is one event, and no fault (4.9, 3)', async () => {
    const answers = await Promise.all(Array.from({ length: 20 }, () => post(note('command-1'))));
    for (const answer of answers) {
      expect(answer).toMatchObject({ status: 200, body: { outcome: 'accepted', seqs: [1] } });
    }
    expect(stage.log.head().seq).toBe(1);
  });

  it('of two devices on one thing: the second is 409 with how it stands (4.9, 4)', async () => {
    const [one, other] = await Promise.all([
      post(signing('command-1', { device: 'device-1' })),
      post(signing('command-2', { device: 'device-2' })),
    ]);
    expect(new Set([one.status, other.status])).toEqual(new Set([200, 409]));
    const refused = one.status === 409 ? one : other;
    expect(refused.body).toMatchObject({
      status: 409,
      current: { seq: 1, event: { kind: 'signed' } },
      answer: { outcome: 'refused', code: 'EVT-003' },
    });
    expect(stage.log.head().seq).toBe(1);
  });

  it('of a device with a wrong clock is ordered and timed by the server (4.9, 5)', async () => {
    await post(note('command-1', { clientMs: NOW_MS + 3_600_000 }));
    stage.turned.nowMs += 1000;
    await post(note('command-2', { clientMs: NOW_MS - 86_400_000 }));
    expect(stage.log.after(0, 9)).toMatchObject([
      { commandId: 'command-1', atMs: NOW_MS },
      { commandId: 'command-2', atMs: NOW_MS + 1000 },
    ]);
  });

  it('fails cleanly on a full disk, while all is read, and is taken later (4.9, 8)', async () => {
    const stream = stage.stream('');
    await stream.next();
    await post(note('command-1'));
    await stream.next();
    stage.turned.isDiskFull = true;
    const full = await post(note('command-2'));
    expect(full).toMatchObject({ status: 507, body: { type: '/problems/disk-full' } });
    expect((await ask('/api/commands/command-2')).status).toBe(404);
    expect((await ask('/api/events?after=0')).body.events).toHaveLength(1);
    stage.turned.beat();
    expect(await stream.next()).toMatchObject({ kind: 'heartbeat', heartbeat: { seq: 1 } });
    stage.turned.isDiskFull = false;
    expect((await post(note('command-2'))).status).toBe(200);
    expect(await stream.next()).toMatchObject({ id: 2 });
  });

  it('under an id that another body had is 422, and nothing is recorded', async () => {
    await post(note('command-1'));
    const other = await post(note('command-1', { target: 'set:12' }));
    expect(other).toMatchObject({ status: 422, body: { answer: { code: 'EVT-002' } } });
    expect(stage.log.head().seq).toBe(1);
  });

  it('that is not understood is 400 with every fault', async () => {
    const answer = await post({ ...note('command-1'), target: 'nothing', clientMs: 'noon' });
    expect(answer.status).toBe(400);
    const paths = answer.body.refusals.map(({ path }: { path: string }) => path);
    expect(paths).toEqual(expect.arrayContaining(['target', 'clientMs']));
    expect((await ask('/api/commands/command-9')).status).toBe(404);
    expect((await ask('/api/commands/%00')).status).toBe(400);
  });

  it('[LIV-001] is refused where the role does not do it', async () => {
    stage.turned.sender = { maySign: false };
    const refused = await post(signing('command-1'));
    expect(refused).toMatchObject({ status: 403, body: { answer: { code: 'LIV-001' } } });
    expect((await post(note('command-2'))).status).toBe(200);
  });

  it('[LIV-002] is no sign-off where anybody on the network could be another', async () => {
    stage.turned.signOffs = false;
    const refused = await post(signing('command-1'));
    expect(refused).toMatchObject({ status: 403, body: { answer: { code: 'LIV-002' } } });
  });

  it('[LIV-003] is no sign-off a minute after the secret was given', async () => {
    stage.turned.sender = { provedAtMs: NOW_MS - 60_001 };
    const refused = await post(signing('command-1'));
    expect(refused).toMatchObject({ status: 403, body: { answer: { code: 'LIV-003' } } });
    stage.turned.sender = { provedAtMs: NOW_MS - 60_000 };
    expect((await post(signing('command-2'))).status).toBe(200);
  });

  it('[LIV-004] is no sign-off in a role that is not theirs', async () => {
    const refused = await post(signing('command-1', { role: 'head flyman' }));
    expect(refused).toMatchObject({ status: 403, body: { answer: { code: 'LIV-004' } } });
  });
});

describe('another record', () => {
  it('taken in hand is told to every open stream at once, by its keys (4.9, 12)', async () => {
    for (const id of ['command-1', 'command-2']) await post(note(id));
    const stream = stage.stream('?after=2');
    await stream.next();
    const yesterday = memoryLog();
    stage.turned.record = { log: yesterday, houseKey: 'house-1', recordKey: 'record-2' };
    await post(note('command-3'));
    expect(await stream.next()).toMatchObject({
      kind: 'heartbeat',
      heartbeat: { seq: 1, houseKey: 'house-1', recordKey: 'record-2' },
    });
    expect(stream.told).toEqual([]);
  });
});

describe('what was said', () => {
  it('of a target: notes and what withdrew them, sign-offs with whether they stand', async () => {
    await post(note('command-1'));
    await post(note('command-2', { payload: { text: 'mistaken', writtenMs: null } }));
    const [, wrong] = stage.log.after(0, 2);
    await post(
      note('command-3', {
        kind: 'withdrawn',
        payload: { seq: 2, event: wrong?.id ?? '', why: 'wrong set' },
        seen: 2,
      } as Partial<Command>),
    );
    expect((await post(signing('command-4', { seen: 3 }))).status).toBe(200);
    const { body } = await ask('/api/said?target=set%3A11');
    expect(body.notes).toMatchObject([
      {
        event: { seq: 2, payload: { text: 'mistaken' } },
        withdrawal: { seq: 3, payload: { why: 'wrong set' } },
        seen: 4,
      },
      { event: { seq: 1 }, withdrawal: null },
    ]);
    expect(body.maySign).toBe(true);
    expect(body.signed).toMatchObject([{ event: { seq: 4 }, standing: { stands: true } }]);
    expect(body.seen).toBe(4);
    const payload = { document: 'show:vell', kind: 'show', revision: 2 } as const;
    const more = { savedBy: 'TD', why: 'a', sha256: 'b'.repeat(64) };
    recordEvents(
      stage.log,
      [
        {
          kind: 'document saved',
          target: 'document:show:vell',
          payload: { ...payload, ...more },
        },
      ],
      { by: null, nowMs: NOW_MS, newId: () => 'event-y' },
    );
    const after = (await ask('/api/said?target=set%3A11')).body;
    expect(after.signed[0].standing).toMatchObject({ stands: false, because: 'changed' });
  });

  it('in the whole house: the newest notes first', async () => {
    for (const [id, target] of [
      ['command-1', 'set:11'],
      ['command-2', 'house'],
    ] as const) {
      await post(note(id, { target }));
    }
    const { body } = await ask('/api/said');
    expect(body.notes).toMatchObject([
      { event: { target: 'house' }, seen: 2 },
      { event: { target: 'set:11' }, seen: 1 },
    ]);
    expect(body.isAll).toBe(true);
  });
});
