/** People and programs of one database, and what each may do: all of this room in one value. */
import type { DatabaseSync } from 'node:sqlite';
import type { Result } from '#outcome';
import { countGuess, guessedRight, ofAddress } from './attempts.ts';
import * as seats from './call-seats.ts';
import * as competences from './competences.ts';
import { type Ground, inOne, type Note, one, refused, run } from './ground.ts';
import * as invitations from './invitations.ts';
import * as people from './people.ts';
import * as programs from './programs.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import { type Cost, codeAsTyped, isSameText, newCode, openSecrets } from './secrets.ts';
import * as sessions from './sessions.ts';
import * as signing from './sign-in.ts';
import { NOBODY, THIS_MACHINE, type Who } from './who.ts';

/** What a request shows of who sends it. */
export type Shown = {
  readonly bearer: string | null;
  readonly session: string | null;
  /** Whether it comes from the machine itself, past nobody in between. */
  readonly isThisMachine: boolean;
};

export type AuthParts = {
  readonly database: DatabaseSync;
  readonly now: () => Date;
  readonly cost: Cost;
  readonly note: (note: Note) => void;
  /** Also where there is an owner: for a house whose owners forgot, or left. */
  readonly wantsOwnerCode: boolean;
};

export type NewOwner = {
  readonly code: string;
  readonly name: string;
  readonly passphrase: string;
};

type Bound<F> = F extends (ground: Ground, ...rest: infer R) => infer A ? (...rest: R) => A : never;
type AllBound<M> = { readonly [K in keyof M]: Bound<M[K]> };

/** Each function with its ground given once. */
const onGround = <
  M extends Readonly<Record<string, (ground: Ground, ...rest: never[]) => unknown>>,
>(
  ground: Ground,
  functions: M,
): AllBound<M> =>
  Object.fromEntries(
    Object.entries(functions).map(([name, call]) => [
      name,
      (...rest: never[]) => call(ground, ...rest),
    ]),
  ) as AllBound<M>;

const actsOf = (ground: Ground) =>
  onGround(ground, {
    people: people.people,
    hasOwner: people.hasOwner,
    changeRole: people.changeRole,
    removePerson: people.removePerson,
    invitations: invitations.invitations,
    invite: invitations.invite,
    inviteAnew: invitations.inviteAnew,
    withdraw: invitations.withdraw,
    invitationBy: invitations.invitationBy,
    join: invitations.join,
    competences: competences.competences,
    giveCompetence: competences.giveCompetence,
    revokeCompetence: competences.revokeCompetence,
    holds: competences.holds,
    tasksOf: competences.tasksOf,
    giveCallCode: seats.giveCallCode,
    callCodeBy: seats.callCodeBy,
    takeSeat: seats.takeSeat,
    seatedAt: seats.seatedAt,
    isOwnClient: seats.isOwnClient,
    isSeated: seats.isSeated,
    postsOnDevice: seats.postsOnDevice,
    sessionsOf: sessions.sessionsOf,
    sessionLives: sessions.sessionLives,
    signOut: sessions.signOut,
    signOutDevice: sessions.signOutDevice,
    signOutAll: sessions.signOutAll,
    signIn: signing.signIn,
    signInByPin: signing.signInByPin,
    peopleByPin: signing.peopleByPin,
    prove: signing.prove,
    setPin: signing.setPin,
    dropPin: signing.dropPin,
    changePassphrase: signing.changePassphrase,
    programs: programs.programs,
    addProgram: programs.addProgram,
    revokeProgram: programs.revokeProgram,
  });

const MINE = 'this machine is mine';
const RECORD = 'of record';

const choice = (ground: Ground, name: string): unknown =>
  one(ground, 'SELECT value FROM access_choice WHERE name = ?', name)?.['value'];

const choose = (ground: Ground, name: string, value: string): void => {
  run(
    ground,
    `INSERT INTO access_choice (name, value) VALUES (?, ?)
     ON CONFLICT (name) DO UPDATE SET value = excluded.value`,
    name,
    value,
  );
};

const isMine = (ground: Ground): boolean => choice(ground, MINE) === 'yes';

