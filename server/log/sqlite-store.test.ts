import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, expect, it } from 'vitest';
import { documentStoreContract } from './document-store.contract.ts';
import type { DocumentStore } from './document-store.ts';
import { openHouseRecord } from './house-record.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-store-'));
let files = 0;
const newFile = (): string => {
  files += 1;
  return join(folder, `${files}.sqlite`);
};
afterAll(() => rmSync(folder, { recursive: true }));

const surroundings = () => ({ nowMs: () => 1000, newId: () => randomUUID() });
const openSqliteStore = (file: string): DocumentStore => {
  const record = openHouseRecord(file, surroundings());
  return { ...record.store, close: record.close };
};

documentStoreContract('SQLite', () => openSqliteStore(newFile()));

it('finds everything again after it was closed', () => {
  const file = newFile();
  const first = openSqliteStore(file);
  first.save({
    id: 'show:a',
    kind: 'show',
    text: '{}',
    expectedRevision: 0,
    savedAt: '2026-11-25T10:00:00.000Z',
    savedBy: 'TD',
    why: 'first',
    remark: '',
  });
  first.close();
  const again = openSqliteStore(file);
  expect(again.current('show:a')?.revision).toBe(1);
  again.close();
});

it('writes ahead and flushes every commit', () => {
  const file = newFile();
  const store = openSqliteStore(file);
  const reader = new DatabaseSync(file);
  expect(reader.prepare('PRAGMA journal_mode').get()).toEqual({ journal_mode: 'wal' });
  reader.close();
  store.close();
});

/** The tables as they were made before there were remarks and shelves, with what they held. */
const OLD_TABLES = `
  CREATE TABLE document (
    id TEXT PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind IN ('house', 'show', 'state')),
    revision INTEGER NOT NULL
  ) STRICT;
  CREATE TABLE revision (
    document TEXT NOT NULL REFERENCES document (id),
    revision INTEGER NOT NULL,
    text TEXT NOT NULL,
    saved_at TEXT NOT NULL,
    saved_by TEXT NOT NULL,
    why TEXT NOT NULL,
    PRIMARY KEY (document, revision)
  ) STRICT;
  INSERT INTO document VALUES ('show:a', 'show', 2);
  INSERT INTO revision VALUES
    ('show:a', 1, '{"first":true}', '2026-11-01T10:00:00.000Z', 'TD', 'first'),
    ('show:a', 2, '{"second":true}', '2026-11-02T10:00:00.000Z', 'head flyman', 'weighed');
`;

it('opens a file of the first release and loses nothing of it', () => {
  const file = newFile();
  const old = new DatabaseSync(file);
  old.exec(OLD_TABLES);
  old.close();
  for (const round of [1, 2]) {
    const store = openSqliteStore(file);
    expect(store.revisions('show:a').map(({ why, remark }) => [why, remark])).toEqual([
      ['weighed', ''],
      ['first', ''],
    ]);
    expect(store.revision('show:a', 1)?.text).toBe('{"first":true}');
    expect(store.current('show:a')?.text).toBe('{"second":true}');
    expect(store.list(), `round ${round}`).toHaveLength(1);
    store.close();
  }
});

it('does not touch a file of a newer program', () => {
  const file = newFile();
  const newer = new DatabaseSync(file);
  newer.exec('PRAGMA user_version = 99');
  newer.close();
  expect(() => openSqliteStore(file)).toThrow('not a newer');
});
