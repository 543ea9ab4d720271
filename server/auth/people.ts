/** The people of a house: who they are, and their role. Who leaves stays named in the record. */

import type { Role } from '#events';
import { ok, type Result } from '#outcome';
import {
  all,
  byOf,
  deviceOf,
  type Ground,
  inOne,
  numberIn,
  one,
  type Row,
  refused,
  run,
  textIn,
} from './ground.ts';
import { PASSPHRASE_MAX, PASSPHRASE_MIN, plainPassphrase } from './plain-secrets.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import { roleFrom } from './roles.ts';
import { newId } from './secrets.ts';
import type { Who } from './who.ts';

export type Someone = {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly joinedAtMs: number;
};

/** More than any house has at one time. */
export const PEOPLE_MAX = 500;

const COLUMNS = 'id, name, role, joined_at_ms';

const someoneOf = (row: Row): Someone => ({
  id: textIn(row, 'id'),
  name: textIn(row, 'name'),
  role: roleFrom(row['role']),
  joinedAtMs: numberIn(row, 'joined_at_ms'),
});

/** Two names are one name where a person would read them as one. */
export const nameKeyOf = (name: string): string =>
  name.normalize('NFKC').trim().replaceAll(/\s+/g, ' ').toLowerCase();

export const people = (ground: Ground): readonly Someone[] =>
  all(ground, `SELECT ${COLUMNS} FROM person WHERE removed_at_ms IS NULL ORDER BY name_key`).map(
    someoneOf,
  );

export const someone = (ground: Ground, id: string): Someone | null => {
  const row = one(
    ground,
    `SELECT ${COLUMNS} FROM person WHERE id = ? AND removed_at_ms IS NULL`,
    id,
  );
  return row === undefined ? null : someoneOf(row);
};

export const someoneByName = (ground: Ground, name: string): Someone | null => {
  const row = one(
    ground,
    `SELECT ${COLUMNS} FROM person WHERE name_key = ? AND removed_at_ms IS NULL`,
    nameKeyOf(name),
  );
  return row === undefined ? null : someoneOf(row);
};

const ownersOf = (ground: Ground): number =>
  Number(
    one(ground, `SELECT count(*) AS n FROM person WHERE role = 'own' AND removed_at_ms IS NULL`)?.[
      'n'
    ],
  );

export const hasOwner = (ground: Ground): boolean => ownersOf(ground) > 0;

/** A passphrase ready to be kept, or why not. */
export const keptPassphrase = async (
  { secrets }: Ground,
  passphrase: string,
  name: string,
): Promise<Result<string, AccessRefusal>> => {
  const plain = plainPassphrase(passphrase, name);
  if (plain !== null || passphrase.length > PASSPHRASE_MAX) {
    const accepted = `${PASSPHRASE_MIN} to ${PASSPHRASE_MAX} characters that nobody tries first`;
    return refused('weakSecret', plain ?? 'longer than is kept', accepted);
  }
  const kept = await secrets.keep(passphrase);
  return kept === null ? busy() : ok(kept);
};

export const busy = <T>(): Result<T, AccessRefusal> =>
  refused('busy', 'many sign-ins at once', 'one of them a little later', 2000);

export type NewPerson = {
  readonly name: string;
  readonly role: Role;
  /** As it is kept. */
  readonly passphrase: string;
};

/** Writes a person down, in the transaction that is open. */
export const addPerson = (
  ground: Ground,
  { name, role, passphrase }: NewPerson,
): Result<Someone, AccessRefusal> => {
  if (someoneByName(ground, name) !== null) {
    return refused('nameTaken', `another ${name}`, 'a name that nobody of the house has');
  }
  if (people(ground).length >= PEOPLE_MAX) {
    return refused('tooMany', `${PEOPLE_MAX} people`, `at most ${PEOPLE_MAX} people`);
  }
  const added: Someone = { id: newId(), name: name.trim(), role, joinedAtMs: ground.now() };
  run(
    ground,
    `INSERT INTO person (id, name, name_key, role, passphrase, joined_at_ms)
     VALUES (?, ?, ?, ?, ?, ?)`,
    added.id,
    added.name,
    nameKeyOf(name),
    role,
    passphrase,
    added.joinedAtMs,
  );
  return ok(added);
};

export const noSuch = <T>(what: string): Result<T, AccessRefusal> =>
  refused('noSuch', `no ${what} of that id`, `a ${what} of this house`);

const lastOwner = <T>(): Result<T, AccessRefusal> =>
  refused('lastOwner', 'the only owner', 'a house with at least one owner; make another first');

/** From the next request on: rights are read from the database each time. */
export const changeRole = (
  ground: Ground,
  who: Who,
  id: string,
  role: Role,
): Result<Someone, AccessRefusal> => {
  return inOne(ground, (): Result<Someone, AccessRefusal> => {
    const person = someone(ground, id);
    if (person === null) return noSuch('person');
    if (person.role === 'own' && role !== 'own' && ownersOf(ground) < 2) return lastOwner();
    if (person.role === role) return ok(person);
    run(ground, 'UPDATE person SET role = ? WHERE id = ?', role, id);
    ground.note({
      kind: 'person role changed',
      target: `person:${id}`,
      by: byOf(who),
      device: deviceOf(who),
      payload: { from: person.role, to: role },
    });
    return ok({ ...person, role });
  });
};

/** Takes a person out: every sign-in, PIN and sign-off of theirs ends with it. */
export const removePerson = (ground: Ground, who: Who, id: string): Result<null, AccessRefusal> => {
  const nowMs = ground.now();
  return inOne(ground, (): Result<null, AccessRefusal> => {
    const person = someone(ground, id);
    if (person === null) return noSuch('person');
    if (person.role === 'own' && ownersOf(ground) < 2) return lastOwner();
    run(ground, 'UPDATE person SET removed_at_ms = ? WHERE id = ?', nowMs, id);
    run(
      ground,
      'UPDATE session SET ended_at_ms = ? WHERE person = ? AND ended_at_ms IS NULL',
      nowMs,
      id,
    );
    run(ground, 'DELETE FROM pin WHERE person = ?', id);
    run(
      ground,
      `UPDATE invitation SET ended_at_ms = ?, ended = 'withdrawn'
       WHERE ended_at_ms IS NULL AND (person = ? OR made_by = ?)`,
      nowMs,
      id,
      id,
    );
    const [by, device] = [byOf(who), deviceOf(who)];
    const payload = { why: '' };
    ground.note({ kind: 'person removed', target: `person:${id}`, by, device, payload });
    return ok(null);
  });
};
