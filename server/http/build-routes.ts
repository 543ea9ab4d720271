/** The build of the screens in every exchange, and the worker by which they start on their own. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { buildsIn, isTaken, type OldestBuild } from './builds.ts';
import { problem } from './problems.ts';

const HEADER = 'counterpoise-build';

/** By this a page knows that it is too old, and not its save. */
const OLD_BUILD = '/problems/old-build';

export type UpdateParts = {
  /** Folder of the built screens. */
  readonly webRoot: string;
  /** The oldest build that anything is taken from; absent, all that are kept are. */
  readonly oldestBuild?: OldestBuild;
  /** False takes the worker off the devices again. */
  readonly startsOffline?: boolean;
};

const CHANGES = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

export const buildRoutes = (app: FastifyInstance, parts: UpdateParts): void => {
  const { webRoot, oldestBuild = null, startsOffline = true } = parts;
  const builds = buildsIn(webRoot);
  app.addHook('onRequest', async ({ method, headers }, reply) => {
    const own = builds()[0]?.build;
    if (own !== undefined) reply.header(HEADER, own);
    const asked = headers[HEADER];
    // Other programs send none. Of a page that is too old nothing is taken; it may read on.
    if (typeof asked !== 'string' || !CHANGES.has(method)) return undefined;
    if (isTaken(asked, builds(), oldestBuild)) return undefined;
    const title = 'This page is of a build that the server takes nothing from; nothing changed.';
    const detail = 'Load the page anew. What it has not saved stays on its device.';
    return problem(reply, 409, title, { type: OLD_BUILD, detail });
  });
  const worker = startsOffline ? 'sw.js' : 'sw-gone.js';
  if (!existsSync(join(webRoot, worker))) return;
  app.get('/sw.js', async (_request, reply) => reply.sendFile(worker));
};

/** A file whose name tells its content is kept by browsers; of all others they ask each time. */
export const cachingOf = (path: string): string =>
  /[\\/]assets[\\/]/.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache';
