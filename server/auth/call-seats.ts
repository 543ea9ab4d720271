/**
 * Joining a call: a short code for one post, good once and not for long; and which sign-in on which
 * device holds each post, so that a device cannot speak by the name that another gave itself.
 */
import { ok, type Result } from '#outcome';
import { countGuess, type Guesser, guessedRight, ofAddress, ofName } from './attempts.ts';
import { tasksOf } from './competences.ts';
import {
  all,
  byOf,
  deviceOf,
  type Ground,
  inOne,
  one,
  refused,
  run,
  textIn,
  textOrNull,
} from './ground.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import { codeAsTyped, hashOfToken, newShortCode } from './secrets.ts';
import type { Who } from './who.ts';

/** Long enough to walk to a gallery with it. */
const CALL_CODE_MS = 10 * 60_000;
/** More posts than a house has, so that nobody fills the table. */
const CODES_MAX = 100;

export type CallCode = {
  readonly call: string;
  readonly post: string;
  /** Who answers for whoever joins by it: a person, or nobody by name at a machine of one. */
  readonly answersBy: string | null;
  readonly answersName: string | null;
};

export const giveCallCode = (
  ground: Ground,
  given: CallCode,
): Result<{ readonly code: string; readonly expiresAtMs: number }, AccessRefusal> => {
  const nowMs = ground.now();
  return inOne(ground, () => {
    run(ground, 'DELETE FROM call_code WHERE expires_at_ms <= ? OR call <> ?', nowMs, given.call);
    if (all(ground, 'SELECT 1 FROM call_code').length >= CODES_MAX) {
      return refused('tooMany', `${CODES_MAX} open joining codes`, `at most ${CODES_MAX}`);
    }
    const [code, expiresAtMs] = [newShortCode(), nowMs + CALL_CODE_MS];
    // Of two that are the same by chance the later one holds; the other is asked for again.
    run(
      ground,
      `INSERT OR REPLACE INTO call_code
         (code_hash, call, post, answers_by, answers_name, expires_at_ms)
       VALUES (?, ?, ?, ?, ?, ?)`,
      hashOfToken(code),
      given.call,
      given.post,
      given.answersBy,
      given.answersName,
      expiresAtMs,
    );
    return ok({ code, expiresAtMs });
  });
};

const guessersOf = (who: Who, address: string): readonly Guesser[] => {
  const person = byOf(who);
  return [ofAddress(address), ...(person === null ? [] : [ofName(`joining ${person}`)])];
};

/** What a code offers, for who typed it; each try counts, as those at a passphrase do. */
export const callCodeBy = (
  ground: Ground,
  who: Who,
  { typed, call, address }: Record<'typed' | 'call' | 'address', string>,
): Result<CallCode, AccessRefusal> => {
  const guessers = guessersOf(who, address);
  const waitMs = countGuess(ground, guessers);
  if (waitMs > 0) return refused('wait', 'too many failed attempts', 'the next later', waitMs);
  const row = one(
    ground,
    'SELECT * FROM call_code WHERE code_hash = ? AND call = ? AND expires_at_ms > ?',
    hashOfToken(codeAsTyped(typed)),
    call,
    ground.now(),
  );
  if (row === undefined) {
    return refused('callCode', 'a code that is not open', 'one of this call, unused, not too old');
  }
  guessedRight(ground, guessers);
  return ok({
    call,
    post: textIn(row, 'post'),
    answersBy: textOrNull(row, 'answers_by'),
    answersName: textOrNull(row, 'answers_name'),
  });
};

export type Seat = {
  readonly call: string;
  readonly post: string;
  /** The id that the device made itself, which stands in its commands. */
  readonly client: string;
  readonly answersBy: string | null;
};

/**
 * Takes a seat for who asks and says so in the record, both or none; a code that was given for it
 * is used up by that. `say` throws where the record does not take it.
 */
export const takeSeat = (
  ground: Ground,
  who: Who,
  { call, post, client, answersBy }: Seat,
  { code, say }: { readonly code: string | null; readonly say: () => void },
): Result<null, AccessRefusal> =>
  inOne(ground, (): Result<null, AccessRefusal> => {
    if (code !== null) {
      const hash = hashOfToken(codeAsTyped(code));
      // Of two at once with one code, one is good.
      if (run(ground, 'DELETE FROM call_code WHERE code_hash = ?', hash) === 0) {
        return refused('callCode', 'a code that was used', 'one of this call, unused');
      }
    }
    run(ground, 'DELETE FROM call_seat WHERE call <> ?', call);
    run(
      ground,
      `INSERT OR REPLACE INTO call_seat (call, post, client, person, device, answers_by)
       VALUES (?, ?, ?, ?, ?, ?)`,
      call,
      post,
      client,
      byOf(who),
      deviceOf(who),
      answersBy,
    );
    say();
    return ok(null);
  });

/** Whether the id that a device gives itself is the one that this very device joined with. */
export const isOwnClient = (
  ground: Ground,
  who: Who,
  { call, client }: Pick<Seat, 'call' | 'client'>,
): boolean => {
  const rows = all(
    ground,
    'SELECT person, device FROM call_seat WHERE call = ? AND client = ?',
    call,
    client,
  );
  return rows.every(
    (row) =>
      // A person whose device was forgotten by us is still that person.
      textOrNull(row, 'device') === deviceOf(who) || textOrNull(row, 'person') === byOf(who),
  );
};

/** Whether who asks holds a post on this very device, under the id that it gives itself. */
export const isSeated = (
  ground: Ground,
  who: Who,
  { call, client }: Pick<Seat, 'call' | 'client'>,
): boolean =>
  one(
    ground,
    'SELECT 1 FROM call_seat WHERE call = ? AND client = ? AND person IS ? AND device IS ?',
    call,
    client,
    byOf(who),
    deviceOf(who),
  ) !== undefined;

/** Posts of a call that are held from the very device that asks, whoever was signed in there. */
export const postsOnDevice = (ground: Ground, who: Who, call: string): readonly string[] => {
  const device = deviceOf(who);
  if (device === null) return [];
  return all(ground, 'SELECT post FROM call_seat WHERE call = ? AND device = ?', call, device).map(
    (row) => textIn(row, 'post'),
  );
};

type Seated = 'own' | 'another' | 'unanswered';

/** Whether the post is held by who asks, on this device, and somebody still answers for them. */
export const seatedAt = (
  ground: Ground,
  who: Who,
  { call, post, client }: Omit<Seat, 'answersBy'>,
): Seated => {
  const row = one(ground, 'SELECT * FROM call_seat WHERE call = ? AND post = ?', call, post);
  const isOwn =
    row !== undefined &&
    textIn(row, 'client') === client &&
    textOrNull(row, 'person') === byOf(who) &&
    textOrNull(row, 'device') === deviceOf(who);
  if (!isOwn) return 'another';
  const answers = textOrNull(row, 'answers_by');
  return answers === null || answersStill(ground, answers) ? 'own' : 'unanswered';
};

/** Nobody answers for others whose own sign-off was revoked or has lapsed. */
const answersStill = (ground: Ground, person: string): boolean =>
  tasksOf(ground, person).some((task) => task === 'headFly' || task === 'lead');
