/** Who may send which command of a call: by role, post, sign-off and device, at each command. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CALL_REQUESTS, type CallCommandKind } from '#events';
import { roomOf } from './call-parts.ts';
import { CALL_SAMPLES } from './call-samples.ts';
import {
  type Asker,
  type CallStage,
  codesIn,
  type Headers,
  NOTHING_KNOWN,
  openCallStage,
  VELL,
} from './call-stage.ts';

const KINDS = Object.keys(CALL_SAMPLES) as readonly CallCommandKind[];
const REQUESTS: ReadonlySet<CallCommandKind> = new Set(CALL_REQUESTS);
const reports = KINDS.filter((kind) => !REQUESTS.has(kind));
/** Reports that say nothing of a post, so that there is nobody in them who could be another. */
const ofNobody = reports.filter((kind) => {
  const sample: object = CALL_SAMPLES[kind];
  return !('post' in sample) || sample.post === null;
});

let stage: CallStage;
let lead: Headers;
let call: string;

const begin = async (
  on: object,
  changes: Parameters<typeof openCallStage>[0] = {},
): Promise<void> => {
  stage = await openCallStage(changes);
  lead = await stage.owner(['headFly']);
  call = await stage.opened(lead, 'head-tablet', on);
};
afterEach(() => stage.close());

/** What became of each kind, by its status and its codes. */
const tried = async (who: Asker, kinds: readonly CallCommandKind[], device = 'a-tablet') => {
  const found: Record<string, string> = {};
  for (const kind of kinds) {
    const answer = await stage.give(who, kind, { device, call });
    found[kind] = `${answer.status} ${codesIn(answer).join(' ')}`.trim();
  }
  return found;
};
const all = (kinds: readonly CallCommandKind[], what: string) =>
  Object.fromEntries(kinds.map((kind) => [kind, what]));
const seq = () => stage.databases().log().head().seq;

