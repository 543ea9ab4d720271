/** The tables of a database, and the steps that bring an older file to them. */
import type { DatabaseSync } from 'node:sqlite';
import { assert } from '#outcome';
import { RECORD_TABLES } from './record-tables.ts';

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
  `CREATE TABLE person (
     id TEXT PRIMARY KEY,
     name TEXT NOT NULL,
     name_key TEXT NOT NULL,
     role TEXT NOT NULL CHECK (role IN ('view', 'plan', 'run', 'own')),
     passphrase TEXT NOT NULL,
     joined_at_ms INTEGER NOT NULL,
     removed_at_ms INTEGER
   ) STRICT;
   CREATE UNIQUE INDEX person_by_name ON person (name_key) WHERE removed_at_ms IS NULL;
   CREATE TABLE invitation (
     id TEXT PRIMARY KEY,
     token_hash TEXT NOT NULL UNIQUE,
     name TEXT NOT NULL,
     role TEXT NOT NULL CHECK (role IN ('view', 'plan', 'run', 'own')),
     person TEXT REFERENCES person (id),
     made_by TEXT REFERENCES person (id),
     made_at_ms INTEGER NOT NULL,
     expires_at_ms INTEGER NOT NULL,
     ended_at_ms INTEGER,
     ended TEXT CHECK (ended IN ('used', 'withdrawn'))
   ) STRICT;
   CREATE TABLE competence (
     id TEXT PRIMARY KEY,
     person TEXT NOT NULL REFERENCES person (id),
     task TEXT NOT NULL,
     signed_by TEXT REFERENCES person (id),
     signed_at_ms INTEGER NOT NULL,
     lapses_at_ms INTEGER,
     revoked_by TEXT REFERENCES person (id),
     revoked_at_ms INTEGER
   ) STRICT;
   CREATE INDEX competence_of_person ON competence (person);
   CREATE TABLE device (
     id TEXT PRIMARY KEY,
     token_hash TEXT NOT NULL UNIQUE,
     label TEXT NOT NULL,
     made_at_ms INTEGER NOT NULL,
     expires_at_ms INTEGER NOT NULL
   ) STRICT;
   CREATE TABLE session (
     id TEXT PRIMARY KEY,
     token_hash TEXT NOT NULL UNIQUE,
     person TEXT NOT NULL REFERENCES person (id),
     device TEXT NOT NULL REFERENCES device (id),
     began_at_ms INTEGER NOT NULL,
     seen_at_ms INTEGER NOT NULL,
     proved_at_ms INTEGER NOT NULL,
     expires_at_ms INTEGER NOT NULL,
     ended_at_ms INTEGER
   ) STRICT;
   CREATE INDEX session_of_person ON session (person);
   CREATE TABLE pin (
     person TEXT NOT NULL REFERENCES person (id),
     device TEXT NOT NULL REFERENCES device (id),
     secret TEXT NOT NULL,
     failures INTEGER NOT NULL,
     blocked_until_ms INTEGER NOT NULL,
     PRIMARY KEY (person, device)
   ) STRICT;
   CREATE TABLE program (
     id TEXT PRIMARY KEY,
     token_hash TEXT NOT NULL UNIQUE,
     name TEXT NOT NULL,
     role TEXT NOT NULL CHECK (role IN ('view', 'plan', 'run')),
     made_by TEXT REFERENCES person (id),
     made_at_ms INTEGER NOT NULL,
     expires_at_ms INTEGER NOT NULL,
     used_at_ms INTEGER,
     revoked_at_ms INTEGER
   ) STRICT;
   CREATE TABLE attempt (
     key TEXT PRIMARY KEY,
     failures INTEGER NOT NULL,
     last_at_ms INTEGER NOT NULL,
     blocked_until_ms INTEGER NOT NULL
   ) STRICT;
   CREATE TABLE access_choice (
     name TEXT PRIMARY KEY,
     value TEXT NOT NULL
   ) STRICT;`,
  RECORD_TABLES,
  `CREATE TABLE call_code (
     code_hash TEXT PRIMARY KEY,
     call TEXT NOT NULL,
     post TEXT NOT NULL,
     answers_by TEXT REFERENCES person (id),
     answers_name TEXT,
     expires_at_ms INTEGER NOT NULL
   ) STRICT;
   CREATE TABLE call_seat (
     call TEXT NOT NULL,
     post TEXT NOT NULL,
     client TEXT NOT NULL,
     person TEXT REFERENCES person (id),
     device TEXT,
     answers_by TEXT REFERENCES person (id),
     PRIMARY KEY (call, post)
   ) STRICT;`,
];

const versionOf = (database: DatabaseSync): number =>
  Number(database.prepare('PRAGMA user_version').get()?.['user_version']);

/** Brings the file to the tables of this program; a file of a newer program is not touched. */
export const bringUp = (database: DatabaseSync): void => {
  // On a full disk nothing can be written, and what is there is to be read.
  if (versionOf(database) === STEPS.length) return;
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
