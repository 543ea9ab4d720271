/** A record in memory behind real HTTP on a free port, with what a test turns by hand. */
import { type ClientRequest, get, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import Fastify from 'fastify';
import { type EventLog, type Heartbeat, type HouseEvent, memoryLog } from '#events';
import { fail } from '#outcome';
import { openCallRoom, openHub, type RecordInHand, type Sender } from '../live/index.ts';
import { liveRoutes } from './live-routes.ts';

export const NOW_MS = 1_790_000_000_000;

/** What a test turns while it runs. */
type Turned = Record<'signOffs' | 'isDiskFull' | 'mayRead', boolean> &
  Record<'nowMs' | 'ids', number> &
  Record<'record', RecordInHand> &
  Record<'sender', Partial<Sender>> &
  Record<'beat', () => void>;

const senderNow = (turned: Turned): Sender => ({
  by: null,
  nowMs: turned.nowMs,
  newId: () => {
    turned.ids += 1;
    return `event-${turned.ids}`;
  },
  role: 'this machine',
  mayNote: true,
  maySign: true,
  provedAtMs: null,
  ...turned.sender,
});

export const openStage = async () => {
  const log = memoryLog();
  const turned: Turned = {
    record: { log, houseKey: 'house-1', recordKey: 'record-1' },
    nowMs: NOW_MS,
    signOffs: true,
    isDiskFull: false,
    mayRead: true,
    sender: {},
    ids: 0,
    beat: () => undefined,
  };
  const guarded: EventLog = {
    ...log,
    commit: (batch) =>
      turned.isDiskFull ? fail({ kind: 'diskFull', detail: 'ENOSPC' }) : log.commit(batch),
  };
  turned.record = { ...turned.record, log: guarded };
  const hub = openHub({
    record: () => turned.record,
    build: () => 'aaaaaaaaaaaa',
    nowMs: () => turned.nowMs,
    every: (call) => {
      turned.beat = call;
      return () => undefined;
    },
  });
  const app = Fastify({ forceCloseConnections: true });
  liveRoutes(app, {
    hub,
    record: () => turned.record,
    room: openCallRoom({ record: () => turned.record, documentsOf: () => null }),
    senderOf: () => senderNow(turned),
    mayRead: () => turned.mayRead,
    nameOf: () => null,
    signOffs: () => turned.signOffs,
  });
  await app.listen({ host: '127.0.0.1', port: 0 });
  const { port } = app.server.address() as AddressInfo;
  const streams: ClientRequest[] = [];
  return {
    turned,
    hub,
    log: guarded,
    port,
    address: `http://127.0.0.1:${port}`,
    stream: (query: string) => {
      const opened = openStream(port, query);
      streams.push(opened.request);
      return opened;
    },
    close: async () => {
      for (const each of streams) each.destroy();
      await app.close();
    },
  };
};

type Told =
  | { readonly kind: 'event'; readonly id: number; readonly event: HouseEvent }
  | { readonly kind: 'heartbeat'; readonly heartbeat: Heartbeat }
  | { readonly kind: 'leave'; readonly why: string };

/** A stream as a device reads it; `next` waits for the next thing that it tells. */
const openStream = (port: number, query: string) => {
  const told: Told[] = [];
  const waiting: ((told: Told) => void)[] = [];
  let rest = '';
  const take = (text: string): void => {
    const blocks = (rest + text).split('\n\n');
    rest = blocks.pop() ?? '';
    for (const each of blocks.map(readBlock)) {
      const wanted = waiting.shift();
      if (wanted === undefined) told.push(each);
      else wanted(each);
    }
  };
  const headers = { accept: 'text/event-stream' };
  const request = get({ port, host: '127.0.0.1', path: `/api/events${query}`, headers });
  request.on('error', () => undefined);
  const response = new Promise<IncomingMessage>((resolve) => request.once('response', resolve));
  void response.then((each) => each.setEncoding('utf8').on('data', take));
  return {
    request,
    response,
    ended: response.then((each) => new Promise((resolve) => each.once('close', resolve))),
    told,
    next: (): Promise<Told> => {
      const first = told.shift();
      return first === undefined
        ? new Promise((resolve) => waiting.push(resolve))
        : Promise.resolve(first);
    },
  };
};

const readBlock = (block: string): Told => {
  const fields = new Map(
    block.split('\n').map((line) => {
      const at = line.indexOf(': ');
      return [line.slice(0, at), line.slice(at + 2)] as const;
    }),
  );
  const data: unknown = JSON.parse(fields.get('data') ?? 'null');
  switch (fields.get('event')) {
    case 'heartbeat':
      return { kind: 'heartbeat', heartbeat: data as Heartbeat };
    case 'leave':
      return { kind: 'leave', why: (data as { readonly why: string }).why };
    default:
      return { kind: 'event', id: Number(fields.get('id')), event: data as HouseEvent };
  }
};
