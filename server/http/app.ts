import { existsSync } from 'node:fs';
import type { IncomingHttpHeaders } from 'node:http';
import fastifyStatic from '@fastify/static';
import Fastify, { type FastifyInstance, type FastifyReply } from 'fastify';
import { EVENT_REFUSALS } from '#events';
import type { Refusal } from '#outcome';
import { isOwnHost, isSameOrigin, type Listening, loopbackListening } from '../lan/index.ts';
import { RecordFault } from '../log/index.ts';
import type { AppParts } from './app-parts.ts';
import { buildRoutes, cachingOf } from './build-routes.ts';
import { roomOf } from './call-parts.ts';
import { callRoutes } from './call-routes.ts';
import { databaseRoutes } from './database-routes.ts';
import { documentRoutes } from './document-routes.ts';
import { healthRoutes } from './health.ts';
import { livePartsOf, liveRoutes } from './live-routes.ts';
import { logFault, logRequests, newRequestId } from './log.ts';
import { openApiRoute } from './openapi.ts';
import { peopleRoutes } from './people-routes.ts';
import { problem, refusal } from './problems.ts';
import { guardRoutes } from './rights.ts';
import { selfCheckRoutes } from './self-check-routes.ts';
import { sessionRoutes } from './session-routes.ts';
import { sheetRoutes } from './sheet-routes.ts';
import { shelfRoutes } from './shelf-routes.ts';
import { trustRoutes } from './trust-routes.ts';

/** Largest body taken: above the largest document, so that `documents` says what is wrong. */
const BODY_LIMIT = 9 * 1024 * 1024;

const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy':
    "default-src 'self'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; " +
    "object-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'self'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
};

/** The whole HTTP side: documents, sheets, and the screens. Serves nothing from elsewhere. */
export const buildApp = async (parts: AppParts): Promise<FastifyInstance> => {
  const { log, listening = loopbackListening() } = parts;
  const app = serverOf(listening);
  if (log !== undefined) logRequests(app, log);
  app.addHook('onRequest', async (request, reply) => {
    // Of HTTP/2 the name stands in its own field, which `request.host` reads as well.
    const { origin, host = request.host } = request.headers;
    // A page of another site must not write here, and a name that leads here must not be trusted.
    const isOwn = isOwnHost(listening, host);
    if (!isOwn || (origin !== undefined && !isSameOrigin(listening, origin, host))) {
      const where = listening.mode === 'loopback' ? 'on this machine' : 'under its own addresses';
      return problem(reply, 403, `This server answers only its own pages ${where}.`);
    }
    return undefined;
  });
  app.addHook('onSend', async (request, reply) => {
    reply.headers(HEADERS);
    // What was shown to who had signed in is not to be had by the back button.
    const isKept = reply.hasHeader('cache-control') || !request.url.startsWith('/api/');
    if (!isKept) reply.header('cache-control', 'no-store');
  });
  guardRoutes(app, () => parts.databases.auth());
  app.addHook('preHandler', async ({ query, params }, reply) =>
    [query, params].every(isBounded)
      ? undefined
      : problem(reply, 400, 'A number in the address is too large.'),
  );
  app.setErrorHandler((fault: Error & { statusCode?: number }, request, reply) => {
    const status = fault.statusCode ?? 500;
    if (status >= 500 && log !== undefined) logFault(log, request, fault);
    const refusals = refusalsOf(status, request.headers);
    const title =
      fault instanceof RecordFault
        ? EVENT_REFUSALS[fault.fault.kind].meaning
        : status >= 500
          ? 'A fault of the program.'
          : fault.message;
    return problem(reply, status, title, refusals.length === 0 ? {} : { refusals });
  });
  // JSON is all that is read; a form of another page cannot send it unasked.
  app.removeContentTypeParser('text/plain');
  openApiRoute(app, parts);
  buildRoutes(app, parts);
  const room = roomOf(parts.databases);
  documentRoutes(app, { ...parts, room });
  shelfRoutes(app, { ...parts, room });
  databaseRoutes(app, parts);
  sheetRoutes(app, { ...parts, room });
  selfCheckRoutes(app, parts);
  sessionRoutes(app, parts);
  peopleRoutes(app, parts);
  liveRoutes(app, livePartsOf(parts, room));
  callRoutes(app, { ...parts, room });
  healthRoutes(app, parts);
  trustRoutes(app, parts);
  await serveScreens(app, parts.webRoot);
  return app;
};

/** What reads addresses takes `1e309` for a number without end, and holds it against no bound. */
const isBounded = (values: unknown): boolean =>
  Object.values(values ?? {}).every((value) => typeof value !== 'number' || Number.isFinite(value));

const refusalsOf = (
  status: number,
  { 'content-type': type = 'none', 'content-length': length }: IncomingHttpHeaders,
): readonly Refusal[] => {
  if (status === 413) {
    const found = length === undefined ? 'more than is read' : `${length} bytes`;
    return [refusal('tooLarge', { found, accepted: `at most ${BODY_LIMIT} bytes` })];
  }
  if (status !== 415) return [];
  return [
    refusal('notJson', {
      found: `content type ${type.slice(0, 80)}`,
      accepted: 'application/json',
    }),
  ];
};

/** An address that no route can be looked up for: no hook runs, so all is said here. */
const unreadAddress = (
  fault: { readonly statusCode?: number },
  _request: unknown,
  reply: FastifyReply,
): void => {
  problem(reply.headers(HEADERS), fault.statusCode ?? 400, 'This address cannot be read.');
};

/** HTTP/2 where there is a certificate: a browser speaks it over TLS only. */
const serverOf = (listening: Listening): FastifyInstance => {
  const options = {
    bodyLimit: BODY_LIMIT,
    forceCloseConnections: true,
    genReqId: newRequestId,
  };
  const pair = listening.server();
  if (pair === null) return Fastify({ ...options, frameworkErrors: unreadAddress });
  const https = {
    allowHTTP1: true,
    key: pair.keyPem,
    cert: pair.certificatePem,
    minVersion: 'TLSv1.2',
  } as const;
  // The routes are the same on both; the kinds of their sockets differ, and nothing reads these.
  const secure = Fastify({
    ...options,
    http2: true,
    https,
    frameworkErrors: (fault, request, reply) =>
      unreadAddress(fault, request, reply as unknown as FastifyReply),
  });
  return secure as unknown as FastifyInstance;
};

const serveScreens = async (app: FastifyInstance, webRoot: string): Promise<void> => {
  if (existsSync(webRoot)) {
    await app.register(fastifyStatic, {
      root: webRoot,
      cacheControl: false,
      setHeaders: (reply, path) => void reply.header('cache-control', cachingOf(path)),
    });
  }
  app.setNotFoundHandler((request, reply) => {
    if (request.url.startsWith('/api/')) return problem(reply, 404, 'There is nothing here.');
    // A part of a build that is gone is not the page: a browser would take it for the script.
    if (request.url.startsWith('/assets/')) return problem(reply, 404, 'This file is not kept.');
    if (request.method !== 'GET') return problem(reply, 405, 'This address is read only.');
    return reply.type('text/html').sendFile('index.html');
  });
};
