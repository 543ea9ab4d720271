/**
 * How often somebody may guess. Counted in the database, so that a restart forgets nothing; counted
 * before the secret is looked at, so that a hundred guesses at once are a hundred.
 */
import { type Ground, inOne, numberIn, one, run } from './ground.ts';

type Counted = Pick<Ground, 'database' | 'now'>;

/** Whose guesses: of one name, from one address. */
export type Guesser = { readonly key: string; readonly free: number };

/** A person mistypes a few times; a house may sit behind one address. */
export const ofName = (nameKey: string): Guesser => ({ key: `name ${nameKey}`, free: 5 });
export const ofAddress = (address: string): Guesser => ({ key: `address ${address}`, free: 20 });

const FIRST_WAIT_MS = 30_000;
const LONGEST_WAIT_MS = 15 * 60_000;
/** After so long without a guess the count begins anew. */
const FORGOTTEN_MS = 60 * 60_000;

/** The wait after so many failures: none at first, then twice as long each time, to an end. */
export const waitAfterMs = (failures: number, free: number): number => {
  if (failures < free) return 0;
  return Math.min(FIRST_WAIT_MS * 2 ** Math.min(failures - free, 10), LONGEST_WAIT_MS);
};

/** Counts a guess of each, or says how long the longest of their waits still is. */
export const countGuess = (ground: Counted, guessers: readonly Guesser[]): number => {
  const nowMs = ground.now();
  return inOne(ground, () => {
    const waitsMs = guessers.map(({ key }) => {
      const row = one(ground, 'SELECT blocked_until_ms FROM attempt WHERE key = ?', key);
      return row === undefined ? 0 : numberIn(row, 'blocked_until_ms') - nowMs;
    });
    const longestMs = Math.max(0, ...waitsMs);
    if (longestMs > 0) return longestMs;
    for (const guesser of guessers) countOne(ground, guesser, nowMs);
    return 0;
  });
};

const countOne = (ground: Counted, { key, free }: Guesser, nowMs: number): void => {
  const row = one(
    ground,
    'SELECT failures FROM attempt WHERE key = ? AND last_at_ms > ?',
    key,
    nowMs - FORGOTTEN_MS,
  );
  const failures = (row === undefined ? 0 : numberIn(row, 'failures')) + 1;
  run(ground, 'DELETE FROM attempt WHERE last_at_ms < ?', nowMs - 24 * FORGOTTEN_MS);
  run(
    ground,
    `INSERT INTO attempt (key, failures, last_at_ms, blocked_until_ms) VALUES (?, ?, ?, ?)
     ON CONFLICT (key) DO UPDATE SET failures = excluded.failures,
       last_at_ms = excluded.last_at_ms, blocked_until_ms = excluded.blocked_until_ms`,
    key,
    failures,
    nowMs,
    nowMs + waitAfterMs(failures, free),
  );
};

/**
 * The guess was right. The name begins anew; the address has only this one taken off, or whoever
 * has one good name could guess at the others for ever.
 */
export const guessedRight = (ground: Counted, guessers: readonly Guesser[]): void => {
  for (const { key } of guessers) {
    if (key.startsWith('name ')) run(ground, 'DELETE FROM attempt WHERE key = ?', key);
    else {
      run(
        ground,
        'UPDATE attempt SET failures = failures - 1, blocked_until_ms = 0 WHERE key = ?',
        key,
      );
    }
  }
};
