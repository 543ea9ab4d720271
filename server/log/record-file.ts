/** A database that somebody else may have in hand, opened to be read: for backups and checks. */
import { existsSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import type { EventLog } from '#events';
import { asked, NotOpened } from './database-file.ts';
import { type Identity, identityIn } from './identity.ts';
import { sqliteEventLog } from './sqlite-event-log.ts';

export type RecordFile = {
  readonly database: DatabaseSync;
  readonly log: EventLog;
  readonly identity: Identity;
  readonly close: () => void;
};

export const openRecordFile = (file: string): RecordFile => {
  if (!existsSync(file)) throw new NotOpened(`There is no file ${file}.`);
  const database = new DatabaseSync(file, { readOnly: true });
  try {
    database.exec('PRAGMA busy_timeout = 5000; PRAGMA trusted_schema = OFF;');
    const identity = hasRecord(database) ? identityIn(database) : null;
    if (identity === null) {
      throw new NotOpened(`${file} holds no record yet. Start the server on it once.`);
    }
    const closedBy = () => ({ kind: 'readOnly', detail: 'opened to be read' }) as const;
    const log = sqliteEventLog(database, { closedBy, written: () => undefined });
    return { database, log, identity, close: () => database.close() };
  } catch (fault) {
    database.close();
    if (fault instanceof NotOpened) throw fault;
    const words = fault instanceof Error ? fault.message : String(fault);
    throw new NotOpened(`${file} is no database of this program, or is damaged: ${words}`);
  }
};

const hasRecord = (database: DatabaseSync): boolean =>
  asked(database, "SELECT COUNT(*) FROM sqlite_schema WHERE name = 'identity'") === 1;
