/** The table of rights against the routes of the real program, and every route by everybody. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Role } from '#events';
import { type Databases, openDatabases } from '../databases.ts';
import { demoDocuments } from '../demo.ts';
import { loopbackListening } from '../lan/index.ts';
import { LITTLE, PASSPHRASE } from '../stage-for-tests.ts';
import { buildApp } from './app.ts';
import { routesOf } from './rights.ts';
import { type Need, RIGHTS, type RouteRight } from './rights-table.ts';

const DAY_MS = 86_400_000;
const examples = join(import.meta.dirname, '..', '..', 'examples');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};

let folder: string;
let databases: Databases;
let app: FastifyInstance;
let nowMs = Date.parse('2026-11-28T10:00:00Z');
const now = (): Date => new Date(nowMs);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-rights-'));
  const webRoot = join(folder, 'web');
  mkdirSync(webRoot);
  for (const file of ['index.html', 'sw.js', 'sw-gone.js']) writeFileSync(join(webRoot, file), '');
  databases = openDatabases(folder, demoDocuments(examples), now, { cost: LITTLE });
  const health = { disk: () => null, lastBackupAt: () => null };
  app = await buildApp({ databases, webRoot, now, selfCheck, health });
  await app.ready();
});
afterAll(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

type Headers = Readonly<Record<string, string>>;

const ask = (options: InjectOptions, headers: Headers = {}) =>
  app.inject({ ...options, headers: { host: '127.0.0.1:4747', ...headers } });

describe('the table of rights', () => {
  it('[ACC-003] names every route of the program, and none that is not there', () => {
    const there = routesOf(app).filter((route) => !/^(HEAD|OPTIONS) /.test(route));
    const named = RIGHTS.map(({ method, url }) => `${method} ${url}`);
    expect(new Set(named)).toEqual(new Set(there));
    expect(new Set(named).size).toBe(named.length);
  });

  it('[ACC-003] shuts a route that it does not name', async () => {
    const other = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
    other.get('/api/forgotten', async () => ({ secret: 'told' }));
    const headers = { host: '127.0.0.1:4747' };
    const answer = await other.inject({ url: '/api/forgotten', headers });
    expect(answer.statusCode).toBe(403);
    expect(answer.json().refusals[0].code).toBe('ACC-003');
    expect(answer.body).not.toContain('told');
    await other.close();
  });
});

describe('what the table says', () => {
  const withNeed = (need: Need): readonly string[] =>
    RIGHTS.filter(({ needs }) => needs === need).map(({ method, url }) => `${method} ${url}`);

  /** Said again here, so that a right that is given away by a slip of the hand is seen. */
  it('lets nobody do more without a name than come in, and see how the server is', () => {
    expect(withNeed('anyone').filter((route) => route.includes('/api/'))).toEqual([
      'GET /api/health',
      'GET /api/openapi.json',
      'GET /api/session',
      'POST /api/session',
      'POST /api/session/by-pin',
      'POST /api/people/owner',
      'POST /api/invitation',
      'POST /api/invitation/join',
      'DELETE /api/session',
    ]);
  });

  it('leaves people and programs to owners', () => {
    expect(withNeed('own')).toEqual([
      'POST /api/database',
      'PUT /api/people/:id/role',
      'DELETE /api/people/:id',
      'GET /api/people/:id/devices',
      'DELETE /api/people/:id/devices',
      'DELETE /api/people/:id/devices/:session',
      'POST /api/people/:id/new-passphrase',
      'GET /api/people/invitations',
      'POST /api/people/invitations',
      'DELETE /api/people/invitations/:invitation',
      'PUT /api/people/this-machine',
      'GET /api/tokens',
      'POST /api/tokens',
      'DELETE /api/tokens/:token',
    ]);
  });

  it('changes nothing by the right to look', () => {
    const changes = withNeed('look').filter((route) => !route.startsWith('GET '));
    expect(changes).toEqual([]);
  });
});

