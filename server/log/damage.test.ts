/**
 * A database opened from copies whose write-ahead log was cut off or damaged, as a disk leaves it
 * that lied about a flush. What had been brought into the file is there, the chain holds, and what
 * was lost from the end is noticed by the witness; or the file is refused in words.
 */
import { randomUUID } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { receiveCommand, verifyChain } from '#events';
import { NotOpened } from './database-file.ts';
import { type HouseRecord, openHouseRecord } from './house-record.ts';
import { witnessFile } from './witness.ts';

const SEED = 20_261_201;
const IN_FILE = 30;
const IN_ALL = 70;

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-damage-'));
afterAll(() => rmSync(folder, { recursive: true }));

const source = join(folder, 'source.sqlite');
const copy = join(folder, 'copy.sqlite');
const surroundings = { nowMs: () => 1, newId: randomUUID };
let record: HouseRecord;

const write = (n: number): void => {
  receiveCommand(
    record.log,
    {
      ...{ commandId: `command-${n}`, device: 'd1', target: 'set:11', seen: null, clientMs: 1 },
      ...{ kind: 'note written', payload: { text: `note ${n}`, writtenMs: null } },
    },
    { by: null, nowMs: n, newId: randomUUID },
    () => null,
  );
};

beforeAll(() => {
  record = openHouseRecord(source, surroundings);
  for (let n = 1; n <= IN_FILE; n += 1) write(n);
  record.database.exec('PRAGMA wal_checkpoint(TRUNCATE)');
  for (let n = IN_FILE + 1; n <= IN_ALL; n += 1) write(n);
  return () => record.close();
});

/** A copy as it lies on the disk while the server runs, then one wound given to its log. */
const openWounded = (wound: (wal: string) => void): HouseRecord => {
  for (const end of ['', '-wal', '-shm', '.witness']) rmSync(`${copy}${end}`, { force: true });
  copyFileSync(source, copy);
  copyFileSync(`${source}-wal`, `${copy}-wal`);
  copyFileSync(witnessFile(source), witnessFile(copy));
  wound(`${copy}-wal`);
  return openHouseRecord(copy, surroundings);
};

const expectSound = (wound: (wal: string) => void): number => {
  let opened: HouseRecord;
  try {
    opened = openWounded(wound);
  } catch (fault) {
    expect(fault).toBeInstanceOf(NotOpened);
    return IN_FILE;
  }
  const events = opened.log.after(0, 1000);
  expect(verifyChain(events).ok).toBe(true);
  expect(events).toEqual(record.log.after(0, events.length));
  for (const { commandId } of events) {
    expect(opened.log.answerTo(String(commandId))?.answer.outcome).toBe('accepted');
  }
  // A copy is read only in any case; the test of the witness is in house-record.test.ts.
  expect(opened.identity().isRecord).toBe(false);
  opened.close();
  expect(events.length).toBeGreaterThanOrEqual(IN_FILE);
  return events.length;
};

it('opens whole from a copy with its write-ahead log, and to the checkpoint without', () => {
  expect(expectSound(() => undefined)).toBe(IN_ALL);
  expect(expectSound((wal) => rmSync(wal))).toBe(IN_FILE);
  expect(existsSync(`${copy}-wal`)).toBe(false);
});

it(`keeps what was in the file from a log cut off anywhere (seed ${SEED})`, () => {
  const { size } = statSync(`${source}-wal`);
  const seen = new Set<number>();
  fc.assert(
    fc.property(fc.integer({ min: 0, max: size - 1 }), (at) => {
      seen.add(expectSound((wal) => truncateSync(wal, at)));
    }),
    { seed: SEED, numRuns: 25 },
  );
  // The cuts fell at different commits, so the test saw more than one end.
  expect(seen.size).toBeGreaterThan(5);
});

it(`keeps what was in the file from a log damaged anywhere (seed ${SEED})`, () => {
  const { size } = statSync(`${source}-wal`);
  const wound = fc.record({
    at: fc.integer({ min: 0, max: size - 65 }),
    bytes: fc.uint8Array({ minLength: 1, maxLength: 64 }),
  });
  const seen = new Set<number>();
  fc.assert(
    fc.property(wound, ({ at, bytes }) => {
      seen.add(
        expectSound((wal) => {
          const whole = readFileSync(wal);
          whole.set(bytes, at);
          writeFileSync(wal, whole);
        }),
      );
    }),
    { seed: SEED, numRuns: 25 },
  );
  expect(seen.size).toBeGreaterThan(5);
});