describe('a command of a call', () => {
  beforeEach(() => begin(NOTHING_KNOWN));

  it('[ACC-001] is taken from nobody who has no name', async () => {
    const ended = await stage.person('Bo', 'run', ['lead']);
    await stage.ask(ended, { method: 'DELETE', url: '/api/session' });
    const before = seq();
    expect(await tried({}, KINDS)).toEqual(all(KINDS, '401 ACC-001'));
    const forged = { cookie: `counterpoise-session=${'B'.repeat(43)}` };
    expect(await tried(forged, KINDS)).toEqual(all(KINDS, '401 ACC-001'));
    expect(await tried(ended, KINDS)).toEqual(all(KINDS, '401 ACC-001'));
    expect(seq()).toBe(before);
  });

  it('[LIV-001] is taken from no program, not even a report', async () => {
    const made = await stage.post(lead, '/api/tokens', { name: 'x', role: 'run' });
    const program = { authorization: `Bearer ${made.body.token}` };
    const before = seq();
    expect(await tried(program, KINDS)).toEqual(all(KINDS, '403 LIV-001'));
    expect(seq()).toBe(before);
    // Nor by a note as if from paper, which would hold a set up until people have settled it.
    const note = (who: Asker, id: string, writtenMs: number | null) =>
      stage.post(who, '/api/commands', {
        ...{ commandId: id, device: 'x', kind: 'note written', target: 'set:kestlemere/4' },
        ...{ seen: null, clientMs: 0, payload: { text: 'a note', writtenMs } },
      });
    expect(codesIn(await note(program, 'note-of-program-1', 1))).toEqual(['LIV-001']);
    expect((await note(program, 'note-of-program-2', null)).status).toBe(200);
    expect((await note(lead, 'note-of-person-1', 1)).status).toBe(200);
    expect(roomOf(stage.databases()).now().sets['4']?.notes).toEqual([seq()]);
  });

  it('[LIV-001] asks for nothing in the name of who may only look; reports are taken', async () => {
    const viewer = await stage.person('Fay', 'view', ['lead']);
    expect(await tried(viewer, CALL_REQUESTS)).toEqual(all(CALL_REQUESTS, '403 LIV-001'));
    expect(await tried(viewer, ofNobody)).toEqual(all(ofNobody, '200'));
  });

  it('[LIV-001] asks for nothing at a machine kept open where people have names', async () => {
    stage.databases().auth().setMine(true);
    expect(await tried(null, CALL_REQUESTS)).toEqual(all(CALL_REQUESTS, '403 LIV-001'));
    expect(await tried(null, ofNobody)).toEqual(all(ofNobody, '200'));
  });

  it('[LIV-007] asks for nothing from a post that is another’s', async () => {
    const asking = ['leave asked', 'leave seconded', 'stop lifted', 'tag returned', 'note settled'];
    const kinds = CALL_REQUESTS.filter((kind) => asking.includes(kind));
    const hand = await stage.person('Gil', 'run', ['lead']);
    expect(await tried(hand, kinds)).toEqual(all(kinds, '403 LIV-007'));
    const rail = await stage.person('Bo', 'run', ['rail']);
    await stage.joined(rail, 'rail', { by: lead, device: 'rail-tablet' });
    expect(await tried(hand, kinds)).toEqual(all(kinds, '403 LIV-007'));
    // Under the id of the device that holds the post, from another one.
    expect(await tried(hand, kinds, 'rail-tablet')).toEqual(all(kinds, '403 LIV-007'));
    const there = { device: 'rail-tablet', call };
    expect(codesIn(await stage.give(rail, 'leave asked', there))).not.toContain('LIV-007');
    // And so does the same person from a second device.
    const elsewhere = await stage.signIn('Bo');
    expect(codesIn(await stage.give(elsewhere, 'leave asked', there))).toEqual(['LIV-007']);
  });

  it('[LIV-005] gives no leave over plain HTTP, where reports and STOP are taken', async () => {
    await stage.close();
    await begin(NOTHING_KNOWN, { signOffs: false });
    expect(await tried(lead, CALL_REQUESTS, 'head-tablet')).toEqual(
      all(CALL_REQUESTS, '403 LIV-005'),
    );
    expect(await tried(lead, ofNobody, 'head-tablet')).toEqual(all(ofNobody, '200'));
    expect(roomOf(stage.databases()).now().stops).toHaveLength(1);
  });

  it('[LIV-006] asks nothing of a call that is not open; what is said is recorded', async () => {
    const before = seq();
    call = 'a-call-of-yesterday';
    expect(await tried(lead, CALL_REQUESTS, 'head-tablet')).toEqual(
      all(CALL_REQUESTS, '409 LIV-006'),
    );
    expect(await tried(lead, reports, 'head-tablet')).toEqual(all(reports, '200'));
    expect(seq()).toBe(before + reports.length);
    expect(roomOf(stage.databases()).now().stops).toEqual([]);
  });

  it('[LIV-009] gives no leave where the documents of the call cannot be read', async () => {
    const { database } = stage.databases().record();
    database.exec('DROP TRIGGER revision_no_update');
    database.exec(`UPDATE revision SET text = '{}' WHERE document = 'house:kestlemere'`);
    await stage.restart();
    const asked = await stage.give(lead, 'plan told', { device: 'head-tablet', call });
    expect(asked.status).toBe(409);
    expect(codesIn(asked)).toEqual(['LIV-009']);
    expect((await stage.give(lead, 'stop called', { device: 'head-tablet', call })).status).toBe(
      200,
    );
  });

  it('names who gave it, whatever device it says it is of', async () => {
    const hand = await stage.person('Gil', 'view', []);
    const answer = await stage.give(hand, 'stop called', { device: 'head-tablet', call });
    const [event] = stage
      .databases()
      .log()
      .after(answer.body.seqs[0] - 1, 1);
    const gil = stage
      .databases()
      .auth()
      .people()
      .find(({ name }) => name === 'Gil');
    expect(event).toMatchObject({ kind: 'stop called', by: gil?.id });
  });
});

