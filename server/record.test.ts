import { createHash, randomUUID } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { receiveCommand } from '#events';
import { openDatabases } from './databases.ts';
import { type HouseRecord, lastBackupAt, openHouseRecord } from './log/index.ts';
import { run } from './record.ts';

let folder: string;
let data: string;
let file: string;

const DEMO = [{ id: 'house:kestlemere', kind: 'house', text: '{}' }] as const;

const open = (): HouseRecord => openHouseRecord(file, { nowMs: Date.now, newId: randomUUID });

const take = (record: HouseRecord, n: number) =>
  receiveCommand(
    record.log,
    {
      ...{ commandId: `command-${n}`, device: 'd1', target: 'set:11', seen: null, clientMs: n },
      ...{ kind: 'note written', payload: { text: `Seilklemme ${n} öffnet`, writtenMs: null } },
    },
    { by: null, nowMs: Date.now(), newId: randomUUID },
    () => null,
  );

const save = (record: HouseRecord, revision: number) =>
  record.store.save({
    ...{ id: 'show:a', kind: 'show', text: `{"n":${revision}}`, expectedRevision: revision },
    ...{ savedAt: '2026-11-28', savedBy: 'TD', why: 'edited', remark: '' },
  });

const said = async (...args: readonly string[]) => {
  let [out, err] = ['', ''];
  const code = await run([...args, '--data', data], {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
};

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-commands-'));
  data = join(folder, 'data');
  mkdirSync(data);
  file = join(data, 'house.sqlite');
  writeFileSync(join(data, 'in-hand'), 'house\n');
  const record = open();
  for (let n = 1; n <= 5; n += 1) take(record, n);
  for (const revision of [0, 1]) save(record, revision);
  record.store.shelve({ id: 'show:a', isAside: true, at: '2026-11-28', by: 'TD', why: 'over' });
  record.close();
});
afterEach(() => rmSync(folder, { recursive: true }));

const backups = (): readonly string[] => readdirSync(join(folder, 'backups'));
const backupFile = (): string => join(folder, 'backups', backups()[0] ?? 'none');

describe('verify', () => {
  it('says that a record is whole, with its head', async () => {
    const record = open();
    const { hash } = record.log.head();
    record.close();
    const { code, out } = await said('verify');
    expect(code).toBe(0);
    expect(out).toContain(`whole: 8 events, 2 revisions. Head ${hash}`);
  });

  it.each([
    ["DROP TRIGGER event_no_update; UPDATE event SET by = 'x' WHERE seq = 3", 'event 3 does not'],
    [
      "DROP TRIGGER revision_no_update; UPDATE revision SET text = '{}'",
      'is not the text that was',
    ],
    ['DROP TRIGGER revision_no_delete; DELETE FROM revision WHERE revision = 2', 'is not there'],
    ['DROP TRIGGER answer_no_delete; DELETE FROM answer', 'came of a command that has no answer'],
    ["DROP TRIGGER event_no_update; UPDATE event SET payload = 'x' WHERE seq = 3", 'JSON'],
  ])('finds what was changed behind its back: %s', async (sql, words) => {
    const database = new DatabaseSync(file);
    database.exec(sql);
    database.close();
    const { code, out } = await said('verify');
    expect(code).toBe(1);
    expect(out).toContain(words);
    expect(out).toContain('NOT whole');
  });

  it('says in words that there is nothing, or no record', async () => {
    expect(await said('verify', '--database', 'demo')).toMatchObject({ code: 2 });
    writeFileSync(join(data, 'demo.sqlite'), 'x'.repeat(5000));
    const { code, err } = await said('verify', '--database', 'demo');
    expect(code).toBe(2);
    expect(err).toContain('is no database of this program');
  });
});

