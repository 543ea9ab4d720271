import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, InjectOptions } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Databases, openDatabases } from '../databases.ts';
import { demoDocuments } from '../demo.ts';
import { buildApp } from './app.ts';

const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};

const examples = join(import.meta.dirname, '..', '..', 'examples');
const now = (): Date => new Date('2026-11-25T12:00:00Z');
const HOUSE = 'house:kestlemere';

let folder: string;
let databases: Databases;
let app: FastifyInstance;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-app-'));
  databases = openDatabases(folder, demoDocuments(examples), now);
  app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
});
afterEach(async () => {
  await app.close();
  databases.close();
  rmSync(folder, { recursive: true });
});

const ask = (options: InjectOptions) =>
  app.inject({ ...options, headers: { host: '127.0.0.1:4747', ...options.headers } });

const houseNow = async () => (await ask({ url: `/api/documents/${HOUSE}` })).json();

const put = (changes: Record<string, unknown>) =>
  ask({
    method: 'PUT',
    url: `/api/documents/${HOUSE}`,
    payload: { kind: 'house', expectedRevision: 1, savedBy: 'TD', why: 'test', ...changes },
  });

describe('documents', () => {
  it('starts with the demo, both houses and all their shows', async () => {
    const { database, documents } = (await ask({ url: '/api/documents' })).json();
    expect(database).toBe('demo');
    const ids = documents.map(({ id }: { id: string }) => id);
    expect(ids).toContain(HOUSE);
    expect(ids).toContain('show:vell');
    expect(ids).toContain('state:kestlemere');
  });

  it('saves a document as a new revision', async () => {
    const { document } = await houseNow();
    const answer = await put({ document: { ...document, name: 'Renamed house' } });
    expect(answer.statusCode).toBe(200);
    expect(answer.json()).toMatchObject({ revision: 2, savedBy: 'TD' });
    expect((await houseNow()).document.name).toBe('Renamed house');
    const first = await ask({ url: `/api/documents/${HOUSE}/revisions/1` });
    expect(first.json().document.name).toBe(document.name);
  });

  it('refuses a stale save, says which revision is current, and changes nothing', async () => {
    const { document } = await houseNow();
    await put({ document: { ...document, name: 'First' } });
    const answer = await put({ document: { ...document, name: 'Second' } });
    expect(answer.statusCode).toBe(409);
    expect(answer.json().current.revision).toBe(2);
    expect((await houseNow()).document.name).toBe('First');
  });

  it('refuses a document with faults, lists them all, and changes nothing', async () => {
    const { document } = await houseNow();
    const broken = { ...document, name: 7, stage: { ...document.stage, openingWidth: '42' } };
    const answer = await put({ document: broken });
    expect(answer.statusCode).toBe(422);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    const paths = answer.json().refusals.map(({ path }: { path: string }) => path);
    expect(paths).toContain('name');
    expect(paths.some((path: string) => path.startsWith('stage.openingWidth'))).toBe(true);
    expect((await houseNow()).revision).toBe(1);
  });

  it('[SRV-001] refuses a document whose own id is another', async () => {
    const { document } = await houseNow();
    const answer = await put({ document: { ...document, id: 'elsewhere' } });
    expect(answer.statusCode).toBe(422);
    expect(answer.json().refusals[0]).toMatchObject({ code: 'SRV-001', path: 'id' });
  });

  it('refuses what is not asked in its form', async () => {
    expect((await put({ document: 'text' })).statusCode).toBe(400);
    expect((await put({})).statusCode).toBe(400);
    expect((await ask({ url: '/api/documents/house:none' })).statusCode).toBe(404);
    expect((await ask({ url: '/api/nothing' })).statusCode).toBe(404);
    const text = await ask({
      method: 'PUT',
      url: `/api/documents/${HOUSE}`,
      headers: { 'content-type': 'application/json' },
      payload: '{"kind": "house",',
    });
    expect(text.statusCode).toBe(400);
  });
});

