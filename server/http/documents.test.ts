import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { blankHouse, blankShow, type JsonObject, writeDocument } from '#documents';
import { type Databases, openDatabases } from '../databases.ts';
import { buildApp } from './app.ts';
import { DOCUMENTS_MAX } from './document-routes.ts';

const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};

const now = (): Date => new Date('2026-11-25T12:00:00Z');
const blank = { units: 'metric', words: 'UK', operatingSide: 'stageLeft' } as const;
const HOUSE = blankHouse({ id: 'one', name: 'One', ...blank });
const SHOW = blankShow({ id: 'play', name: 'Play', house: 'one' });
const FIRST = [
  { id: 'house:one', kind: 'house', text: writeDocument(HOUSE) },
  { id: 'show:play', kind: 'show', text: writeDocument(SHOW) },
] as const;

let folder: string;
let databases: Databases;
let app: FastifyInstance;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-documents-'));
  databases = openDatabases(folder, FIRST, now);
  app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
});
afterEach(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

const ask = (options: InjectOptions) =>
  app.inject({ ...options, headers: { host: '127.0.0.1:4747', ...options.headers } });

const put = (id: string, document: JsonObject, more: Record<string, unknown> = {}) =>
  ask({
    method: 'PUT',
    url: `/api/documents/${id}`,
    payload: {
      kind: id.split(':')[0],
      expectedRevision: 0,
      savedBy: 'TD',
      why: 'test',
      document,
      ...more,
    },
  });

const shelve = (id: string, aside: boolean) =>
  ask({
    method: 'POST',
    url: `/api/documents/${id}/aside`,
    payload: { aside, by: 'TD', why: 'the run is over' },
  });

const idsIn = async (url: string) =>
  ((await ask({ url })).json().documents as { id: string }[]).map(({ id }) => id);

const codesIn = (answer: { json: () => { refusals: { code: string }[] } }) =>
  answer.json().refusals.map(({ code }) => code);

describe('several houses and shows', () => {
  it('takes a second house, and a show copied from another', async () => {
    const two = blankHouse({ id: 'two', name: 'Two', ...blank });
    expect((await put('house:two', two)).json()).toMatchObject({ revision: 1 });
    const copied = await put('show:tour', { ...SHOW, id: 'tour', name: 'Tour', house: 'two' });
    expect(copied.statusCode).toBe(200);
    expect(await idsIn('/api/documents')).toEqual([
      'house:one',
      'house:two',
      'show:play',
      'show:tour',
    ]);
  });

  it('[SRV-002] refuses a new document under an id that there is', async () => {
    const answer = await put('show:play', { ...SHOW, name: 'Another' });
    expect(answer.statusCode).toBe(409);
    expect(codesIn(answer)).toEqual(['SRV-002']);
    expect(answer.json().current.revision).toBe(1);
  });

  it('[SRV-006] refuses more documents than a database keeps', async () => {
    const store = databases.store();
    for (let number = store.list().length; number < DOCUMENTS_MAX; number += 1) {
      store.save({
        id: `show:n${number}`,
        kind: 'show',
        text: '{}',
        expectedRevision: 0,
        savedAt: now().toISOString(),
        savedBy: 'TD',
        why: 'many',
        remark: '',
      });
    }
    const answer = await put('show:more', { ...SHOW, id: 'more' });
    expect(answer.statusCode).toBe(422);
    expect(codesIn(answer)).toEqual(['SRV-006']);
    expect((await put('show:play', SHOW, { expectedRevision: 1 })).statusCode).toBe(200);
  });
});

describe('revisions', () => {
  it('lists them newest first, with who, why and remark, and gives each as it was', async () => {
    await put('show:play', { ...SHOW, name: 'Renamed' }, { expectedRevision: 1 });
    const remark = 'as hung on Tuesday';
    await put('show:play', { ...SHOW, name: 'Renamed' }, { expectedRevision: 2, remark });
    const { revisions } = (await ask({ url: '/api/documents/show:play/revisions' })).json();
    expect(revisions).toMatchObject([
      { revision: 3, savedBy: 'TD', why: 'test', remark },
      { revision: 2, remark: '' },
      { revision: 1, savedBy: 'Counterpoise' },
    ]);
    const first = await ask({ url: '/api/documents/show:play/revisions/1' });
    expect(first.json().document.name).toBe('Play');
  });

  it('restores by a save of the old content, and rewrites nothing', async () => {
    await put('show:play', { ...SHOW, name: 'Renamed' }, { expectedRevision: 1 });
    const old = (await ask({ url: '/api/documents/show:play/revisions/1' })).json();
    const why = 'revision 1 restored: the name was right';
    await put('show:play', old.document, { expectedRevision: 2, why });
    const { revisions } = (await ask({ url: '/api/documents/show:play/revisions' })).json();
    expect(revisions.map((each: { why: string }) => each.why)).toEqual([
      why,
      'test',
      'first loaded',
    ]);
    const second = await ask({ url: '/api/documents/show:play/revisions/2' });
    expect(second.json().document.name).toBe('Renamed');
  });

  it('knows only revisions that there are', async () => {
    const status = async (url: string) => (await ask({ url })).statusCode;
    expect(await status('/api/documents/show:none/revisions')).toBe(404);
    expect(await status('/api/documents/show:play/revisions/2')).toBe(404);
    expect(await status('/api/documents/show:play/revisions/0')).toBe(400);
    expect(await status('/api/documents/show:play/revisions/first')).toBe(400);
    expect(await status(`/api/documents/${'x'.repeat(201)}`)).not.toBe(200);
  });

  it('refuses a reason or a remark longer than a line', async () => {
    const long = 'x'.repeat(201);
    expect((await put('show:play', SHOW, { expectedRevision: 1, why: long })).statusCode).toBe(400);
    expect((await put('show:play', SHOW, { expectedRevision: 1, remark: long })).statusCode).toBe(
      400,
    );
  });
});

describe('setting aside', () => {
  it('takes a show out of the lists, keeps its history, and takes it back', async () => {
    expect((await shelve('show:play', true)).json()).toEqual({ id: 'show:play', isAside: true });
    expect(await idsIn('/api/documents')).toEqual(['house:one']);
    const { documents } = (await ask({ url: '/api/documents-aside' })).json();
    expect(documents).toMatchObject([
      { id: 'show:play', name: 'Play', asideBy: 'TD', asideWhy: 'the run is over' },
    ]);
    expect((await ask({ url: '/api/documents/show:play/revisions/1' })).statusCode).toBe(200);
    await shelve('show:play', false);
    expect(await idsIn('/api/documents')).toEqual(['house:one', 'show:play']);
    expect(await idsIn('/api/documents-aside')).toEqual([]);
  });

  it('stays aside over a restart, and the first documents do not come again', async () => {
    await shelve('show:play', true);
    databases.close();
    databases = openDatabases(folder, FIRST, now);
    expect(
      databases
        .store()
        .list()
        .map(({ id }) => id),
    ).toEqual(['house:one']);
  });

  it('[SRV-003] refuses a save to it until it is taken back', async () => {
    await shelve('show:play', true);
    const answer = await put('show:play', SHOW, { expectedRevision: 1 });
    expect(answer.statusCode).toBe(422);
    expect(codesIn(answer)).toEqual(['SRV-003']);
    await shelve('show:play', false);
    expect((await put('show:play', SHOW, { expectedRevision: 1 })).statusCode).toBe(200);
  });

  it('[SRV-004] refuses a house that shows refer to, and lists them', async () => {
    await put('house:two', blankHouse({ id: 'two', name: 'Two', ...blank }));
    await put('show:tour', { ...SHOW, id: 'tour', name: 'Tour', house: 'two' });
    const answer = await shelve('house:two', true);
    expect(answer.statusCode).toBe(409);
    expect(answer.json().refusals).toMatchObject([
      { code: 'SRV-004', path: 'show:tour', found: 'Tour, a show in this house' },
    ]);
    await shelve('show:tour', true);
    expect((await shelve('house:two', true)).statusCode).toBe(200);
  });

  it('[SRV-005] sets a record aside with its house, never by itself', async () => {
    const house = blankHouse({ id: 'two', name: 'Two', ...blank });
    await put('house:two', house);
    const record = {
      format: 'counterpoise-state',
      version: 1,
      house: 'two',
      at: '2026-11-25T14:31:00Z',
      by: 'TD',
      sets: {},
    };
    expect((await put('state:two', record)).statusCode).toBe(200);
    expect(codesIn(await shelve('state:two', true))).toEqual(['SRV-005']);
    await shelve('house:two', true);
    expect(await idsIn('/api/documents')).not.toContain('state:two');
    await shelve('house:two', false);
    expect(await idsIn('/api/documents')).toContain('state:two');
  });

  it('[SRV-009] notes nothing where a document is so already', async () => {
    expect(codesIn(await shelve('show:play', false))).toEqual(['SRV-009']);
    await shelve('show:play', true);
    expect(codesIn(await shelve('show:play', true))).toEqual(['SRV-009']);
    expect((await shelve('show:none', true)).statusCode).toBe(404);
  });

  it('[SRV-010] keeps the last house in use', async () => {
    await shelve('show:play', true);
    expect(codesIn(await shelve('house:one', true))).toEqual(['SRV-010']);
  });

  it('[SRV-011] takes a show back after its house', async () => {
    await put('house:two', blankHouse({ id: 'two', name: 'Two', ...blank }));
    await put('show:tour', { ...SHOW, id: 'tour', house: 'two' });
    await shelve('show:tour', true);
    await shelve('house:two', true);
    expect(codesIn(await shelve('show:tour', false))).toEqual(['SRV-011']);
    await shelve('house:two', false);
    expect((await shelve('show:tour', false)).statusCode).toBe(200);
  });
});

describe('what is no request of ours', () => {
  it.each([
    ['PUT', '/api/documents/show:play'],
    ['POST', '/api/documents/show:play/aside'],
    ['POST', '/api/database'],
  ] as const)('[SRV-008] %s %s reads JSON and nothing else', async (method, url) => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'text/html']) {
      const answer = await ask({
        method,
        url,
        headers: { 'content-type': type },
        payload: JSON.stringify({ aside: true, by: 'TD', why: '', database: 'house' }),
      });
      expect(answer.statusCode).toBe(415);
      expect(answer.headers['content-type']).toContain('application/problem+json');
      expect(codesIn(answer)).toEqual(['SRV-008']);
    }
    expect(await idsIn('/api/documents')).toEqual(['house:one', 'show:play']);
  });

  it('[SRV-007] refuses what is larger than any document', async () => {
    const answer = await put('show:play', { ...SHOW, remarks: ['x'.repeat(10 * 1024 * 1024)] });
    expect(answer.statusCode).toBe(413);
    expect(codesIn(answer)).toEqual(['SRV-007']);
    expect(databases.store().current('show:play')?.revision).toBe(1);
  });

  it('keeps markup in a name as the text that it is', async () => {
    const name = '<img src=x onerror="document.title = 1">';
    await put('show:play', { ...SHOW, name }, { expectedRevision: 1, why: name, savedBy: name });
    const answer = await ask({ url: '/api/documents/show:play' });
    expect(answer.headers['content-type']).toContain('application/json');
    expect(answer.json()).toMatchObject({ why: name, savedBy: name, document: { name } });
  });
});
