/** Who asks, and whether they may: looked at before anything else of a request is. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { type Auth, byOf, mayDo, NOBODY, type Person, type Who } from '../auth/index.ts';
import { isOwnHost, loopbackListening } from '../lan/index.ts';
import type { Hand } from '../log/index.ts';
import { refuse } from './access-answers.ts';
import { cookieOf } from './cookies.ts';
import { type Need, RIGHTS, type RouteRight } from './rights-table.ts';

const asked = new WeakMap<FastifyRequest, Who>();

/** Who sends the request; nobody until the rights were looked at. */
export const whoOf = (request: FastifyRequest): Who => asked.get(request) ?? NOBODY;

/** The person, on a route that only persons may ask. */
export const personOf = (request: FastifyRequest): Person => {
  const who = whoOf(request);
  if (who.kind !== 'person') throw new Error('defect: the route lets in who is no person');
  return who;
};

/** Who is at which device, for the record; nobody by name where no one has to sign in. */
export const handOf = (request: FastifyRequest): Hand => {
  const who = whoOf(request);
  return who.kind === 'person' ? { person: who.id, device: who.device } : {};
};

/** The name that goes into the record, whatever the request says; null where nobody signed in. */
export const nameFor = (request: FastifyRequest): string | null => {
  const who = whoOf(request);
  if (who.kind === 'person') return who.name;
  return who.kind === 'program' ? `${who.name} (program)` : null;
};

/** What lets others in asks for the secret again after so long. */
const FRESH_MS = 10 * 60_000;

const LOOPBACK_ADDRESS = /^(127(\.\d{1,3}){3}|::1|::ffff:127(\.\d{1,3}){3})$/;
const LOOPBACK = loopbackListening();

/** Headers of whatever stands in between: then the address is not that of who asks. */
const PASSED_ON = ['forwarded', 'x-forwarded-for', 'x-forwarded-host', 'x-real-ip', 'via'] as const;

const isThisMachine = (request: FastifyRequest): boolean =>
  LOOPBACK_ADDRESS.test(request.socket.remoteAddress ?? '') &&
  isOwnHost(LOOPBACK, request.headers.host ?? request.host) &&
  PASSED_ON.every((name) => request.headers[name] === undefined);

const bearerOf = ({ headers }: FastifyRequest): string | null =>
  headers.authorization === undefined
    ? null
    : (/^Bearer ([\w-]{43})$/.exec(headers.authorization)?.[1] ?? '');

/** A browser says whether a page of ours asks; other programs say nothing of it. */
const isForeign = ({ headers }: FastifyRequest): boolean => {
  const site = headers['sec-fetch-site'];
  return site !== undefined && site !== 'same-origin' && site !== 'none';
};

const keyOf = (method: string, url: string): string =>
  `${method === 'HEAD' ? 'GET' : method} ${url}`;

const BY_ROUTE: ReadonlyMap<string, RouteRight> = new Map(
  RIGHTS.map((right) => [keyOf(right.method, right.url), right]),
);

const meets = (who: Who, need: Need): boolean => {
  if (need === 'anyone') return true;
  return need === 'signedIn' ? who.kind === 'person' : mayDo(who, need);
};

const whoAsks = (request: FastifyRequest, auth: Auth): Who =>
  auth.whoIs({
    bearer: bearerOf(request),
    session: cookieOf(request, 'session'),
    isThisMachine: isThisMachine(request),
  });

/** Whether who opened a stream may still read it: their right may have ended since. */
export const mayStillLook = (request: FastifyRequest, auth: Auth): boolean =>
  mayDo(whoAsks(request, auth), 'look');

const shut = (reply: FastifyReply, who: Who, need: Need): FastifyReply =>
  who.kind === 'nobody'
    ? refuse(reply, { name: 'nobody', found: 'nobody', accepted: 'one who has signed in' })
    : refuse(reply, {
        name: 'role',
        found: 'role' in who ? `the role ${who.role}` : 'this machine',
        accepted: need === 'signedIn' ? 'a person who has signed in' : `the right to ${need}`,
      });

const known = new WeakMap<FastifyInstance, string[]>();

/** Every route that the program has, as `GET /api/people`, for who compares it with the table. */
export const routesOf = (app: FastifyInstance): readonly string[] => known.get(app) ?? [];

export const guardRoutes = (app: FastifyInstance, auth: () => Auth): void => {
  const rightOf = ({ method, routeOptions }: FastifyRequest): RouteRight | undefined =>
    BY_ROUTE.get(keyOf(method, routeOptions.url ?? ''));
  const routes: string[] = [];
  known.set(app, routes);
  app.addHook('onRoute', ({ method, url }) => {
    for (const each of [method].flat()) routes.push(`${each} ${url}`);
  });
  app.addHook('onRequest', async (request, reply) => {
    // Where no route is, nothing is done: the page is sent, or it is said that nothing is there.
    if (request.is404) return undefined;
    const right = rightOf(request);
    if (right === undefined) {
      const accepted = 'an address of the table of rights';
      return refuse(reply, { name: 'noRight', found: 'an address without a right', accepted });
    }
    if (right.url.startsWith('/api/') && isForeign(request)) {
      const accepted = 'a page of this server';
      return refuse(reply, { name: 'foreignPage', found: 'a page of another site', accepted });
    }
    const who = whoAsks(request, auth());
    asked.set(request, who);
    if (!meets(who, right.needs)) return shut(reply, who, right.needs);
    const isStale =
      right.isFresh === true && byOf(who) !== null && !auth().provedWithin(who, FRESH_MS);
    if (!isStale) return undefined;
    const accepted = 'the passphrase or PIN again';
    return refuse(reply, { name: 'proofNeeded', found: 'a sign-in of a while ago', accepted });
  });
  app.addHook('preHandler', async (request, reply) => {
    const also = rightOf(request)?.alsoFor?.(request.body) ?? null;
    const who = whoOf(request);
    return also === null || mayDo(who, also) ? undefined : shut(reply, who, also);
  });
};
