/** The house's own small authority, and the certificate of its server that it signs. */
import { generateKeyPairSync } from 'node:crypto';
import { type Named, writeCertificate } from './certificate.ts';

export type Pair = { readonly certificatePem: string; readonly keyPem: string };

/** Time and chance come in as arguments. */
export type Making = {
  readonly now: () => Date;
  readonly randomBytes: (count: number) => Uint8Array;
};

const DAY_MS = 86_400_000;

/** Trusted once by hand on each tablet, so it lasts as long as a tablet and its successor. */
const AUTHORITY_DAYS = 3650;

/**
 * A tablet takes at most 825 days of a server certificate (Apple's support page 103769, as our
 * reference on open standards has it). Shorter, since it is renewed by itself: 400 days.
 */
export const SERVER_DAYS = 400;

/** A server is renewed when so many days are left: a house that is dark for a summer is covered. */
export const RENEW_DAYS = 60;

/** The clock of a tablet may be behind by so much and still take a new certificate. */
const BACKDATED_DAYS = 1;

/**
 * What the authority may ever vouch for: private addresses (RFC 1918, 3927, 4193, 4291) and names
 * that are nobody's on the internet (RFC 6761, 6762, 8375; `internal` by ICANN in 2024, from
 * memory). Whoever steals its key can pose as nothing else.
 */
const PRIVATE: Named = {
  names: ['localhost', 'local', 'home.arpa', 'internal'],
  addresses: [
    '10.0.0.0/8',
    '172.16.0.0/12',
    '192.168.0.0/16',
    '169.254.0.0/16',
    '127.0.0.0/8',
    'fc00::/7',
    'fe80::/10',
    '::1/128',
  ],
};

const daysFrom = (moment: Date, days: number): Date => new Date(moment.getTime() + days * DAY_MS);

const newKey = (): string =>
  generateKeyPairSync('ec', { namedCurve: 'prime256v1' })
    .privateKey.export({ type: 'pkcs8', format: 'pem' })
    .toString();

/** The names are those of the house beside the private ones, and hold as long as the authority. */
export const newAuthority = (
  { title, names }: { readonly title: string; readonly names: readonly string[] },
  { now, randomBytes }: Making,
): Pair => {
  const keyPem = newKey();
  const beside = names.filter((name) => !isUnder(name, PRIVATE.names));
  const certificatePem = writeCertificate({
    commonName: title,
    keyPem,
    is: 'authority',
    named: { names: [...PRIVATE.names, ...beside], addresses: PRIVATE.addresses },
    from: daysFrom(now(), -BACKDATED_DAYS),
    until: daysFrom(now(), AUTHORITY_DAYS),
    serial: randomBytes(16),
  });
  return { certificatePem, keyPem };
};

/** Whether a name is one of these or below one of them, as a tablet judges it. */
export const isUnder = (name: string, roots: readonly string[]): boolean =>
  roots.some((root) => name === root || name.endsWith(`.${root}`));

export const newServerPair = (
  authority: Pair,
  named: Named,
  { now, randomBytes }: Making,
): Pair => {
  const keyPem = newKey();
  const certificatePem = writeCertificate({
    commonName: 'Counterpoise server',
    keyPem,
    issuer: authority,
    is: 'server',
    named,
    from: daysFrom(now(), -BACKDATED_DAYS),
    until: daysFrom(now(), SERVER_DAYS),
    serial: randomBytes(16),
  });
  return { certificatePem, keyPem };
};

export const daysLeft = (until: Date, now: Date): number =>
  Math.floor((until.getTime() - now.getTime()) / DAY_MS);
