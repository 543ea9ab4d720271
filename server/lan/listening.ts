/**
 * How this server listens, as one value that the HTTP side is built from: who may ask for it under
 * which name, with which certificate, and whether anything may be signed off here.
 */

import { X509Certificate } from 'node:crypto';
import { join } from 'node:path';
import type { CertificateState, ListeningMode } from '#events';
import { ok, type Refusal, type Result } from '#outcome';
import { daysLeft, type Making, type Pair, RENEW_DAYS } from './authority.ts';
import type { Named } from './certificate.ts';
import { readHouseCertificate } from './house-certificate.ts';
import { keepPairs, untilOf } from './kept-pairs.ts';
import { LOOPBACK, type Machine, namedOf } from './own-names.ts';
import type { LanSettings } from './settings.ts';

export type Listening = {
  readonly mode: ListeningMode;
  readonly scheme: 'http' | 'https';
  /** Addresses of the network card; null is this machine alone. */
  readonly bind: '127.0.0.1' | '0.0.0.0';
  /** Without HTTPS anybody on the network could sign as another: then nobody signs. */
  readonly signOffs: boolean;
  /** Names and addresses under which it answers; another name that leads here is refused. */
  readonly hosts: () => readonly string[];
  /** What people type in or scan, the best first. */
  readonly urls: () => readonly string[];
  /** From the machine itself. */
  readonly ownUrl: string;
  /** Where a tablet without trust reads how to come by it; null where nothing is to be trusted. */
  readonly trustUrls: () => readonly string[];
  readonly server: () => Pair | null;
  /** What a tablet is given to trust; null where there is no own authority. */
  readonly authorityPem: () => string | null;
  readonly certificate: () => CertificateState | null;
  /** Looks again at addresses and dates; true where another certificate is to be shown. */
  readonly refresh: () => Result<boolean, readonly Refusal[]>;
};

/** One that a person can remember; the page on trust is on the next. */
export const PORT = 4747;

const LOOPBACK_HOSTS = ['localhost', '127.0.0.1', '[::1]'];

/** As it always was: this machine alone, no certificate, no ceremony. */
export const loopbackListening = (port: number = PORT): Listening => ({
  mode: 'loopback',
  scheme: 'http',
  bind: '127.0.0.1',
  signOffs: true,
  hosts: () => LOOPBACK_HOSTS,
  urls: () => [`http://127.0.0.1:${port}`],
  ownUrl: `http://127.0.0.1:${port}`,
  trustUrls: () => [],
  server: () => null,
  authorityPem: () => null,
  certificate: () => null,
  refresh: () => ok(false),
});

type Wanted = {
  readonly settings: LanSettings;
  readonly dataFolder: string;
  readonly port: number;
  readonly trustPort: number;
  readonly machine: Machine;
  readonly making: Making;
};

export const openListening = (wanted: Wanted): Result<Listening, readonly Refusal[]> => {
  const { settings, port } = wanted;
  if (settings.listen === 'loopback') return ok(loopbackListening(port));
  return settings.listen === 'plain' ? ok(plainListening(wanted)) : secureListening(wanted);
};

const onLan = ({ settings, machine, port }: Wanted, scheme: Listening['scheme']) => {
  const named = (): Named => namedOf(settings, machine);
  return {
    scheme,
    bind: '0.0.0.0',
    hosts: () => [...named().names, ...named().addresses, '[::1]'],
    urls: () => urlsOf(scheme, named(), settings, port),
    ownUrl: `${scheme}://${LOOPBACK}:${port}`,
  } as const;
};

/** Names that the house gave come first, then addresses, which every tablet can reach. */
const urlsOf = (
  scheme: Listening['scheme'],
  { addresses }: Named,
  { names }: LanSettings,
  port: number,
): readonly string[] => {
  const hosts = [...names, ...addresses.filter((address) => address !== LOOPBACK)];
  // A machine without a network is reached from itself alone, and then that is the address.
  return (hosts.length === 0 ? [LOOPBACK] : hosts).map((host) => `${scheme}://${host}:${port}`);
};

const plainListening = (wanted: Wanted): Listening => ({
  ...onLan(wanted, 'http'),
  mode: 'plain',
  signOffs: false,
  trustUrls: () => [],
  server: () => null,
  authorityPem: () => null,
  certificate: () => null,
  refresh: () => ok(false),
});

type Shown = { readonly authorityPem: string | null; readonly server: Pair };

const secureListening = (wanted: Wanted): Result<Listening, readonly Refusal[]> => {
  const { settings, trustPort, making } = wanted;
  const first = shownNow(wanted);
  if (!first.ok) return first;
  let shown = first.value;
  const lan = onLan(wanted, 'https');
  const named = (): Named => namedOf(settings, wanted.machine);
  const isOwn = settings.certificate === undefined;
  return ok({
    ...lan,
    mode: isOwn ? 'ownAuthority' : 'houseCertificate',
    signOffs: true,
    trustUrls: () =>
      isOwn ? urlsOf('http', named(), settings, trustPort).map((url) => `${url}/trust`) : [],
    server: () => shown.server,
    authorityPem: () => shown.authorityPem,
    certificate: () => stateOf(shown, making.now()),
    refresh: () => {
      const again = shownNow(wanted);
      if (!again.ok) return again;
      const isAnother = again.value.server.certificatePem !== shown.server.certificatePem;
      shown = again.value;
      return ok(isAnother);
    },
  });
};

const shownNow = ({
  settings,
  dataFolder,
  machine,
  making,
}: Wanted): Result<Shown, readonly Refusal[]> => {
  if (settings.certificate !== undefined) {
    const given = readHouseCertificate(settings.certificate, making.now());
    return given.ok ? ok({ authorityPem: null, server: given.value }) : given;
  }
  return keepPairs({
    folder: join(dataFolder, 'lan'),
    named: namedOf(settings, machine),
    askedNames: settings.names,
    making,
  });
};

const stateOf = ({ authorityPem, server }: Shown, now: Date): CertificateState => {
  const until = untilOf(server);
  const left = daysLeft(until, now);
  return {
    fingerprint: fingerprintOf(authorityPem ?? server.certificatePem),
    until: until.toISOString(),
    daysLeft: left,
    isDue: left <= RENEW_DAYS,
  };
};

/** SHA-256 over the certificate, in pairs of digits as a tablet shows it. */
export const fingerprintOf = (pem: string): string => new X509Certificate(pem).fingerprint256;
