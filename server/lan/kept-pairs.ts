/**
 * The authority and the server's certificate as files in the data folder: keys for their owner
 * only, each file whole or not at all. The server's is renewed here, the authority never.
 */
import { createPrivateKey, X509Certificate } from 'node:crypto';
import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { fail, ok, type Refusal, type Result } from '#outcome';
import {
  daysLeft,
  isUnder,
  type Making,
  newAuthority,
  newServerPair,
  type Pair,
  RENEW_DAYS,
} from './authority.ts';
import { type Named, permittedNames } from './certificate.ts';
import { LAN_REFUSALS } from './refusal-codes.ts';

export type KeptPairs = {
  readonly authorityPem: string;
  readonly server: Pair;
};

export const AUTHORITY_FILES = { certificate: 'authority.crt', key: 'authority.key' } as const;
const SERVER_FILES = { certificate: 'server.crt', key: 'server.key' } as const;
type Files = typeof AUTHORITY_FILES | typeof SERVER_FILES;

type Wanted = {
  /** Folder of these files alone. */
  readonly folder: string;
  readonly named: Named;
  /** Names that a person asked for: the authority must be able to vouch for each. */
  readonly askedNames: readonly string[];
  readonly making: Making;
};

/** Makes what is not there yet, renews what is due, and leaves the rest as it is. */
export const keepPairs = (wanted: Wanted): Result<KeptPairs, readonly Refusal[]> => {
  mkdirSync(wanted.folder, { recursive: true, mode: 0o700 });
  const authority = keptAuthority(wanted);
  if (!authority.ok) return authority;
  const permitted = permittedNames(authority.value.certificatePem);
  const outside = wanted.askedNames.filter((name) => !isUnder(name, permitted));
  if (outside.length > 0) return fail(outside.map((name) => outsideOf(name, permitted)));
  const names = wanted.named.names.filter((name) => isUnder(name, permitted));
  const named = { names, addresses: wanted.named.addresses };
  const kept = readPair(wanted.folder, SERVER_FILES);
  const authorityPem = authority.value.certificatePem;
  if (kept !== null && isGood(kept, authorityPem, named, wanted.making.now())) {
    return ok({ authorityPem, server: kept });
  }
  const server = newServerPair(authority.value, named, wanted.making);
  writePair(wanted.folder, SERVER_FILES, server);
  return ok({ authorityPem, server });
};

const outsideOf = (name: string, permitted: readonly string[]): Refusal => ({
  code: LAN_REFUSALS.name.code,
  path: 'lan.json.names',
  found: name,
  accepted: `a name that is or ends in ${permitted.join(', ')}`,
});

const keptAuthority = ({ folder, named, making }: Wanted): Result<Pair, readonly Refusal[]> => {
  const { certificate, key } = AUTHORITY_FILES;
  const present = [certificate, key].filter((name) => existsSync(join(folder, name)));
  if (present.length === 0) {
    const mark = Buffer.from(making.randomBytes(2)).toString('hex').toUpperCase();
    const made = newAuthority({ title: `Counterpoise ${mark}`, names: named.names }, making);
    writePair(folder, AUTHORITY_FILES, made);
    return ok(made);
  }
  const pair = readPair(folder, AUTHORITY_FILES);
  if (pair !== null && daysLeft(untilOf(pair), making.now()) > 0) return ok(pair);
  const found =
    present.length === 1 ? `${present.join('')} alone` : 'two files that do not belong together';
  return fail([
    {
      code: LAN_REFUSALS.authority.code,
      path: 'lan',
      found: pair === null ? found : 'an authority that has lapsed',
      accepted: `${certificate} and ${key} from a backup; or neither, to make a new one to trust`,
    },
  ]);
};

/** Null where a file is missing or damaged, or the key is another's. */
const readPair = (folder: string, files: Files): Pair | null => {
  const [certificate, key] = [join(folder, files.certificate), join(folder, files.key)];
  if (!existsSync(certificate) || !existsSync(key)) return null;
  // A copy from elsewhere may have come open to others.
  chmodSync(key, 0o600);
  const pair = {
    certificatePem: readFileSync(certificate, 'utf8'),
    keyPem: readFileSync(key, 'utf8'),
  };
  return belongTogether(pair) ? pair : null;
};

export const belongTogether = ({ certificatePem, keyPem }: Pair): boolean => {
  try {
    return new X509Certificate(certificatePem).checkPrivateKey(createPrivateKey(keyPem));
  } catch {
    return false;
  }
};

export const untilOf = ({ certificatePem }: Pick<Pair, 'certificatePem'>): Date =>
  new Date(new X509Certificate(certificatePem).validTo);

const isGood = (pair: Pair, authorityPem: string, named: Named, now: Date): boolean => {
  const certificate = new X509Certificate(pair.certificatePem);
  const authority = new X509Certificate(authorityPem);
  return (
    certificate.verify(authority.publicKey) &&
    daysLeft(untilOf(pair), now) > RENEW_DAYS &&
    now >= new Date(certificate.validFrom) &&
    named.names.every((name) => certificate.checkHost(name, { subject: 'never' }) !== undefined) &&
    named.addresses.every((address) => certificate.checkIP(address) !== undefined)
  );
};

const writePair = (folder: string, files: Files, { certificatePem, keyPem }: Pair): void => {
  writeWhole(join(folder, files.key), keyPem, 0o600);
  writeWhole(join(folder, files.certificate), certificatePem, 0o644);
};

/** Under another name first and flushed, so that a power cut leaves the old file or the new one. */
const writeWhole = (path: string, text: string, mode: number): void => {
  const beside = `${path}.new`;
  const file = openSync(beside, 'w', mode);
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  chmodSync(beside, mode);
  renameSync(beside, path);
};
