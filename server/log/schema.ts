/** The tables of a database, and the steps that bring an older file to them. */
import type { DatabaseSync } from 'node:sqlite';
import { assert } from '#outcome';

/**
 * Each step makes the next version from the one before it, in one transaction; none ever changes.
 * The first makes what is missing only, since files from before the count of versions have it.
 */
const STEPS: readonly string[] = [
  `CREATE TABLE IF NOT EXISTS document (
     id TEXT PRIMARY KEY,
     kind TEXT NOT NULL CHECK (kind IN ('house', 'show', 'state')),
     revision INTEGER NOT NULL
   ) STRICT;
   CREATE TABLE IF NOT EXISTS revision (
     document TEXT NOT NULL REFERENCES document (id),
     revision INTEGER NOT NULL,
     text TEXT NOT NULL,
     saved_at TEXT NOT NULL,
     saved_by TEXT NOT NULL,
     why TEXT NOT NULL,
     PRIMARY KEY (document, revision)
   ) STRICT;`,
  `ALTER TABLE revision ADD COLUMN remark TEXT NOT NULL DEFAULT '';
   CREATE TABLE shelving (
     number INTEGER PRIMARY KEY AUTOINCREMENT,
     document TEXT NOT NULL REFERENCES document (id),
     is_aside INTEGER NOT NULL CHECK (is_aside IN (0, 1)),
     at TEXT NOT NULL,
     by TEXT NOT NULL,
     why TEXT NOT NULL
   ) STRICT;
   CREATE INDEX shelving_of_document ON shelving (document, number);`,
];

const versionOf = (database: DatabaseSync): number =>
  Number(database.prepare('PRAGMA user_version').get()?.['user_version']);

/** Brings the file to the tables of this program; a file of a newer program is not touched. */
export const bringUp = (database: DatabaseSync): void => {
  database.exec('BEGIN IMMEDIATE');
  try {
    const from = versionOf(database);
    assert(from <= STEPS.length, 'the database is of this program or an older one, not a newer');
    for (const step of STEPS.slice(from)) database.exec(step);
    database.exec(`PRAGMA user_version = ${STEPS.length}`);
    database.exec('COMMIT');
  } catch (fault) {
    if (database.isTransaction) database.exec('ROLLBACK');
    throw fault;
  }
};
