/** Names and addresses by which this machine is reached in the house. IPv4, as it listens. */
import type { NetworkInterfaceInfo } from 'node:os';
import type { Named } from './certificate.ts';
import type { LanSettings } from './settings.ts';

type Interfaces = Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>;

export type Machine = {
  readonly hostname: () => string;
  readonly interfaces: () => Interfaces;
};

export const LOOPBACK = '127.0.0.1';

/** Networks inside the machine (containers, tunnels): reached, but no tablet does so first. */
const INSIDE = /^(docker|br-|veth|virbr|tun|tap|wg|zt|tailscale|utun|vmnet)/;

const PRIVATE = [/^10\./, /^172\.(1[6-9]|2\d|3[01])\./, /^192\.168\./, /^169\.254\./];

/** On a public address the server does not answer at all: its job is inside the house. */
export const isPrivate = (address: string): boolean => PRIVATE.some((range) => range.test(address));

/** Addresses in the house, the one to show first in front. */
export const addressesOf = (
  { interfaces }: Pick<Machine, 'interfaces'>,
  first: string | undefined,
): readonly string[] => {
  const found = Object.entries(interfaces()).flatMap(([name, each = []]) =>
    each
      .filter(
        ({ family, internal, address }) => family === 'IPv4' && !internal && isPrivate(address),
      )
      .map(({ address }) => ({ address, rank: rankOf(name, address, first) })),
  );
  const sorted = found.toSorted((a, b) => a.rank - b.rank || (a.address < b.address ? -1 : 1));
  return [...new Set(sorted.map(({ address }) => address))];
};

const rankOf = (name: string, address: string, first: string | undefined): number => {
  if (address === first) return 0;
  if (address.startsWith('169.254.')) return 3;
  return INSIDE.test(name) ? 2 : 1;
};

/** The name that the machine has, bare and as multicast DNS announces it. */
const machineNames = (hostname: string): readonly string[] => {
  const [bare = ''] = hostname.toLowerCase().split('.');
  if (!/^[a-z0-9]([a-z0-9-]*[a-z0-9])?$/.test(bare) || bare === 'localhost') return [];
  const whole = hostname.toLowerCase();
  return [...new Set([bare, `${bare}.local`, ...(/^[a-z0-9.-]+$/.test(whole) ? [whole] : [])])];
};

/** All by which it may be asked for: names of the house first. */
export const namedOf = (
  { names, address }: Pick<LanSettings, 'names' | 'address'>,
  machine: Machine,
): Named => ({
  names: [...new Set([...names, ...machineNames(machine.hostname()), 'localhost'])],
  addresses: [...addressesOf(machine, address), LOOPBACK],
});
