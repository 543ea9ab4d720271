import { randomBytes, X509Certificate } from 'node:crypto';
import {
  chmodSync,
  copyFileSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import type { NetworkInterfaceInfo } from 'node:os';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Refusal, Result } from '#outcome';
import { type Listening, openListening } from './listening.ts';
import { isOwnHost, isSameOrigin } from './own-hosts.ts';
import { addressesOf } from './own-names.ts';
import { type LanSettings, readLanSettings } from './settings.ts';

const FIRST = new Date('2026-11-25T12:00:00Z');
const DAY_MS = 86_400_000;

const card = (address: string, internal = false): NetworkInterfaceInfo => ({
  address,
  internal,
  family: 'IPv4',
  netmask: '255.255.255.0',
  mac: '00:00:00:00:00:00',
  cidr: null,
});

let folder = '';
let cards: Record<string, NetworkInterfaceInfo[]> = {};
let day = 0;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-lan-'));
  cards = { lo: [card('127.0.0.1', true)], eth0: [card('192.168.7.20')] };
  day = 0;
});
afterEach(() => rmSync(folder, { recursive: true }));

const machine = { hostname: () => 'Flies', interfaces: () => cards };
const making = { now: () => new Date(FIRST.getTime() + day * DAY_MS), randomBytes };

const open = (settings: Partial<LanSettings> = {}): Result<Listening, readonly Refusal[]> =>
  openListening({
    settings: { listen: 'https', names: [], ...settings },
    dataFolder: folder,
    port: 4747,
    trustPort: 4748,
    machine,
    making,
  });
const opened = (settings: Partial<LanSettings> = {}): Listening => {
  const listening = open(settings);
  if (!listening.ok) throw new Error(JSON.stringify(listening.error));
  return listening.value;
};
const codeOf = (result: Result<unknown, readonly Refusal[]>): string | undefined =>
  result.ok ? undefined : result.error[0]?.code;
const leafOf = (listening: Listening): X509Certificate =>
  new X509Certificate(listening.server()?.certificatePem ?? '');

describe('the certificates that are kept', () => {
  it('are made on the first start, the keys for their owner only, and stay', () => {
    const first = opened();
    const files = readdirSync(join(folder, 'lan')).toSorted();
    expect(files).toEqual(['authority.crt', 'authority.key', 'server.crt', 'server.key']);
    for (const key of ['authority.key', 'server.key']) {
      expect(statSync(join(folder, 'lan', key)).mode & 0o777).toBe(0o600);
    }
    const again = opened();
    expect(again.authorityPem()).toBe(first.authorityPem());
    expect(again.server()).toEqual(first.server());
  });

  it('close a key again that has come open to others', () => {
    opened();
    chmodSync(join(folder, 'lan', 'authority.key'), 0o644);
    opened();
    expect(statSync(join(folder, 'lan', 'authority.key')).mode & 0o777).toBe(0o600);
  });

  it('renew the server with 60 days left, by the same authority and no day before', () => {
    const listening = opened();
    const [first, authority] = [leafOf(listening).serialNumber, listening.authorityPem()];
    day = 339;
    expect(listening.refresh()).toEqual({ ok: true, value: false });
    expect(leafOf(listening).serialNumber).toBe(first);
    day = 340;
    expect(listening.certificate()?.isDue).toBe(true);
    expect(listening.refresh()).toEqual({ ok: true, value: true });
    expect(leafOf(listening).serialNumber).not.toBe(first);
    expect(listening.authorityPem()).toBe(authority);
    expect(listening.certificate()?.daysLeft).toBe(400);
  });

  it('renew the server when it is given another address', () => {
    const listening = opened();
    cards = { ...cards, eth0: [card('10.1.2.3')] };
    expect(listening.refresh()).toEqual({ ok: true, value: true });
    expect(leafOf(listening).checkIP('10.1.2.3')).toBe('10.1.2.3');
    expect(listening.urls()[0]).toBe('https://10.1.2.3:4747');
    cards = { lo: cards['lo'] ?? [] };
    // A cable pulled for a moment asks for no new one.
    expect(listening.refresh()).toEqual({ ok: true, value: false });
  });

  it('[LAN-004] do not make an authority anew where half of it is missing or another’s', () => {
    opened();
    copyFileSync(join(folder, 'lan', 'server.key'), join(folder, 'lan', 'authority.key'));
    expect(codeOf(open())).toBe('LAN-004');
    rmSync(join(folder, 'lan', 'authority.key'));
    expect(codeOf(open())).toBe('LAN-004');
    rmSync(join(folder, 'lan', 'authority.crt'));
    expect(codeOf(open())).toBeUndefined();
  });

  it('[LAN-004] do not go on with an authority that has lapsed', () => {
    opened();
    day = 3651;
    expect(codeOf(open())).toBe('LAN-004');
  });

  it('[LAN-005] refuse a name that the authority was not made for', () => {
    opened({ names: ['flies.house.example'] });
    expect(codeOf(open({ names: ['rail.flies.house.example'] }))).toBeUndefined();
    expect(codeOf(open({ names: ['flies.other.example'] }))).toBe('LAN-005');
  });

  it('take the certificate of the house, and [LAN-002] [LAN-003] refuse what is not one', () => {
    const own = opened({ names: ['flies.home.arpa'] });
    const [chain, key] = [join(folder, 'chain.pem'), join(folder, 'key.pem')];
    const certificate = { chain, key };
    expect(codeOf(open({ certificate }))).toBe('LAN-002');
    writeFileSync(chain, own.server()?.certificatePem ?? '');
    writeFileSync(key, readFileSync(join(folder, 'lan', 'authority.key')));
    expect(codeOf(open({ certificate }))).toBe('LAN-002');
    writeFileSync(key, own.server()?.keyPem ?? '');
    const given = opened({ certificate });
    expect([given.mode, given.authorityPem(), given.signOffs]).toEqual([
      'houseCertificate',
      null,
      true,
    ]);
    day = 401;
    expect(codeOf(open({ certificate }))).toBe('LAN-003');
    // One that was good at the start stays in use, and is said to be out of date.
    expect(codeOf(given.refresh())).toBe('LAN-003');
    expect(given.certificate()?.daysLeft).toBeLessThan(0);
  });
});

