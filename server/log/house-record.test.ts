import { randomUUID } from 'node:crypto';
import {
  copyFileSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, describe, expect, it } from 'vitest';
import { type ChainFault, type Command, receiveCommand, sha256OfText, verifyChain } from '#events';
import { checkInBackground } from './check-in-background.ts';
import { asked, isNewEnough } from './database-file.ts';
import type { Save } from './document-store.ts';
import { type HouseRecord, openHouseRecord } from './house-record.ts';
import { witnessFile } from './witness.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-record-'));
afterAll(() => rmSync(folder, { recursive: true }));

let files = 0;
const newFile = (): string => {
  files += 1;
  return join(folder, `${files}.sqlite`);
};

const open = (file: string): HouseRecord =>
  openHouseRecord(file, { nowMs: () => 5000, newId: randomUUID });

const note = (n: number, target = 'set:11'): Command => ({
  ...{ commandId: `command-${n}`, device: 'tablet-1', target, seen: null, clientMs: 1 },
  ...{ kind: 'note written', payload: { text: `note ${n}`, writtenMs: null } },
});

const take = ({ log }: HouseRecord, n: number) =>
  receiveCommand(log, note(n), { by: 'p1', nowMs: 5000 + n, newId: randomUUID }, () => null);

const withNotes = (file: string, count: number): HouseRecord => {
  const record = open(file);
  // One flush for all, since the test waits for it.
  record.database.exec('BEGIN');
  for (let n = 1; n <= count; n += 1) take(record, n);
  record.database.exec('COMMIT');
  return record;
};

const save: Save = {
  ...{ id: 'show:a', kind: 'show', text: '{"first":true}', expectedRevision: 0 },
  ...{ savedAt: '2026-11-25T10:00:00.000Z', savedBy: 'TD', why: 'edited', remark: '' },
};

/** What a person with a tool for databases does: the triggers taken out, then the change. */
const tamper = (file: string, sql: string): void => {
  const database = new DatabaseSync(file);
  database.exec(`DROP TRIGGER event_no_update; DROP TRIGGER event_no_delete; ${sql}`);
  database.close();
};

describe('a database that is opened', () => {
  it('flushes every commit, at the first open and at every later one', () => {
    const file = newFile();
    for (const round of [1, 2, 3]) {
      const { database, close, isFlushed } = open(file);
      expect(asked(database, 'PRAGMA synchronous'), `open ${round}`).toBe(2);
      expect(asked(database, 'PRAGMA journal_mode')).toBe('wal');
      expect(asked(database, 'PRAGMA trusted_schema')).toBe(0);
      expect(asked(database, 'PRAGMA foreign_keys')).toBe(1);
      expect(asked(database, 'PRAGMA fullfsync')).toBe(1);
      expect(isFlushed()).toBe(true);
      database.exec('PRAGMA synchronous = NORMAL');
      expect(isFlushed()).toBe(false);
      close();
    }
  });

  // SQLite: the race that loses a write-ahead log is mended from 3.51.3 on (sqlite.org/wal.html).
  it.each([
    ['3.51.2', false],
    ['3.50.7', false],
    ['3.51.3', true],
    ['3.53.0', true],
    ['4.0', true],
    ['2.99.99', false],
  ])('wants an engine that keeps what was acknowledged: %s', (version, isEnough) => {
    expect(isNewEnough(version)).toBe(isEnough);
  });

  it('is refused in words where it is no database, and left as it is', () => {
    const file = newFile();
    writeFileSync(file, 'not a database, and long enough to be looked at as one'.repeat(40));
    expect(() => open(file)).toThrow('does not open as a database of this program');
  });

  it('is refused in words where a page of it is damaged', () => {
    const file = newFile();
    withNotes(file, 300).close();
    const handle = new DatabaseSync(file);
    const pages = Number(asked(handle, 'PRAGMA page_count'));
    handle.close();
    writeFileSync(file, damaged(file, Math.floor(pages / 2)));
    expect(() => open(file)).toThrow(/damaged|does not open|not as it was written/);
  });

  it('is refused in words where the end of its chain is not as it was written', () => {
    const file = newFile();
    withNotes(file, 20).close();
    tamper(
      file,
      `UPDATE event SET payload = '{"text":"all well","writtenMs":null}' WHERE seq = 15`,
    );
    expect(() => open(file)).toThrow('event 15 does not hold (hash)');
  });
});

const damaged = (file: string, page: number): Buffer => {
  const bytes = readFileSync(file);
  bytes.fill(0xff, page * 4096, page * 4096 + 4096);
  return bytes;
};

