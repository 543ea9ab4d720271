/** Which house a database is of, which record of it, and whether it is the record at all. */
import type { DatabaseSync } from 'node:sqlite';
import type { EventLog } from '#events';
import { placeOf, type Witness } from './witness.ts';

export type Identity = {
  /** Of the house, made once; a backup keeps it. */
  readonly houseKey: string;
  /** Of this record; a copy that is made the record gets another. */
  readonly recordKey: string;
  /** False in a copy: read only until a person makes it the record. */
  readonly isRecord: boolean;
  /** Why it is no record; empty where it is. */
  readonly why: string;
};

export const identityIn = (database: DatabaseSync): Identity | null => {
  const row = database
    .prepare('SELECT house_key, record_key, is_record, why FROM identity')
    .get() as Readonly<Record<string, unknown>> | undefined;
  return row === undefined
    ? null
    : {
        houseKey: String(row['house_key']),
        recordKey: String(row['record_key']),
        isRecord: row['is_record'] === 1,
        why: String(row['why']),
      };
};

const WORDS = {
  copied:
    'The file lies on another disk, machine or place than where it was the record: it is a copy, ' +
    'or it was moved.',
  wentBack:
    'The file ends before events that were recorded here: an older one was put in its place.',
  another: 'The file holds other events than were recorded here.',
} as const;

export const BACKUP_WORDS = 'The file is a backup.';

/** Gives a new database its keys, and finds out of another whether it is still the record. */
export const settleIdentity = (
  database: DatabaseSync,
  from: {
    readonly file: string;
    readonly log: Pick<EventLog, 'head' | 'after'>;
    readonly witness: Witness;
    readonly newId: () => string;
  },
): void => {
  const identity = identityIn(database);
  if (identity === null) {
    database
      .prepare('INSERT INTO identity VALUES (1, ?, ?, 1, ?, ?)')
      .run(from.newId(), from.newId(), placeOf(from.file), '');
  } else if (identity.isRecord) {
    const doubt = doubtOf(database, identity, from);
    if (doubt !== null) {
      database.prepare('UPDATE identity SET is_record = 0, why = ?').run(WORDS[doubt]);
    }
  }
};

const doubtOf = (
  database: DatabaseSync,
  identity: Identity,
  { file, log, witness }: Parameters<typeof settleIdentity>[1],
): keyof typeof WORDS | null => {
  const place = database.prepare('SELECT place FROM identity').get()?.['place'];
  if (place !== placeOf(file)) return 'copied';
  const saw = witness.saw();
  // The witness of another record that lay here says nothing of this one.
  if (saw === null || saw.recordKey !== identity.recordKey || saw.seq === 0) return null;
  if (saw.seq > log.head().seq) return 'wentBack';
  return log.after(saw.seq - 1, 1)[0]?.hash === saw.hash ? null : 'another';
};

/** The keys of a copy that a person makes the record, with the place where it now is. */
export const makeRecordHere = (database: DatabaseSync, file: string, recordKey: string): void => {
  database
    .prepare("UPDATE identity SET record_key = ?, is_record = 1, place = ?, why = ''")
    .run(recordKey, placeOf(file));
};
