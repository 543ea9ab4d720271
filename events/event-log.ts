import type { Result } from '#outcome';
import type { CommandAnswer } from './command.ts';
import type { Head, HouseEvent } from './event.ts';
import type { EventKind } from './kinds.ts';

/** Why a log did not take what was sound. Nothing of it was written; reading goes on. */
export type LogFault = {
  readonly kind: 'diskFull' | 'writeFailed' | 'readOnly' | 'busy' | 'chainBroken';
  /** What the system said, for the technician. */
  readonly detail: string;
};

/** An answer with the hash of the command it was given to, so that another body is told. */
export type StoredAnswer = { readonly bodyHash: string; readonly answer: CommandAnswer };

/** What one command, or one act of the server, writes: all of it or nothing. */
export type Batch = {
  readonly events: readonly HouseEvent[];
  /** The answer to a command; null where the server itself says something. */
  readonly answer: StoredAnswer | null;
};

/**
 * The record of a house: events in their order, each chained to the one before, and the answers to
 * commands. Nothing is ever changed or taken out. All of it is at once, without waiting: between a
 * look and the commit that rests on it nothing else happens.
 */
export type EventLog = {
  readonly head: () => Head;
  /** Events after a number, in their order, at most `limit`. */
  readonly after: (seq: number, limit: number) => readonly HouseEvent[];
  readonly answerTo: (commandId: string) => StoredAnswer | null;
  /** Number of the last event on a target, 0 where there is none. */
  readonly lastOn: (target: string) => number;
  /** Events on a target after a number, in their order, at most `limit`. */
  readonly on: (target: string, after: number, limit: number) => readonly HouseEvent[];
  /** The event that withdraws the one of this number, or null. */
  readonly withdrawalOf: (seq: number) => HouseEvent | null;
  /** Number of the last event of a kind, 0 where there is none. */
  readonly lastOf: (kind: EventKind) => number;
  /**
   * Writes a batch in one transaction, flushed to the disk before it returns. A batch that does
   * not follow on the head, or answers a command twice, is a defect of who made it: it throws.
   */
  readonly commit: (batch: Batch) => Result<Head, LogFault>;
  readonly close: () => void;
};
