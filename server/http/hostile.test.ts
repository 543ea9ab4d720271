/**
 * Hostile input: 100,000 requests from a seed, most of them from the network by nobody, the rest
 * from the machine itself. Set COUNTERPOISE_SEED to see those of another run again.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { FastifyInstance, InjectOptions, LightMyRequestResponse } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { blankHouse, blankShow, writeDocument } from '#documents';
import { type Databases, openDatabases } from '../databases.ts';
import { LITTLE } from '../stage-for-tests.ts';
import { buildApp } from './app.ts';
import { chanceFrom, hostileRequest } from './hostile-requests.ts';
import { logTo } from './log.ts';

const SEED = Number(process.env['COUNTERPOISE_SEED'] ?? Math.floor(Math.random() * 2 ** 32));
const FROM_NETWORK = 80_000;
const FROM_HERE = 20_000;

const ROOT = join(import.meta.dirname, '..', '..');
const now = (): Date => new Date('2026-11-25T12:00:00Z');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};

const PLACE = {
  name: 'A house',
  units: 'metric',
  words: 'UK',
  operatingSide: 'stageLeft',
} as const;
const HOUSE = blankHouse({ id: 'house', ...PLACE });

let folder = '';
let databases: Databases;
let app: FastifyInstance;
const faults: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-hostile-'));
  const webRoot = join(folder, 'web');
  mkdirSync(webRoot);
  for (const file of ['index.html', 'sw.js']) writeFileSync(join(webRoot, file), '<!doctype html>');
  const show = blankShow({ id: 'first-show', name: 'First show', house: 'house' });
  const first = [
    { id: 'house:house', kind: 'house', text: writeDocument(HOUSE) },
    { id: 'show:first-show', kind: 'show', text: writeDocument(show) },
  ] as const;
  databases = openDatabases(folder, first, now, { cost: LITTLE });
  const log = logTo({ level: 'error', now, line: (text) => void faults.push(text) });
  app = await buildApp({ databases, webRoot, now, selfCheck, log });
});
afterAll(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

/** Every row of every table but the count of failed attempts, which is there to change. */
const allThatIsKept = (): string => {
  const database = new DatabaseSync(join(folder, 'demo.sqlite'), { readOnly: true });
  const tables = database
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'attempt'")
    .all()
    .map(({ name }) => String(name));
  const rows = tables.map((name) => [name, database.prepare(`SELECT * FROM "${name}"`).all()]);
  database.close();
  expect(tables).toContain('revision');
  return JSON.stringify(rows);
};

const LEAKS = [
  /\n\s+at /,
  /node_modules/,
  /file:\/\//,
  /\.ts:\d/,
  /SQLITE_|sqlite3|no such table/i,
  /PRIVATE KEY/,
  // The first line of a file of passwords, and the folders of this very run.
  /:x:0:0:/,
  new RegExp([tmpdir(), ROOT].map((path) => path.replaceAll(/[^\w]/g, '\\$&')).join('|')),
];

const HEADERS = ['content-security-policy', 'x-content-type-options', 'referrer-policy'];

/** What is wrong with an answer; nothing where it is as it should be. */
const wrongWith = ({ statusCode, headers, body }: LightMyRequestResponse): readonly string[] => [
  ...(statusCode >= 500 ? [`status ${statusCode}`] : []),
  ...LEAKS.filter((leak) => leak.test(body)).map((leak) => `leaks ${leak.source}`),
  ...HEADERS.filter((name) => headers[name] === undefined).map((name) => `is without ${name}`),
];

