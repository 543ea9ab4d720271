/** A backup while the server runs, and its way back. A copy is never the record by itself. */
import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { NotOpened } from './database-file.ts';
import { BACKUP_WORDS } from './identity.ts';
import { openRecordFile } from './record-file.ts';
import { logFaultOf } from './transaction.ts';
import { type RecordFaults, verifyRecord } from './verify-record.ts';

export type BackedUp = RecordFaults & { readonly file: string };

/** When a backup was last made, for the page of health; null where none was. */
export const lastBackupAt = (file: string): string | null => {
  const note = noteOf(file);
  return existsSync(note) ? readFileSync(note, 'utf8').trim() : null;
};

const noteOf = (file: string): string => `${file}.last-backup`;

/**
 * One file with all of a database as it is at one moment (VACUUM INTO, which reads as a reader of
 * its own and stops nobody), marked as a backup, verified whole, flushed, and only then given its
 * name. A backup that does not verify is no backup: it is taken away.
 */
export const backUp = (file: string, folder: string, at: Date): BackedUp => {
  mkdirSync(folder, { recursive: true });
  const name = join(folder, `${basename(file, '.sqlite')}-${stampOf(at)}.sqlite`);
  if (existsSync(name)) throw new NotOpened(`${name} is there already; nothing was written.`);
  const part = `${name}.part`;
  rmSync(part, { force: true });
  try {
    copyOut(file, part);
    markAsCopy(part, BACKUP_WORDS);
    const found = verifiedFile(part);
    flush(part);
    renameSync(part, name);
    flushFolder(folder);
    writeFileSync(noteOf(file), `${at.toISOString()}\n`);
    return { ...found, file: name };
  } finally {
    rmSync(part, { force: true });
  }
};

const copyOut = (file: string, part: string): void => {
  const source = openRecordFile(file);
  try {
    source.database.prepare('VACUUM INTO ?').run(part);
  } finally {
    source.close();
  }
};

/**
 * Puts a backup in the place of a database. What lay there is kept beside it under another name.
 * It opens read only until a person makes it the record.
 */
export const restore = (backup: string, file: string, at: Date): RecordFaults => {
  const found = verifiedFile(backup);
  mkdirSync(dirname(file), { recursive: true });
  const part = `${file}.part`;
  rmSync(part, { force: true });
  try {
    copyFileSync(backup, part);
    markAsCopy(part, `The file was restored from ${basename(backup)}.`);
    flush(part);
    setAside(file, at);
    renameSync(part, file);
    flushFolder(dirname(file));
    return found;
  } finally {
    rmSync(part, { force: true });
  }
};

/**
 * The file of before under another name, whole: what was ahead of it in its log is brought in. A
 * log without its file goes too, or it would be taken for that of the file that comes.
 */
const setAside = (file: string, at: Date): void => {
  const stamp = stampOf(at);
  if (existsSync(file)) {
    bringInAlone(file);
    renameSync(file, `${file}.before-${stamp}`);
  }
  for (const end of ['-wal', '-shm']) {
    if (existsSync(`${file}${end}`)) renameSync(`${file}${end}`, `${file}.before-${stamp}${end}`);
  }
};

const stampOf = (at: Date): string => at.toISOString().replace(/[:.]/g, '-');

/**
 * Fails where anybody else has the database open: only one alone may end its write-ahead log. A
 * file that is damaged is the reason for a restore, and is moved as it is.
 */
export const bringInAlone = (file: string): void => {
  const database = new DatabaseSync(file);
  try {
    database.exec('PRAGMA busy_timeout = 0; PRAGMA journal_mode = DELETE;');
  } catch (fault) {
    if (logFaultOf(fault)?.kind === 'busy') {
      throw new NotOpened(`${file} is in use; nothing was changed. Stop the server first.`);
    }
  } finally {
    database.close();
  }
};

const markAsCopy = (file: string, why: string): void => {
  const database = new DatabaseSync(file);
  try {
    // One file and nothing beside it, so that nobody carries half of it away.
    database.exec('PRAGMA journal_mode = DELETE; PRAGMA synchronous = FULL;');
    database.prepare('UPDATE identity SET is_record = 0, why = ?').run(why);
  } finally {
    database.close();
  }
};

const verifiedFile = (file: string): RecordFaults => {
  const copy = openRecordFile(file);
  try {
    const found = verifyRecord(copy);
    if (found.faults.length === 0) return found;
    throw new NotOpened(`${file} does not verify: ${found.faults.join('; ')}`);
  } finally {
    copy.close();
  }
};

const flush = (path: string): void => {
  const handle = openSync(path, 'r+');
  fsyncSync(handle);
  closeSync(handle);
};

/** The name of a file is kept by its folder. Windows has no such flush, and needs none. */
const flushFolder = (folder: string): void => {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  fsyncSync(handle);
  closeSync(handle);
};
