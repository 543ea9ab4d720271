/** A database in hand: its documents, its event log, and whether it is the record of a house. */
import type { DatabaseSync } from 'node:sqlite';
import {
  type ChainFault,
  type EventLog,
  type HouseEvent,
  headOf,
  type LogFault,
  NOTHING_YET,
  recordEvents,
  verifyChain,
} from '#events';
import { assert, type Result } from '#outcome';
import { isFlushed, NotOpened, openDatabaseFile } from './database-file.ts';
import type { DocumentStore } from './document-store.ts';
import { type Identity, identityIn, makeRecordHere, settleIdentity } from './identity.ts';
import { sqliteEventLog } from './sqlite-event-log.ts';
import { sqliteStore } from './sqlite-store.ts';
import { inTransaction, RecordFault } from './transaction.ts';
import { openWitness } from './witness.ts';

/** Time and chance come in as arguments. */
export type Surroundings = { readonly nowMs: () => number; readonly newId: () => string };

export type MakeRecord = {
  readonly by: string | null;
  readonly saidBy: string;
  readonly why: string;
};

export type HouseRecord = {
  /** For the rooms that keep tables of their own in the file; one connection writes. */
  readonly database: DatabaseSync;
  readonly store: DocumentStore;
  readonly log: EventLog;
  readonly identity: () => Identity;
  readonly isFlushed: () => boolean;
  /** A person makes a copy the record: a new key for it, and an event that says so. */
  readonly makeRecord: (said: MakeRecord) => Result<readonly HouseEvent[], LogFault>;
  /**
   * The whole chain, a page at each step, so that a server can answer between them. The first
   * fault ends it, and from then on nothing is recorded.
   */
  readonly verify: () => Generator<number, ChainFault | null>;
  readonly close: () => void;
};

/** Events at the end that are verified before anything is taken; the rest follows in `verify`. */
const TAIL = 500;
const PAGE = 250;

export const openHouseRecord = (file: string, { nowMs, newId }: Surroundings): HouseRecord => {
  const database = openDatabaseFile(file);
  const witness = openWitness(file);
  let broken: ChainFault | null = null;
  const identity = (): Identity => {
    const found = identityIn(database);
    assert(found !== null, 'an open record has its keys');
    return found;
  };
  const closedBy = (): LogFault | null => {
    if (broken !== null) return { kind: 'chainBroken', detail: wordsOf(broken) };
    const { isRecord, why } = identity();
    return isRecord ? null : { kind: 'readOnly', detail: why };
  };
  const log = sqliteEventLog(database, { closedBy, written: () => seen() });
  const seen = (): void => {
    const { isRecord, recordKey } = identity();
    if (isRecord) witness.see(recordKey, log.head());
  };
  try {
    refuseBrokenTail(log, file);
    settleIdentity(database, { file, log, witness, newId });
  } catch (fault) {
    database.close();
    throw fault;
  }
  seen();
  return {
    database,
    store: sqliteStore(database, { log, closedBy, written: seen, newId, nowMs }),
    log,
    identity,
    isFlushed: () => isFlushed(database),
    makeRecord: (said) => {
      const made = madeRecord({ database, log, file, identity }, said, { nowMs, newId });
      seen();
      return made;
    },
    *verify() {
      broken = yield* verified(log);
      return broken;
    },
    close: () => {
      seen();
      witness.close();
      database.close();
    },
  };
};

const wordsOf = ({ seq, what }: ChainFault): string => `event ${seq} does not hold (${what})`;

const refuseBrokenTail = (log: EventLog, file: string): void => {
  const { seq } = log.head();
  const from = Math.max(0, seq - TAIL);
  const [before] = from === 0 ? [] : log.after(from - 1, 1);
  const held = verifyChain(
    log.after(from, TAIL),
    before === undefined ? NOTHING_YET : headOf(before),
  );
  if (held.ok) return;
  throw new NotOpened(
    `The record in ${file} is not as it was written: ${wordsOf(held.error)}. ` +
      'Nothing was changed. Restore a backup (npm run restore), and keep this file as a trace.',
  );
};

function* verified(log: EventLog): Generator<number, ChainFault | null> {
  let head = NOTHING_YET;
  // Events that come while it runs are verified as they are written.
  const { seq: last } = log.head();
  while (head.seq < last) {
    const page = log.after(head.seq, PAGE);
    const held = verifyChain(page, head);
    if (!held.ok) return held.error;
    if (page.length === 0) return { seq: head.seq + 1, what: 'number' };
    head = held.value;
    yield head.seq;
  }
  return null;
}

const madeRecord = (
  record: Pick<HouseRecord, 'database' | 'log' | 'identity'> & { readonly file: string },
  { by, saidBy, why }: MakeRecord,
  { nowMs, newId }: Surroundings,
): ReturnType<HouseRecord['makeRecord']> => {
  const { houseKey, recordKey: before } = record.identity();
  const recordKey = newId();
  const payload = { houseKey, recordKey, before, saidBy, why };
  try {
    return inTransaction(record.database, () => {
      makeRecordHere(record.database, record.file, recordKey);
      const made = recordEvents(record.log, [{ kind: 'record made', target: 'house', payload }], {
        by,
        nowMs: nowMs(),
        newId,
      });
      // Keys without the event that says who gave them must not stay.
      if (!made.ok) throw new RecordFault(made.error);
      return made;
    });
  } catch (fault) {
    if (fault instanceof RecordFault) return { ok: false, error: fault.fault };
    throw fault;
  }
};
