/** Joining a call: codes for one post, and who may hold which post on which device. */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Task } from '#events';
import { roomOf } from './call-parts.ts';
import {
  type CallStage,
  codesIn,
  type Headers,
  NOTHING_KNOWN,
  openCallStage,
} from './call-stage.ts';

let stage: CallStage;
let lead: Headers;
let call: string;

const begin = async (): Promise<void> => {
  stage = await openCallStage();
  lead = await stage.owner(['headFly']);
  call = await stage.opened(lead, 'head-tablet', NOTHING_KNOWN);
};

const codeFor = async (post: string, answersFor = false, by = lead) =>
  stage.post(by, '/api/call/codes', { post, answersFor });
const join = (who: Headers, code: string, device = 'a-tablet') =>
  stage.post(who, '/api/call/join', { code, device, name: 'whatever the page says' });
const posts = () => roomOf(stage.databases()).now().posts;

describe('a joining code', () => {
  beforeEach(begin);
  afterEach(() => stage.close());

  it('is six letters that nobody misreads, kept as a hash, and takes its post', async () => {
    const { body } = await codeFor('rail');
    expect(body.code).toMatch(/^[2-9BCDFGHJKMNPQRSTVWXYZ]{6}$/);
    expect(body.link).toBe(`/live/join#${body.code}`);
    const { database } = stage.databases().record();
    const kept = JSON.stringify(database.prepare('SELECT * FROM call_code').all());
    expect(kept).toContain('rail');
    expect(kept).not.toContain(body.code);
    const rail = await stage.person('Bo Rail', 'run', ['rail']);
    const typed = ` ${body.code.slice(0, 3).toLowerCase()}-${body.code.slice(3)}`;
    expect(await join(rail, typed)).toMatchObject({
      status: 200,
      body: { call, post: 'rail', answeredBy: null },
    });
    // The name is of who signed in, whatever the page says.
    expect(posts()['rail']).toMatchObject({ name: 'Bo Rail', device: 'a-tablet' });
  });

  it('[ACC-019] is good once', async () => {
    const { code } = (await codeFor('rail')).body;
    const rail = await stage.person('Bo', 'run', ['rail']);
    const other = await stage.person('Cy', 'run', ['rail']);
    expect((await join(rail, code)).status).toBe(200);
    const again = await join(other, code, 'another-tablet');
    expect(again.status).toBe(404);
    expect(codesIn(again)).toEqual(['ACC-019']);
    expect(posts()).toMatchObject({ rail: { name: 'Bo' } });
  });

  it('[ACC-019] is good for ten minutes, and no longer', async () => {
    const rail = await stage.person('Bo', 'run', ['rail']);
    const [one, two] = [(await codeFor('rail')).body, (await codeFor('rail')).body];
    stage.pass(10 * 60_000 - 1);
    expect((await join(rail, one.code)).status).toBe(200);
    stage.pass(1);
    expect(codesIn(await join(rail, two.code))).toEqual(['ACC-019']);
  });

  it('[ACC-019] is of its call, and of no later one', async () => {
    const { code } = (await codeFor('rail')).body;
    await stage.ask(lead, { method: 'DELETE', url: '/api/call', payload: { words: '' } });
    const rail = await stage.person('Bo', 'run', ['rail']);
    expect(codesIn(await join(rail, code))).toEqual(['SRV-014']);
    await stage.opened(lead, 'head-tablet', NOTHING_KNOWN);
    expect(codesIn(await join(rail, code))).toEqual(['ACC-019']);
  });

  it('[ACC-005] is not guessed: after five tries a person waits, restart or not', async () => {
    const rail = await stage.person('Bo', 'run', ['rail']);
    for (let tries = 0; tries < 5; tries += 1) {
      expect((await join(rail, `AAAAA${tries}`)).status).toBe(404);
    }
    await stage.restart();
    const { code } = (await codeFor('rail')).body;
    const waits = await join(rail, code);
    expect(waits.status).toBe(429);
    expect(codesIn(waits)).toEqual(['ACC-005']);
    expect(Number(waits.headers['retry-after'])).toBeGreaterThan(0);
    stage.pass(60_000);
    expect((await join(rail, code)).status).toBe(200);
  });

  it('[ACC-005] is not guessed by many people from one address either', async () => {
    const statuses: number[] = [];
    const guessers: Headers[] = [];
    for (let each = 0; each < 5; each += 1) {
      guessers.push(await stage.person(`Guesser ${each}`, 'run', ['rail']));
    }
    for (const [each, guesser] of guessers.entries()) {
      for (let tries = 0; tries < 5; tries += 1) {
        statuses.push((await join(guesser, `BBBB${each}${tries}`)).status);
      }
    }
    expect(statuses).toEqual([...Array(20).fill(404), ...Array(5).fill(429)]);
  });

  it('[SRV-015] is for a post of the house', async () => {
    for (const post of ['gallery:none', 'marshal:drop:none', 'marshal', 'captain', '__proto__']) {
      const answer = await codeFor(post);
      expect(answer.status, post).toBe(422);
      expect(codesIn(answer)).toEqual(['SRV-015']);
    }
    for (const post of ['gallery:mid', 'marshal:drop:upper', 'marshal:run', 'bullLine']) {
      expect((await codeFor(post)).status, post).toBe(200);
    }
  });
});

