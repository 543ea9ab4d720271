/** The ways in for people: name and passphrase, or a PIN on a device that is known. */
import { ok, type Result } from '#outcome';
import {
  countGuess,
  type Guesser,
  guessedRight,
  ofAddress,
  ofName,
  waitAfterMs,
} from './attempts.ts';
import { all, type Ground, inOne, numberIn, one, refused, run, textIn, WRONG } from './ground.ts';
import {
  busy,
  keptPassphrase,
  nameKeyOf,
  noSuch,
  type Someone,
  someone,
  someoneByName,
} from './people.ts';
import { PIN_ACCEPTED, plainPin } from './plain-secrets.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import {
  type Beginning,
  beginSession,
  endSessionsOf,
  hasBeenOn,
  knownDevice,
  proveAgain,
  type SignedIn,
} from './sessions.ts';
import type { Person } from './who.ts';

/** What comes with every sign-in: where from, and what the device holds already. */
export type Coming = Omit<Beginning, 'person'> & { readonly address: string };

const wait = <T>(waitMs: number): Result<T, AccessRefusal> => {
  const found = 'too many failed attempts';
  const accepted = `the next after ${Math.ceil(waitMs / 1000)} seconds`;
  return refused('wait', found, accepted, waitMs);
};

const wrong = <T>(): Result<T, AccessRefusal> => refused('wrong', WRONG.found, WRONG.accepted);

const passphraseOf = (ground: Ground, person: Someone | null): string | null => {
  if (person === null) return null;
  const row = one(ground, 'SELECT passphrase FROM person WHERE id = ?', person.id);
  return row === undefined ? null : textIn(row, 'passphrase');
};

/**
 * Whose guesses count: always those of the address; those of the name where the person has not
 * been on this device before, so that a stranger cannot shut a person out of their own tablet.
 */
const guessersOf = (ground: Ground, coming: Coming, name: string): readonly Guesser[] => {
  const person = someoneByName(ground, name);
  const device = knownDevice(ground, coming.deviceToken);
  const isOwnDevice = person !== null && device !== null && hasBeenOn(ground, person.id, device);
  return [ofAddress(coming.address), ...(isOwnDevice ? [] : [ofName(nameKeyOf(name))])];
};

export const signIn = async (
  ground: Ground,
  { name, passphrase }: { readonly name: string; readonly passphrase: string },
  coming: Coming,
): Promise<Result<SignedIn, AccessRefusal>> => {
  const guessers = guessersOf(ground, coming, name);
  const waitMs = countGuess(ground, guessers);
  if (waitMs > 0) return wait(waitMs);
  const person = someoneByName(ground, name);
  const isRight = await ground.secrets.isKept(passphrase, passphraseOf(ground, person));
  if (isRight === null) return busy();
  // Read again: somebody may have been taken out while the passphrase was hashed.
  const still = person === null ? null : someone(ground, person.id);
  if (!isRight || still === null) return wrong();
  guessedRight(ground, guessers);
  const signedIn = beginSession(ground, { ...coming, person: still });
  const device = knownDevice(ground, signedIn.device) ?? '';
  run(
    ground,
    'UPDATE pin SET failures = 0, blocked_until_ms = 0 WHERE person = ? AND device = ?',
    still.id,
    device,
  );
  return ok(signedIn);
};

/** Two slips are free; the fifth locks the PIN, and only the passphrase opens it. */
const PIN_FREE = 3;
export const PIN_FAILURES_MAX = 5;

const pinLocked = <T>(): Result<T, AccessRefusal> =>
  refused('pinLocked', `${PIN_FAILURES_MAX} failed attempts`, 'name and passphrase');

/** Counts the guess before it is looked at; answers with the secret to look at it by. */
const guessPin = (
  ground: Ground,
  person: string,
  device: string,
): Result<string | null, AccessRefusal> => {
  const nowMs = ground.now();
  return inOne(ground, (): Result<string | null, AccessRefusal> => {
    const row = one(ground, 'SELECT * FROM pin WHERE person = ? AND device = ?', person, device);
    if (row === undefined) return ok(null);
    const failures = numberIn(row, 'failures');
    if (failures >= PIN_FAILURES_MAX) return pinLocked();
    const leftMs = numberIn(row, 'blocked_until_ms') - nowMs;
    if (leftMs > 0) return wait(leftMs);
    run(
      ground,
      `UPDATE pin SET failures = ?, blocked_until_ms = ? WHERE person = ? AND device = ?`,
      failures + 1,
      nowMs + waitAfterMs(failures + 1, PIN_FREE),
      person,
      device,
    );
    return ok(textIn(row, 'secret'));
  });
};

