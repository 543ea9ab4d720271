/**
 * What stands beside a database, to tell that the file is a copy or went back. Two signs, since
 * each sees what the other does not:
 *
 * - the place, kept in the database: number of the file on its disk, and machine. A copy has
 *   another number; a file that was moved on its disk keeps it.
 * - the witness, a small file beside it, with the last event. A database that was put back over
 *   itself keeps its number, and ends before what the witness has seen.
 *
 * They do not see a disk or a virtual machine put back as a whole; the devices do, which have seen
 * more than the record holds.
 */
import { closeSync, existsSync, openSync, readFileSync, statSync, writeSync } from 'node:fs';
import { type Head, sha256OfValue } from '#events';

const MACHINE_ID = '/etc/machine-id';

/** Empty where the system has none. Not its name: that of a container is new at each start. */
const machine = (): string =>
  existsSync(MACHINE_ID) ? readFileSync(MACHINE_ID, 'utf8').trim() : '';

/** Where a file lies, as a hash, since it goes into backups. */
export const placeOf = (file: string): string =>
  sha256OfValue({ file: String(statSync(file, { bigint: true }).ino), machine: machine() });

export type Seen = { readonly recordKey: string; readonly seq: number; readonly hash: string };

export type Witness = {
  readonly saw: () => Seen | null;
  readonly see: (recordKey: string, head: Head) => void;
  readonly close: () => void;
};

/** One sector: a disk writes it whole or not at all. Written over itself, so it takes no room. */
const LENGTH = 512;

export const witnessFile = (file: string): string => `${file}.witness`;

export const openWitness = (file: string): Witness => {
  const path = witnessFile(file);
  let handle: number | null = null;
  return {
    saw: () => (existsSync(path) ? seenIn(readFileSync(path, 'utf8')) : null),
    see: (recordKey, { seq, hash }) => {
      // An aid and no record: a disk that does not take it stops nothing.
      try {
        handle ??= openSync(path, existsSync(path) ? 'r+' : 'w+', 0o600);
        writeSync(handle, `${JSON.stringify({ recordKey, seq, hash })}\n`.padEnd(LENGTH), 0);
      } catch {
        return;
      }
    },
    close: () => {
      if (handle !== null) closeSync(handle);
      handle = null;
    },
  };
};

/** Null where it was cut off while it was written: then it says nothing. */
const seenIn = (text: string): Seen | null => {
  try {
    const value = JSON.parse(text) as Partial<Seen> | null;
    const { recordKey, seq, hash } = value ?? {};
    return typeof recordKey === 'string' && typeof seq === 'number' && typeof hash === 'string'
      ? { recordKey, seq, hash }
      : null;
  } catch {
    return null;
  }
};
