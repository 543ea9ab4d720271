/**
 * The event log on the disk of this machine: how soon a log of 100,000 events opens, and how many
 * commands a second it takes, each flushed before it is answered. The first is held against a
 * second, since a server is started in the middle of a fit-up. The second is held against the
 * disk itself: a file of the same folder to which the same bytes are added and flushed (`fsync`)
 * each time, measured in the same run, since no log that flushes can be quicker than that. Run it
 * by itself: `node bench/log.bench.ts`.
 */
import { randomUUID } from 'node:crypto';
import { closeSync, fsyncSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Command, receiveCommand } from '#events';
import { openHouseRecord } from '#server';

type HouseRecord = ReturnType<typeof openHouseRecord>;

const EVENTS = 100_000;
/** ms. */
const OPEN_MAX = 1000;
const COMMITS = 400;
/**
 * What a command may take: so many flushes of the bare file, since a commit adds some pages of
 * 4 KiB where that adds a few hundred bytes, and so many ms of work for reading, judging, hashing
 * and SQLite, which a quick disk does not hide. With it a tenth of the machine serves the ten
 * commands a second that a house of a hundred devices is reckoned to send.
 */
const FLUSHES_MAX = 2;
const WORK_MAX = 2;

const open = (file: string): HouseRecord =>
  openHouseRecord(file, { nowMs: Date.now, newId: randomUUID });

const command = (n: number): Command => ({
  ...{ commandId: `command-${n}`, device: `tablet-${n % 12}`, target: `set:${n % 60}` },
  ...{ kind: 'note written', seen: null, clientMs: Date.now() },
  payload: { text: `Rope lock of this set slips a little, seen ${n} times`, writtenMs: null },
});

const take = ({ log }: HouseRecord, n: number): void => {
  const speaker = { by: 'person-1', nowMs: Date.now(), newId: randomUUID };
  const done = receiveCommand(log, command(n), speaker, () => null);
  if (!done.ok) throw new Error(done.error.detail);
};

/** In few transactions, since only the opening is measured. */
const fill = (file: string): void => {
  const record = open(file);
  for (let from = 0; from < EVENTS; from += 5000) {
    record.database.exec('BEGIN');
    for (let n = from; n < from + 5000; n += 1) take(record, n);
    record.database.exec('COMMIT');
  }
  record.close();
};

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;

const timed = (work: () => void): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};

const line = (what: string, value: string): void => {
  console.log(`${what.padEnd(58)}${value.padStart(18)}`);
};

const measure = (folder: string) => {
  const file = join(folder, 'log.sqlite');
  const filled = timed(() => fill(file));
  const opened = [1, 2, 3, 4, 5].map(() => {
    let record: HouseRecord | null = null;
    const time = timed(() => {
      record = open(file);
    });
    (record as HouseRecord | null)?.close();
    return time;
  });
  const record = open(file);
  const events = record.log.head().seq;
  const verified = timed(() => {
    for (const _step of record.verify());
  });
  const bare = openSync(join(folder, 'bare'), 'w');
  const bytes = JSON.stringify(command(1)).padEnd(600);
  // In turn, so that both meet the disk as it is.
  const pairs = Array.from({ length: COMMITS }, (_, n) => [
    timed(() => take(record, EVENTS + n)),
    timed(() => {
      writeSync(bare, bytes);
      fsyncSync(bare);
    }),
  ]);
  closeSync(bare);
  record.close();
  const [commit, flush] = [0, 1].map((at) => median(pairs.map((pair) => pair[at] ?? NaN)));
  return { filled, events, opened: median(opened), verified, commit, flush };
};

export const run = (): void => {
  const folder = mkdtempSync(join(tmpdir(), 'counterpoise-bench-'));
  try {
    const { filled, events, opened, verified, commit = NaN, flush = NaN } = measure(folder);
    line(`made a log of ${events} events, unmeasured`, `${(filled / 1000).toFixed(1)} s`);
    line('opened: file checked, last 500 of the chain verified', `${opened.toFixed(0)} ms`);
    line('the whole chain verified, between requests', `${(verified / 1000).toFixed(1)} s`);
    line('one command: judged, chained, written, flushed', `${commit.toFixed(3)} ms`);
    line('  commands a second', (1000 / commit).toFixed(0));
    line('the same bytes added to a bare file and flushed', `${flush.toFixed(3)} ms`);
    line('  a command, times that', `${(commit / flush).toFixed(2)} x`);
    if (events < EVENTS) throw new Error(`only ${events} events were made`);
    if (!(opened <= OPEN_MAX)) throw new Error(`it opens in ${opened} ms, over ${OPEN_MAX}`);
    const most = FLUSHES_MAX * flush + WORK_MAX;
    if (!(commit <= most)) throw new Error(`a command takes ${commit} ms, over ${most}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

if (import.meta.main) run();
