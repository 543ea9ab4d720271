/**
 * Tokens and secrets. A token is random and long, so one fast hash of it is kept; a passphrase or a
 * PIN is neither, so a slow one is, with its cost beside it, and an old one is still checked by the
 * cost it was made with.
 */
import { createHash, randomBytes, scrypt, timingSafeEqual } from 'node:crypto';

/** scrypt, RFC 7914: block count n, block size r, lanes p. */
export type Cost = { readonly n: number; readonly r: number; readonly p: number };

/** 32 MiB and some tenths of a second on a small machine: see docs/why/0019 for the choice. */
export const COST: Cost = { n: 2 ** 15, r: 8, p: 3 };

const TOKEN_BYTES = 32;
const SALT_BYTES = 16;
const HASH_BYTES = 32;

/** 256 bits, in letters that a URL and a cookie take as they are. */
export const newToken = (): string => randomBytes(TOKEN_BYTES).toString('base64url');

/** A name for a row, that is told to others: not secret, and not counted up. */
export const newId = (): string => randomBytes(12).toString('base64url');

export const hashOfToken = (token: string): string =>
  createHash('sha256').update(token, 'utf8').digest('base64url');

/** No vowels and nothing that is read as something else, so that no code is a word. */
const LETTERS = '23456789BCDFGHJKMNPQRSTVWXYZ'.slice(0, 28);

const lettersOf = (count: number): readonly string[] => {
  const letters: string[] = [];
  while (letters.length < count) {
    const [byte = 255] = randomBytes(1);
    // 252 is nine times 28: above it some letters would come more often.
    if (byte < 252) letters.push(LETTERS[byte % 28] ?? '');
  }
  return letters;
};

/** 6 of 28 letters are 28 bits: for minutes, once, and with a limit on how often it is tried. */
export const newShortCode = (): string => lettersOf(6).join('');

/** 12 of 28 letters are 57 bits, with a limit on how often it may be tried. */
export const newCode = (): string => {
  const letters = lettersOf(12);
  return [letters.slice(0, 4), letters.slice(4, 8), letters.slice(8)]
    .map((four) => four.join(''))
    .join('-');
};

/** As a person types it: in any case, with or without the dashes. */
export const codeAsTyped = (typed: string): string =>
  typed.toUpperCase().replaceAll(/[^0-9A-Z]/g, '');

/** Whether two texts are the same, in a time that does not tell where they differ. */
export const isSameText = (one: string, other: string): boolean =>
  timingSafeEqual(
    createHash('sha256').update(one, 'utf8').digest(),
    createHash('sha256').update(other, 'utf8').digest(),
  );

const derive = (secret: string, salt: Buffer, { n, r, p }: Cost): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    // Twice what it needs: the limit is there against a cost that somebody wrote into the file.
    const options = { N: n, r, p, maxmem: 256 * n * r };
    scrypt(secret, salt, HASH_BYTES, options, (fault, key) =>
      fault === null ? resolve(key) : reject(fault),
    );
  });

const WRITTEN = /^scrypt\$n=(\d+),r=(\d+),p=(\d+)\$([\w-]+)\$([\w-]+)$/;

/** Hashes at once: each takes 32 MiB, and whoever asks for hundreds must not take the machine. */
const AT_ONCE = 2;
const WAITING_MAX = 16;

export type Secrets = {
  /** Null where too many wait already. */
  readonly keep: (secret: string) => Promise<string | null>;
  /** Null where too many wait already. Against nothing, it takes as long and says no. */
  readonly isKept: (secret: string, kept: string | null) => Promise<boolean | null>;
};

export const openSecrets = (cost: Cost): Secrets => {
  const take = takingTurns();
  const nothing = `scrypt$n=${cost.n},r=${cost.r},p=${cost.p}$${'A'.repeat(22)}$${'A'.repeat(43)}`;
  return {
    keep: (secret) =>
      take(async () => {
        const salt = randomBytes(SALT_BYTES);
        const hash = await derive(secret, salt, cost);
        const { n, r, p } = cost;
        const [saltText, hashText] = [salt, hash].map((each) => each.toString('base64url'));
        return `scrypt$n=${n},r=${r},p=${p}$${saltText}$${hashText}`;
      }),
    isKept: (secret, kept) =>
      take(async () => {
        const [, n, r, p, salt = '', hash = ''] = WRITTEN.exec(kept ?? nothing) ?? [];
        if (hash === '') throw new Error('defect: a kept secret is not in its form');
        const written: Cost = { n: Number(n), r: Number(r), p: Number(p) };
        const found = await derive(secret, Buffer.from(salt, 'base64url'), written);
        return timingSafeEqual(found, Buffer.from(hash, 'base64url')) && kept !== null;
      }),
  };
};

type Turns = <T>(work: () => Promise<T>) => Promise<T | null>;

/** So many at once; the others wait, and where too many wait the answer is null. */
const takingTurns = (): Turns => {
  let running = 0;
  const waiting: (() => void)[] = [];
  return async (work) => {
    if (running >= AT_ONCE) {
      if (waiting.length >= WAITING_MAX) return null;
      await new Promise<void>((resolve) => waiting.push(resolve));
    }
    running += 1;
    try {
      return await work();
    } finally {
      running -= 1;
      waiting.shift()?.();
    }
  };
};