describe('settings', () => {
  const file = (text: string) => writeFileSync(join(folder, 'lan.json'), text);

  it('are this machine alone where nobody says anything', () => {
    expect(readLanSettings(folder, undefined)).toEqual({
      ok: true,
      value: { listen: 'loopback', names: [] },
    });
    expect(opened({ listen: 'loopback' })).toMatchObject({
      mode: 'loopback',
      bind: '127.0.0.1',
      signOffs: true,
    });
  });

  it('come from the environment before the file', () => {
    file('{"listen": "https", "names": ["flies.home.arpa"]}');
    expect(readLanSettings(folder, undefined)).toMatchObject({ value: { listen: 'https' } });
    expect(readLanSettings(folder, 'plain')).toMatchObject({
      value: { listen: 'plain', names: ['flies.home.arpa'] },
    });
    expect(readLanSettings(folder, '0')).toMatchObject({ value: { listen: 'loopback' } });
  });

  it('[LAN-001] are refused where they are not understood', () => {
    expect(codeOf(readLanSettings(folder, 'yes'))).toBe('LAN-001');
    for (const text of [
      '{',
      '[]',
      '{}',
      '{"listen": "https", "nmaes": []}',
      '{"listen": "https", "names": ["two words"]}',
      '{"listen": "https", "names": ["*.home.arpa"]}',
      '{"listen": "https", "address": "192.168.7"}',
      '{"listen": "https", "certificate": {"chain": "a.pem"}}',
    ]) {
      file(text);
      expect(codeOf(readLanSettings(folder, undefined)), text).toBe('LAN-001');
    }
  });
});

describe('names and addresses', () => {
  it('are private ones, the chosen first, and networks inside the machine last', () => {
    cards = {
      docker0: [card('172.17.0.1')],
      eth0: [card('192.168.7.20'), card('93.184.216.34')],
      wlan0: [card('10.0.0.5')],
      lo: [card('127.0.0.1', true)],
    };
    expect(addressesOf(machine, undefined)).toEqual(['10.0.0.5', '192.168.7.20', '172.17.0.1']);
    expect(addressesOf(machine, '192.168.7.20')[0]).toBe('192.168.7.20');
  });

  it('are the only ones under which the server answers', () => {
    const listening = opened({ names: ['flies.home.arpa'] });
    for (const host of [
      'flies.home.arpa:4747',
      'FLIES.local',
      'flies.local.',
      'flies:4747',
      '192.168.7.20:4747',
      'localhost',
      '[::1]:4747',
    ]) {
      expect(isOwnHost(listening, host), host).toBe(true);
    }
    for (const host of [
      undefined,
      '',
      'other.example',
      '192.168.7.21:4747',
      'flies.home.arpa.other.example',
      'flies.home.arpa:4747@other.example',
      'localhost:',
      'localhost:4747:1',
      '127.0.0.1.other.example',
    ]) {
      expect(isOwnHost(listening, host), String(host)).toBe(false);
    }
    const own = 'https://192.168.7.20:4747';
    expect(isSameOrigin(listening, own, '192.168.7.20:4747')).toBe(true);
    expect(isSameOrigin(listening, own.replace('https', 'http'), '192.168.7.20:4747')).toBe(false);
    expect(isSameOrigin(listening, 'null', '192.168.7.20:4747')).toBe(false);
  });

  it('need no certificate in a trial, where nobody signs off', () => {
    const trial = opened({ listen: 'plain' });
    expect([trial.scheme, trial.signOffs, trial.server(), trial.trustUrls()]).toEqual([
      'http',
      false,
      null,
      [],
    ]);
    expect(trial.urls()[0]).toBe('http://192.168.7.20:4747');
  });
});
