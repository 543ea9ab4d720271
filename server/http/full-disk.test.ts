/** A disk that takes nothing more: what is to be saved is refused in words, and reads go on. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { blankHouse, blankShow, writeDocument } from '#documents';
import { openDatabases } from '../databases.ts';
import { buildApp } from './app.ts';

const now = (): Date => new Date('2026-11-28T12:00:00Z');
const selfCheck = {
  record: () => ({
    installation: { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' },
    state: { is: 'notRun' as const },
  }),
};
const blank = { units: 'metric', words: 'UK', operatingSide: 'stageLeft' } as const;
const SHOW = blankShow({ id: 'play', name: 'Play', house: 'one' });
const FIRST = [
  {
    id: 'house:one',
    kind: 'house',
    text: writeDocument(blankHouse({ id: 'one', name: 'One', ...blank })),
  },
  { id: 'show:play', kind: 'show', text: writeDocument(SHOW) },
] as const;
const URL = '/api/documents/show:play';
/** Far more than the file has pages to spare. */
const SAVES = 400;

it('[EVT-008] a full disk refuses a save in words, and the document stays as it was', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'full-disk-'));
  const databases = openDatabases(folder, FIRST, now);
  const app = await buildApp({ databases, webRoot: join(folder, 'none'), now, selfCheck });
  const ask = { url: URL, headers: { host: '127.0.0.1:4747' } } as const;
  const save = (expectedRevision: number) => {
    const document = { ...SHOW, name: `Play ${expectedRevision}` };
    const said = { kind: 'show', expectedRevision, savedBy: 'TD', why: 'test', document };
    return app.inject({ ...ask, method: 'PUT', payload: said });
  };
  try {
    // SQLite answers then as it does on a disk without room (SQLITE_FULL).
    databases.record().database.exec('PRAGMA max_page_count = 1');
    let revision = 1;
    let answer = await save(revision);
    while (answer.statusCode === 200 && revision < SAVES) {
      revision += 1;
      answer = await save(revision);
    }
    expect(answer.statusCode).toBe(507);
    expect(answer.json().title).toMatch(/^The disk of the server is full; nothing was recorded/);
    const read = await app.inject(ask);
    expect(read.json().revision).toBe(revision);
    databases.record().database.exec('PRAGMA max_page_count = 1000000');
    expect((await save(revision)).statusCode).toBe(200);
  } finally {
    await app.close();
    databases.close();
    rmSync(folder, { recursive: true });
  }
});
