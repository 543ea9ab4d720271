import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { InjectOptions } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Databases, openDatabases } from '../databases.ts';
import { buildApp } from './app.ts';
import { type LogLevel, logTo, readLogLevel } from './log.ts';

const now = (): Date => new Date('2026-11-25T12:00:00Z');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};

let folder = '';
let databases: Databases;
let lines: string[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-log-'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html>');
  databases = openDatabases(folder, [], now);
  lines = [];
});
afterEach(() => {
  databases.close();
  rmSync(folder, { recursive: true });
});

const appAt = async (level: LogLevel) => {
  const log = logTo({ level, now, line: (text) => void lines.push(text) });
  return buildApp({ databases, webRoot: folder, now, selfCheck, log });
};

const SECRETS = {
  cookie: 'planted-cookie-4711',
  bearer: 'planted-bearer-4712',
  query: 'planted-query-4713',
  passphrase: 'planted passphrase 4714',
  pin: '47154715',
  token: 'planted-token-4716',
  path: 'planted-path-4717',
};

const PLANTED: readonly InjectOptions[] = [
  { url: `/api/documents?token=${SECRETS.query}` },
  { url: `/api/documents/${SECRETS.path}` },
  { url: `/${SECRETS.path}?${SECRETS.query}` },
  { url: `/api/nothing/${SECRETS.path}` },
  { method: 'POST', url: '/api/session', payload: { name: 'Ada', passphrase: SECRETS.passphrase } },
  { method: 'POST', url: '/api/session/by-pin', payload: { person: 'x', pin: SECRETS.pin } },
  { method: 'POST', url: '/api/invitation', payload: { token: SECRETS.token } },
  {
    method: 'POST',
    url: '/api/session',
    headers: { 'content-type': 'application/json' },
    payload: `{"passphrase": "${SECRETS.passphrase}", ${SECRETS.token}`,
  },
  { method: 'PUT', url: `/api/documents/${SECRETS.path}`, payload: { document: SECRETS.token } },
  { method: 'DELETE', url: `/api/tokens/${SECRETS.token}` },
];

const asked = (options: InjectOptions): InjectOptions => ({
  ...options,
  headers: {
    host: '127.0.0.1:4747',
    cookie: `counterpoise-session=${SECRETS.cookie}`,
    authorization: `Bearer ${SECRETS.bearer}`,
    ...options.headers,
  },
});

const secretsIn = (text: string): readonly string[] =>
  Object.values(SECRETS).filter((secret) => text.includes(secret));

describe('the log', () => {
  it('has one JSON object a line, with the id that the answer shows', async () => {
    const app = await appAt('info');
    const answer = await app.inject(asked({ url: '/api/health' }));
    await app.close();
    const [line = ''] = lines;
    expect(line.endsWith('\n')).toBe(true);
    expect(JSON.parse(line)).toEqual({
      time: '2026-11-25T12:00:00.000Z',
      level: 'info',
      event: 'request',
      request: answer.headers['x-request-id'],
      method: 'GET',
      route: '/api/health',
      status: 200,
      milliseconds: expect.any(Number),
    });
  });

  it('holds nothing of what was sent, however it was sent', async () => {
    const app = await appAt('debug');
    for (const options of PLANTED) await app.inject(asked(options));
    await app.close();
    expect(lines.length).toBe(PLANTED.length);
    expect(secretsIn(lines.join(''))).toEqual([]);
  });

  it('says of a fault what and where, and to the client neither', async () => {
    const whole = databases;
    const found = `cannot read ${SECRETS.path} of ${SECRETS.cookie}, ${SECRETS.bearer}`;
    databases = {
      ...whole,
      store: () => {
        throw new TypeError(found);
      },
    };
    const app = await appAt('error');
    const answer = await app.inject({
      url: `/api/documents/${SECRETS.path}`,
      headers: { host: '127.0.0.1:4747', cookie: `a=${SECRETS.cookie}; b=c` },
    });
    await app.close();
    databases = whole;
    expect(answer.statusCode).toBe(500);
    expect(answer.json()).toEqual({
      type: 'about:blank',
      title: 'A fault of the program.',
      status: 500,
    });
    const fault = JSON.parse(lines[0] ?? '');
    expect(fault).toMatchObject({ level: 'error', event: 'fault', name: 'TypeError' });
    // The last was not sent with this request, so nobody could know that it is a secret.
    expect(fault.message).toBe(`cannot read [sent] of [sent], ${SECRETS.bearer}`);
    expect(fault.at[0]).toMatch(/log\.test\.ts/);
  });

  it('leaves out what is below its level', () => {
    const log = logTo({ level: 'warn', now, line: (text) => void lines.push(text) });
    log.write('info', 'a', {});
    log.write('warn', 'b', {});
    log.write('error', 'c', {});
    expect(lines.map((line) => JSON.parse(line).event)).toEqual(['b', 'c']);
    expect(readLogLevel('warn')).toBe('warn');
    expect(readLogLevel('constructor')).toBeUndefined();
  });

  it('keeps a line a line, whatever a field holds', () => {
    const log = logTo({ level: 'info', now, line: (text) => void lines.push(text) });
    log.write('info', 'a', { found: 'one\ntwo\u2028"three"' });
    expect(lines[0]?.split('\n')).toHaveLength(2);
  });
});
