import type { DatabaseSync } from 'node:sqlite';
import {
  assertFollows,
  type Batch,
  type CommandAnswer,
  canonicalJson,
  type EventLog,
  type Head,
  type HouseEvent,
  type LogFault,
  NOTHING_YET,
  readEvent,
} from '#events';
import { assert, fail } from '#outcome';
import { committed } from './transaction.ts';

/** What stands against writing at all, and what is told of each commit. */
type Gate = {
  readonly closedBy: () => LogFault | null;
  readonly written: () => void;
};

/** The event log in the tables of `record-tables.ts`, on a database that somebody else opened. */
export const sqliteEventLog = (database: DatabaseSync, gate: Gate): EventLog => {
  const ask = statements(database);
  const head = (): Head => headIn(ask.head.get());
  return {
    head,
    after: (seq, limit) => ask.after.all(seq, limit).map(eventIn),
    answerTo: (commandId) => {
      const row = ask.answer.get(commandId);
      if (row === undefined) return null;
      // Written by us and by nobody else; the triggers keep it so.
      const answer = JSON.parse(String(row['answer'])) as CommandAnswer;
      return { bodyHash: String(row['body_hash']), answer };
    },
    lastOn: (target) => Number(ask.lastOn.get(target)?.['seq'] ?? 0),
    on: (target, after, limit) => ask.on.all(target, after, limit).map(eventIn),
    withdrawalOf: (seq) => {
      const row = ask.withdrawal.get(seq);
      return row === undefined ? null : eventIn(row);
    },
    lastOf: (kind) => Number(ask.lastOf.get(kind)?.['seq'] ?? 0),
    commit: (batch) => {
      const closed = gate.closedBy();
      if (closed !== null) return fail(closed);
      // Part of another act, it is not written before that one is.
      const isPart = database.isTransaction;
      const done = committed(database, () => {
        assertFollows(batch, head(), (id) => ask.answer.get(id) !== undefined);
        writeBatch(ask, batch);
        return head();
      });
      if (done.ok && !isPart) gate.written();
      return done;
    },
    close: () => undefined,
  };
};

const COLUMNS =
  'seq, id, at_ms, kind, target, by, device, command_id, payload, withdraws, previous, hash';

const statements = (database: DatabaseSync) => {
  const select = (rest: string) => database.prepare(`SELECT ${COLUMNS} FROM event ${rest}`);
  return {
    head: database.prepare('SELECT seq, hash, at_ms FROM event ORDER BY seq DESC LIMIT 1'),
    after: select('WHERE seq > ? ORDER BY seq LIMIT ?'),
    on: select('WHERE target = ? AND seq > ? ORDER BY seq LIMIT ?'),
    withdrawal: select('WHERE withdraws = ?'),
    lastOn: database.prepare('SELECT MAX(seq) AS seq FROM event WHERE target = ?'),
    // From the end, by the number: found soon where it is recent, and asked for once a start.
    lastOf: database.prepare('SELECT seq FROM event WHERE kind = ? ORDER BY seq DESC LIMIT 1'),
    answer: database.prepare('SELECT body_hash, answer FROM answer WHERE command_id = ?'),
    writeEvent: database.prepare(
      `INSERT INTO event (${COLUMNS}) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    ),
    writeAnswer: database.prepare(
      'INSERT INTO answer (command_id, body_hash, answer) VALUES (?, ?, ?)',
    ),
  };
};

const writeBatch = (ask: ReturnType<typeof statements>, { events, answer }: Batch): void => {
  for (const event of events) {
    ask.writeEvent.run(
      ...([event.seq, event.id, event.atMs, event.kind, event.target] as const),
      ...([event.by, event.device, event.commandId] as const),
      canonicalJson(event.payload),
      event.kind === 'withdrawn' ? event.payload.seq : null,
      ...([event.previous, event.hash] as const),
    );
  }
  if (answer === null) return;
  const { commandId } = answer.answer;
  ask.writeAnswer.run(commandId, answer.bodyHash, JSON.stringify(answer.answer));
};

type Row = Readonly<Record<string, unknown>>;

const headIn = (row: Row | undefined): Head =>
  row === undefined
    ? NOTHING_YET
    : { seq: Number(row['seq']), hash: String(row['hash']), atMs: Number(row['at_ms']) };

/** Checked again when it is read: a page of the record that is not an event goes no further. */
const eventIn = (row: Row): HouseEvent => {
  const read = readEvent({
    seq: row['seq'],
    id: row['id'],
    atMs: row['at_ms'],
    kind: row['kind'],
    target: row['target'],
    by: row['by'],
    device: row['device'],
    commandId: row['command_id'],
    payload: JSON.parse(String(row['payload'])) as unknown,
    previous: row['previous'],
    hash: row['hash'],
  });
  assert(read.ok, `event ${String(row['seq'])} of the record is one that this program knows`);
  return read.value;
};
