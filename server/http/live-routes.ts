/**
 * The record as it grows: a stream of events, pages of them, and commands. Nothing is answered and
 * nothing broadcast before it is committed; what a disk does not take is said and not kept.
 */
import { randomUUID } from 'node:crypto';
import type { ServerResponse } from 'node:http';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { giveUpCommand } from '#events';
import { byOf, mayDo } from '../auth/index.ts';
import type { Databases } from '../databases.ts';
import { loopbackListening } from '../lan/index.ts';
import {
  type CallRoom,
  faultStatus,
  type Hub,
  newestNotes,
  openHub,
  type RecordInHand,
  type Said,
  type Sender,
  saidOn,
  takeCommand,
} from '../live/index.ts';
import type { AppParts } from './app-parts.ts';
import { buildsIn } from './builds.ts';
import { recordOf, standOf } from './call-parts.ts';
import { problem } from './problems.ts';
import { mayStillLook, whoOf } from './rights.ts';

export type LiveParts = {
  readonly hub: Hub;
  readonly record: () => RecordInHand;
  readonly room: CallRoom;
  readonly senderOf: (request: FastifyRequest) => Sender;
  readonly mayRead: (request: FastifyRequest) => boolean;
  /** Name of a person of this house; null where there is no such one any more. */
  readonly nameOf: (person: string) => string | null;
  /** False where anybody on the network could sign as another. */
  readonly signOffs: () => boolean;
};

/** What the routes need, of the parts that the whole program is built from. */
export const livePartsOf = (parts: AppParts, room: CallRoom): LiveParts => {
  const { databases, now, webRoot, listening = loopbackListening() } = parts;
  const builds = buildsIn(webRoot);
  const record = (): RecordInHand => recordOf(databases);
  const hub = openHub({
    record,
    build: () => builds()[0]?.build ?? null,
    nowMs: () => now().getTime(),
    every: (call, milliseconds) => {
      const timer = setInterval(call, milliseconds);
      return () => clearInterval(timer);
    },
  });
  return {
    hub,
    record,
    room,
    senderOf: (request) => senderOf(request, now().getTime(), databases),
    mayRead: (request) => mayStillLook(request, databases.auth()),
    nameOf: (id) =>
      databases
        .auth()
        .people()
        .find((each) => each.id === id)?.name ?? null,
    signOffs: () => listening.signOffs,
  };
};

/**
 * A program writes notes and signs nothing: a sign-off is a person's. Nor does a machine that an
 * owner keeps open, for there are people with names who can.
 */
const senderOf = (request: FastifyRequest, nowMs: number, databases: Databases): Sender => {
  const who = whoOf(request);
  const hasOwner = databases.auth().hasOwner();
  const inCall = standOf(request, databases);
  return {
    by: byOf(who),
    nowMs,
    newId: randomUUID,
    role: who.kind === 'person' ? who.role : 'this machine',
    mayNote: mayDo(who, 'note'),
    maySign: (who.kind === 'person' || !hasOwner) && who.kind !== 'program' && mayDo(who, 'run'),
    provedAtMs: who.kind === 'person' ? who.provedAtMs : null,
    ...(inCall === null ? {} : { inCall }),
  };
};

const SEQ = { type: 'integer', minimum: 0, maximum: Number.MAX_SAFE_INTEGER } as const;
const DEVICE = { type: 'string', pattern: '^[A-Za-z0-9_.:-]{1,64}$' } as const;
const PAGE_MAX = 500;

const EVENTS = {
  schema: {
    querystring: {
      type: 'object',
      properties: { after: SEQ, limit: { ...SEQ, minimum: 1, maximum: PAGE_MAX }, device: DEVICE },
    },
  },
};
const COMMAND_ID = {
  schema: {
    params: {
      type: 'object',
      required: ['commandId'],
      properties: { commandId: { type: 'string', pattern: '^[A-Za-z0-9_-]{8,64}$' } },
    },
  },
};
const SAID = {
  schema: {
    querystring: {
      type: 'object',
      properties: { target: { type: 'string', minLength: 1, maxLength: 170 } },
    },
  },
};

/** No proxy may gather, shorten or keep it: an event that comes late is a screen that is wrong. */
const STREAM_HEADERS = {
  'content-type': 'text/event-stream; charset=utf-8',
  'cache-control': 'no-store, no-transform',
  'x-accel-buffering': 'no',
  'x-content-type-options': 'nosniff',
} as const;

type EventsAsked = {
  readonly after?: number;
  readonly limit?: number;
  readonly device?: string;
};

export const liveRoutes = (app: FastifyInstance, parts: LiveParts): void => {
  const { hub, record } = parts;
  // Whatever changed something, by whichever route: who listens hears of it after the answer.
  app.addHook('onResponse', async ({ method }) => {
    if (method !== 'GET' && method !== 'HEAD') hub.look();
  });
  app.addHook('preClose', async () => hub.close());
  commandRoutes(app, parts);
  saidRoute(app, parts);

  app.get<{ Querystring: EventsAsked }>('/api/events', EVENTS, async (request, reply) => {
    const { after, limit = PAGE_MAX, device } = request.query;
    const accepts = request.headers.accept ?? '';
    if (accepts.includes('text/event-stream')) {
      const asked = { device: device ?? null, after: after ?? null };
      return stream(reply, { hub, asked, mayRead: () => parts.mayRead(request) });
    }
    reply.header('cache-control', 'no-store');
    return hub.page(after ?? record().log.head().seq, limit);
  });
};

