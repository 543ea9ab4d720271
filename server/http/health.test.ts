import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Caution } from '#events';
import { type Databases, openDatabases } from '../databases.ts';
import { buildApp } from './app.ts';
import { cautionsOf, diskOf } from './health.ts';

const GIB = 1024 ** 3;
const now = new Date('2026-11-25T12:00:00Z');
const daysAgo = (days: number): string => new Date(now.getTime() - days * 86_400_000).toISOString();

const record = {
  seq: 7,
  houseKey: 'a-house',
  recordKey: 'a-record',
  isReadOnly: false,
  isFlushed: true,
  lastBackupAt: daysAgo(1),
};
const well = {
  mode: 'ownAuthority',
  certificate: { fingerprint: 'AA', until: daysAgo(-90), daysLeft: 90, isDue: false },
  database: 'house',
  record,
  disk: { freeBytes: 100 * GIB, totalBytes: 200 * GIB },
  now,
} as const;

describe('what a technician has to see to', () => {
  const due = { ...well.certificate, daysLeft: 20, isDue: true };
  const full = (freeBytes: number) => ({ disk: { freeBytes, totalBytes: 200 * GIB } });
  const CASES: readonly (readonly [
    string,
    Partial<Parameters<typeof cautionsOf>[0]>,
    Caution[],
  ])[] = [
    ['nothing, where all is well', {}, []],
    ['a database that does not flush', { record: { ...record, isFlushed: false } }, ['notFlushed']],
    ['a copy that is not the record', { record: { ...record, isReadOnly: true } }, ['readOnly']],
    ['a disk a byte below the least', full(2 * GIB - 1), ['diskLow']],
    ['no disk at the least', full(2 * GIB), []],
    ['a disk that is full', full(64 * 1024 ** 2 - 1), ['diskFull']],
    ['no disk that does not say', { disk: null }, []],
    [
      'a backup of eight days ago',
      { record: { ...record, lastBackupAt: daysAgo(8) } },
      ['noBackup'],
    ],
    ['no backup at all', { record: { ...record, lastBackupAt: null } }, ['noBackup']],
    ['no backup of the demo', { database: 'demo', record: { ...record, lastBackupAt: null } }, []],
    ['plain HTTP', { mode: 'plain', certificate: null }, ['plainHttp']],
    [
      'the house’s certificate when due',
      { mode: 'houseCertificate', certificate: due },
      ['certificateDue'],
    ],
    ['not the own one, which renews itself', { certificate: due }, []],
  ];
  it.each(CASES)('%s', (_title, changes, cautions) => {
    expect(cautionsOf({ ...well, ...changes })).toEqual(cautions);
  });
});

describe('the health of a server', () => {
  let folder = '';
  let databases: Databases;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'counterpoise-health-'));
    databases = openDatabases(folder, [], () => now);
  });
  afterEach(() => {
    databases.close();
    rmSync(folder, { recursive: true });
  });
  const selfCheck = {
    record: () => ({
      installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
      state: { is: 'notRun' as const },
    }),
  };
  const healthOf = async (freeBytes: number, remoteAddress: string) => {
    const disk = { freeBytes, totalBytes: 200 * GIB };
    const health = { disk: () => disk, lastBackupAt: () => null };
    const parts = { databases, webRoot: join(folder, 'none'), now: () => now, selfCheck, health };
    const app = await buildApp(parts);
    const headers = { host: '127.0.0.1:4747' };
    const answer = await app.inject({ url: '/api/health', headers, remoteAddress });
    await app.close();
    return answer;
  };

  it('says which house it is and that it flushes, to who has no name', async () => {
    const answer = await healthOf(100 * GIB, '192.168.7.30');
    expect(answer.statusCode).toBe(200);
    const health = answer.json();
    expect(health).toMatchObject({
      is: 'well',
      mode: 'loopback',
      signOffs: true,
      database: 'demo',
    });
    expect(health.record).toMatchObject({ isFlushed: true, isReadOnly: false });
    expect(health.record.houseKey).toBe(databases.record().identity().houseKey);
    databases.close();
    databases = openDatabases(folder, [], () => now);
    const again = (await healthOf(100 * GIB, '192.168.7.30')).json();
    expect(again.record.houseKey).toBe(health.record.houseKey);
  });

  it('says that it fails, and still answers', async () => {
    const answer = await healthOf(0, '127.0.0.1');
    expect(answer.statusCode).toBe(200);
    expect(answer.json()).toMatchObject({ is: 'failing', cautions: ['diskFull'] });
  });

  it('reads the disk of this system, and says null where there is no such folder', () => {
    const disk = diskOf(folder);
    expect(disk?.totalBytes).toBeGreaterThan(disk?.freeBytes ?? Number.POSITIVE_INFINITY);
    expect(diskOf(join(folder, 'none'))).toBeNull();
  });
});
