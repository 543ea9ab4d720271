import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, expect, it } from 'vitest';
import { documentStoreContract } from './document-store.contract.ts';
import { openSqliteStore } from './sqlite-store.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-store-'));
let files = 0;
const newFile = (): string => {
  files += 1;
  return join(folder, `${files}.sqlite`);
};
afterAll(() => rmSync(folder, { recursive: true }));

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