const isPin = async (
  ground: Ground,
  { person, device, pin }: { person: string; device: string; pin: string },
): Promise<Result<null, AccessRefusal>> => {
  const secret = guessPin(ground, person, device);
  if (!secret.ok) return secret;
  const isRight = await ground.secrets.isKept(pin, secret.value);
  if (isRight === null) return busy();
  if (!isRight) return wrong();
  run(
    ground,
    'UPDATE pin SET failures = 0, blocked_until_ms = 0 WHERE person = ? AND device = ?',
    person,
    device,
  );
  return ok(null);
};

export const signInByPin = async (
  ground: Ground,
  { person, pin }: { readonly person: string; readonly pin: string },
  coming: Coming,
): Promise<Result<SignedIn, AccessRefusal>> => {
  const guessers = [ofAddress(coming.address)];
  const waitMs = countGuess(ground, guessers);
  if (waitMs > 0) return wait(waitMs);
  const device = knownDevice(ground, coming.deviceToken) ?? '';
  const right = await isPin(ground, { person, device, pin });
  if (!right.ok) return right;
  const still = someone(ground, person);
  if (still === null) return wrong();
  guessedRight(ground, guessers);
  return ok(beginSession(ground, { ...coming, person: still }));
};

/** Whom this device knows by a PIN. */
export const peopleByPin = (
  ground: Ground,
  deviceToken: string | null,
): readonly Pick<Someone, 'id' | 'name'>[] =>
  all(
    ground,
    `SELECT p.id, p.name FROM pin JOIN person p ON p.id = pin.person
     WHERE pin.device = ? AND p.removed_at_ms IS NULL ORDER BY p.name_key`,
    knownDevice(ground, deviceToken) ?? '',
  ).map((row) => ({ id: textIn(row, 'id'), name: textIn(row, 'name') }));

export type Secret = { readonly passphrase: string } | { readonly pin: string };

const isPassphrase = async (
  ground: Ground,
  { id, name }: Person,
  passphrase: string,
  address: string,
): Promise<Result<null, AccessRefusal>> => {
  const guessers = [ofAddress(address), ofName(`again ${nameKeyOf(name)}`)];
  const waitMs = countGuess(ground, guessers);
  if (waitMs > 0) return wait(waitMs);
  const kept = passphraseOf(ground, someone(ground, id));
  const isRight = await ground.secrets.isKept(passphrase, kept);
  if (isRight === null) return busy();
  if (!isRight) return wrong();
  guessedRight(ground, guessers);
  return ok(null);
};

/** The person at the device is still the one who signed in: the new token of their sign-in. */
export const prove = async (
  ground: Ground,
  who: Person,
  secret: Secret,
  address: string,
): Promise<Result<string, AccessRefusal>> => {
  const right =
    'pin' in secret
      ? await isPin(ground, { person: who.id, device: who.device, pin: secret.pin })
      : await isPassphrase(ground, who, secret.passphrase, address);
  return right.ok ? ok(proveAgain(ground, who.session)) : right;
};

/** A PIN for this person on this device; the caller has seen to it that it was they who asked. */
export const setPin = async (
  ground: Ground,
  { id, device }: Person,
  pin: string,
): Promise<Result<null, AccessRefusal>> => {
  const plain = plainPin(pin);
  if (plain !== null) return refused('weakSecret', plain, PIN_ACCEPTED);
  const secret = await ground.secrets.keep(pin);
  if (secret === null) return busy();
  run(
    ground,
    `INSERT INTO pin (person, device, secret, failures, blocked_until_ms) VALUES (?, ?, ?, 0, 0)
     ON CONFLICT (person, device) DO UPDATE SET secret = excluded.secret, failures = 0,
       blocked_until_ms = 0`,
    id,
    device,
    secret,
  );
  return ok(null);
};

export const dropPin = (ground: Ground, { id, device }: Person): Result<null, AccessRefusal> =>
  run(ground, 'DELETE FROM pin WHERE person = ? AND device = ?', id, device) === 1
    ? ok(null)
    : noSuch('PIN');

/** Another passphrase; the sign-ins on other devices end, and their PINs. */
export const changePassphrase = async (
  ground: Ground,
  who: Person,
  { now, next }: { readonly now: string; readonly next: string },
  address: string,
): Promise<Result<string, AccessRefusal>> => {
  const right = await isPassphrase(ground, who, now, address);
  if (!right.ok) return right;
  const kept = await keptPassphrase(ground, next, who.name);
  if (!kept.ok) return kept;
  inOne(ground, () => {
    run(ground, 'UPDATE person SET passphrase = ? WHERE id = ?', kept.value, who.id);
    run(ground, 'DELETE FROM pin WHERE person = ? AND device <> ?', who.id, who.device);
    endSessionsOf(ground, who.id, who.session);
  });
  return ok(proveAgain(ground, who.session));
};
