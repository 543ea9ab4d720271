/** What every part of this room stands on, and the notes that go from it to the record. */
import type { DatabaseSync, SQLInputValue } from 'node:sqlite';
import type { Role, Task } from '#events';
import { fail, type Result } from '#outcome';
import type { AccessRefusal, AccessRefusalName } from './refusal-codes.ts';

import type { Secrets } from './secrets.ts';
import type { Who } from './who.ts';

/** A change in who may do what, as the record of the house has it. */
export type Note = {
  readonly target: string;
  /** Person, or null where it was the machine itself. */
  readonly by: string | null;
  readonly device: string | null;
} & (
  | {
      readonly kind: 'person invited' | 'person joined';
      readonly payload: { readonly name: string; readonly role: Role };
    }
  | {
      readonly kind: 'person role changed';
      readonly payload: { readonly from: Role; readonly to: Role };
    }
  | { readonly kind: 'person removed'; readonly payload: { readonly why: string } }
  | {
      readonly kind: 'competence given';
      readonly payload: { readonly task: Task; readonly untilMs: number | null };
    }
  | { readonly kind: 'competence revoked'; readonly payload: { readonly task: Task } }
  | {
      readonly kind: 'device revoked';
      readonly payload: { readonly revoked: string; readonly why: string };
    }
);

export type Ground = {
  readonly database: DatabaseSync;
  readonly now: () => number;
  readonly secrets: Secrets;
  /** Writes into the record, in the transaction that is open; throws where it is not taken. */
  readonly note: (note: Note) => void;
};

export type Row = Readonly<Record<string, unknown>>;

/** Numbers of a STRICT column; the driver gives them as they are. */
export const numberIn = (row: Row, column: string): number => Number(row[column]);
export const textIn = (row: Row, column: string): string => String(row[column]);
export const numberOrNull = (row: Row, column: string): number | null =>
  row[column] === null ? null : numberIn(row, column);
export const textOrNull = (row: Row, column: string): string | null =>
  row[column] === null ? null : textIn(row, column);

export const one = (
  { database }: Pick<Ground, 'database'>,
  sql: string,
  ...values: readonly SQLInputValue[]
): Row | undefined => database.prepare(sql).get(...values);

export const all = (
  { database }: Pick<Ground, 'database'>,
  sql: string,
  ...values: readonly SQLInputValue[]
): readonly Row[] => database.prepare(sql).all(...values);

/** How many rows it changed. */
export const run = (
  { database }: Pick<Ground, 'database'>,
  sql: string,
  ...values: readonly SQLInputValue[]
): number => Number(database.prepare(sql).run(...values).changes);

/** All of it or nothing, flushed when it returns. Nothing in it waits. */
export const inOne = <T>({ database }: Pick<Ground, 'database'>, work: () => T): T => {
  database.exec('BEGIN IMMEDIATE');
  try {
    const done = work();
    database.exec('COMMIT');
    return done;
  } catch (fault) {
    if (database.isTransaction) database.exec('ROLLBACK');
    throw fault;
  }
};

export const refused = <T>(
  name: AccessRefusalName,
  found: string,
  accepted: string,
  waitMs?: number,
): Result<T, AccessRefusal> =>
  fail({ name, found, accepted, ...(waitMs === undefined ? {} : { waitMs }) });

export const WRONG = {
  found: 'a name and a secret that do not go together',
  accepted: 'the name and the secret of one person of this house',
} as const;

/** Who did it, for a column that names persons. */
export const byOf = (who: Who): string | null => (who.kind === 'person' ? who.id : null);
export const deviceOf = (who: Who): string | null => (who.kind === 'person' ? who.device : null);
