import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { TERMS } from '#installation';
import { type Databases, openDatabases } from '../databases.ts';
import { buildApp } from './app.ts';
import { isTaken } from './builds.ts';

const now = (): Date => new Date('2026-11-28T12:00:00Z');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};

let folder: string;
let webRoot: string;
let databases: Databases;
let app: FastifyInstance;

const put = (file: string, text: string): void => writeFileSync(join(webRoot, file), text);
const ofBuild = (build: string, terms = TERMS) => ({ build, terms, files: [] });

/** What `web-build` leaves, newest first; a second later each time, for the clock of the disk. */
let second = 1_800_000_000;
const putBuilds = (...builds: readonly ReturnType<typeof ofBuild>[]): void => {
  put('build.json', JSON.stringify(builds[0]));
  put('builds.json', JSON.stringify(builds));
  second += 1;
  utimesSync(join(webRoot, 'build.json'), second, second);
};

const start = async (more: { oldestBuild?: string; startsOffline?: boolean } = {}) => {
  await app?.close();
  app = await buildApp({ databases, webRoot, now, selfCheck, ...more });
};

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-builds-'));
  webRoot = join(folder, 'web');
  mkdirSync(join(webRoot, 'assets'), { recursive: true });
  put('index.html', '<title>page</title>');
  put('sw.js', 'worker');
  put('sw-gone.js', 'worker that goes');
  put('assets/set-page-a1.js', 'a part');
  putBuilds(ofBuild('third'), ofBuild('second'), ofBuild('first'));
  databases = openDatabases(join(folder, 'data'), [], now);
  await start();
});
afterEach(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

const ask = (options: InjectOptions, build?: string) =>
  app.inject({
    ...options,
    headers: {
      host: '127.0.0.1:4747',
      ...(build === undefined ? {} : { 'counterpoise-build': build }),
    },
  });

/** A save with a fault in it: 422 says that it was looked at, 409 that it was not. */
const save = async (build?: string) => {
  const asked = { kind: 'show', expectedRevision: 0, document: {}, savedBy: 'TD', why: 'test' };
  return ask({ method: 'PUT', url: '/api/documents/show:x', payload: asked }, build);
};

describe('the build in every exchange', () => {
  it('is in the head of every answer, of a fault and of the page too', async () => {
    for (const url of ['/api/documents', '/api/nothing', '/', '/set/11', '/sw.js']) {
      expect((await ask({ url })).headers['counterpoise-build'], url).toBe('third');
    }
  });

  it('is told anew when the screens were built anew below a running server', async () => {
    putBuilds(ofBuild('fourth'), ofBuild('third'));
    expect((await ask({ url: '/api/documents' })).headers['counterpoise-build']).toBe('fourth');
  });

  it('goes on with what it knows while a list is half written', async () => {
    await ask({ url: '/' });
    put('build.json', '{"build":"four');
    const answer = await ask({ url: '/api/documents' });
    expect([answer.statusCode, answer.headers['counterpoise-build']]).toEqual([200, 'third']);
    putBuilds(ofBuild('fourth'), ofBuild('third'));
    expect((await ask({ url: '/' })).headers['counterpoise-build']).toBe('fourth');
  });

  it('takes changes from builds that are kept and from programs that name none', async () => {
    for (const build of ['third', 'second', 'first', undefined]) {
      expect((await save(build)).statusCode, build).toBe(422);
    }
  });

  it('refuses changes from a build that is not kept, in words and with a type', async () => {
    const answer = await save('zeroth');
    expect(answer.statusCode).toBe(409);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    expect(answer.json()).toMatchObject({ type: '/problems/old-build', status: 409 });
    expect(answer.json().detail).toContain('Load the page anew');
    const take = { method: 'POST', url: '/api/database', payload: { database: 'demo' } } as const;
    expect((await ask(take, 'zeroth')).statusCode).toBe(409);
    // It may read on: what is on its screen stays there.
    expect((await ask({ url: '/api/documents' }, 'zeroth')).statusCode).toBe(200);
  });

  it.each([
    ['first', { third: 422, second: 422, first: 422 }],
    ['second', { third: 422, second: 422, first: 409 }],
    ['newest', { third: 422, second: 409, first: 409 }],
    ['gone long ago', { third: 422, second: 422, first: 422 }],
  ] as const)('takes nothing from builds older than the minimum: %s', async (oldest, wanted) => {
    await start({ oldestBuild: oldest });
    for (const [build, status] of Object.entries(wanted)) {
      expect((await save(build)).statusCode, build).toBe(status);
    }
  });

  it('takes nothing from a build that was made to other terms', () => {
    const builds = [ofBuild('third'), ofBuild('second', TERMS - 1), ofBuild('first', TERMS + 1)];
    expect(isTaken('third', builds)).toBe(true);
    expect(isTaken('second', builds)).toBe(false);
    expect(isTaken('first', builds)).toBe(false);
    expect(isTaken('any', [])).toBe(true);
  });
});

describe('files of the screens', () => {
  it('lets browsers keep what is named by its content, and be asked for all else', async () => {
    const caching = async (url: string) => (await ask({ url })).headers['cache-control'];
    expect(await caching('/assets/set-page-a1.js')).toContain('immutable');
    for (const url of ['/', '/index.html', '/set/11', '/sw.js']) {
      expect(await caching(url), url).toBe('no-cache');
    }
  });

  it('gives no page for a part that is not there', async () => {
    expect((await ask({ url: '/assets/set-page-a0.js' })).statusCode).toBe(404);
    expect((await ask({ url: '/set/11' })).body).toContain('<title>page');
  });

  it('gives the worker, or the one that takes it away, at one address', async () => {
    expect((await ask({ url: '/sw.js' })).body).toBe('worker');
    await start({ startsOffline: false });
    const answer = await ask({ url: '/sw.js' });
    expect(answer.body).toBe('worker that goes');
    expect(answer.headers['content-type']).toContain('javascript');
    expect(answer.headers['cache-control']).toBe('no-cache');
  });
});
