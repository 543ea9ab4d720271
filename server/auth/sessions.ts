/** Sign-ins: each is one person on one device, ends by itself, and is ended by hand at once. */
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
  run,
  textIn,
} from './ground.ts';
import { noSuch, type Someone } from './people.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import { roleFrom } from './roles.ts';
import { hashOfToken, newId, newToken } from './secrets.ts';
import type { Person, Who } from './who.ts';

/** A long day of work; a tablet that lay in a drawer overnight asks again. */
export const IDLE_MS = 12 * 60 * 60_000;
/** A week of a fit-up, then the passphrase or the PIN again. */
export const LONGEST_MS = 7 * 24 * 60 * 60_000;
/** How long a device is known, so that a PIN is enough on it: a season. */
export const DEVICE_KNOWN_MS = 180 * 24 * 60 * 60_000;
/** The oldest of more sign-ins of one person ends. */
export const SESSIONS_MAX = 20;
/** Being seen is written down so often and no oftener, since each write waits for the disk. */
const SEEN_EVERY_MS = 60_000;

export type Session = {
  readonly id: string;
  readonly device: string;
  readonly label: string;
  readonly beganAtMs: number;
  readonly seenAtMs: number;
  readonly expiresAtMs: number;
};

/** What goes to the device as cookies; only hashes stay here. */
export type SignedIn = {
  readonly person: Someone;
  readonly session: string;
  readonly sessionId: string;
  readonly expiresAtMs: number;
  readonly device: string;
  readonly deviceExpiresAtMs: number;
};

const LIVE = 's.ended_at_ms IS NULL AND s.expires_at_ms > ? AND s.seen_at_ms > ?';

const sessionOf = (row: Row): Session => ({
  id: textIn(row, 'id'),
  device: textIn(row, 'device'),
  label: textIn(row, 'label'),
  beganAtMs: numberIn(row, 'began_at_ms'),
  seenAtMs: numberIn(row, 'seen_at_ms'),
  expiresAtMs: numberIn(row, 'expires_at_ms'),
});

export const sessionsOf = (ground: Ground, person: string): readonly Session[] => {
  const nowMs = ground.now();
  return all(
    ground,
    `SELECT s.*, d.label FROM session s JOIN device d ON d.id = s.device
     WHERE s.person = ? AND ${LIVE} ORDER BY s.seen_at_ms DESC, s.id`,
    person,
    nowMs,
    nowMs - IDLE_MS,
  ).map(sessionOf);
};

/** The device that a token belongs to, or null where it is none of ours, or known no longer. */
export const knownDevice = (ground: Ground, token: string | null): string | null => {
  if (token === null) return null;
  const row = one(
    ground,
    'SELECT id FROM device WHERE token_hash = ? AND expires_at_ms > ?',
    hashOfToken(token),
    ground.now(),
  );
  return row === undefined ? null : textIn(row, 'id');
};

/** Whether the person has signed in on the device before. */
export const hasBeenOn = (ground: Ground, person: string, device: string): boolean =>
  one(ground, 'SELECT 1 FROM session WHERE person = ? AND device = ?', person, device) !==
  undefined;

export type Beginning = {
  readonly person: Someone;
  /** What the device already holds of us. */
  readonly deviceToken: string | null;
  readonly oldSession: string | null;
  /** How the device is named in the lists. */
  readonly label: string;
};

const deviceFor = (ground: Ground, { deviceToken, label }: Beginning) => {
  const nowMs = ground.now();
  const expiresAtMs = nowMs + DEVICE_KNOWN_MS;
  const known = knownDevice(ground, deviceToken);
  if (known !== null && deviceToken !== null) {
    run(ground, 'UPDATE device SET expires_at_ms = ? WHERE id = ?', expiresAtMs, known);
    return { id: known, token: deviceToken, expiresAtMs };
  }
  const [id, token] = [newId(), newToken()];
  run(
    ground,
    `INSERT INTO device (id, token_hash, label, made_at_ms, expires_at_ms)
     VALUES (?, ?, ?, ?, ?)`,
    id,
    hashOfToken(token),
    label,
    nowMs,
    expiresAtMs,
  );
  return { id, token, expiresAtMs };
};

