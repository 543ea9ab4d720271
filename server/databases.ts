import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type DocumentKind, type DocumentStore, openSqliteStore } from './log/index.ts';

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
): Databases => {
  mkdirSync(folder, { recursive: true });
  const noteFile = join(folder, 'in-hand');
  const fileOf = (name: DatabaseName): string => join(folder, `${name}.sqlite`);
  let name: DatabaseName = readNote(noteFile);
  let store = openWith(fileOf(name), name === 'demo' ? demo : [], now);
  return {
    inHand: () => name,
    store: () => store,
    take: (wanted, first) => {
      const opened = openWith(fileOf(wanted), wanted === 'demo' ? demo : first, now);
      store.close();
      store = opened;
      name = wanted;
      writeFileSync(noteFile, `${wanted}\n`);
    },
    hasHouse: () => existsSync(fileOf('house')),
    close: () => store.close(),
  };
};

const readNote = (file: string): DatabaseName =>
  existsSync(file) && readFileSync(file, 'utf8').trim() === 'house' ? 'house' : 'demo';

const openWith = (
  file: string,
  first: readonly FirstDocument[],
  now: () => Date,
): DocumentStore => {
  const store = openSqliteStore(file);
  // What was set aside is still there, and does not come again.
  const present = new Set([...store.list(), ...store.listAside()].map(({ id }) => id));
  for (const document of first) {
    if (present.has(document.id)) continue;
    store.save({
      ...document,
      expectedRevision: 0,
      savedAt: now().toISOString(),
      savedBy: 'Counterpoise',
      why: 'first loaded',
      remark: '',
    });
  }
  return store;
};
