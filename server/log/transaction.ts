/** One act on a database: all of it or nothing, and what a disk can do to it as a value. */
import type { DatabaseSync } from 'node:sqlite';
import type { LogFault } from '#events';
import { fail, ok, type Result } from '#outcome';

/** All of it or nothing. Inside another act it is a part of that one, and goes with it. */
export const inTransaction = <T>(database: DatabaseSync, work: () => T): T => {
  const isPart = database.isTransaction;
  database.exec(isPart ? 'SAVEPOINT part' : 'BEGIN IMMEDIATE');
  try {
    const done = work();
    database.exec(isPart ? 'RELEASE part' : 'COMMIT');
    return done;
  } catch (fault) {
    // A full disk has ended the transaction already.
    if (database.isTransaction) {
      database.exec(isPart ? 'ROLLBACK TO part; RELEASE part' : 'ROLLBACK');
    }
    throw fault;
  }
};

/** The same, where what the disk does to it is an answer and no defect. */
export const committed = <T>(database: DatabaseSync, work: () => T): Result<T, LogFault> => {
  try {
    return ok(inTransaction(database, work));
  } catch (fault) {
    const known = logFaultOf(fault);
    if (known === null) throw fault;
    return fail(known);
  }
};

/** Primary result codes of SQLite (sqlite.org/rescode.html); the rest are defects. */
const KINDS = new Map<number, LogFault['kind']>([
  [5, 'busy'],
  [6, 'busy'],
  [8, 'readOnly'],
  [10, 'writeFailed'],
  [11, 'writeFailed'],
  [13, 'diskFull'],
  [14, 'writeFailed'],
]);

/** What a disk did, and null where it was not the disk. */
export const logFaultOf = (fault: unknown): LogFault | null => {
  if (!(fault instanceof Error)) return null;
  const { errcode } = fault as { readonly errcode?: unknown };
  const kind = typeof errcode === 'number' ? KINDS.get(errcode & 0xff) : undefined;
  return kind === undefined ? null : { kind, detail: fault.message };
};

/**
 * What the disk did to an act that has no place for it in its answer. The status is that of
 * RFC 4918 (insufficient storage), RFC 9110 (conflict) and RFC 9110 (unavailable).
 */
export class RecordFault extends Error {
  readonly fault: LogFault;
  readonly statusCode: number;
  constructor(fault: LogFault) {
    super(`${fault.kind}: ${fault.detail}`);
    this.name = 'RecordFault';
    this.fault = fault;
    this.statusCode = fault.kind === 'diskFull' ? 507 : fault.kind === 'readOnly' ? 409 : 503;
  }
}
