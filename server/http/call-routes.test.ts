/** Opening and closing a call, what its documents may not do meanwhile, and a restart. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { foldAll } from '#call';
import type { HouseEvent } from '#events';
import { roomOf } from './call-parts.ts';
import { BARE } from './call-samples.ts';
import { type CallStage, codesIn, type Headers, openCallStage, VELL } from './call-stage.ts';

let stage: CallStage;
let lead: Headers;

beforeEach(async () => {
  stage = await openCallStage();
  lead = await stage.owner(['lead']);
});
afterEach(() => stage.close());

const STATE = '/api/documents/state:kestlemere';
const open = (who: Headers | null, changes: object = {}) =>
  stage.post(who, '/api/call', { ...VELL, device: 'rail-tablet', name: 'Head', ...changes });
const close = (who: Headers | null) =>
  stage.ask(who, { method: 'DELETE', url: '/api/call', payload: { words: 'all in' } });
const now = (who: Headers | null = lead) => stage.ask(who, { url: '/api/call' });
const events = async (): Promise<readonly HouseEvent[]> =>
  (await stage.ask(lead, { url: '/api/events?after=0&limit=500' })).body.events;

describe('a call', () => {
  it('is opened from the documents as they stand, and its opener is the head flyman', async () => {
    expect((await now()).body).toMatchObject({ call: null, from: null });
    const opened = await open(lead);
    expect(opened).toMatchObject({
      status: 200,
      body: { call: { house: 'kestlemere', show: 'vell', isDrill: false } },
    });
    const { from, head, call } = (await now()).body;
    expect(call.documents).toEqual(
      ['house:kestlemere', 'show:vell', 'state:kestlemere'].map((id) => ({ id, revision: 1 })),
    );
    const folded = foldAll((await events()).filter(({ seq }) => seq >= from));
    expect(folded.posts).toMatchObject({ headFly: { name: 'Ada Frost', device: 'rail-tablet' } });
    expect(folded.sets['4']?.standing).toMatchObject({ stack: BARE.stack, items: {} });
    // With the opening the server says how the rules judge each set.
    expect(folded.seq).toBe(head);
    expect(folded.sets['4']?.held).toBe('held');
    expect(folded.galleries).toMatchObject({ upper: { stock: { F: expect.any(Number) } } });
  });

  it('begins with nothing known where no record is given', async () => {
    await open(lead, { state: null });
    const folded = roomOf(stage.databases()).now();
    const standings = Object.values(folded.sets).map(({ standing }) => standing);
    expect(standings.length).toBeGreaterThan(20);
    expect(standings.every((each) => each === null)).toBe(true);
    const before = (await stage.ask(lead, { url: STATE })).body.document;
    await close(lead);
    const { document } = (await stage.ask(lead, { url: STATE })).body;
    expect(document.sets['4']).toEqual({ knowledge: { basis: 'unknown' } });
    // Whom bricks are kept for is no matter of a call.
    expect(before.galleries.mid.reserved.length).toBeGreaterThan(0);
    expect(document.galleries.mid).toEqual({ stock: {}, reserved: before.galleries.mid.reserved });
  });

  it('[SRV-013] is one at a time', async () => {
    await open(lead);
    const second = await open(lead);
    expect(second.status).toBe(409);
    expect(codesIn(second)).toEqual(['SRV-013']);
    expect((await close(lead)).status).toBe(200);
    expect((await open(lead)).status).toBe(200);
  });

  it('[SRV-017] is opened and closed by who is signed off to lead, by nobody else', async () => {
    const rail = await stage.person('Rail', 'run', ['rail', 'outOfBalance']);
    expect(codesIn(await open(rail))).toEqual(['SRV-017']);
    const head = await stage.person('Head', 'run', ['headFly']);
    expect((await open(head)).status).toBe(200);
    const refused = await close(rail);
    expect(refused.status).toBe(403);
    expect(codesIn(refused)).toEqual(['SRV-017']);
    stage.databases().auth().setMine(true);
    expect(codesIn(await close(null))).toEqual(['ACC-002']);
    expect((await close(head)).status).toBe(200);
    expect(codesIn(await open(null))).toEqual(['ACC-002']);
  });

  it('[ACC-002] is nothing that a program opens, closes or joins', async () => {
    const token = (await stage.post(lead, '/api/tokens', { name: 'x', role: 'run' })).body.token;
    const program = { authorization: `Bearer ${token}` };
    expect(codesIn(await open(program))).toEqual(['ACC-002']);
    await open(lead);
    const joining = { code: 'ABCDEF', device: 'x', name: 'x' };
    for (const answer of [
      await close(program),
      await stage.post(program, '/api/call/codes', { post: 'rail', answersFor: false }),
      await stage.post(program, '/api/call/join', joining),
    ]) {
      expect(answer.status).toBe(403);
      expect(codesIn(answer)).toEqual(['ACC-002']);
    }
    expect((await now(program)).body.call).not.toBeNull();
  });

  it('is not opened on documents that there are not, or that do not fit together', async () => {
    expect((await open(lead, { show: 'nothing' })).status).toBe(404);
    const other = await open(lead, { show: 'regatta' });
    expect(other.status).toBe(422);
    expect(codesIn(other).length).toBeGreaterThan(0);
    expect((await now()).body.call).toBeNull();
  });

  it('[SRV-014] is not closed where none is open', async () => {
    expect(codesIn(await close(lead))).toEqual(['SRV-014']);
  });
});

describe('while a call is open', () => {
  const put = async (url: string) => {
    const { body } = await stage.ask(lead, { url });
    const { kind, document, revision: expectedRevision } = body;
    const payload = { kind, document, expectedRevision, savedBy: 'x', why: 'x' };
    return stage.ask(lead, { method: 'PUT', url, payload });
  };

  it('[SRV-012] how its sets stand is saved by nobody, and other documents are', async () => {
    await open(lead);
    const refused = await put(STATE);
    expect(refused.status).toBe(409);
    expect(codesIn(refused)).toEqual(['SRV-012']);
    for (const id of ['show:vell', 'house:kestlemere', 'state:skelderwick']) {
      expect((await put(`/api/documents/${id}`)).status, id).toBe(200);
    }
    await close(lead);
    expect((await put(STATE)).status).toBe(200);
  });

  it('[SRV-012] its documents are not set aside, and others are', async () => {
    await open(lead);
    const aside = (id: string) =>
      stage.post(lead, `/api/documents/${id}/aside`, { aside: true, by: 'x', why: 'x' });
    expect(codesIn(await aside('show:vell'))).toEqual(['SRV-012']);
    expect(codesIn(await aside('house:kestlemere'))).toContain('SRV-012');
    expect((await aside('show:winterferry')).status).toBe(200);
    await close(lead);
    expect((await aside('show:vell')).status).toBe(200);
  });

  it('it is folded the same after the server was killed and opened again', async () => {
    const call = await stage.opened(lead, 'rail-tablet');
    const said = { device: 'rail-tablet', call };
    await stage.give(lead, 'stop called', said);
    await stage.give(lead, 'set doubted', said);
    const room = roomOf(stage.databases());
    const before = room.now();
    expect(before.stops).toHaveLength(1);
    expect(before.sets['4']?.standing).toBeNull();
    await stage.restart();
    const after = roomOf(stage.databases());
    expect(after.now()).toEqual(before);
    expect(after.desk()).not.toBeNull();
    // What was folded bit by bit and what is folded at once are the same.
    await stage.give(lead, 'stop agreed', { ...said, payload: { stop: before.stops[0]?.seq } });
    expect(after.now()).toEqual(roomOf(stage.databases()).now());
    expect(after.now().seq).toBe(stage.databases().log().head().seq);
  });

  it('it is another record’s no more when that one is taken in hand', async () => {
    await open(lead);
    const room = roomOf(stage.databases());
    expect(room.now().call).not.toBeNull();
    stage.databases().take('house', []);
    expect(room.now()).toMatchObject({ call: null, sets: {}, posts: {} });
    expect(room.desk()).toBeNull();
    stage.databases().take('demo', []);
    expect(room.now().call).not.toBeNull();
  });
});

describe('a call that is closed', () => {
  const stateNow = async () => (await stage.ask(lead, { url: STATE })).body;

  it('leaves how the sets stand, with what was found and what nobody knows', async () => {
    const call = await stage.opened(lead, 'rail-tablet');
    const before = await stateNow();
    const said = { device: 'rail-tablet', call };
    await stage.give(lead, 'set doubted', { ...said, target: 'set:kestlemere/5' });
    stage.pass(60_000);
    expect((await close(lead)).body).toMatchObject({ call: null, from: null });
    const after = await stateNow();
    expect(after).toMatchObject({ revision: 2, savedBy: 'Ada Frost', why: 'call closed' });
    expect(after.document).toMatchObject({ at: '2026-11-28T10:01:00.000Z', by: 'Ada Frost' });
    expect(after.document.sets['4'].stack).toEqual(before.document.sets['4'].stack);
    expect(after.document.sets['5']).toEqual({ knowledge: { basis: 'unknown' } });
    const last = (await events()).slice(-2).map(({ kind }) => kind);
    expect(last).toEqual(['document saved', 'call closed']);
  });

  it('is written whole or not at all, and closed again after a fault of the disk', async () => {
    await open(lead);
    const { database } = stage.databases().record();
    database.exec(
      `CREATE TRIGGER broken BEFORE INSERT ON event WHEN NEW.kind = 'call closed'
       BEGIN SELECT RAISE(ABORT, 'the disk is gone'); END;`,
    );
    expect((await close(lead)).status).toBe(500);
    expect((await stateNow()).revision).toBe(1);
    expect((await now()).body.call).not.toBeNull();
    database.exec('DROP TRIGGER broken');
    await stage.restart();
    expect((await close(lead)).status).toBe(200);
    expect((await stateNow()).revision).toBe(2);
    expect((await now()).body.call).toBeNull();
  });

  it('leaves a record that every screen reads, whatever was reported in it', async () => {
    const call = await stage.opened(lead, 'rail-tablet');
    const said = { device: 'rail-tablet', call };
    const odd = { ...BARE, stack: [{ kind: 'of-another-house', count: 2, tag: 'show' }] };
    const report = { standing: odd, post: 'headFly' };
    await stage.give(lead, 'set found', { ...said, payload: report });
    await stage.give(lead, 'set found', { ...said, payload: report, target: 'set:kestlemere/99' });
    await stage.give(lead, 'gallery counted', { ...said, payload: { gallery: 'none' } });
    await close(lead);
    const { document } = await stateNow();
    expect(document.sets['4']).toEqual({ knowledge: { basis: 'unknown' } });
    expect(Object.keys(document.sets)).not.toContain('99');
    expect(Object.keys(document.galleries)).not.toContain('none');
    expect((await open(lead)).status).toBe(200);
  });
});

describe('on a machine at which nobody has a name', () => {
  it('anyone leads, which the record says', async () => {
    const alone = await openCallStage();
    const call = await alone.opened(null, 'this-page');
    const { posts } = roomOf(alone.databases()).now();
    expect(posts).toMatchObject({ headFly: { by: null, device: 'this-page', name: 'Head' } });
    for (const post of ['rail', 'watcher']) {
      const answer = await alone.joined(null, post, { by: null, device: `${post}-page` });
      expect(answer.body).toEqual({ call, post, answeredBy: null });
    }
    await alone.close();
  });
});