describe('sheets', () => {
  const job = 'house=kestlemere&show=vell';

  it('prints a card under a name of its own, and answers for its code', async () => {
    const card = await ask({ url: `/api/sheet.pdf?${job}&sheet=balance-card/11&paper=a4` });
    expect(card.statusCode).toBe(200);
    expect(card.headers['content-type']).toBe('application/pdf');
    expect(card.headers['content-disposition']).toContain('demo-balance-card-11.pdf');
    const answer = await ask({
      url: `/api/sheet-code?${job}&sheet=balance-card/11&code=0000-0000`,
    });
    expect(answer.json()).toEqual({ answer: 'superseded' });
  });

  it('lists sheets of the work without making them, and prints a strike by its order', async () => {
    const listed = await ask({ url: `/api/sheets?${job}` });
    const ids: readonly string[] = listed.json().sheets;
    for (const id of ['strike-sheet/34', 'loading-sheet/mid', 'permit/34', 'briefing/strike']) {
      expect(ids).toContain(id);
    }
    expect(ids).not.toContain('strike-sheet/23');
    const url = `/api/sheet.pdf?${job}&sheet=strike-sheet/34&paper=letter`;
    const [first, again] = [await ask({ url }), await ask({ url })];
    expect(first.headers['content-disposition']).toContain('demo-strike-sheet-34.pdf');
    // The same sheet gives the same bytes: its order was found once, and is the same twice.
    expect(again.rawPayload.equals(first.rawPayload)).toBe(true);
    const csv = await ask({ url: `/api/sheet.csv?${job}&sheet=strike-sheet/34` });
    expect(csv.body).toContain('plates (count)');
  });

  it('says which document is not understood, rather than printing without it', async () => {
    const saved = databases.store().save({
      id: 'state:kestlemere',
      kind: 'state',
      text: '{"format":"counterpoise-state","version":1,"house":"kestlemere"}',
      expectedRevision: 1,
      savedAt: now().toISOString(),
      savedBy: 'another program',
      why: 'damaged',
      remark: '',
    });
    expect(saved.ok).toBe(true);
    const card = await ask({ url: `/api/sheet.pdf?${job}&sheet=balance-card/11&paper=a4` });
    expect(card.statusCode).toBe(422);
    expect(card.json().title).toContain('record');
    expect(card.json().refusals.length).toBeGreaterThan(0);
  });

  it('knows only houses, shows, sheets and papers that there are', async () => {
    const status = async (query: string) =>
      (await ask({ url: `/api/sheet.pdf?${query}` })).statusCode;
    expect(await status('house=none&show=vell&sheet=schedule&paper=a4')).toBe(404);
    expect(await status(`${job}&sheet=loading-sheet&paper=a4`)).toBe(404);
    expect(await status(`${job}&sheet=schedule&paper=a3`)).toBe(400);
    const csv = await ask({ url: `/api/sheet.csv?${job}&sheet=schedule` });
    expect(csv.headers['content-type']).toContain('text/csv');
  });
});

describe('origins', () => {
  it('answers only its own pages on this machine', async () => {
    const other = await ask({ url: '/api/documents', headers: { origin: 'http://other.example' } });
    expect(other.statusCode).toBe(403);
    const rebound = await app.inject({ url: '/api/documents', headers: { host: 'other.example' } });
    expect(rebound.statusCode).toBe(403);
    const own = await ask({ url: '/api/documents', headers: { origin: 'http://127.0.0.1:4747' } });
    expect(own.statusCode).toBe(200);
  });
});

describe('the demo and a house of one’s own', () => {
  const take = (payload: Record<string, unknown>) =>
    ask({ method: 'POST', url: '/api/database', payload });
  const newHouse = {
    database: 'house',
    name: 'Our house',
    units: 'metric',
    words: 'UK',
    operatingSide: 'stageLeft',
  };

  it('asks what it must not guess before it begins a house', async () => {
    const answer = await take({ database: 'house', name: 'Our house' });
    expect(answer.statusCode).toBe(422);
    expect((await ask({ url: '/api/database' })).json().inHand).toBe('demo');
  });

  it('puts the demo aside in one step, and finds it again as it was', async () => {
    const { document } = await houseNow();
    await put({ document: { ...document, name: 'Changed demo' } });
    expect((await take(newHouse)).json()).toEqual({ inHand: 'house', hasHouse: true });
    const { documents } = (await ask({ url: '/api/documents' })).json();
    expect(documents.map(({ id }: { id: string }) => id)).toEqual([
      'house:house',
      'show:first-show',
    ]);
    const blank = (await ask({ url: '/api/documents/house:house' })).json().document;
    expect(blank.demo).toBeUndefined();
    await take({ database: 'demo' });
    expect((await houseNow()).document.name).toBe('Changed demo');
  });

  it('opens after a restart what was open before', async () => {
    await take(newHouse);
    databases.close();
    databases = openDatabases(folder, demoDocuments(examples), now);
    expect(databases.inHand()).toBe('house');
  });
});
