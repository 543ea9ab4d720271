import { existsSync } from 'node:fs';
import type { IncomingHttpHeaders } from 'node:http';
import fastifyStatic from '@fastify/static';
import Fastify, { type FastifyInstance } from 'fastify';
import type { Refusal } from '#outcome';
import type { AppParts } from './app-parts.ts';
import { databaseRoutes } from './database-routes.ts';
import { documentRoutes } from './document-routes.ts';
import { problem, refusal } from './problems.ts';
import { selfCheckRoutes } from './self-check-routes.ts';
import { sheetRoutes } from './sheet-routes.ts';
import { shelfRoutes } from './shelf-routes.ts';

/** Largest body taken: above the largest document, so that `documents` says what is wrong. */
const BODY_LIMIT = 9 * 1024 * 1024;

const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy':
    "default-src 'self'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; " +
    "frame-ancestors 'none'; base-uri 'none'; form-action 'self'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
};

/** The whole HTTP side: documents, sheets, and the screens. Serves nothing from elsewhere. */
export const buildApp = async (parts: AppParts): Promise<FastifyInstance> => {
  const app = Fastify({ bodyLimit: BODY_LIMIT, forceCloseConnections: true });
  app.addHook('onRequest', async (request, reply) => {
    const { origin, host } = request.headers;
    // A page of another site must not write here, and a name that leads here must not be trusted.
    if (!isLoopbackHost(host) || (origin !== undefined && !isSameOrigin(origin, host))) {
      return problem(reply, 403, 'This server answers only its own pages on this machine.');
    }
    return undefined;
  });
  app.addHook('onSend', async (_request, reply) => {
    reply.headers(HEADERS);
  });
  app.setErrorHandler((fault: { statusCode?: number; message: string }, request, reply) => {
    const status = fault.statusCode ?? 500;
    if (status >= 500) process.stderr.write(`${request.method} ${request.url}: ${fault.message}\n`);
    const refusals = refusalsOf(status, request.headers);
    const title = status >= 500 ? 'A fault of the program.' : fault.message;
    return problem(reply, status, title, refusals.length === 0 ? {} : { refusals });
  });
  // JSON is all that is read; a form of another page cannot send it unasked.
  app.removeContentTypeParser('text/plain');
  documentRoutes(app, parts);
  shelfRoutes(app, parts);
  databaseRoutes(app, parts);
  sheetRoutes(app, parts);
  selfCheckRoutes(app, parts);
  await serveScreens(app, parts.webRoot);
  return app;
};

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

const isLoopbackHost = (host: string | undefined): boolean =>
  host !== undefined && /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/.test(host);

const isSameOrigin = (origin: string, host: string | undefined): boolean =>
  origin === `http://${host}`;

const serveScreens = async (app: FastifyInstance, webRoot: string): Promise<void> => {
  if (existsSync(webRoot)) await app.register(fastifyStatic, { root: webRoot, wildcard: false });
  app.setNotFoundHandler((request, reply) => {
    if (request.url.startsWith('/api/')) return problem(reply, 404, 'There is nothing here.');
    if (request.method !== 'GET') return problem(reply, 405, 'This address is read only.');
    return reply.type('text/html').sendFile('index.html');
  });
};
