/** Opens a database as a record has to be: flushed at each commit, sound, and not a newer one. */
import { DatabaseSync } from 'node:sqlite';
import { bringUp } from './schema.ts';

/** Why a database is not opened, in words for the person who starts the server. */
export class NotOpened extends Error {
  constructor(words: string) {
    super(words);
    this.name = 'NotOpened';
  }
}

/**
 * Every pragma at every open, since none but the journal is kept in the file. `fullfsync` makes
 * macOS flush what the disk holds; elsewhere it does nothing.
 */
const PRAGMAS = `
  PRAGMA journal_mode = WAL;
  PRAGMA synchronous = FULL;
  PRAGMA foreign_keys = ON;
  PRAGMA busy_timeout = 5000;
  PRAGMA fullfsync = ON;
  PRAGMA checkpoint_fullfsync = ON;
  PRAGMA trusted_schema = OFF;
  PRAGMA recursive_triggers = ON;
`;

/** The first without the race of a log that is begun anew (sqlite.org/wal.html, WAL-reset). */
const SQLITE_MIN = [3, 51, 3] as const;

/** 2 is FULL (sqlite.org/pragma.html#pragma_synchronous). */
const SYNCHRONOUS_FULL = 2;

export const openDatabaseFile = (file: string): DatabaseSync => {
  const database = new DatabaseSync(file);
  try {
    refuseOldEngine(database);
    database.exec(PRAGMAS);
    refuseUnflushed(database);
    refuseDamaged(database, file);
    bringUp(database);
    return database;
  } catch (fault) {
    database.close();
    if (fault instanceof NotOpened) throw fault;
    const words = fault instanceof Error ? fault.message : String(fault);
    throw new NotOpened(`${file} does not open as a database of this program: ${words}`);
  }
};

/** One value that a database says of itself. */
export const asked = (database: DatabaseSync, sql: string): unknown =>
  Object.values(database.prepare(sql).get() ?? {})[0];

export const isFlushed = (database: DatabaseSync): boolean =>
  asked(database, 'PRAGMA synchronous') === SYNCHRONOUS_FULL &&
  asked(database, 'PRAGMA journal_mode') === 'wal';

export const isNewEnough = (version: string): boolean => {
  const parts = version.split('.').map(Number);
  for (const [at, least] of SQLITE_MIN.entries()) {
    const part = parts[at] ?? 0;
    if (part !== least) return part > least;
  }
  return true;
};

const refuseOldEngine = (database: DatabaseSync): void => {
  const version = String(asked(database, 'SELECT sqlite_version()'));
  if (isNewEnough(version)) return;
  throw new NotOpened(
    `The database engine is SQLite ${version}; from ${SQLITE_MIN.join('.')} on it keeps what was ` +
      'acknowledged. Start with a newer Node.',
  );
};

const refuseUnflushed = (database: DatabaseSync): void => {
  if (isFlushed(database)) return;
  throw new NotOpened(
    'The database does not flush each commit to the disk (write-ahead log, synchronous FULL). ' +
      'What is acknowledged would not outlive a power cut, so the server does not start. ' +
      'Keep the database on a disk of this machine, not on a network share.',
  );
};

const refuseDamaged = (database: DatabaseSync, file: string): void => {
  const found = asked(database, 'PRAGMA quick_check(1)');
  if (found === 'ok') return;
  throw new NotOpened(
    `${file} is damaged: ${String(found)}. Nothing was changed. ` +
      'Restore a backup (npm run restore).',
  );
};