describe('backup and restore', () => {
  it('copies while the server writes, into one file that verifies', async () => {
    const record = open();
    take(record, 6);
    const { code, out } = await said('backup', join(folder, 'backups'));
    expect(code).toBe(0);
    expect(out).toContain('9 events, 2 revisions');
    expect(backups()).toHaveLength(1);
    expect(take(record, 7).ok).toBe(true);
    record.close();
    expect(lastBackupAt(file)).toMatch(/^\d{4}-\d\d-\d\dT/);
  });

  it('makes no backup of a record that does not verify', async () => {
    const database = new DatabaseSync(file);
    database.exec("DROP TRIGGER event_no_update; UPDATE event SET by = 'x' WHERE seq = 3");
    database.close();
    const { code, err } = await said('backup', join(folder, 'backups'));
    expect(code).toBe(2);
    expect(err).toContain('does not verify: event 3');
    expect(backups()).toEqual([]);
    expect(lastBackupAt(file)).toBeNull();
  });

  it('restores to what it was, read only, and keeps what lay there', async () => {
    await said('backup', join(folder, 'backups'));
    const later = open();
    take(later, 6);
    later.close();
    expect(await said('restore', backupFile())).toMatchObject({ code: 0 });
    const restored = open();
    expect(restored.log.head().seq).toBe(8);
    expect(restored.identity()).toMatchObject({ isRecord: false });
    expect(restored.identity().why).toContain('restored from house-');
    expect(take(restored, 7)).toMatchObject({ ok: false, error: { kind: 'readOnly' } });
    restored.close();
    const kept = readdirSync(data).filter((name) => name.includes('.before-'));
    expect(kept).toHaveLength(1);
    const before = new DatabaseSync(join(data, kept[0] ?? ''), { readOnly: true });
    expect(before.prepare('SELECT MAX(seq) AS seq FROM event').get()).toEqual({ seq: 9 });
    before.close();
  });

  it('is made the record by a person with a name and a reason, once', async () => {
    await said('backup', join(folder, 'backups'));
    await said('restore', backupFile());
    expect(await said('make-record', '--by', ' ', '--why', 'x')).toMatchObject({ code: 2 });
    const why = ['--why', 'the disk died'];
    const shown = open();
    expect(await said('make-record', '--by', 'A. Lead', ...why)).toMatchObject({ code: 2 });
    expect(shown.identity().isRecord).toBe(false);
    shown.close();
    expect(await said('make-record', '--by', 'A. Lead', ...why)).toMatchObject({ code: 0 });
    expect(await said('make-record', '--by', 'A. Lead', ...why)).toMatchObject({ code: 2 });
    const record = open();
    expect(record.log.after(8, 10)).toMatchObject([
      { kind: 'record made', payload: { saidBy: 'A. Lead', why: 'the disk died' } },
    ]);
    expect(take(record, 8).ok).toBe(true);
    record.close();
    expect(await said('verify')).toMatchObject({ code: 0 });
  });

  it('puts a house where it belongs, in a new folder or beside the demo in hand', async () => {
    await said('backup', join(folder, 'backups'));
    const backup = backupFile();
    data = join(folder, 'new');
    expect(await said('restore', backup)).toMatchObject({ code: 0 });
    expect(readdirSync(data)).not.toContain('demo.sqlite');
    // The next start opens it, and so do the commands that say no name.
    expect(readFileSync(join(data, 'in-hand'), 'utf8')).toBe('house\n');
    expect(await said('verify')).toMatchObject({ code: 0 });
    const opened = openDatabases(data, DEMO, () => new Date());
    expect(opened.inHand()).toBe('house');
    expect(opened.record().identity().isRecord).toBe(false);
    opened.close();
    data = join(folder, 'beside');
    openDatabases(data, DEMO, () => new Date()).close();
    const { code, out } = await said('restore', backup);
    expect(code).toBe(0);
    expect(out).toContain('house.sqlite is restored');
    expect(out).toContain('The demo is in hand: take the house in hand');
    expect(existsSync(join(data, 'in-hand'))).toBe(false);
  });

  it('knows the demo from a house whatever the backup is called', async () => {
    data = join(folder, 'demo');
    openDatabases(data, DEMO, () => new Date()).close();
    await said('backup', join(folder, 'backups'));
    const backup = join(folder, 'house-of-last-night.sqlite');
    copyFileSync(backupFile(), backup);
    data = join(folder, 'new');
    const { code, err } = await said('restore', backup, '--database', 'house');
    expect(code).toBe(2);
    expect(err).toContain('is a backup of the demo, not of the house; nothing was changed');
    expect(existsSync(data)).toBe(false);
    expect(await said('restore', backup, '--database', 'demo')).toMatchObject({ code: 0 });
    expect(readdirSync(data)).toContain('demo.sqlite');
  });

  it('knows a house by its blank documents, and what people brought into it', async () => {
    data = join(folder, 'own');
    const databases = openDatabases(data, DEMO, () => new Date());
    databases.take('house', [
      { id: 'house:house', kind: 'house', text: '{}' },
      { id: 'show:first-show', kind: 'show', text: '{}' },
    ]);
    databases.store().save({
      ...{ id: 'house:kestlemere', kind: 'house', text: '{}', expectedRevision: 0 },
      ...{ savedAt: '2026-11-28', savedBy: 'TD', why: 'brought in', remark: '' },
    });
    databases.close();
    // As a house that was once put in the place of the demo has them, by the program itself.
    renameSync(join(data, 'house.sqlite'), join(data, 'demo.sqlite'));
    rmSync(join(data, 'house.sqlite.witness'));
    rmSync(join(data, 'in-hand'));
    openDatabases(data, [{ ...DEMO[0], id: 'house:skelderwick' }], () => new Date()).close();
    await said('backup', join(folder, 'backups'));
    const { code, err } = await said('restore', backupFile(), '--database', 'demo');
    expect(code).toBe(2);
    expect(err).toContain('is a backup of the house, not of the demo');
    expect(await said('restore', backupFile())).toMatchObject({ code: 0 });
  });

  it('restores nothing while the server has the database open', async () => {
    await said('backup', join(folder, 'backups'));
    const record = open();
    take(record, 6);
    const { code, err } = await said('restore', backupFile());
    expect(code).toBe(2);
    expect(err).toContain('Stop the server first');
    expect(take(record, 7).ok).toBe(true);
    record.close();
    const again = open();
    expect(again.log.head().seq).toBe(10);
    again.close();
  });

  it('does not take a log that was left behind for that of the restored file', async () => {
    await said('backup', join(folder, 'backups'));
    const record = open();
    for (let n = 6; n <= 12; n += 1) take(record, n);
    // As a crash leaves it, and then somebody who takes the file away and not its log.
    copyFileSync(`${file}-wal`, join(folder, 'left'));
    record.close();
    rmSync(file);
    copyFileSync(join(folder, 'left'), `${file}-wal`);
    expect(await said('restore', backupFile())).toMatchObject({ code: 0 });
    expect(await said('verify')).toMatchObject({ code: 0 });
    const restored = open();
    expect(restored.log.head().seq).toBe(8);
    restored.close();
  });

  it('restores over a file that is damaged beyond opening, and keeps it', async () => {
    await said('backup', join(folder, 'backups'));
    writeFileSync(file, 'the disk died here '.repeat(2000));
    expect(await said('restore', backupFile())).toMatchObject({ code: 0 });
    expect(await said('verify')).toMatchObject({ code: 0 });
    const kept = readdirSync(data).find((name) => name.includes('.before-')) ?? '';
    expect(readFileSync(join(data, kept), 'utf8')).toContain('the disk died here');
  });

  it('restores nothing from a file that does not verify', async () => {
    await said('backup', join(folder, 'backups'));
    const bytes = readFileSync(backupFile());
    bytes.fill(0xff, Math.floor(bytes.length / 2), Math.floor(bytes.length / 2) + 4096);
    writeFileSync(backupFile(), bytes);
    expect(await said('restore', backupFile())).toMatchObject({ code: 2 });
    const record = open();
    expect(record.identity().isRecord).toBe(true);
    record.close();
  });
});