describe('a machine without an owner', () => {
  it('is not meant by another name that leads to it', async () => {
    const loopback = loopbackListening();
    const listening = { ...loopback, hosts: () => [...loopback.hosts(), 'fly.house.example'] };
    const parts = { databases, webRoot: join(folder, 'none'), now, selfCheck };
    const onLan = await buildApp({ ...parts, listening });
    const status = async (host: string) =>
      (await onLan.inject({ url: '/api/documents', headers: { host } })).statusCode;
    expect(await status('127.0.0.1:4747')).toBe(200);
    expect(await status('fly.house.example:4747')).toBe(401);
    await onLan.close();
  });

  const code = async (changes: InjectOptions, headers: Headers = {}) =>
    (await ask({ url: '/api/people/invitations', ...changes }, headers)).statusCode;

  it('acts as the owner, and nobody else does', async () => {
    expect(await code({})).toBe(200);
    for (const remoteAddress of ['127.9.0.1', '::1', '::ffff:127.0.0.1']) {
      expect(await code({ remoteAddress }), remoteAddress).toBe(200);
    }
    for (const remoteAddress of ['192.168.1.20', '10.0.0.1', '::ffff:10.0.0.1', '128.0.0.1']) {
      expect(await code({ remoteAddress }), remoteAddress).toBe(401);
    }
  });

  it('is not acted for by what stands in between, or by a forged token', async () => {
    for (const name of ['x-forwarded-for', 'forwarded', 'x-real-ip', 'via', 'x-forwarded-host']) {
      expect(await code({}, { [name]: '127.0.0.1' }), name).toBe(401);
    }
    expect(await code({}, { authorization: `Bearer ${'A'.repeat(43)}` })).toBe(401);
    expect(await code({}, { authorization: 'Basic YTpi' })).toBe(401);
  });

  it('[ACC-018] is not asked by the pages of another site', async () => {
    for (const site of ['cross-site', 'same-site']) {
      const answer = await ask({ url: '/api/documents' }, { 'sec-fetch-site': site });
      expect(answer.statusCode).toBe(403);
      expect(answer.json().refusals[0].code).toBe('ACC-018');
    }
    const own = await ask({ url: '/api/documents' }, { 'sec-fetch-site': 'same-origin' });
    expect(own.statusCode).toBe(200);
    const opened = await ask({ url: '/hang-list' }, { 'sec-fetch-site': 'cross-site' });
    expect(opened.statusCode).toBe(200);
  });
});

/** Who has which duties, said again beside the code: the roles are nested. */
const MAY: Readonly<Record<string, readonly Need[]>> = {
  nobody: ['anyone'],
  view: ['anyone', 'signedIn', 'look', 'note'],
  plan: ['anyone', 'signedIn', 'look', 'note', 'plan'],
  run: ['anyone', 'signedIn', 'look', 'note', 'plan', 'run'],
  own: ['anyone', 'signedIn', 'look', 'note', 'plan', 'run', 'own'],
  'program that views': ['anyone', 'look', 'note'],
  'program that runs': ['anyone', 'look', 'note', 'plan', 'run'],
};

const LAN = '192.168.1.20';

/** Sessions and tokens as a device holds them, and some that are good no longer. */
const credentials: Record<string, Headers> = {};

const cookiesOf = (answer: { readonly headers: Record<string, unknown> }): string =>
  [answer.headers['set-cookie'] ?? []]
    .flat()
    .map((each) => String(each).split(';')[0])
    .join('; ');

const post = (url: string, payload: object, headers: Headers = {}, method = 'POST' as const) =>
  ask({ method, url, payload, remoteAddress: LAN }, headers);

const signIn = async (name: string): Promise<Headers> => ({
  cookie: cookiesOf(await post('/api/session', { name, passphrase: PASSPHRASE })),
});

const join_ = async (name: string, role: Role, owner: Headers): Promise<void> => {
  const { token } = (await post('/api/people/invitations', { name, role }, owner)).json();
  const joined = await post('/api/invitation/join', { token, name, passphrase: PASSPHRASE });
  expect(joined.json()).toMatchObject({ name, role });
  credentials[role] = { cookie: cookiesOf(joined) };
};