const commandRoutes = (app: FastifyInstance, parts: LiveParts): void => {
  const { record } = parts;
  app.post('/api/commands', async (request, reply) => {
    const here = { signOffs: parts.signOffs(), room: parts.room };
    const taken = takeCommand(record(), request.body, parts.senderOf(request), here);
    if (taken.kind === 'notRead') {
      const { refusals } = taken;
      return problem(reply, 400, 'The command was not understood; nothing changed.', { refusals });
    }
    if (taken.kind === 'fault') {
      const { status, fault } = taken;
      const type = `/problems/${FAULT_TYPES[fault.kind]}`;
      return problem(reply, status, FAULT_TITLES[fault.kind], { type });
    }
    return answered(reply, taken);
  });

  app.get<{ Params: { commandId: string } }>(
    '/api/commands/:commandId',
    COMMAND_ID,
    async (request, reply) => {
      const stored = record().log.answerTo(request.params.commandId);
      reply.header('cache-control', 'no-store');
      return stored === null ? problem(reply, 404, 'No such command.') : stored.answer;
    },
  );

  app.post<{ Params: { commandId: string } }>(
    '/api/commands/:commandId/give-up',
    COMMAND_ID,
    async (request, reply) => {
      const given = giveUpCommand(record().log, request.params.commandId);
      if (given.ok) return given.value;
      const { kind } = given.error;
      const type = `/problems/${FAULT_TYPES[kind]}`;
      return problem(reply, faultStatus(given.error), FAULT_TITLES[kind], { type });
    },
  );
};

const saidRoute = (app: FastifyInstance, parts: LiveParts): void => {
  app.get<{ Querystring: { target?: string } }>('/api/said', SAID, async (request, reply) => {
    const { target } = request.query;
    const { log } = parts.record();
    reply.header('cache-control', 'no-store');
    const said = target === undefined ? newestNotes(log) : saidOn(log, target);
    const ids = [...new Set(speakersOf(said))].filter((by) => by !== null);
    const names = Object.fromEntries(ids.map((id) => [id, parts.nameOf(id) ?? id]));
    const { role, maySign } = parts.senderOf(request);
    return { ...said, names, role, maySign, signOffs: parts.signOffs() };
  });
};

/** Who wrote, signed and withdrew. */
const speakersOf = ({ notes, signed }: Said): readonly (string | null)[] => [
  ...notes.flatMap(({ event, withdrawal }) => [event.by, withdrawal?.by ?? null]),
  ...signed.flatMap(({ event, standing }) => [
    event.by,
    standing.stands ? null : standing.event.by,
  ]),
];

const FAULT_TYPES = {
  diskFull: 'disk-full',
  writeFailed: 'write-failed',
  busy: 'busy',
  readOnly: 'read-only',
  chainBroken: 'chain-broken',
} as const;

const FAULT_TITLES = {
  diskFull: 'The disk of the server is full; nothing was recorded.',
  writeFailed: 'The disk of the server did not take it; nothing was recorded.',
  busy: 'The record is busy; nothing was recorded. Try again.',
  readOnly: 'This database is a copy that nobody has made the record; nothing was recorded.',
  chainBroken: 'The record is not as it was written; nothing is recorded until it is restored.',
} as const;

const answered = (
  reply: FastifyReply,
  { status, answer }: Extract<ReturnType<typeof takeCommand>, { readonly kind: 'answered' }>,
): FastifyReply => {
  if (answer.outcome === 'accepted') return reply.code(status).send(answer);
  const { words, current } = answer;
  return problem(reply, status, words, { current, answer });
};

type Opening = {
  readonly hub: Hub;
  readonly asked: Parameters<Hub['listen']>[1];
  readonly mayRead: () => boolean;
};

/** Written by hand from here on: the answer has no end of its own. */
const stream = (reply: FastifyReply, { hub, asked, mayRead }: Opening): FastifyReply => {
  reply.hijack();
  const { raw } = reply;
  const ofAll = Object.entries(reply.getHeaders()).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value] as const],
  );
  raw.writeHead(200, { ...Object.fromEntries(ofAll), ...STREAM_HEADERS });
  raw.flushHeaders();
  const leave = hub.listen({ ...readerOf(raw), mayRead }, asked);
  raw.once('close', leave);
  raw.once('error', leave);
  return reply;
};

const readerOf = (raw: ServerResponse) => ({
  write: (text: string): void => void raw.write(text),
  waitingBytes: (): number => raw.writableLength,
  end: (): void => {
    raw.end();
    // What a slow reader has not taken is not waited for: it comes again from where it is.
    if (raw.writableLength > 0) raw.destroy();
  },
});
