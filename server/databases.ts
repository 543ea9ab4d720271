import { randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { EventLog } from '#events';
import type { Auth } from './auth/index.ts';
import {
  checkInBackground,
  type DocumentKind,
  type DocumentStore,
  type HouseRecord,
  openHouseRecord,
  RecordFault,
} from './log/index.ts';
import { openPeople, type PeopleParts } from './people.ts';

/** The demo and the house each have a database of their own; one of them is in hand. */
export type DatabaseName = 'demo' | 'house';

export type FirstDocument = {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly text: string;
};

export type Databases = {
  readonly inHand: () => DatabaseName;
  readonly store: () => DocumentStore;
  /** The event log of the database in hand. */
  readonly log: () => EventLog;
  /** All of the database in hand: keys, whether it is the record, and the connection to it. */
  readonly record: () => HouseRecord;
  /** The people of the database in hand: each database has its own. */
  readonly auth: () => Auth;
  /** Takes the other database in hand; a new one starts with these documents. */
  readonly take: (name: DatabaseName, first: readonly FirstDocument[]) => void;
  readonly hasHouse: () => boolean;
  readonly close: () => void;
};

/**
 * Opens the databases in a folder. What is in hand is written beside them, so that a restart
 * opens what was open. The first start of all takes the demo.
 */
export const openDatabases = (
  folder: string,
  demo: readonly FirstDocument[],
  now: () => Date,
  peopleParts: PeopleParts = {},
): Databases => {
  mkdirSync(folder, { recursive: true });
  const fileOf = (name: DatabaseName): string => join(folder, `${name}.sqlite`);
  let name: DatabaseName = nameInHand(folder);
  let record = openWith(fileOf(name), name === 'demo' ? demo : [], now);
  let auth = openPeople(record, now, peopleParts);
  return {
    inHand: () => name,
    store: () => record.store,
    log: () => record.log,
    record: () => record,
    auth: () => auth,
    take: (wanted, first) => {
      const opened = openWith(fileOf(wanted), wanted === 'demo' ? demo : first, now);
      record.close();
      record = opened;
      auth = openPeople(record, now, peopleParts);
      name = wanted;
      noteInHand(folder, wanted);
    },
    hasHouse: () => existsSync(fileOf('house')),
    close: () => record.close(),
  };
};

/** The database that a folder has in hand. */
export const nameInHand = (folder: string): DatabaseName => {
  const file = join(folder, NOTE);
  return existsSync(file) && readFileSync(file, 'utf8').trim() === 'house' ? 'house' : 'demo';
};

/** Whether a folder has anything of a house or of the demo, so that one of them is in hand. */
export const hasDatabase = (folder: string): boolean =>
  [NOTE, 'demo.sqlite', 'house.sqlite'].some((each) => existsSync(join(folder, each)));

/** What the next start opens. */
export const noteInHand = (folder: string, name: DatabaseName): void =>
  writeFileSync(join(folder, NOTE), `${name}\n`);

const NOTE = 'in-hand';

const openWith = (file: string, first: readonly FirstDocument[], now: () => Date): HouseRecord => {
  const record = openHouseRecord(file, { nowMs: () => now().getTime(), newId: randomUUID });
  checkInBackground(record, ({ seq, what }) => {
    process.emitWarning(
      `${file} is not as it was written: event ${seq} does not hold (${what}). ` +
        'Nothing more is recorded in it. Restore a backup (npm run restore).',
    );
  });
  // A copy that nobody has made the record is shown as it is.
  if (!record.identity().isRecord) return record;
  try {
    loadFirst(record.store, first, now);
  } catch (fault) {
    if (!(fault instanceof RecordFault)) throw fault;
    // A full disk stops writing and never the display; the next start loads them.
    process.emitWarning(`${file} did not take its first documents: ${fault.message}`);
  }
  return record;
};

/** By whom and why the first documents are; no person writes so, for a backup is told by it. */
export const FIRST_LOADED = { savedBy: 'Counterpoise', why: 'first loaded' } as const;

const loadFirst = (
  store: DocumentStore,
  first: readonly FirstDocument[],
  now: () => Date,
): void => {
  // What was set aside is still there, and does not come again.
  const present = new Set([...store.list(), ...store.listAside()].map(({ id }) => id));
  for (const document of first) {
    if (present.has(document.id)) continue;
    store.save({
      ...document,
      expectedRevision: 0,
      savedAt: now().toISOString(),
      ...FIRST_LOADED,
      remark: '',
    });
  }
};