const program = async (name: string, role: Role, owner: Headers): Promise<Headers> => {
  const { token } = (await post('/api/tokens', { name, role }, owner)).json();
  return { authorization: `Bearer ${token}` };
};

const makeEverybody = async (): Promise<void> => {
  const { ownerCode: code } = (await ask({ url: '/api/session' })).json();
  const made = await ask({
    method: 'POST',
    url: '/api/people/owner',
    payload: { code, name: 'Owner', passphrase: PASSPHRASE },
  });
  expect(made.statusCode).toBe(200);
  // What is to have expired by the time it is tried is made first.
  credentials['expired'] = await signIn('Owner');
  credentials['expired program'] = await program('expired', 'run', credentials['expired']);
  nowMs += 366 * DAY_MS;
  const owner = await signIn('Owner');
  credentials['own'] = owner;
  for (const role of ['view', 'plan', 'run'] as const) await join_(`Hand ${role}`, role, owner);
  credentials['program that views'] = await program('views', 'view', owner);
  credentials['program that runs'] = await program('runs', 'run', owner);
  credentials['nobody'] = {};
  credentials['forged'] = { cookie: `counterpoise-session=${'B'.repeat(43)}` };
  credentials['forged program'] = { authorization: `Bearer ${'B'.repeat(43)}` };
  const revoked = await program('revoked', 'run', owner);
  const { programs } = (await ask({ url: '/api/tokens', remoteAddress: LAN }, owner)).json();
  const { id } = programs.find((each: { name: string }) => each.name === 'revoked');
  await ask({ method: 'DELETE', url: `/api/tokens/${id}`, remoteAddress: LAN }, owner);
  credentials['revoked program'] = revoked;
  const replayed = await signIn('Owner');
  await ask({ method: 'DELETE', url: '/api/session', remoteAddress: LAN }, replayed);
  credentials['replayed after signing out'] = replayed;
  credentials['of another name'] = {
    cookie: String(owner['cookie']).replace('counterpoise-session', '__Host-counterpoise-session'),
  };
};

const GONE = [
  'expired',
  'expired program',
  'forged',
  'forged program',
  'revoked program',
  'replayed after signing out',
  'of another name',
];

/** Asks nothing that would be done: the body is wrong, the ids are of nothing. */
const knock = async ({ method, url }: RouteRight, headers: Headers) => {
  const path = url.replaceAll(/:\w+/g, 'none').replace('*', 'index.html');
  const body = method === 'GET' ? {} : { payload: { nothing: true } };
  return ask({ method, url: path, ...body, remoteAddress: LAN }, headers);
};

/** Whether the guard let it pass: what comes after may find the request wanting. */
const isLetIn = async (right: RouteRight, headers: Headers): Promise<boolean> => {
  const answer = await knock(right, headers);
  const codes = (answer.json().refusals ?? []).map(({ code }: { code: string }) => code);
  const isShut = codes.includes('ACC-001') || codes.includes('ACC-002');
  expect(isShut ? [401, 403].includes(answer.statusCode) : true).toBe(true);
  return !isShut;
};

/** What ends a sign-in ends that of who tries it; they are tried apart. */
const ENDS = ['DELETE /api/session', 'DELETE /api/session/devices'];
const isStream = ({ url }: RouteRight): boolean => url === '/api/events';

