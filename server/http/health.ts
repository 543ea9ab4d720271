/** How this server is: for a person on the screen, and for a device that pins which house it is. */
import { statfsSync } from 'node:fs';
import type { FastifyInstance } from 'fastify';
import type { Caution, Disk, Health } from '#events';
import { unreachable } from '#outcome';
import { loopbackListening } from '../lan/index.ts';
import type { HouseRecord } from '../log/index.ts';
import type { AppParts } from './app-parts.ts';
import type { HealthParts } from './health-parts.ts';

/** Below this a backup of a large house no longer fits beside it. */
const DISK_LOW_BYTES = 2 * 1024 ** 3;
/** Below this the log stops taking commands soon. */
const DISK_FULL_BYTES = 64 * 1024 ** 2;
/** A house backs up daily (see the guide); a week without one is no longer an oversight. */
const BACKUP_OLD_MS = 7 * 86_400_000;

/** The disk under a folder, and null on a system that does not say. */
export const diskOf = (folder: string): Disk | null => {
  try {
    const { bavail, blocks, bsize } = statfsSync(folder);
    return { freeBytes: bavail * bsize, totalBytes: blocks * bsize };
  } catch {
    return null;
  }
};

type HealthNow = Pick<Health, 'mode' | 'certificate' | 'database' | 'record' | 'disk'> & {
  readonly now: Date;
};

/** What a technician has to see to, the worst first. */
export const cautionsOf = (health: HealthNow): readonly Caution[] => {
  const { record, disk, certificate, mode, database, now } = health;
  const free = disk?.freeBytes ?? Number.POSITIVE_INFINITY;
  const isServed = mode !== 'loopback' && database === 'house';
  const backupMs = Date.parse(record.lastBackupAt ?? '1970-01-01T00:00:00Z');
  const all: readonly (readonly [Caution, boolean])[] = [
    ['notFlushed', !record.isFlushed],
    ['diskFull', free < DISK_FULL_BYTES],
    ['readOnly', record.isReadOnly],
    ['certificateDue', mode === 'houseCertificate' && certificate?.isDue === true],
    ['diskLow', free >= DISK_FULL_BYTES && free < DISK_LOW_BYTES],
    ['noBackup', isServed && now.getTime() - backupMs > BACKUP_OLD_MS],
    ['plainHttp', mode === 'plain'],
  ];
  return all.filter(([, isSo]) => isSo).map(([caution]) => caution);
};

const isFailing = (caution: Caution): boolean => {
  switch (caution) {
    case 'notFlushed':
    case 'diskFull':
      return true;
    case 'diskLow':
    case 'readOnly':
    case 'certificateDue':
    case 'plainHttp':
    case 'noBackup':
      return false;
    default:
      return unreachable(caution);
  }
};

const NOTHING_SAID: HealthParts = { disk: () => null, lastBackupAt: () => null };

const vitalsOf = (record: HouseRecord, lastBackupAt: string | null): Health['record'] => {
  const { houseKey, recordKey, isRecord } = record.identity();
  return {
    seq: record.log.head().seq,
    houseKey,
    recordKey,
    isReadOnly: !isRecord,
    isFlushed: record.isFlushed(),
    lastBackupAt,
  };
};

/** Holds no secret, so that a device may ask before anybody has signed in. */
export const healthRoutes = (app: FastifyInstance, parts: AppParts): void => {
  const { health = NOTHING_SAID, databases, now, listening = loopbackListening(), log } = parts;
  const startedAt = now().toISOString();
  app.get('/api/health', async (): Promise<Health> => {
    const moment = now();
    const certificate = listening.certificate();
    const record = vitalsOf(databases.record(), health.lastBackupAt());
    const [disk, database] = [health.disk(), databases.inHand()];
    const { mode, signOffs } = listening;
    const cautions = cautionsOf({ mode, certificate, database, record, disk, now: moment });
    const { version, build } = parts.selfCheck.record().installation;
    return {
      is: cautions.some(isFailing) ? 'failing' : cautions.length > 0 ? 'caution' : 'well',
      cautions,
      time: moment.toISOString(),
      startedAt,
      version,
      build,
      mode,
      signOffs,
      addresses: listening.urls(),
      trustAddresses: listening.trustUrls(),
      certificate,
      database,
      record,
      disk,
      logLevel: log?.level ?? null,
    };
  });
};
