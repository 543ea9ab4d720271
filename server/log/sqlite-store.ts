import { DatabaseSync } from 'node:sqlite';
import { assert, fail, ok } from '#outcome';
import type {
  DocumentAside,
  DocumentKind,
  DocumentStore,
  DocumentSummary,
  Save,
  Shelving,
  StoredDocument,
} from './document-store.ts';
import { bringUp } from './schema.ts';

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
  `);
  const flushing = database.prepare('PRAGMA synchronous').get();
  assert(flushing?.['synchronous'] === 2, 'the database flushes every commit (synchronous FULL)');
  bringUp(database);
  return {
    list: () =>
      database
        .prepare(`${SUMMARY} ${LAST_SHELVING} WHERE ${IN_USE} ORDER BY d.kind, d.id`)
        .all()
        .map(summaryOf),
    listAside: () =>
      database
        .prepare(`${ASIDE} ${LAST_SHELVING} WHERE ${SET_ASIDE} ORDER BY d.kind, d.id`)
        .all()
        .map(asideOf),
    current: (id) =>
      documentOf(database.prepare(`${FULL} WHERE d.id = ? AND r.revision = d.revision`).get(id)),
    revision: (id, revision) =>
      documentOf(database.prepare(`${FULL} WHERE d.id = ? AND r.revision = ?`).get(id, revision)),
    revisions: (id) =>
      database.prepare(`${SUMMARY} WHERE d.id = ? ORDER BY r.revision DESC`).all(id).map(summaryOf),
    save: (save) => saveRevision(database, save),
    shelve: (shelving) => noteShelving(database, shelving),
    close: () => database.close(),
  };
};

const COLUMNS = 'd.id, d.kind, r.revision, r.saved_at, r.saved_by, r.why, r.remark';
const TABLES = 'FROM document d JOIN revision r ON r.document = d.id';
const SUMMARY = `SELECT ${COLUMNS} ${TABLES}`;
const FULL = `SELECT ${COLUMNS}, r.text ${TABLES}`;
const ASIDE = `SELECT ${COLUMNS}, s.at, s.by, s.why AS aside_why ${TABLES}`;
const LAST_SHELVING = `LEFT JOIN shelving s
  ON s.number = (SELECT MAX(number) FROM shelving WHERE document = d.id)`;
const IN_USE = 'r.revision = d.revision AND COALESCE(s.is_aside, 0) = 0';
const SET_ASIDE = 'r.revision = d.revision AND s.is_aside = 1';

type Row = Record<string, unknown>;

const summaryOf = (row: Row): DocumentSummary => ({
  id: String(row['id']),
  kind: String(row['kind']) as DocumentKind,
  revision: Number(row['revision']),
  savedAt: String(row['saved_at']),
  savedBy: String(row['saved_by']),
  why: String(row['why']),
  remark: String(row['remark']),
});

const asideOf = (row: Row): DocumentAside => ({
  ...summaryOf(row),
  asideAt: String(row['at']),
  asideBy: String(row['by']),
  asideWhy: String(row['aside_why']),
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
    const { text: _text, expectedRevision, ...summary } = save;
    return ok({ ...summary, revision: expectedRevision + 1 });
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
      `INSERT INTO revision (document, revision, text, saved_at, saved_by, why, remark)
       VALUES (?, ?, ?, ?, ?, ?, ?)`,
    )
    .run(save.id, revision, save.text, save.savedAt, save.savedBy, save.why, save.remark);
};

/** Only a change is noted: one statement, so that two hands at once note it once. */
const noteShelving = (database: DatabaseSync, shelving: Shelving): boolean => {
  const { id, isAside, at, by, why } = shelving;
  const state = isAside ? 1 : 0;
  const { changes } = database
    .prepare(
      `INSERT INTO shelving (document, is_aside, at, by, why)
       SELECT d.id, ?, ?, ?, ? FROM document d ${LAST_SHELVING}
       WHERE d.id = ? AND COALESCE(s.is_aside, 0) <> ?`,
    )
    .run(state, at, by, why, id, state);
  return Number(changes) === 1;
};