describe('what is written', () => {
  it.each([
    "UPDATE event SET by = 'p2' WHERE seq = 1",
    'DELETE FROM event WHERE seq = 2',
    `INSERT OR REPLACE INTO event SELECT seq, id, at_ms, kind, target, 'p2', device, command_id,
       payload, withdraws, previous, hash FROM event WHERE seq = 1`,
    "UPDATE answer SET answer = '{}'",
    'DELETE FROM answer',
    "UPDATE revision SET text = '{}'",
    'DELETE FROM revision',
  ])('stays, whatever is asked of the database: %s', (sql) => {
    const file = newFile();
    const record = withNotes(file, 2);
    record.store.save(save);
    const before = record.log.after(0, 10);
    expect(() => record.database.exec(sql)).toThrow();
    expect(record.log.after(0, 10)).toEqual(before);
    record.close();
  });

  it('has an event with each revision, in one transaction, with the hash of its text', () => {
    const record = open(newFile());
    record.store.save({ ...save, person: 'p7', device: 'tablet-2' });
    record.store.save({ ...save, expectedRevision: 1, text: '{"second":true}', why: '\ud83d odd' });
    expect(record.store.save({ ...save, expectedRevision: 1 }).ok).toBe(false);
    expect(record.log.on('document:show:a', 0, 10)).toMatchObject([
      {
        ...{ seq: 1, by: 'p7', device: 'tablet-2', kind: 'document saved' },
        payload: { revision: 1, savedBy: 'TD', sha256: sha256OfText('{"first":true}') },
      },
      { seq: 2, by: null, payload: { revision: 2, why: '\ufffd odd' } },
    ]);
    record.close();
  });

  it('has an event for a document set aside and taken back, and none where nothing changed', () => {
    const record = open(newFile());
    record.store.save(save);
    const shelving = { id: 'show:a', at: '2026-11-26', by: 'TD', why: 'run over' };
    for (const isAside of [false, true, true, false]) record.store.shelve({ ...shelving, isAside });
    expect(record.log.after(1, 10).map(({ kind }) => kind)).toEqual([
      'document set aside',
      'document taken back',
    ]);
    record.close();
  });

  it('has no event of a change that was undone with the act it was part of', () => {
    const file = newFile();
    const record = withNotes(file, 1);
    record.database.exec('BEGIN');
    take(record, 2);
    record.store.save(save);
    record.database.exec('ROLLBACK');
    expect(record.log.head().seq).toBe(1);
    expect(record.store.current('show:a')).toBeNull();
    // Nor has the witness seen it, where the server dies now: the record is the record.
    const again = open(file);
    expect(again.identity().isRecord).toBe(true);
    again.close();
    record.close();
  });
});

describe('a chain verified whole', () => {
  it('is verified in steps, and holds', () => {
    const record = withNotes(newFile(), 600);
    expect([...record.verify()]).toEqual([250, 500, 600]);
    expect(take(record, 601).ok).toBe(true);
    record.close();
  });

  it('[EVT-012] that is broken far back ends the taking of commands, and not the reading', () => {
    const file = newFile();
    withNotes(file, 600).close();
    tamper(file, "UPDATE event SET by = 'p2' WHERE seq = 40");
    const record = open(file);
    expect(take(record, 2000).ok).toBe(true);
    expect([...record.verify()]).toEqual([]);
    expect(take(record, 2001)).toMatchObject({ ok: false, error: { kind: 'chainBroken' } });
    expect(() => record.store.save(save)).toThrow('event 40 does not hold');
    expect(record.log.head().seq).toBe(601);
    record.close();
  });
});

