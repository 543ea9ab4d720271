import { execFileSync } from 'node:child_process';
import { randomBytes, X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isUnder, newAuthority, newServerPair, SERVER_DAYS } from './authority.ts';
import { permittedNames } from './certificate.ts';

const now = (): Date => new Date('2026-11-25T12:00:00Z');
const making = { now, randomBytes };
const named = {
  names: ['flies.home.arpa', 'flies.local', 'localhost'],
  addresses: ['192.168.7.20', '127.0.0.1'],
};
const authority = newAuthority(
  { title: 'Counterpoise 4F2A', names: ['flies.house.example', 'flies.local'] },
  making,
);
const pair = newServerPair(authority, named, making);
const [root, leaf] = [
  new X509Certificate(authority.certificatePem),
  new X509Certificate(pair.certificatePem),
];
const DAY_MS = 86_400_000;

const OPENSSL = 'openssl';

/** The outside check, where the program is at hand: another reading of RFC 5280. */
const openssl = (() => {
  try {
    return execFileSync(OPENSSL, ['version'], { encoding: 'utf8' }).trim();
  } catch {
    return null;
  }
})();

describe('the own authority, as Node reads it', () => {
  it('signs itself, may sign, and lasts ten years', () => {
    expect(root.ca).toBe(true);
    expect(root.checkIssued(root)).toBe(true);
    expect(root.verify(root.publicKey)).toBe(true);
    expect(root.publicKey.asymmetricKeyDetails?.namedCurve).toBe('prime256v1');
    expect(new Date(root.validTo).getUTCFullYear()).toBe(2036);
  });

  it('signs the certificate of the server: names, addresses, purpose and days', () => {
    expect(leaf.ca).toBe(false);
    expect(leaf.checkIssued(root)).toBe(true);
    expect(leaf.verify(root.publicKey)).toBe(true);
    expect(leaf.checkHost('flies.home.arpa')).toBe('flies.home.arpa');
    expect(leaf.checkHost('other.home.arpa')).toBeUndefined();
    expect(leaf.checkIP('192.168.7.20')).toBe('192.168.7.20');
    expect(leaf.checkIP('192.168.7.21')).toBeUndefined();
    // 1.3.6.1.5.5.7.3.1 is serverAuth, and the only purpose.
    expect(leaf.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
    const days = (Date.parse(leaf.validTo) - Date.parse(leaf.validFrom)) / DAY_MS;
    expect(days).toBe(SERVER_DAYS + 1);
    expect(days).toBeLessThanOrEqual(825);
    expect(Date.parse(leaf.validFrom)).toBeLessThan(now().getTime());
  });

  it('has another number in each certificate, always positive', () => {
    const numbers = Array.from({ length: 40 }, () => {
      const made = newServerPair(authority, named, making);
      return new X509Certificate(made.certificatePem).serialNumber;
    });
    expect(new Set(numbers).size).toBe(40);
    for (const number of numbers) expect(number).toMatch(/^[4-7][0-9A-F]{31}$/);
  });

  it('says for which names it can vouch', () => {
    const permitted = permittedNames(authority.certificatePem);
    expect(permitted).toEqual([
      'localhost',
      'local',
      'home.arpa',
      'internal',
      'flies.house.example',
    ]);
    expect(isUnder('a.home.arpa', permitted)).toBe(true);
    expect(isUnder('home.arpa.example', permitted)).toBe(false);
    expect(isUnder('nothome.arpa', permitted)).toBe(false);
  });
});

describe.each(openssl === null ? [] : [openssl])('the own authority, as %s reads it', () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'counterpoise-authority-'));
    writeFileSync(join(folder, 'root.pem'), authority.certificatePem);
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const verified = (certificatePem: string, ...more: readonly string[]): string => {
    const file = join(folder, 'leaf.pem');
    writeFileSync(file, certificatePem);
    const at = String(now().getTime() / 1000);
    const fixed = ['verify', '-x509_strict', '-purpose', 'sslserver', '-attime', at];
    const args = [...fixed, '-CAfile', join(folder, 'root.pem'), ...more, file];
    try {
      return execFileSync(OPENSSL, args, { encoding: 'utf8', stdio: 'pipe' });
    } catch (fault) {
      return String((fault as { stderr?: string }).stderr);
    }
  };
  const signedFor = (names: readonly string[], addresses: readonly string[]): string =>
    newServerPair(authority, { names, addresses }, making).certificatePem;

  it('verifies the server under each of its names and addresses, and under no other', () => {
    for (const name of named.names) {
      expect(verified(pair.certificatePem, '-verify_hostname', name)).toContain(': OK');
    }
    expect(verified(pair.certificatePem, '-verify_ip', '192.168.7.20')).toContain(': OK');
    expect(verified(pair.certificatePem, '-verify_ip', '192.168.7.21')).toContain('mismatch');
    expect(verified(pair.certificatePem, '-verify_hostname', 'a.local')).toContain('mismatch');
  });

  it('is refused for a name or an address that is not of a house', () => {
    expect(verified(signedFor(['flies.house.example'], []))).toContain(': OK');
    expect(verified(signedFor(['bank.example'], []))).toContain('permitted subtree violation');
    expect(verified(signedFor([], ['8.8.8.8']))).toContain('permitted subtree violation');
    expect(verified(signedFor([], ['172.32.0.1']))).toContain('permitted subtree violation');
    expect(verified(signedFor([], ['fd00::1']))).toContain(': OK');
  });

  it('cannot make an authority of a server', () => {
    const below = newServerPair(pair, named, making);
    expect(verified(below.certificatePem, '-untrusted', join(folder, 'leaf.pem'))).toContain(
      'verification failed',
    );
  });
});
