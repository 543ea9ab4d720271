import { DatabaseSync } from 'node:sqlite';
import { assert, fail, ok } from '#outcome';
import type {
  DocumentKind,
  DocumentStore,
  DocumentSummary,
  Save,
  StoredDocument,
} from './document-store.ts';

/**
 * One file, written ahead and flushed at every commit, since what was acknowledged must outlive a
 * power cut. Read back at the start: a database that does not flush is refused, not used.
 */
export const openSqliteStore = (file: string): DocumentStore => {
  const database = new DatabaseSync(file);
  database.exec(`
    PRAGMA journal_mode = WAL;
    PRAGMA synchronous = FULL;
    PRAGMA foreign_keys = ON;
    PRAGMA busy_timeout = 5000;
    CREATE TABLE IF NOT EXISTS document (
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
    ) STRICT;
  `);
  const flushing = database.prepare('PRAGMA synchronous').get();
  assert(flushing?.['synchronous'] === 2, 'the database flushes every commit (synchronous FULL)');
  return {
    list: () =>
      database
        .prepare(`${SUMMARY} WHERE r.revision = d.revision ORDER BY d.kind, d.id`)
        .all()
        .map(summaryOf),
    current: (id) =>
      documentOf(database.prepare(`${FULL} WHERE d.id = ? AND r.revision = d.revision`).get(id)),
    revision: (id, revision) =>
      documentOf(database.prepare(`${FULL} WHERE d.id = ? AND r.revision = ?`).get(id, revision)),
    revisions: (id) =>
      database.prepare(`${SUMMARY} WHERE d.id = ? ORDER BY r.revision DESC`).all(id).map(summaryOf),
    save: (save) => saveRevision(database, save),
    close: () => database.close(),
  };
};

const COLUMNS = 'd.id, d.kind, r.revision, r.saved_at, r.saved_by, r.why';
const TABLES = 'FROM document d JOIN revision r ON r.document = d.id';
const SUMMARY = `SELECT ${COLUMNS} ${TABLES}`;
const FULL = `SELECT ${COLUMNS}, r.text ${TABLES}`;

type Row = Record<string, unknown>;

const summaryOf = (row: Row): DocumentSummary => ({
  id: String(row['id']),
  kind: String(row['kind']) as DocumentKind,
  revision: Number(row['revision']),
  savedAt: String(row['saved_at']),
  savedBy: String(row['saved_by']),
  why: String(row['why']),
});

const documentOf = (row: Row | undefined): StoredDocument | null =>
  row === undefined ? null : { ...summaryOf(row), text: String(row['text']) };

const saveRevision = (database: DatabaseSync, save: Save): ReturnType<DocumentStore['save']> => {
  database.exec('BEGIN IMMEDIATE');
  try {
    const row = database.prepare(`${SUMMARY} WHERE d.id = ? AND r.revision = d.revision`);
    const before = row.get(save.id);
    const current = before === undefined ? null : summaryOf(before);
    if ((current?.revision ?? 0) !== save.expectedRevision) {
      database.exec('ROLLBACK');
      return fail({ reason: 'stale', current });
    }
    writeRevision(database, save);
    database.exec('COMMIT');
    const { id, kind, savedAt, savedBy, why } = save;
    return ok({ id, kind, revision: save.expectedRevision + 1, savedAt, savedBy, why });
  } catch (fault) {
    if (database.isTransaction) database.exec('ROLLBACK');
    throw fault;
  }
};

const writeRevision = (database: DatabaseSync, save: Save): void => {
  const revision = save.expectedRevision + 1;
  database
    .prepare(
      `INSERT INTO document (id, kind, revision) VALUES (?, ?, ?)
       ON CONFLICT (id) DO UPDATE SET revision = excluded.revision`,
    )
    .run(save.id, save.kind, revision);
  database
    .prepare(
      `INSERT INTO revision (document, revision, text, saved_at, saved_by, why)
       VALUES (?, ?, ?, ?, ?, ?)`,
    )
    .run(save.id, revision, save.text, save.savedAt, save.savedBy, save.why);
};