/** Each is taken from the machine itself, so that from the network only its right is missing. */
const SOUND: readonly InjectOptions[] = [
  {
    method: 'POST',
    url: '/api/commands',
    payload: {
      commandId: 'a-command-of-nobody',
      device: 'a-device',
      kind: 'note written',
      target: 'set:1',
      seen: null,
      payload: { text: 'A note.', writtenMs: null },
      clientMs: now().getTime(),
    },
  },
  {
    method: 'POST',
    url: '/api/call',
    payload: { house: 'house', show: 'first-show', state: null, device: 'a-device', name: 'x' },
  },
  {
    method: 'POST',
    url: '/api/commands',
    payload: {
      commandId: 'a-stop-of-nobody',
      device: 'a-device',
      kind: 'stop called',
      target: 'house',
      seen: null,
      payload: { call: 'a-call', post: null, set: null, words: '' },
      clientMs: now().getTime(),
    },
  },
  { method: 'POST', url: '/api/call/codes', payload: { post: 'rail', answersFor: true } },
  { method: 'DELETE', url: '/api/call', payload: { words: '' } },
  {
    method: 'PUT',
    url: '/api/documents/house:house',
    payload: { kind: 'house', expectedRevision: 1, document: HOUSE, savedBy: 'x', why: 'x' },
  },
  {
    method: 'POST',
    url: '/api/documents/show:first-show/aside',
    payload: { aside: true, by: 'x', why: 'x' },
  },
  { method: 'POST', url: '/api/people/invitations', payload: { name: 'x', role: 'own' } },
  { method: 'POST', url: '/api/tokens', payload: { name: 'x', role: 'run' } },
  { method: 'PUT', url: '/api/people/this-machine', payload: { isMine: true } },
  {
    method: 'POST',
    url: '/api/database',
    payload: {
      database: 'house',
      name: 'Another',
      units: 'metric',
      words: 'UK',
      operatingSide: 'stageLeft',
    },
  },
];

type Run = {
  readonly wrong: readonly string[];
  readonly statuses: Readonly<Record<number, number>>;
};

type Asked = {
  readonly seed: number;
  readonly count: number;
  readonly from: string;
  readonly sound: readonly InjectOptions[];
};

const run = async ({ seed, count, from: remoteAddress, sound }: Asked): Promise<Run> => {
  const chance = chanceFrom(seed);
  const wrong: string[] = [];
  const statuses: Record<number, number> = {};
  for (let index = 0; index < count; index += 1) {
    const request = hostileRequest(chance, sound);
    const answer = await app.inject({ ...request, remoteAddress });
    statuses[answer.statusCode] = (statuses[answer.statusCode] ?? 0) + 1;
    for (const what of wrongWith(answer)) {
      if (wrong.length < 6)
        wrong.push(`${index}: ${what}: ${JSON.stringify(request).slice(0, 300)}`);
    }
  }
  return { wrong, statuses };
};

describe(`hostile input, seed ${SEED}`, () => {
  it(`changes and tells nothing, ${FROM_NETWORK} times from the network by nobody`, async () => {
    const before = allThatIsKept();
    const { wrong, statuses } = await run({
      seed: SEED,
      count: FROM_NETWORK,
      from: '192.168.7.66',
      sound: SOUND,
    });
    expect(wrong).toEqual([]);
    expect(faults).toEqual([]);
    expect(allThatIsKept()).toBe(before);
    // It came as far as the checks of rights, of forms and of origins, and not only to one.
    for (const status of [200, 400, 401, 403, 404]) expect(statuses[status]).toBeGreaterThan(100);
  });

  it(`neither falls nor tells anything, ${FROM_HERE} times from the machine itself`, async () => {
    const { wrong, statuses } = await run({
      seed: SEED ^ 0xffff,
      count: FROM_HERE,
      from: '127.0.0.1',
      sound: [],
    });
    expect(wrong).toEqual([]);
    expect(faults).toEqual([]);
    for (const status of [200, 400, 403, 404, 415]) expect(statuses[status]).toBeGreaterThan(50);
    // What was sent to documents had no sound form, so they are as they were.
    expect(databases.store().current('house:house')?.revision).toBe(1);
  });

  it('would have taken what was sound in it from who may', async () => {
    for (const request of SOUND) {
      const headers = { host: '127.0.0.1:4747' };
      const answer = await app.inject({ ...request, headers, remoteAddress: '127.0.0.1' });
      expect(answer.statusCode, request.url as string).toBe(200);
    }
  });

  it('gives the same requests for the same seed', () => {
    const [a, b] = [chanceFrom(SEED), chanceFrom(SEED)];
    const first = Array.from({ length: 50 }, () => JSON.stringify(hostileRequest(a)));
    expect(Array.from({ length: 50 }, () => JSON.stringify(hostileRequest(b)))).toEqual(first);
    expect(new Set(first).size).toBeGreaterThan(45);
  });
});
