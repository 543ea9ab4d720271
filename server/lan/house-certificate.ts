/** A certificate that the house gives: read from its files, and refused where tablets would. */
import { X509Certificate } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fail, ok, type Refusal, type Result } from '#outcome';
import type { Pair } from './authority.ts';
import { belongTogether } from './kept-pairs.ts';
import { LAN_REFUSALS } from './refusal-codes.ts';

export const readHouseCertificate = (
  { chain, key }: { readonly chain: string; readonly key: string },
  now: Date,
): Result<Pair, readonly Refusal[]> => {
  const [certificatePem, keyPem] = [read(chain), read(key)];
  if (certificatePem === null) return refused('certificate', 'chain', 'a file that is not read');
  if (keyPem === null) return refused('certificate', 'key', 'a file that is not read');
  const pair = { certificatePem, keyPem };
  if (!belongTogether(pair)) {
    return refused('certificate', 'chain', 'no PEM certificate that belongs to the key');
  }
  const { validFrom, validTo } = new X509Certificate(certificatePem);
  if (now < new Date(validFrom) || now > new Date(validTo)) {
    return refused('lapsed', 'chain', `valid from ${validFrom} until ${validTo}`);
  }
  return ok(pair);
};

const ACCEPTED = {
  certificate: 'PEM files: the certificate of the server with its chain, and its key',
  lapsed: 'a certificate that is valid today',
} as const;

const refused = (
  what: keyof typeof ACCEPTED,
  part: string,
  found: string,
): Result<never, readonly Refusal[]> =>
  fail([
    {
      code: LAN_REFUSALS[what].code,
      path: `lan.json.certificate.${part}`,
      found,
      accepted: ACCEPTED[what],
    },
  ]);

const read = (path: string): string | null => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
};
