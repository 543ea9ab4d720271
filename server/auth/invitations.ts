/**
 * How people come in: the first owner by a code that is printed where the server was started, the
 * others by an invitation that is good once and not for long. A new passphrase for somebody who
 * forgot theirs is an invitation too, so that no owner ever knows it.
 */

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
  textOrNull,
} from './ground.ts';
import { addPerson, keptPassphrase, noSuch, type Someone, someone } from './people.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import { roleFrom } from './roles.ts';
import { hashOfToken, newId, newToken } from './secrets.ts';
import { endSessionsOf } from './sessions.ts';
import type { Who } from './who.ts';

export type Invitation = {
  readonly id: string;
  /** What the owner wrote to know it by; who joins gives their own name. */
  readonly name: string;
  readonly role: Role;
  /** The person whose passphrase is given anew; null where somebody joins. */
  readonly person: string | null;
  readonly madeBy: string | null;
  readonly madeAtMs: number;
  readonly expiresAtMs: number;
};

/** Two days: long enough for a colleague who is off, short enough for a link in a mailbox. */
export const INVITATION_MS = 48 * 60 * 60_000;
const OPEN_MAX = 100;

const OPEN = 'ended_at_ms IS NULL AND expires_at_ms > ?';

const invitationOf = (row: Row): Invitation => ({
  id: textIn(row, 'id'),
  name: textIn(row, 'name'),
  role: roleFrom(row['role']),
  person: textOrNull(row, 'person'),
  madeBy: textOrNull(row, 'made_by'),
  madeAtMs: numberIn(row, 'made_at_ms'),
  expiresAtMs: numberIn(row, 'expires_at_ms'),
});

export const invitations = (ground: Ground): readonly Invitation[] =>
  all(ground, `SELECT * FROM invitation WHERE ${OPEN} ORDER BY made_at_ms, id`, ground.now()).map(
    invitationOf,
  );

export type Made = { readonly invitation: Invitation; readonly token: string };

const make = (
  ground: Ground,
  who: Who,
  wanted: Pick<Invitation, 'name' | 'role' | 'person'>,
): Result<Made, AccessRefusal> => {
  if (invitations(ground).length >= OPEN_MAX) {
    return refused('tooMany', `${OPEN_MAX} open invitations`, `at most ${OPEN_MAX}`);
  }
  const [token, madeAtMs] = [newToken(), ground.now()];
  const invitation: Invitation = {
    ...wanted,
    id: newId(),
    madeBy: byOf(who),
    madeAtMs,
    expiresAtMs: madeAtMs + INVITATION_MS,
  };
  run(
    ground,
    `INSERT INTO invitation
       (id, token_hash, name, role, person, made_by, made_at_ms, expires_at_ms)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
    invitation.id,
    hashOfToken(token),
    invitation.name,
    invitation.role,
    invitation.person,
    invitation.madeBy,
    madeAtMs,
    invitation.expiresAtMs,
  );
  return ok({ invitation, token });
};

export const invite = (
  ground: Ground,
  who: Who,
  { name, role }: { readonly name: string; readonly role: Role },
): Result<Made, AccessRefusal> =>
  inOne(ground, () => {
    const made = make(ground, who, { name: name.trim(), role, person: null });
    if (!made.ok) return made;
    const [by, device] = [byOf(who), deviceOf(who)];
    const target = `person:${made.value.invitation.id}`;
    const payload = { name: name.trim(), role };
    ground.note({ kind: 'person invited', target, by, device, payload });
    return made;
  });

/** A link by which somebody gives themselves a new passphrase. The old one holds until then. */
export const inviteAnew = (ground: Ground, who: Who, id: string): Result<Made, AccessRefusal> => {
  const person = someone(ground, id);
  if (person === null) return noSuch('person');
  return make(ground, who, { name: person.name, role: person.role, person: id });
};

export const withdraw = (ground: Ground, id: string): Result<null, AccessRefusal> => {
  const changed = run(
    ground,
    `UPDATE invitation SET ended_at_ms = ?, ended = 'withdrawn'
     WHERE id = ? AND ended_at_ms IS NULL`,
    ground.now(),
    id,
  );
  return changed === 1 ? ok(null) : noSuch('invitation');
};

const notGood = <T>(): Result<T, AccessRefusal> =>
  refused('link', 'an invitation that is not open', 'one that is unused and not too old');

/** What an invitation offers, for who holds it. */
export const invitationBy = (ground: Ground, token: string): Result<Invitation, AccessRefusal> => {
  const row = one(
    ground,
    `SELECT * FROM invitation WHERE token_hash = ? AND ${OPEN}`,
    hashOfToken(token),
    ground.now(),
  );
  return row === undefined ? notGood() : ok(invitationOf(row));
};

export type Joining = {
  readonly token: string;
  readonly name: string;
  readonly passphrase: string;
};

/** Takes an invitation up. Of two at once one is good. */
export const join = async (
  ground: Ground,
  { token, name, passphrase }: Joining,
): Promise<Result<Someone, AccessRefusal>> => {
  const open = invitationBy(ground, token);
  if (!open.ok) return open;
  const kept = await keptPassphrase(ground, passphrase, name);
  if (!kept.ok) return kept;
  return inOne(ground, (): Result<Someone, AccessRefusal> => {
    // Again, since others had their turn while the passphrase was hashed.
    const still = invitationBy(ground, token);
    if (!still.ok) return still;
    const { id, role, person } = still.value;
    const joined =
      person === null
        ? addPerson(ground, { name, role, passphrase: kept.value })
        : passphraseAnew(ground, person, kept.value);
    if (!joined.ok) return joined;
    run(
      ground,
      `UPDATE invitation SET ended_at_ms = ?, ended = 'used' WHERE id = ?`,
      ground.now(),
      id,
    );
    if (person === null) noteJoined(ground, joined.value);
    return joined;
  });
};

export const noteJoined = ({ note }: Ground, { id, name, role }: Someone): void =>
  note({
    kind: 'person joined',
    target: `person:${id}`,
    by: id,
    device: null,
    payload: { name, role },
  });

const passphraseAnew = (
  ground: Ground,
  id: string,
  passphrase: string,
): Result<Someone, AccessRefusal> => {
  const person = someone(ground, id);
  if (person === null) return notGood();
  run(ground, 'UPDATE person SET passphrase = ? WHERE id = ?', passphrase, id);
  run(ground, 'DELETE FROM pin WHERE person = ?', id);
  endSessionsOf(ground, id, null);
  return ok(person);
};