/** Begins a sign-in under a token of its own; what the device had before ends. */
export const beginSession = (ground: Ground, beginning: Beginning): SignedIn =>
  inOne(ground, () => {
    const { person, oldSession } = beginning;
    const nowMs = ground.now();
    if (oldSession !== null) endByToken(ground, oldSession);
    const device = deviceFor(ground, beginning);
    const [id, token, expiresAtMs] = [newId(), newToken(), nowMs + LONGEST_MS];
    run(
      ground,
      `INSERT INTO session
         (id, token_hash, person, device, began_at_ms, seen_at_ms, proved_at_ms, expires_at_ms)
       VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
      id,
      hashOfToken(token),
      person.id,
      device.id,
      nowMs,
      nowMs,
      nowMs,
      expiresAtMs,
    );
    for (const old of sessionsOf(ground, person.id)
      .filter((each) => each.id !== id)
      .slice(SESSIONS_MAX - 1)) {
      endOne(ground, old.id);
    }
    return {
      person,
      session: token,
      sessionId: id,
      expiresAtMs,
      device: device.token,
      deviceExpiresAtMs: device.expiresAtMs,
    };
  });

const endOne = (ground: Ground, id: string): number =>
  run(
    ground,
    'UPDATE session SET ended_at_ms = ? WHERE id = ? AND ended_at_ms IS NULL',
    ground.now(),
    id,
  );

const endByToken = (ground: Ground, token: string): number =>
  run(
    ground,
    'UPDATE session SET ended_at_ms = ? WHERE token_hash = ? AND ended_at_ms IS NULL',
    ground.now(),
    hashOfToken(token),
  );

/** All sign-ins of a person, but one that is spared. */
export const endSessionsOf = (ground: Ground, person: string, spared: string | null): number =>
  run(
    ground,
    'UPDATE session SET ended_at_ms = ? WHERE person = ? AND id <> ? AND ended_at_ms IS NULL',
    ground.now(),
    person,
    spared ?? '',
  );

/** Who holds the token of a sign-in that lives. Role and name are read anew each time. */
export const personBy = (ground: Ground, token: string): Person | null => {
  const nowMs = ground.now();
  const row = one(
    ground,
    `SELECT s.id AS session, s.device, s.seen_at_ms, s.proved_at_ms, p.id, p.name, p.role
     FROM session s JOIN person p ON p.id = s.person
     WHERE s.token_hash = ? AND ${LIVE} AND p.removed_at_ms IS NULL`,
    hashOfToken(token),
    nowMs,
    nowMs - IDLE_MS,
  );
  if (row === undefined) return null;
  const session = textIn(row, 'session');
  if (nowMs - numberIn(row, 'seen_at_ms') > SEEN_EVERY_MS) seen(ground, session, nowMs);
  return {
    kind: 'person',
    id: textIn(row, 'id'),
    name: textIn(row, 'name'),
    role: roleFrom(row['role']),
    session,
    device: textIn(row, 'device'),
    provedAtMs: numberIn(row, 'proved_at_ms'),
  };
};

/** A disk that takes nothing must not keep anyone from reading: the sign-in ends sooner. */
const seen = (ground: Ground, session: string, nowMs: number): void => {
  try {
    run(ground, 'UPDATE session SET seen_at_ms = ? WHERE id = ?', nowMs, session);
  } catch {
    // Said by the next command, which is refused for the same reason.
  }
};

/** Whether a sign-in that was good when a stream began is good still. */
export const sessionLives = (ground: Ground, session: string): boolean => {
  const nowMs = ground.now();
  return (
    one(
      ground,
      `SELECT 1 FROM session s WHERE s.id = ? AND ${LIVE}`,
      session,
      nowMs,
      nowMs - IDLE_MS,
    ) !== undefined
  );
};

/** The secret was given anew: noted, and the sign-in goes on under another token. */
export const proveAgain = (ground: Ground, session: string): string => {
  const token = newToken();
  run(
    ground,
    'UPDATE session SET proved_at_ms = ?, token_hash = ? WHERE id = ?',
    ground.now(),
    hashOfToken(token),
    session,
  );
  return token;
};

export const signOut = (ground: Ground, token: string): void => {
  endByToken(ground, token);
};

const noteRevoked = ({ note }: Ground, who: Who, person: string, revoked: string): void =>
  note({
    kind: 'device revoked',
    target: `person:${person}`,
    by: byOf(who),
    device: deviceOf(who),
    payload: { revoked, why: '' },
  });

/** Ends one sign-in of a person, and with it the PIN on that device. */
export const signOutDevice = (
  ground: Ground,
  who: Who,
  person: string,
  session: string,
): Result<null, AccessRefusal> => {
  const row = one(
    ground,
    'SELECT device FROM session WHERE id = ? AND person = ? AND ended_at_ms IS NULL',
    session,
    person,
  );
  if (row === undefined) return noSuch('device');
  const device = textIn(row, 'device');
  inOne(ground, () => {
    endOne(ground, session);
    run(ground, 'DELETE FROM pin WHERE person = ? AND device = ?', person, device);
    noteRevoked(ground, who, person, device);
  });
  return ok(null);
};

/** Ends every sign-in of a person but the one that asks, with the PINs of those devices. */
export const signOutAll = (ground: Ground, who: Who, person: string): number => {
  const spared = who.kind === 'person' && who.id === person ? who : null;
  return inOne(ground, () => {
    run(ground, 'DELETE FROM pin WHERE person = ? AND device <> ?', person, spared?.device ?? '');
    const ended = endSessionsOf(ground, person, spared?.session ?? null);
    if (ended > 0) noteRevoked(ground, who, person, 'all');
    return ended;
  });
};