describe('who answers for others', () => {
  beforeEach(begin);
  afterEach(() => stage.close());

  it('[SRV-017] a post needs its sign-off, or the head flyman who answers by name', async () => {
    const hand = await stage.person('Di', 'run', ['induct']);
    const refused = await join(hand, (await codeFor('gallery:upper')).body.code);
    expect(refused.status).toBe(403);
    expect(codesIn(refused)).toEqual(['SRV-017']);
    const taken = await join(hand, (await codeFor('gallery:upper', true)).body.code);
    expect(taken.body).toEqual({ call, post: 'gallery:upper', answeredBy: 'Ada Frost' });
    expect(posts()['gallery:upper']).toMatchObject({ name: 'Di', answeredBy: 'Ada Frost' });
  });

  it('a refused code is good still, for who is signed off', async () => {
    const { code } = (await codeFor('rail')).body;
    const hand = await stage.person('Di', 'run', ['deck']);
    expect((await join(hand, code)).status).toBe(403);
    const rail = await stage.person('Bo', 'run', ['outOfBalance']);
    expect((await join(rail, code, 'other-tablet')).status).toBe(200);
  });

  it('[SRV-018] only who stands as head flyman, signed off, and never for that post', async () => {
    const other = await stage.person('Eve', 'run', ['headFly']);
    expect(codesIn(await codeFor('rail', true, other))).toEqual(['SRV-018']);
    expect(codesIn(await codeFor('headFly', true))).toEqual(['SRV-018']);
    expect((await codeFor('rail', false, other)).status).toBe(200);
    const auth = stage.databases().auth();
    const person = auth.people().find(({ name }) => name === 'Ada Frost')?.id ?? '';
    const id = auth.competences().find((each) => each.person === person)?.id ?? '';
    auth.revokeCompetence({ kind: 'thisMachine' }, { person, id });
    expect(codesIn(await codeFor('rail', true))).toEqual(['SRV-017']);
  });

  it('[ACC-002] a role that may not run calls and watches, and asks for nothing', async () => {
    const viewer = await stage.person('Fay', 'view', ['rail']);
    const refused = await join(viewer, (await codeFor('rail')).body.code);
    expect(codesIn(refused)).toEqual(['ACC-002']);
    expect((await join(viewer, (await codeFor('caller')).body.code)).status).toBe(200);
    expect((await codeFor('rail', false, viewer)).status).toBe(403);
  });
});

describe('two posts that are two people', () => {
  beforeAll(begin);
  afterAll(() => stage.close());

  let people = 0;
  /** Somebody new for each test, since all of them are of one call. */
  const someone = async (tasks: readonly Task[]) => {
    people += 1;
    const name = `Hand ${people}`;
    return { name, who: await stage.person(name, 'run', tasks) };
  };

  it.each([
    ['rail', 'watcher'],
    ['watcher', 'rail'],
    ['deck', 'gallery:mid'],
    ['gallery:upper', 'rail'],
    ['rail', 'bullLine'],
  ])('[SRV-016] %s and %s are not one person on two devices', async (one, other) => {
    const { name, who } = await someone(['lead']);
    expect((await join(who, (await codeFor(one)).body.code, `${name[5]}-a`)).status).toBe(200);
    const again = await stage.signIn(name);
    const refused = await join(again, (await codeFor(other)).body.code, `${name[5]}-b`);
    expect(refused.status).toBe(409);
    expect(codesIn(refused)).toEqual(['SRV-016']);
  });

  it.each(['rail', 'deck', 'gallery:upper', 'bullLine'])(
    '[SRV-016] the head flyman is not %s as well',
    async (post) => {
      const answer = await join(lead, (await codeFor(post)).body.code, 'second-tablet');
      expect(codesIn(answer)).toEqual(['SRV-016']);
    },
  );

  it('[SRV-016] are not two names on one device', async () => {
    const one = await someone(['rail']);
    expect((await join(one.who, (await codeFor('rail')).body.code, 'shared-1')).status).toBe(200);
    const { name } = await someone(['rail']);
    // Signs in where the first is: the device is known by a token that no page can read.
    const other = await stage.signIn(name, one.who['cookie']);
    const refused = await join(other, (await codeFor('watcher')).body.code, 'shared-2');
    expect(codesIn(refused)).toEqual(['SRV-016']);
    expect((await join(other, (await codeFor('caller')).body.code, 'shared-2')).status).toBe(200);
  });

  it('[SRV-019] are not taken under the id of another device', async () => {
    const [one, other] = [await someone(['rail']), await someone(['rail'])];
    expect((await join(one.who, (await codeFor('rail')).body.code, 'named-1')).status).toBe(200);
    const refused = await join(other.who, (await codeFor('watcher')).body.code, 'named-1');
    expect(refused.status).toBe(409);
    expect(codesIn(refused)).toEqual(['SRV-019']);
  });

  it('are one person’s one after the other', async () => {
    const { who } = await someone(['lead']);
    await join(who, (await codeFor('rail')).body.code, 'turn-1');
    await stage.give(who, 'post left', { device: 'turn-1', call });
    expect(posts()['rail']).toBeUndefined();
    for (const post of ['watcher', 'marshal:run']) {
      expect((await join(who, (await codeFor(post)).body.code, 'turn-1')).status, post).toBe(200);
    }
  });
});
