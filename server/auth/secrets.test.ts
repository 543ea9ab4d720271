import { describe, expect, it } from 'vitest';
import { ROLES } from '#events';
import { waitAfterMs } from './attempts.ts';
import { endOfDayMs, monthsOnMs } from './competence.ts';
import { plainPassphrase } from './plain-secrets.ts';
import { roleMay } from './roles.ts';
import { COST, hashOfToken, newToken, openSecrets } from './secrets.ts';

describe('a token', () => {
  it('has 256 bits in letters of a URL, and is kept as SHA-256', () => {
    const token = newToken();
    expect(token).toMatch(/^[\w-]{43}$/);
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
    expect(newToken()).not.toBe(token);
    // FIPS 180-4, example of the one-block message "abc".
    expect(Buffer.from(hashOfToken('abc'), 'base64url').toString('hex')).toBe(
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    );
  });
});

describe('a kept secret', () => {
  it('is checked against the test vector of RFC 7914, section 12', async () => {
    // scrypt("password", "NaCl", N=1024, r=8, p=16): of its 64 bytes the first 32, since PBKDF2,
    // which is the last step, gives the same first block for a shorter key.
    const hash = Buffer.from(
      'fdbabe1c9d3472007856e7190d01e9fe7c6ad7cbc8237830e77376634b373162',
      'hex',
    ).toString('base64url');
    const kept = `scrypt$n=1024,r=8,p=16$${Buffer.from('NaCl').toString('base64url')}$${hash}`;
    const { isKept } = openSecrets(COST);
    expect(await isKept('password', kept)).toBe(true);
    expect(await isKept('Password', kept)).toBe(false);
  });

  it('has its cost and a salt of its own beside it, and never the secret', async () => {
    const { keep, isKept } = openSecrets({ n: 16, r: 1, p: 1 });
    const [one, two] = [await keep('seven lanterns'), await keep('seven lanterns')];
    expect(one).toMatch(/^scrypt\$n=16,r=1,p=1\$[\w-]{22}\$[\w-]{43}$/);
    expect(two).not.toBe(one);
    expect(await isKept('seven lanterns', one)).toBe(true);
    expect(await isKept('', null)).toBe(false);
  });
});

describe('a passphrase', () => {
  it.each([
    ['eleven char', false],
    ['twelve chars', true],
    ['aaaaabbbbbccccc', false],
    ['Ada Frost 1985!', false],
    ['counterweight theatre 2026', false],
    ['köstliche Äpfel im Schnee', true],
    ['correct horse battery staple', true],
  ])('%s', (passphrase, isTaken) => {
    expect(plainPassphrase(passphrase, 'Ada Frost') === null).toBe(isTaken);
  });
});

describe('waits', () => {
  it('double from half a minute to a quarter of an hour', () => {
    expect([4, 5, 6, 7, 8, 9, 10, 99].map((failures) => waitAfterMs(failures, 5) / 1000)).toEqual([
      0, 30, 60, 120, 240, 480, 900, 900,
    ]);
  });
});

describe('roles', () => {
  it('may what the one before may, and one duty more', () => {
    const duties = ['look', 'note', 'plan', 'run', 'own'] as const;
    const may = ROLES.map((role) => duties.filter((duty) => roleMay(role, duty)).join(' '));
    expect(may).toEqual(['look note', 'look note plan', 'look note plan run', duties.join(' ')]);
  });
});

describe('days', () => {
  it('end at midnight UTC, and are real ones', () => {
    expect(endOfDayMs('2027-05-31')).toBe(Date.UTC(2027, 5, 1));
    for (const day of ['2027-02-29', '2027-13-01', '31.5.2027', '', '2027-5-1']) {
      expect(endOfDayMs(day), day).toBeNull();
    }
  });

  it('months on keep the day, or take the last of a short month', () => {
    const on = (day: string, months: number) =>
      new Date(monthsOnMs(Date.parse(`${day}T15:00:00Z`), months) - 1).toISOString().slice(0, 10);
    expect(on('2026-11-28', 12)).toBe('2027-11-28');
    expect(on('2028-02-29', 12)).toBe('2029-02-28');
    expect(on('2026-12-31', 2)).toBe('2027-02-28');
  });
});
