/** People of a house: coming in, being let in no longer, and what the record says of it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Who } from './auth/index.ts';
import { coming, openStage, PASSPHRASE, type Stage, taken } from './stage-for-tests.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

let stage: Stage;
beforeEach(() => {
  stage = openStage();
});
afterEach(() => stage.close());

const refusedAs = (name: string) => ({ ok: false, error: { name } });
const machine = { bearer: null, session: null, isThisMachine: true } as const;
const elsewhere = { ...machine, isThisMachine: false };
const withSession = (session: string): Who => stage.auth().whoIs({ ...elsewhere, session });

describe('the first owner', () => {
  it('is not needed on the machine itself, and nowhere else is anybody let in', () => {
    expect(stage.auth().whoIs(machine)).toEqual({ kind: 'thisMachine' });
    expect(stage.auth().whoIs(elsewhere)).toEqual({ kind: 'nobody' });
  });

  it('[ACC-016] is made by the code of this start, once', async () => {
    const auth = stage.auth();
    const code = auth.ownerCode() ?? '';
    expect(code).toMatch(/^[2-9B-Z]{4}-[2-9B-Z]{4}-[2-9B-Z]{4}$/);
    const owner = { code: code.toLowerCase(), name: 'Ada Frost', passphrase: PASSPHRASE };
    const wrong = { ...owner, code: '2222-2222-2222' };
    expect(await auth.makeOwner(wrong, '::1')).toMatchObject(refusedAs('ownerMade'));
    const both = await Promise.all([
      auth.makeOwner(owner, '::1'),
      auth.makeOwner({ ...owner, name: 'Ben Hale' }, '::1'),
    ]);
    expect(both.map(({ ok }) => ok).toSorted()).toEqual([false, true]);
    expect(auth.ownerCode()).toBeNull();
    expect(await auth.makeOwner(owner, '::1')).toMatchObject(refusedAs('ownerMade'));
    expect(auth.people()).toHaveLength(1);
  });

  it('ends the time without sign-in, unless they keep the machine as theirs', async () => {
    await stage.owner();
    expect(stage.auth().whoIs(machine)).toEqual({ kind: 'nobody' });
    stage.auth().setMine(true);
    stage.restart();
    expect(stage.auth().whoIs(machine)).toEqual({ kind: 'thisMachine' });
    expect(stage.auth().whoIs(elsewhere)).toEqual({ kind: 'nobody' });
    expect(stage.auth().ownerCode()).toBeNull();
  });

  it('proves nothing on a machine that is kept without sign-in', async () => {
    const who: Who = { kind: 'thisMachine' };
    expect(stage.auth().provedWithin(who, MINUTE)).toBe(true);
    await stage.owner();
    expect(stage.auth().provedWithin(who, MINUTE)).toBe(false);
  });
});

describe('an invitation', () => {
  it('[ACC-008] is good once, also for two at once', async () => {
    const owner = await stage.owner();
    const { token } = taken(stage.auth().invite(owner, { name: 'new hand', role: 'run' }));
    const joining = { token, name: 'Cyra Bell', passphrase: PASSPHRASE };
    const both = await Promise.all([
      stage.auth().join(joining),
      stage.auth().join({ ...joining, name: 'Dov Lund' }),
    ]);
    expect(both.map(({ ok }) => ok).toSorted()).toEqual([false, true]);
    expect(await stage.auth().join(joining)).toMatchObject(refusedAs('link'));
    expect(
      stage
        .auth()
        .people()
        .map(({ role }) => role),
    ).toEqual(['own', 'run']);
  });

  it('[ACC-008] ends after two days, and when it is withdrawn', async () => {
    const owner = await stage.owner();
    const first = taken(stage.auth().invite(owner, { name: 'first', role: 'view' }));
    const second = taken(stage.auth().invite(owner, { name: 'second', role: 'view' }));
    taken(stage.auth().withdraw(second.invitation.id));
    expect(stage.auth().invitationBy(second.token)).toMatchObject(refusedAs('link'));
    stage.pass(2 * DAY - 1);
    expect(stage.auth().invitationBy(first.token).ok).toBe(true);
    stage.pass(1);
    expect(stage.auth().invitationBy(first.token)).toMatchObject(refusedAs('link'));
    expect(stage.auth().invitationBy('forged')).toMatchObject(refusedAs('link'));
  });

  it('[ACC-009] lets in nobody under the name of another', async () => {
    const owner = await stage.owner();
    const { token } = taken(stage.auth().invite(owner, { name: 'x', role: 'run' }));
    const joining = { token, name: '  ada   FROST ', passphrase: PASSPHRASE };
    expect(await stage.auth().join(joining)).toMatchObject(refusedAs('nameTaken'));
    expect((await stage.auth().join({ ...joining, name: 'Ada Frost the younger' })).ok).toBe(true);
  });

  it('to a new passphrase ends what the old one opened', async () => {
    const owner = await stage.owner();
    const rail = await stage.joined('Cyra Bell', 'run');
    const { token } = taken(stage.auth().inviteAnew(owner, rail.id));
    const passphrase = 'a colder morning by the mill';
    taken(await stage.auth().join({ token, name: 'ignored', passphrase }));
    expect(stage.auth().sessionsOf(rail.id)).toEqual([]);
    const old = { name: 'Cyra Bell', passphrase: PASSPHRASE };
    expect(await stage.auth().signIn(old, coming())).toMatchObject(refusedAs('wrong'));
    expect((await stage.auth().signIn({ ...old, passphrase }, coming())).ok).toBe(true);
    expect(stage.auth().people()).toHaveLength(2);
  });

  it('[ACC-010] takes no passphrase that is tried first', async () => {
    const { token } = taken(
      stage.auth().invite({ kind: 'thisMachine' }, { name: 'x', role: 'view' }),
    );
    for (const passphrase of ['short', 'aaaaaaaaaaaaaaaa', 'Counterpoise2026!']) {
      const joining = { token, name: 'Cyra Bell', passphrase };
      expect(await stage.auth().join(joining)).toMatchObject(refusedAs('weakSecret'));
    }
  });
});

describe('a sign-in', () => {
  it('ends after twelve hours unseen, and after a week at the latest', async () => {
    await stage.owner();
    const asked = { name: 'Ada Frost', passphrase: PASSPHRASE };
    const first = taken(await stage.auth().signIn(asked, coming()));
    stage.pass(12 * HOUR - 1);
    expect(withSession(first.session).kind).toBe('person');
    stage.pass(12 * HOUR);
    expect(withSession(first.session).kind).toBe('nobody');
    const second = taken(await stage.auth().signIn(asked, coming()));
    for (let hours = 6; hours < 7 * 24; hours += 6) {
      stage.pass(6 * HOUR);
      expect(withSession(second.session).kind, `after ${hours} hours`).toBe('person');
    }
    stage.pass(6 * HOUR);
    expect(withSession(second.session).kind).toBe('nobody');
  });

  it('is another one each time, and what the device had before ends', async () => {
    await stage.owner();
    const asked = { name: 'Ada Frost', passphrase: PASSPHRASE };
    const first = taken(await stage.auth().signIn(asked, coming()));
    const again = coming({ deviceToken: first.device, oldSession: first.session });
    const second = taken(await stage.auth().signIn(asked, again));
    expect(second.session).not.toBe(first.session);
    expect(second.device).toBe(first.device);
    expect(withSession(first.session).kind).toBe('nobody');
    expect(withSession(second.session).kind).toBe('person');
  });

  it('survives a restart; a role that changes changes it at once', async () => {
    const owner = await stage.owner();
    const rail = await stage.joined('Cyra Bell', 'run');
    const { session } = taken(
      await stage.auth().signIn({ name: 'cyra bell', passphrase: PASSPHRASE }, coming()),
    );
    stage.restart();
    expect(withSession(session)).toMatchObject({ kind: 'person', role: 'run' });
    taken(stage.auth().changeRole(owner, rail.id, 'view'));
    expect(withSession(session)).toMatchObject({ role: 'view' });
    taken(stage.auth().removePerson(owner, rail.id));
    expect(withSession(session).kind).toBe('nobody');
  });

  it('is ended on one device or on all but this one', async () => {
    await stage.owner();
    const asked = { name: 'Ada Frost', passphrase: PASSPHRASE };
    const [one, two, three] = [
      taken(await stage.auth().signIn(asked, coming())),
      taken(await stage.auth().signIn(asked, coming())),
      taken(await stage.auth().signIn(asked, coming())),
    ];
    const who = withSession(one.session);
    if (who.kind !== 'person') throw new Error('a person');
    taken(stage.auth().signOutDevice(who, who.id, two.sessionId));
    expect(withSession(two.session).kind).toBe('nobody');
    expect(stage.auth().sessionLives(two.sessionId)).toBe(false);
    expect(withSession(three.session).kind).toBe('person');
    stage.auth().signOutAll(who, who.id);
    expect(withSession(three.session).kind).toBe('nobody');
    expect(withSession(one.session).kind).toBe('person');
    const other = stage.auth().signOutDevice(who, 'another', one.sessionId);
    expect(other).toMatchObject(refusedAs('noSuch'));
  });

  it('proves who is there for a minute, and again by the passphrase alone', async () => {
    const owner = await stage.owner();
    expect(stage.auth().provedWithin(owner, MINUTE)).toBe(true);
    stage.pass(MINUTE + 1);
    expect(stage.auth().provedWithin(owner, MINUTE)).toBe(false);
    const wrong = await stage.auth().prove(owner, { passphrase: 'not this one' }, '10.0.0.7');
    expect(wrong).toMatchObject(refusedAs('wrong'));
    const token = taken(await stage.auth().prove(owner, { passphrase: PASSPHRASE }, '10.0.0.7'));
    const again = withSession(token);
    expect(again).toMatchObject({ session: owner.session });
    expect(stage.auth().provedWithin(again, MINUTE)).toBe(true);
  });
});

describe('roles', () => {
  it('[ACC-011] keep one owner', async () => {
    const owner = await stage.owner();
    const demoted = stage.auth().changeRole(owner, owner.id, 'run');
    expect(demoted).toMatchObject(refusedAs('lastOwner'));
    expect(stage.auth().removePerson(owner, owner.id)).toMatchObject(refusedAs('lastOwner'));
    const second = await stage.joined('Ben Hale', 'own');
    expect(stage.auth().changeRole(second, owner.id, 'run').ok).toBe(true);
  });

  it('[ACC-012] are of people of this house', async () => {
    const owner = await stage.owner();
    expect(stage.auth().changeRole(owner, 'nobody', 'run')).toMatchObject(refusedAs('noSuch'));
    expect(stage.auth().withdraw('none')).toMatchObject(refusedAs('noSuch'));
    expect(stage.auth().revokeProgram('none')).toMatchObject(refusedAs('noSuch'));
  });
});

describe('a program', () => {
  it('is known by its token until it is revoked, or for a year', async () => {
    const owner = await stage.owner();
    const { token, program } = taken(
      stage.auth().addProgram(owner, { name: 'call sheet', role: 'view' }),
    );
    const asks = (bearer: string) => stage.auth().whoIs({ ...machine, bearer });
    expect(asks(token)).toEqual({
      kind: 'program',
      id: program.id,
      name: 'call sheet',
      role: 'view',
    });
    const second = taken(stage.auth().addProgram(owner, { name: 'old', role: 'run' }));
    taken(stage.auth().revokeProgram(program.id));
    expect(asks(token).kind).toBe('nobody');
    stage.pass(365 * DAY);
    expect(asks(second.token).kind).toBe('nobody');
  });

  it('that is forged is nobody, also on a machine that needs no sign-in', () => {
    expect(stage.auth().whoIs({ ...machine, bearer: 'A'.repeat(43) }).kind).toBe('nobody');
  });
});

describe('how many', () => {
  it('[ACC-017] invitations stand open at once is limited', async () => {
    const owner = await stage.owner();
    const invite = () => stage.auth().invite(owner, { name: 'x', role: 'view' });
    for (let made = 0; made < 100; made += 1) taken(invite());
    expect(invite()).toMatchObject(refusedAs('tooMany'));
    stage.pass(2 * DAY);
    expect(invite().ok).toBe(true);
  });
});

describe('a restored file', () => {
  it('lets nobody in by what a backup still held', async () => {
    const owner = await stage.owner();
    const { session } = taken(
      await stage.auth().signIn({ name: 'Ada Frost', passphrase: PASSPHRASE }, coming()),
    );
    const { token } = taken(stage.auth().addProgram(owner, { name: 'old', role: 'run' }));
    const invited = taken(stage.auth().invite(owner, { name: 'x', role: 'own' }));
    stage.restart();
    expect(withSession(session).kind).toBe('person');
    stage.auth().settleOn('another record');
    expect(withSession(session).kind).toBe('nobody');
    expect(stage.auth().whoIs({ ...elsewhere, bearer: token }).kind).toBe('nobody');
    expect(stage.auth().invitationBy(invited.token)).toMatchObject(refusedAs('link'));
    const again = { name: 'Ada Frost', passphrase: PASSPHRASE };
    expect((await stage.auth().signIn(again, coming())).ok).toBe(true);
  });
});

describe('the record', () => {
  it('has every change in who may do what, by whom, and no secret', async () => {
    const owner = await stage.owner();
    const rail = await stage.joined('Cyra Bell', 'run');
    taken(stage.auth().changeRole(owner, rail.id, 'plan'));
    const task = { person: rail.id, task: 'rail', lastDay: null } as const;
    const given = taken(stage.auth().giveCompetence(owner, task));
    taken(stage.auth().revokeCompetence(owner, { person: rail.id, id: given.id }));
    stage.auth().signOutAll(owner, rail.id);
    taken(stage.auth().removePerson(owner, rail.id));
    const said = stage.events().map(({ kind, by }) => [kind, by]);
    expect(said).toEqual([
      ['person joined', owner.id],
      ['person invited', null],
      ['person joined', rail.id],
      ['person role changed', owner.id],
      ['competence given', owner.id],
      ['competence revoked', owner.id],
      ['device revoked', owner.id],
      ['person removed', owner.id],
    ]);
    const text = JSON.stringify(stage.events());
    expect(text).not.toContain('scrypt');
    expect(text).not.toContain(PASSPHRASE);
  });
});