describe('every route', () => {
  beforeAll(makeEverybody);

  const tried = RIGHTS.filter(
    (right) =>
      right.url.startsWith('/api/') &&
      !isStream(right) &&
      !ENDS.includes(`${right.method} ${right.url}`),
  );

  it.each(Object.keys(MAY))('[ACC-002] lets in by its right: %s', async (who) => {
    const found: Record<string, boolean> = {};
    const wanted: Record<string, boolean> = {};
    for (const right of tried) {
      const name = `${right.method} ${right.url}`;
      wanted[name] = MAY[who]?.includes(right.needs) ?? false;
      // A sign-in by a wrong name is refused as such, and lets nobody in.
      found[name] = await isLetIn(right, credentials[who] ?? {});
    }
    expect(found).toEqual(wanted);
  });

  it.each(GONE)('[ACC-001] is shut to who is %s', async (who) => {
    for (const right of tried.filter(({ needs }) => needs !== 'anyone')) {
      expect(await isLetIn(right, credentials[who] ?? {}), `${right.method} ${right.url}`).toBe(
        false,
      );
    }
  });

  it('[ACC-002] how the sets stand is recorded by who runs, not by who plans', async () => {
    const url = '/api/documents/state:kestlemere';
    const payload = {
      kind: 'state',
      expectedRevision: 0,
      document: {},
      savedBy: 'somebody else',
      why: 'x',
    };
    const put = (who: string) =>
      ask({ method: 'PUT', url, payload, remoteAddress: LAN }, credentials[who]);
    expect((await put('plan')).json().refusals[0].code).toBe('ACC-002');
    expect((await put('run')).statusCode).toBe(422);
  });

  it('is saved under the name of who signed in, whatever the page says', async () => {
    const url = '/api/documents/show:vell';
    const asked = { url, remoteAddress: LAN } as const;
    const { document, revision } = (await ask(asked, credentials['plan'])).json();
    const payload = {
      kind: 'show',
      expectedRevision: revision,
      document,
      savedBy: 'somebody else',
      why: 'x',
    };
    const saved = await ask({ ...asked, method: 'PUT', payload }, credentials['plan']);
    expect(saved.json()).toMatchObject({ savedBy: 'Hand plan' });
  });

  it('[ACC-007] that lets others in asks for the secret again after ten minutes', async () => {
    const owner = await signIn('Owner');
    const invite = (headers: Headers) =>
      post('/api/people/invitations', { name: 'x', role: 'view' }, headers);
    nowMs += 10 * 60_000;
    expect((await invite(owner)).statusCode).toBe(200);
    nowMs += 1;
    const stale = await invite(owner);
    expect(stale.statusCode).toBe(403);
    expect(stale.json().refusals[0].code).toBe('ACC-007');
    const proof = await post('/api/session/proof', { passphrase: PASSPHRASE }, owner);
    const fresh = { cookie: cookiesOf(proof) };
    expect((await invite(fresh)).statusCode).toBe(200);
    // The token before it is good no longer.
    expect((await invite(owner)).statusCode).toBe(401);
  });
});

describe('headers', () => {
  it('let no page frame, embed, guess the kind of or keep what is answered', async () => {
    const { headers } = await ask({ url: '/api/documents', remoteAddress: LAN });
    expect(headers).toMatchObject({
      'cache-control': 'no-store',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'referrer-policy': 'no-referrer',
      'x-content-type-options': 'nosniff',
    });
    for (const part of ["object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'"]) {
      expect(headers['content-security-policy']).toContain(part);
    }
    expect(headers['access-control-allow-origin']).toBeUndefined();
  });
});

describe('cookies', () => {
  it('are for this server alone, and are read by no script', async () => {
    const answer = await post('/api/session', { name: 'Owner', passphrase: PASSPHRASE });
    const set = [answer.headers['set-cookie'] ?? []].flat();
    expect(set).toHaveLength(2);
    for (const each of set) {
      expect(each).toMatch(/^counterpoise-(session|device)=[\w-]{43}; Path=\/; HttpOnly; /);
      expect(each).toContain('SameSite=Strict');
    }
    expect(answer.body).not.toMatch(/[\w-]{43}/);
  });

  it('[ACC-005] are not given for guesses, and the wait is said', async () => {
    const guess = () => post('/api/session', { name: 'Hand view', passphrase: 'a guess' });
    for (let tries = 0; tries < 5; tries += 1) expect((await guess()).statusCode).toBe(401);
    const waits = await guess();
    expect(waits.statusCode).toBe(429);
    expect(Number(waits.headers['retry-after'])).toBeGreaterThan(0);
    expect(waits.headers['set-cookie']).toBeUndefined();
  });
});
