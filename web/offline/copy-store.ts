/**
 * Copies of what the server said last, in the browser's own database: a head for each house, and
 * its documents each by itself, so that a save writes one of them and not all.
 */
import { type IDBPDatabase, openDB } from 'idb';
import type { Copy } from '../keeping/copies.ts';
import type { Stored } from '../keeping/server.ts';
import { keyOf, toWrite } from './copy-parts.ts';

type Head = Omit<Copy, 'documents'> & {
  readonly key: string;
  /** What the documents of it are, so that none of them is read to write another. */
  readonly holds: readonly Pick<Stored, 'id' | 'revision' | 'savedAt'>[];
};
/** `at` is the place of one document in one copy. */
type OfCopy = { readonly at: string; readonly copy: string; readonly stored: Stored };

const placeOf = (copy: string, id: string): string => `${copy} ${id}`;

type Copies = {
  readonly heads: { readonly key: string; readonly value: Head };
  readonly documents: {
    readonly key: string;
    readonly value: OfCopy;
    readonly indexes: { readonly copy: string };
  };
  readonly last: { readonly key: 'last'; readonly value: string };
};

/** Raised when the form changes: what an older program kept is not read by a newer one. */
const FORM = 1;
const LAST = 'last';

let opening: Promise<IDBPDatabase<Copies>> | null = null;

const open = (): Promise<IDBPDatabase<Copies>> => {
  opening ??= openDB<Copies>('counterpoise-copies', FORM, {
    upgrade: (database) => {
      for (const name of database.objectStoreNames) database.deleteObjectStore(name);
      database.createObjectStore('heads', { keyPath: 'key' });
      const documents = database.createObjectStore('documents', { keyPath: 'at' });
      documents.createIndex('copy', 'copy');
      database.createObjectStore('last');
    },
    // A page of a newer program waits for this one to let go.
    blocking: (_from, _to, event) => {
      (event.target as IDBDatabase).close();
      opening = null;
    },
    terminated: () => {
      opening = null;
    },
  });
  return opening;
};

const STORES = ['heads', 'documents', 'last'] as const;

/** All or nothing: a copy is never half of one reading and half of another. */
export const keepCopy = async (copy: Copy): Promise<void> => {
  const key = keyOf(copy);
  const { databases, read } = copy;
  const work = (await open()).transaction(STORES, 'readwrite');
  const [heads, documents] = [work.objectStore('heads'), work.objectStore('documents')];
  const { put, gone } = toWrite(copy, (await heads.get(key))?.holds ?? []);
  const holds = copy.documents.map(({ id, revision, savedAt }) => ({ id, revision, savedAt }));
  await Promise.all([
    heads.put({ key, databases, read, holds }),
    ...put.map((stored) => documents.put({ at: placeOf(key, stored.id), copy: key, stored })),
    ...gone.map((id) => documents.delete(placeOf(key, id))),
    work.objectStore('last').put(key, LAST),
    work.done,
  ]);
};

/** Of everybody and every house: who signs out leaves nothing on a device that others use. */
export const forgetCopies = async (): Promise<void> => {
  const work = (await open()).transaction(STORES, 'readwrite');
  await Promise.all([...STORES.map((name) => work.objectStore(name).clear()), work.done]);
};

export const lastCopy = async (): Promise<Copy | null> => {
  const work = (await open()).transaction(STORES);
  const key = await work.objectStore('last').get(LAST);
  const head = key === undefined ? undefined : await work.objectStore('heads').get(key);
  if (head === undefined) return null;
  const held = await work.objectStore('documents').index('copy').getAll(head.key);
  const documents = held.map(({ stored }) => stored);
  return documents.length === 0 ? null : { databases: head.databases, read: head.read, documents };
};
