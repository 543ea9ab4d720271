/** Leave for the first brick of a visit, from asking to its second person, by the whole program. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { roomOf } from './call-parts.ts';
import { type Asker, type CallStage, codesIn, type Headers, openCallStage } from './call-stage.ts';

const FIRST_BRICK = { act: 'add', kind: 'F', count: 1, gallery: 'upper' } as const;
const GALLERY = 'gallery:upper';
const MARSHAL = 'marshal:drop:upper';

let stage: CallStage;
let call: string;
let lead: Headers;
const crew: Record<string, Headers> = {};

const hand = async (name: string, post: string): Promise<void> => {
  const who = await stage.person(name, 'run', ['lead']);
  crew[name] = who;
  const answer = await stage.joined(who, post, { by: lead, device: name });
  expect(answer.status, post).toBe(200);
};

beforeAll(async () => {
  stage = await openCallStage();
  lead = await stage.owner(['headFly']);
  call = await stage.opened(lead, 'head');
  await hand('loader', GALLERY);
  await hand('deckhand', 'deck');
  await hand('operator', 'rail');
  await hand('marshal', MARSHAL);
});
afterAll(() => stage.close());

const who = (name: string): Asker => crew[name] ?? lead;
const give = (name: string, kind: Parameters<CallStage['give']>[1], payload: object) =>
  stage.give(who(name), kind, { device: name, call, payload });
const ask = (payload: object = {}) =>
  give('loader', 'leave asked', { post: GALLERY, step: FIRST_BRICK, ...payload });
const second = (name: string, asked: number) =>
  give(name, 'leave seconded', { post: 'deck', asked, plates: null });
const kindsAfter = (seq: number) =>
  stage
    .databases()
    .log()
    .after(seq, 20)
    .map(({ kind }) => kind);
const last = (kind: 'leave asked' | 'leave given'): number => stage.databases().log().lastOf(kind);
const set = () => roomOf(stage.databases()).now().sets['4'];

describe('leave for the first brick', () => {
  it('[CAL-008] is refused by rule while the zone below is open', async () => {
    const refused = await ask();
    expect(refused.status).toBe(409);
    expect(codesIn(refused)).toEqual(['CAL-008']);
    expect(refused.body.answer.words).toContain(MARSHAL);
    expect(set()?.asked).toBeNull();
  });

  it('[CAL-009] is refused while people have not said that they are clear', async () => {
    const zone = { zone: 'drop', gallery: 'upper' };
    const closing = await give('marshal', 'leave asked', {
      post: MARSHAL,
      step: { act: 'close', zone },
    });
    expect(closing.status).toBe(200);
    // One person is enough: leave is there when the answer is.
    expect(kindsAfter(closing.body.seqs[0])).toEqual(['leave given']);
    const done = { leave: last('leave given'), as: 'done', words: '' };
    await give('marshal', 'step reported', { post: MARSHAL, ...done });
    expect(roomOf(stage.databases()).now().zones).toMatchObject([{ zone, post: MARSHAL }]);
    expect(codesIn(await ask())).toEqual(['CAL-009']);
  });

  it('waits for the second person, and is given by their word', async () => {
    for (const [name, post] of [
      ['operator', 'rail'],
      ['deckhand', 'deck'],
      ['head', 'headFly'],
    ] as const) {
      await give(name, 'post said', { post, isClear: true });
    }
    const asked = await ask();
    expect(asked.status).toBe(200);
    const [seq] = asked.body.seqs;
    expect(kindsAfter(seq)).toEqual(['leave waits']);
    expect(set()?.asked).toMatchObject({ seq, secondOf: 'deck' });
    expect(set()?.leave).toBeNull();
  });

  it('[LIV-007] [SRV-016] is not seconded by who asked, on whichever device', async () => {
    const elsewhere = await stage.signIn('loader');
    const said = { device: 'second-phone', call, payload: { post: 'deck', plates: null } };
    const asked = { ...said, payload: { ...said.payload, asked: last('leave asked') } };
    expect(codesIn(await stage.give(elsewhere, 'leave seconded', asked))).toEqual(['LIV-007']);
    const asDeck = await stage.give(elsewhere, 'leave seconded', { ...asked, device: 'deckhand' });
    expect(codesIn(asDeck)).toEqual(['LIV-007']);
    const joined = await stage.joined(elsewhere, 'deck', { by: lead, device: 'second-phone' });
    expect(codesIn(joined)).toEqual(['SRV-016']);
    expect(set()?.leave).toBeNull();
  });

  it('is given with the second’s word: a disk that fails takes neither of both', async () => {
    const { database } = stage.databases().record();
    const before = stage.databases().log().head().seq;
    database.exec(
      `CREATE TRIGGER broken BEFORE INSERT ON event WHEN NEW.kind = 'leave given'
       BEGIN SELECT RAISE(ABORT, 'the disk is gone'); END;`,
    );
    expect((await second('deckhand', last('leave asked'))).status).toBe(500);
    database.exec('DROP TRIGGER broken');
    expect(stage.databases().log().head().seq).toBe(before);
    expect(set()?.asked).not.toBeNull();
    const seconded = await second('deckhand', last('leave asked'));
    expect(seconded.status).toBe(200);
    expect(kindsAfter(seconded.body.seqs[0])).toEqual(['leave given']);
    expect(set()?.leave).toMatchObject({ step: FIRST_BRICK, second: { post: 'deck' } });
  });

  it('is there after a restart, with what it leads to', async () => {
    const before = set();
    await stage.restart();
    expect(set()).toEqual(before);
    expect(before?.leave?.expects.stack).toEqual([
      { kind: 'O', count: 3, tag: 'pipe' },
      { kind: 'F', count: 1, tag: 'show' },
    ]);
    await give('loader', 'plates counted', { post: GALLERY, leave: last('leave given'), count: 1 });
    const done = { leave: last('leave given'), as: 'done', plates: 1, words: '' };
    const reported = await give('loader', 'step reported', { post: GALLERY, ...done });
    expect(reported.status).toBe(200);
    expect(set()).toMatchObject({ leave: null, changed: true, held: 'held' });
    // Who sits where is kept as well: nobody joins anew because a server was started again.
    expect((await ask()).status).toBe(200);
  });
});