/**
 * A backup knows nothing of what was revoked after it. So where the file is another record than it
 * was, every sign-in, PIN, open invitation and token of a program ends; people sign in anew. Who
 * was taken out since is in it again, and an owner must look: `docs/security.md`.
 */
const settleOn = (ground: Ground, record: string): void => {
  const before = choice(ground, RECORD);
  if (before === record) return;
  inOne(ground, () => {
    choose(ground, RECORD, record);
    if (before === undefined) return;
    const nowMs = ground.now();
    run(ground, 'UPDATE session SET ended_at_ms = ? WHERE ended_at_ms IS NULL', nowMs);
    run(ground, 'DELETE FROM pin');
    run(ground, 'DELETE FROM call_code');
    run(ground, 'DELETE FROM call_seat');
    run(ground, 'UPDATE program SET revoked_at_ms = ? WHERE revoked_at_ms IS NULL', nowMs);
    run(
      ground,
      `UPDATE invitation SET ended_at_ms = ?, ended = 'withdrawn' WHERE ended_at_ms IS NULL`,
      nowMs,
    );
  });
};

const whoIs = (ground: Ground, { bearer, session, isThisMachine }: Shown): Who => {
  // Whoever shows a token is who it says, or nobody: a forged one is not helped by where it is.
  if (bearer !== null) return programs.programBy(ground, bearer) ?? NOBODY;
  const person = session === null ? null : sessions.personBy(ground, session);
  if (person !== null) return person;
  return isThisMachine && (isMine(ground) || !people.hasOwner(ground)) ? THIS_MACHINE : NOBODY;
};

/** The code by which an owner is made; a new one at each start, and good once. */
const ownerCodes = (ground: Ground, wantsOwnerCode: boolean) => {
  let code = wantsOwnerCode || !people.hasOwner(ground) ? newCode() : null;
  const makeOwner = async (
    asked: NewOwner,
    address: string,
  ): Promise<Result<people.Someone, AccessRefusal>> => {
    const guessers = [ofAddress(address)];
    const waitMs = countGuess(ground, guessers);
    if (waitMs > 0) return refused('wait', 'too many failed attempts', 'the next later', waitMs);
    const gone = <T>(): Result<T, AccessRefusal> =>
      refused('ownerMade', 'a code that is not good', 'the code that this start printed');
    const given = code;
    if (given === null || !isSameText(codeAsTyped(given), codeAsTyped(asked.code))) return gone();
    const kept = await people.keptPassphrase(ground, asked.passphrase, asked.name);
    if (!kept.ok) return kept;
    const done = inOne(ground, (): Result<people.Someone, AccessRefusal> => {
      // Of two at once with one code, one is good.
      if (code !== given) return gone();
      const { name } = asked;
      const added = people.addPerson(ground, { name, role: 'own', passphrase: kept.value });
      if (added.ok) invitations.noteJoined(ground, added.value);
      return added;
    });
    if (!done.ok) return done;
    code = null;
    guessedRight(ground, guessers);
    return done;
  };
  return { ownerCode: () => code, makeOwner };
};

export const openAuth = ({ database, now, cost, note, wantsOwnerCode }: AuthParts) => {
  const ground: Ground = {
    database,
    now: () => now().getTime(),
    secrets: openSecrets(cost),
    note,
  };
  return {
    ...actsOf(ground),
    ...ownerCodes(ground, wantsOwnerCode),
    whoIs: (shown: Shown): Who => whoIs(ground, shown),
    isMine: () => isMine(ground),
    setMine: (wanted: boolean) => choose(ground, MINE, wanted ? 'yes' : 'no'),
    settleOn: (record: string) => settleOn(ground, record),
    /**
     * Whether the person at the device gave their passphrase or PIN so lately. Where no owner was
     * made there is none to ask for; a machine that is kept without sign-in proves nothing.
     */
    provedWithin: (who: Who, milliseconds: number): boolean =>
      who.kind === 'person'
        ? ground.now() - who.provedAtMs <= milliseconds
        : who.kind === 'thisMachine' && !people.hasOwner(ground),
  };
};

export type Auth = ReturnType<typeof openAuth>;