describe('rights that end while a call goes on', () => {
  beforeEach(() => begin(VELL));

  const ask = (who: Asker, device: string) =>
    stage.give(who, 'leave asked', { device, call, payload: { post: 'marshal:run' } });
  const personOf = (name: string) => {
    const found = stage
      .databases()
      .auth()
      .people()
      .find((each) => each.name === name);
    return found?.id ?? '';
  };
  const revoke = (name: string): void => {
    const auth = stage.databases().auth();
    const person = personOf(name);
    for (const { id } of auth.competences().filter((each) => each.person === person)) {
      auth.revokeCompetence({ kind: 'thisMachine' }, { person, id });
    }
  };

  it('[CAL-103] a sign-off that is revoked is gone at the next request', async () => {
    const marshal = await stage.person('Jo', 'run', ['deck']);
    await stage.joined(marshal, 'marshal:run', { by: lead, device: 'jo-phone' });
    expect((await ask(marshal, 'jo-phone')).status).toBe(200);
    revoke('Jo');
    const refused = await ask(marshal, 'jo-phone');
    expect(refused.status).toBe(409);
    expect(codesIn(refused)).toEqual(['CAL-103']);
    expect((await stage.give(marshal, 'stop called', { device: 'jo-phone', call })).status).toBe(
      200,
    );
  });

  it('[CAL-103] a sign-off that lapses is gone at the next request', async () => {
    const marshal = await stage.person('Jo', 'run', []);
    stage
      .databases()
      .auth()
      .giveCompetence(
        { kind: 'thisMachine' },
        { person: personOf('Jo'), task: 'deck', lastDay: '2026-11-28' },
      );
    await stage.joined(marshal, 'marshal:run', { by: lead, device: 'jo-phone' });
    stage.pass(10 * 3_600_000);
    expect((await ask(marshal, 'jo-phone')).status).toBe(200);
    stage.pass(4 * 3_600_000);
    expect(codesIn(await ask(marshal, 'jo-phone'))).toEqual(['CAL-103']);
  });

  it('[LIV-008] nobody is answered for by one who may do so no longer', async () => {
    const marshal = await stage.person('Jo', 'run', []);
    const joining = { by: lead, device: 'jo-phone', answersFor: true };
    await stage.joined(marshal, 'marshal:run', joining);
    expect((await ask(marshal, 'jo-phone')).status).toBe(200);
    revoke('Ada Frost');
    const refused = await ask(marshal, 'jo-phone');
    expect(refused.status).toBe(403);
    expect(codesIn(refused)).toEqual(['LIV-008']);
  });

  it('[LIV-007] of a record that was restored nobody holds a post: they join anew', async () => {
    const marshal = await stage.person('Jo', 'run', ['deck']);
    await stage.joined(marshal, 'marshal:run', { by: lead, device: 'jo-phone' });
    stage.databases().auth().settleOn('another record');
    expect((await ask(marshal, 'jo-phone')).status).toBe(401);
    const again = await stage.signIn('Jo', marshal['cookie']);
    expect(codesIn(await ask(again, 'jo-phone'))).toEqual(['LIV-007']);
    const back = await stage.signIn('Ada Frost', lead['cookie']);
    await stage.joined(again, 'marshal:run', { by: back, device: 'jo-phone' });
    expect((await ask(again, 'jo-phone')).status).toBe(200);
  });

  it('[ACC-001] a person who is taken out is heard no more', async () => {
    const marshal = await stage.person('Jo', 'run', ['deck']);
    await stage.joined(marshal, 'marshal:run', { by: lead, device: 'jo-phone' });
    stage.databases().auth().removePerson({ kind: 'thisMachine' }, personOf('Jo'));
    expect(codesIn(await ask(marshal, 'jo-phone'))).toEqual(['ACC-001']);
  });

  it('[LIV-001] a role that is taken away asks for nothing more', async () => {
    const marshal = await stage.person('Jo', 'run', ['deck']);
    await stage.joined(marshal, 'marshal:run', { by: lead, device: 'jo-phone' });
    stage.databases().auth().changeRole({ kind: 'thisMachine' }, personOf('Jo'), 'view');
    expect(codesIn(await ask(marshal, 'jo-phone'))).toEqual(['LIV-001']);
  });

  it('a secret that was given hours ago keeps no gloved hand from speaking', async () => {
    const marshal = await stage.person('Jo', 'run', ['deck']);
    await stage.joined(marshal, 'marshal:run', { by: lead, device: 'jo-phone' });
    stage.pass(3 * 3_600_000);
    expect((await ask(marshal, 'jo-phone')).status).toBe(200);
  });
});
