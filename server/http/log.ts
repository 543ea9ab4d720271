/**
 * What the server says of itself: one JSON object a line. A line holds only fields that are named
 * here; what people sent (addresses, bodies, cookies) is never copied into it.
 */
import { randomBytes } from 'node:crypto';
import type { FastifyInstance, FastifyRequest } from 'fastify';

export const LOG_LEVELS = ['error', 'warn', 'info', 'debug'] as const;
export type LogLevel = (typeof LOG_LEVELS)[number];

type Fields = Readonly<Record<string, string | number | boolean | null | readonly string[]>>;

export type Log = {
  readonly level: LogLevel;
  readonly write: (level: LogLevel, event: string, fields: Fields) => void;
};

type Target = {
  readonly level: LogLevel;
  readonly now: () => Date;
  readonly line: (text: string) => void;
};

export const logTo = ({ level: least, now, line }: Target): Log => ({
  level: least,
  write: (level, event, fields) => {
    if (LOG_LEVELS.indexOf(level) > LOG_LEVELS.indexOf(least)) return;
    line(`${JSON.stringify({ time: now().toISOString(), level, event, ...fields })}\n`);
  },
});

export const readLogLevel = (word: string | undefined): LogLevel | undefined =>
  LOG_LEVELS.find((level) => level === word);

/** By this a person finds the lines of one request; it says nothing of who asked. */
export const newRequestId = (): string => randomBytes(6).toString('hex');

const METHODS = new Set(['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']);

/** The pattern of the route and not the address, in which an invitation or a query may stand. */
const requestFields = (request: FastifyRequest): Fields => ({
  request: request.id,
  method: METHODS.has(request.method) ? request.method : 'other',
  route: request.is404 ? null : (request.routeOptions.url ?? null),
});

export const logRequests = (app: FastifyInstance, log: Log): void => {
  app.addHook('onRequest', async (request, reply) => {
    reply.header('x-request-id', request.id);
  });
  app.addHook('onResponse', async (request, reply) => {
    const { statusCode, elapsedTime } = reply;
    log.write('info', 'request', {
      ...requestFields(request),
      status: statusCode,
      milliseconds: Math.round(elapsedTime),
    });
  });
};

type Fault = { readonly name?: string; readonly message: string; readonly stack?: string };

/** A fault of the program: what, and where in the program, without what was sent. */
export const logFault = (log: Log, request: FastifyRequest, fault: Fault): void =>
  log.write('error', 'fault', {
    ...requestFields(request),
    name: fault.name ?? 'Error',
    message: withoutWhatWasSent(fault.message, request).slice(0, MESSAGE_MAX),
    at: framesOf(fault.stack ?? ''),
  });

const MESSAGE_MAX = 500;
const FRAMES_MAX = 12;

/** The lines of a stack that name a place; those before them repeat the message. */
const framesOf = (stack: string): readonly string[] =>
  stack
    .split('\n')
    .filter((line) => /^\s+at /.test(line))
    .slice(0, FRAMES_MAX)
    .map((line) => line.trim());

/** Shorter ones are words of the message itself more often than secrets. */
const SENT_MIN = 4;

const withoutWhatWasSent = (message: string, request: FastifyRequest): string => {
  const texts = [request.headers, request.query, request.params, request.body].flatMap(textsIn);
  const whole = [...new Set([...texts, ...texts.flatMap(pieces)])]
    .filter((text) => text.length >= SENT_MIN && message.includes(text))
    .toSorted((a, b) => b.length - a.length);
  return whole.reduce((left, text) => left.replaceAll(text, '[sent]'), message);
};

/** A cookie and an authorization hold their secret among other words. */
const pieces = (text: string): readonly string[] =>
  text.length > MESSAGE_MAX * 8 ? [] : text.split(/[\s;,=&]+/);

const textsIn = (value: unknown): readonly string[] => {
  const found: string[] = [];
  const left: unknown[] = [value];
  while (left.length > 0) {
    const next = left.pop();
    if (typeof next === 'string') found.push(next);
    else if (typeof next === 'number') found.push(String(next));
    else if (typeof next === 'object' && next !== null) left.push(...Object.values(next));
  }
  return found;
};