describe('a copy', () => {
  const expectReadOnly = (file: string, why: string): void => {
    const record = open(file);
    expect(record.identity()).toMatchObject({ isRecord: false });
    expect(record.identity().why).toContain(why);
    expect(take(record, 900)).toMatchObject({ ok: false, error: { kind: 'readOnly' } });
    expect(() => record.store.save({ ...save, id: 'show:z' })).toThrow('readOnly');
    expect(() => record.database.exec("INSERT INTO answer VALUES ('command-x', 'y', 'z')")).toThrow(
      'read only until a person',
    );
    expect(record.log.after(0, 100).length).toBeGreaterThan(0);
    record.close();
  };

  it('[EVT-010] under another name is read only, and stays so', () => {
    const [file, copy] = [newFile(), newFile()];
    withNotes(file, 5).close();
    copyFileSync(file, copy);
    expectReadOnly(copy, 'it is a copy, or it was moved');
    expectReadOnly(copy, 'it is a copy, or it was moved');
    const record = open(file);
    expect(record.identity().isRecord).toBe(true);
    record.close();
  });

  it('[EVT-010] of yesterday put over the record is read only', () => {
    const [file, copy] = [newFile(), newFile()];
    withNotes(file, 5).close();
    copyFileSync(file, copy);
    const today = open(file);
    take(today, 6);
    today.close();
    // Written over, the file keeps its number on the disk: only the witness tells.
    copyFileSync(copy, file);
    expectReadOnly(file, 'ends before events');
  });

  it('[EVT-010] that went on by itself and was put over the record is read only', () => {
    const [file, copy] = [newFile(), newFile()];
    withNotes(file, 5).close();
    copyFileSync(file, copy);
    const today = open(file);
    take(today, 6);
    today.close();
    const database = new DatabaseSync(copy);
    const place = asked(database, 'SELECT place FROM identity');
    database.close();
    const other = open(copy);
    other.database.exec('UPDATE identity SET is_record = 1');
    for (const n of [7, 8, 9]) take(other, n);
    other.database.prepare('UPDATE identity SET place = ?').run(place as string);
    other.close();
    copyFileSync(copy, file);
    expectReadOnly(file, 'other events than were recorded here');
  });

  it('is the record still where it was only moved on its disk, or its witness is torn', () => {
    const [file, moved] = [newFile(), newFile()];
    withNotes(file, 5).close();
    renameSync(file, moved);
    writeFileSync(witnessFile(moved), '{"recordKey":"x');
    const record = open(moved);
    expect(record.identity().isRecord).toBe(true);
    record.close();
  });

  it('is made the record by a person, with another key and an event that says who', () => {
    const [file, copy] = [newFile(), newFile()];
    const first = withNotes(file, 5);
    const { houseKey, recordKey } = first.identity();
    first.close();
    copyFileSync(file, copy);
    const record = open(copy);
    const said = { by: null, saidBy: 'A. Lead', why: 'the old disk is dead' };
    expect(record.makeRecord(said).ok).toBe(true);
    expect(record.identity()).toMatchObject({ houseKey, isRecord: true, why: '' });
    expect(record.identity().recordKey).not.toBe(recordKey);
    expect(record.log.after(5, 1)).toMatchObject([
      { kind: 'record made', payload: { before: recordKey, saidBy: 'A. Lead' } },
    ]);
    expect(take(record, 6).ok).toBe(true);
    expect(verifyChain(record.log.after(0, 100)).ok).toBe(true);
    record.close();
    const again = open(copy);
    expect(again.identity().isRecord).toBe(true);
    again.close();
  });
});

describe('a full disk', () => {
  it('[EVT-008] refuses commands and saves, reads on, and takes them when there is room', () => {
    const record = withNotes(newFile(), 3);
    // SQLite's own limit gives what a full disk does: SQLITE_FULL, in the middle of a write.
    record.database.exec('PRAGMA max_page_count = 1');
    let n = 3;
    let last = take(record, n);
    while (last.ok && n < 500) {
      n += 1;
      last = take(record, n);
    }
    expect(last).toMatchObject({ ok: false, error: { kind: 'diskFull' } });
    expect(() => record.store.save({ ...save, text: 'x'.repeat(100_000) })).toThrow('diskFull');
    expect(record.log.answerTo(`command-${n}`)).toBeNull();
    expect(record.log.head().seq).toBe(n - 1);
    expect(record.store.list()).toEqual([]);
    record.database.exec('PRAGMA max_page_count = 1000000');
    expect(take(record, n).ok).toBe(true);
    expect(record.store.save(save).ok).toBe(true);
    expect(verifyChain(record.log.after(0, 1000)).ok).toBe(true);
    record.close();
  });

  it('[EVT-011] tells of another program that writes, and loses nothing', () => {
    const file = newFile();
    const record = withNotes(file, 1);
    record.database.exec('PRAGMA busy_timeout = 1');
    const other = new DatabaseSync(file);
    other.exec('BEGIN IMMEDIATE');
    expect(take(record, 2)).toMatchObject({ ok: false, error: { kind: 'busy' } });
    other.exec('ROLLBACK');
    other.close();
    expect(take(record, 2).ok).toBe(true);
    record.close();
  });
});

describe('a record checked between requests', () => {
  const checked = (record: HouseRecord): Promise<ChainFault | null> =>
    new Promise((resolve) => {
      const done = { ...record, verify: () => endedBy(record, resolve) };
      checkInBackground(done, resolve);
    });

  function* endedBy(
    record: HouseRecord,
    resolve: (fault: ChainFault | null) => void,
  ): ReturnType<HouseRecord['verify']> {
    const fault = yield* record.verify();
    if (fault === null) resolve(null);
    return fault;
  }

  it('tells of the first event that does not hold, and of nothing where all do', async () => {
    const file = newFile();
    const whole = withNotes(file, 700);
    expect(await checked(whole)).toBeNull();
    whole.close();
    tamper(file, "UPDATE event SET by = 'p2' WHERE seq = 100");
    const broken = open(file);
    expect(await checked(broken)).toEqual({ seq: 100, what: 'hash' });
    broken.close();
  });

  it('ends with the database', async () => {
    const record = withNotes(newFile(), 600);
    let told = 0;
    checkInBackground(record, () => {
      told += 1;
    });
    record.close();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(told).toBe(0);
  });
});
