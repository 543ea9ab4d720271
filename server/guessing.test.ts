/** How often a secret may be guessed, across restarts; PINs; and sign-offs by task. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Task } from '#events';
import type { Person } from './auth/index.ts';
import { coming, openStage, PASSPHRASE, type Stage, taken } from './stage-for-tests.ts';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

let stage: Stage;
let owner: Person;
beforeEach(async () => {
  stage = openStage();
  owner = await stage.owner();
});
afterEach(() => stage.close());

const refusedAs = (name: string) => ({ ok: false, error: { name } });
const guess = (name: string, changes: Parameters<typeof coming>[0] = {}, passphrase = 'a guess') =>
  stage.auth().signIn({ name, passphrase }, coming(changes));

describe('guessing a passphrase', () => {
  it('[ACC-004] is answered alike for a name that there is and one that there is not', async () => {
    const [there, not] = [await guess('Ada Frost'), await guess('Nobody Known')];
    expect(there).toMatchObject(refusedAs('wrong'));
    expect(not).toEqual(there);
  });

  it('[ACC-005] waits from the fifth on, longer each time, also after a restart', async () => {
    for (let tries = 0; tries < 5; tries += 1) {
      expect(await guess('Ada Frost')).toMatchObject(refusedAs('wrong'));
    }
    stage.restart();
    const right = () => guess('Ada Frost', {}, PASSPHRASE);
    expect(await right()).toMatchObject({ error: { name: 'wait', waitMs: 30_000 } });
    stage.pass(30_000);
    expect(await guess('Ada Frost')).toMatchObject(refusedAs('wrong'));
    expect(await right()).toMatchObject({ error: { name: 'wait', waitMs: 60_000 } });
    stage.pass(60_000);
    expect((await right()).ok).toBe(true);
    expect(await guess('Ada Frost')).toMatchObject(refusedAs('wrong'));
  });

  it('[ACC-005] a hundred at once are counted one by one', async () => {
    const hundred = Array.from({ length: 100 }, () => guess('Ada Frost'));
    const answers = await Promise.all(hundred);
    const looked = answers.filter((each) => !each.ok && each.error.name === 'wrong');
    expect(looked.length).toBe(5);
  });

  it('[ACC-005] is limited by address too, over all names', async () => {
    for (let tries = 0; tries < 20; tries += 1) await guess(`Name ${tries}`);
    expect(await guess('Another')).toMatchObject(refusedAs('wait'));
    const elsewhere = await guess('Ada Frost', { address: '10.0.0.8' }, PASSPHRASE);
    expect(elsewhere.ok).toBe(true);
  });

  it('by a stranger does not shut a person out of their own tablet', async () => {
    const { device } = taken(await guess('Ada Frost', {}, PASSPHRASE));
    for (let tries = 0; tries < 6; tries += 1) await guess('Ada Frost', { address: '10.9.9.9' });
    expect(await guess('Ada Frost', {}, PASSPHRASE)).toMatchObject(refusedAs('wait'));
    expect((await guess('Ada Frost', { deviceToken: device }, PASSPHRASE)).ok).toBe(true);
  });

  it('[ACC-015] by more than can be checked at once is put off', async () => {
    const names = Array.from({ length: 40 }, (_, at) => `Name ${at}`);
    const answers = await Promise.all(
      names.map((name, at) => guess(name, { address: `10.1.0.${at}` })),
    );
    const busy = answers.filter((each) => !each.ok && each.error.name === 'busy');
    expect(busy.length).toBe(40 - 18);
  });
});

describe('a PIN', () => {
  const PIN = '270914';
  const byPin = (pin: string, deviceToken: string | null) =>
    stage.auth().signInByPin({ person: owner.id, pin }, coming({ deviceToken }));

  const withPin = async (): Promise<string> => {
    const { device, session } = taken(await guess('Ada Frost', {}, PASSPHRASE));
    const who = stage.auth().whoIs({ bearer: null, session, isThisMachine: false });
    if (who.kind !== 'person') throw new Error('a person');
    taken(await stage.auth().setPin(who, PIN));
    return device;
  };

  it('is enough on the device it was set on, and on no other', async () => {
    const device = await withPin();
    expect((await byPin(PIN, device)).ok).toBe(true);
    const { device: other } = taken(await guess('Ada Frost', {}, PASSPHRASE));
    expect(await byPin(PIN, other)).toMatchObject(refusedAs('wrong'));
    expect(await byPin(PIN, null)).toMatchObject(refusedAs('wrong'));
    expect(stage.auth().peopleByPin(device)).toEqual([{ id: owner.id, name: 'Ada Frost' }]);
    expect(stage.auth().peopleByPin(other)).toEqual([]);
  });

  it('[ACC-006] locks at the fifth failure, across a restart, until the passphrase', async () => {
    const device = await withPin();
    for (let tries = 0; tries < 5; tries += 1) {
      expect(await byPin('000001', device), `try ${tries}`).toMatchObject(refusedAs('wrong'));
      stage.restart();
      if (tries >= 2) expect(await byPin(PIN, device)).toMatchObject({ ok: false });
      stage.pass(10 * MINUTE);
    }
    stage.pass(DAY);
    expect(await byPin(PIN, device)).toMatchObject(refusedAs('pinLocked'));
    taken(await guess('Ada Frost', { deviceToken: device }, PASSPHRASE));
    expect((await byPin(PIN, device)).ok).toBe(true);
  });

  it('[ACC-010] is not figures alike or in a row', async () => {
    for (const pin of ['111111', '123456', '987654', '12345', '12a456']) {
      expect(await stage.auth().setPin(owner, pin)).toMatchObject(refusedAs('weakSecret'));
    }
  });

  it('goes with its device and with another passphrase', async () => {
    const device = await withPin();
    const next = { now: PASSPHRASE, next: 'a colder morning by the mill' };
    taken(await stage.auth().changePassphrase(owner, next, '10.0.0.7'));
    expect(await byPin(PIN, device)).toMatchObject(refusedAs('wrong'));
  });
});

describe('a sign-off by task', () => {
  const give = (who: Person, person: Person, task: Task, lastDay: string | null = null) =>
    stage.auth().giveCompetence(who, { person: person.id, task, lastDay });
  const holds = (person: Person, task: Task) => stage.auth().holds(person.id, task);

  it('[ACC-013] is given by one who is above the task, never for oneself', async () => {
    const lead = await stage.joined('Lead Hand', 'run');
    const rail = await stage.joined('Rail Hand', 'run');
    expect(await give(lead, rail, 'rail')).toMatchObject(refusedAs('notAbove'));
    taken(give(owner, lead, 'lead'));
    taken(give(lead, rail, 'rail'));
    expect(give(lead, rail, 'lead')).toMatchObject(refusedAs('notAbove'));
    expect(give(lead, lead, 'rail')).toMatchObject(refusedAs('notAbove'));
    expect(give(lead, rail, 'inspector', '2027-01-31')).toMatchObject(refusedAs('notAbove'));
    expect(give(rail, lead, 'deck')).toMatchObject({ ok: true });
    expect(holds(rail, 'rail')).toBe(true);
  });

  it('lapses after its months, and is seen as lapsed', async () => {
    const rail = await stage.joined('Rail Hand', 'run');
    const { lapsesAtMs } = taken(give(owner, rail, 'rail'));
    expect(new Date(lapsesAtMs ?? 0).toISOString()).toBe('2027-11-29T00:00:00.000Z');
    stage.pass((lapsesAtMs ?? 0) - Date.parse('2026-11-28T10:00:00Z') - 1);
    expect(holds(rail, 'rail')).toBe(true);
    stage.pass(1);
    expect(holds(rail, 'rail')).toBe(false);
    expect(stage.auth().competences()).toHaveLength(1);
  });

  it('[ACC-013] of one whose own has lapsed is worth nothing', async () => {
    const lead = await stage.joined('Lead Hand', 'run');
    const rail = await stage.joined('Rail Hand', 'run');
    taken(give(owner, lead, 'lead', '2026-12-01'));
    stage.pass(4 * DAY);
    expect(give(lead, rail, 'rail')).toMatchObject(refusedAs('notAbove'));
  });

  it('[ACC-014] holds no longer than its task, and an inspection as long as is said', async () => {
    const rail = await stage.joined('Rail Hand', 'run');
    expect(give(owner, rail, 'rail', '2028-01-01')).toMatchObject(refusedAs('lapse'));
    expect(give(owner, rail, 'rail', '2026-11-27')).toMatchObject(refusedAs('lapse'));
    expect(give(owner, rail, 'rail', '2027-02-30')).toMatchObject(refusedAs('lapse'));
    expect(give(owner, rail, 'inspector')).toMatchObject(refusedAs('lapse'));
    expect(give(owner, rail, 'inspector', '2029-06-30').ok).toBe(true);
  });

  it('is revoked at once by who signed it, or by an owner', async () => {
    const lead = await stage.joined('Lead Hand', 'run');
    const rail = await stage.joined('Rail Hand', 'run');
    taken(give(owner, lead, 'lead'));
    const { id } = taken(give(lead, rail, 'rail'));
    const revoke = (who: Person) => stage.auth().revokeCompetence(who, { person: rail.id, id });
    expect(revoke(rail)).toMatchObject(refusedAs('notAbove'));
    taken(revoke(lead));
    expect(holds(rail, 'rail')).toBe(false);
    expect(revoke(owner)).toMatchObject(refusedAs('noSuch'));
  });
});