describe('take-out', () => {
  const text = (name: string): string => readFileSync(join(folder, 'out', name), 'utf8');

  it('writes everything as plain files, each with its SHA-256', async () => {
    const { code, out } = await said('take-out', join(folder, 'out'));
    expect(code).toBe(0);
    expect(out).toContain('8 events, 2 revisions');
    const sums = text('SHA256SUMS').trim().split('\n');
    expect(sums).toHaveLength(7);
    for (const line of sums) {
      const [sum, name = ''] = line.split('  ');
      expect(createHash('sha256').update(text(name)).digest('hex')).toBe(sum);
    }
    const documents = text('documents.jsonl')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(documents).toMatchObject([
      { document: 'show:a', revision: 1, file: 'documents/1-show_a/revision-0001.json' },
      { document: 'show:a', revision: 2, why: 'edited' },
      { shelving: { document: 'show:a', is_aside: 1, by: 'TD' } },
    ]);
    expect(text(documents[1].file)).toBe('{"n":1}');
    expect(text('answers.jsonl').trim().split('\n')).toHaveLength(5);
  });

  it('can be verified as its README says, with nothing of this program', async () => {
    await said('take-out', join(folder, 'out'));
    let [seq, previous] = [0, '0'.repeat(64)];
    for (const line of text('events.jsonl').trim().split('\n')) {
      const event = JSON.parse(line) as Record<string, unknown>;
      seq += 1;
      expect(event).toMatchObject({ seq, previous });
      const { hash } = event;
      // The line is canonical: the field taken out of it as text leaves the rest as it is.
      const rest = line.replace(`"hash":"${String(hash)}",`, '');
      expect(createHash('sha256').update(rest, 'utf8').digest('hex')).toBe(hash);
      previous = String(hash);
    }
    expect(JSON.parse(text('record.json'))).toMatchObject({ head: { seq: 8, hash: previous } });
  });

  it('writes into no folder that has something in it', async () => {
    mkdirSync(join(folder, 'out'));
    writeFileSync(join(folder, 'out', 'mine'), 'x');
    expect(await said('take-out', join(folder, 'out'))).toMatchObject({ code: 2 });
    expect(existsSync(join(folder, 'out', 'events.jsonl'))).toBe(false);
  });
});
