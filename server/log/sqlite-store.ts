import type { DatabaseSync } from 'node:sqlite';
import { type EventDraft, type EventLog, type LogFault, recordEvents, sha256OfText } from '#events';
import { fail, ok } from '#outcome';
import type {
  DocumentAside,
  DocumentKind,
  DocumentStore,
  DocumentSummary,
  Save,
  Shelving,
  StoredDocument,
} from './document-store.ts';
import { committed, RecordFault } from './transaction.ts';

/** What a save and a shelving are written with: the log that says so, and who stands before it. */
type Beside = {
  readonly log: EventLog;
  readonly closedBy: () => LogFault | null;
  readonly written: () => void;
  readonly nowMs: () => number;
  readonly newId: () => string;
};

/** Documents in the tables of `schema.ts`; each change is an event of the record too. */
export const sqliteStore = (database: DatabaseSync, beside: Beside): DocumentStore => {
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
    save: (save) => saveRevision(database, beside, save),
    shelve: (shelving) => noteShelving(database, beside, shelving),
    close: () => undefined,
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

const saveRevision = (
  database: DatabaseSync,
  beside: Beside,
  save: Save,
): ReturnType<DocumentStore['save']> =>
  acted(database, beside, () => {
    const row = database.prepare(`${SUMMARY} WHERE d.id = ? AND r.revision = d.revision`);
    const before = row.get(save.id);
    const current = before === undefined ? null : summaryOf(before);
    if ((current?.revision ?? 0) !== save.expectedRevision) {
      return fail({ reason: 'stale', current } as const);
    }
    writeRevision(database, save);
    noteSaved(beside, save);
    const { text: _text, expectedRevision, person: _person, device: _device, ...summary } = save;
    return ok({ ...summary, revision: expectedRevision + 1 });
  });

/** One act on documents and log; a disk that does not take it is told as a `RecordFault`. */
const acted = <T>(database: DatabaseSync, { closedBy, written }: Beside, work: () => T): T => {
  const closed = closedBy();
  if (closed !== null) throw new RecordFault(closed);
  // Part of another act, it is not written before that one is.
  const isPart = database.isTransaction;
  const done = committed(database, work);
  if (!done.ok) throw new RecordFault(done.error);
  if (!isPart) written();
  return done.value;
};

/** In the transaction of what it tells of: there is never one without the other. */
const note = (
  { log, newId, nowMs }: Beside,
  draft: EventDraft,
  who: { readonly person?: string | null; readonly device?: string | null },
): void => {
  const by = who.person ?? null;
  const done = recordEvents(log, [draft], {
    ...{ by, newId, nowMs: nowMs() },
    ...(who.device == null ? {} : { device: who.device }),
  });
  if (!done.ok) throw new RecordFault(done.error);
};

const noteSaved = (beside: Beside, save: Save): void =>
  note(
    beside,
    {
      kind: 'document saved',
      target: `document:${save.id}`,
      payload: {
        document: save.id,
        kind: save.kind,
        revision: save.expectedRevision + 1,
        savedBy: whole(save.savedBy),
        why: whole(save.why),
        sha256: sha256OfText(save.text),
      },
    },
    save,
  );

/** As SQLite keeps a text: half a pair of surrogates has no place in UTF-8. */
const whole = (text: string): string => text.replace(/\p{Surrogate}/gu, '\ufffd');

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
const noteShelving = (database: DatabaseSync, beside: Beside, shelving: Shelving): boolean =>
  acted(database, beside, () => {
    const { id, isAside, at, by, why } = shelving;
    const state = isAside ? 1 : 0;
    const { changes } = database
      .prepare(
        `INSERT INTO shelving (document, is_aside, at, by, why)
         SELECT d.id, ?, ?, ?, ? FROM document d ${LAST_SHELVING}
         WHERE d.id = ? AND COALESCE(s.is_aside, 0) <> ?`,
      )
      .run(state, at, by, why, id, state);
    if (Number(changes) === 0) return false;
    const kind = isAside ? 'document set aside' : 'document taken back';
    const payload = { document: id, saidBy: whole(by), why: whole(why) };
    note(beside, { kind, target: `document:${id}`, payload }, shelving);
    return true;
  });
