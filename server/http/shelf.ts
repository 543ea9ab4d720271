/** What may be set aside, and what of the documents is in use. */
import type { Refusal } from '#outcome';
import type { DocumentAside, DocumentStore, DocumentSummary } from '../log/index.ts';
import { refusal } from './problems.ts';

/** A record of how things stand is in use while its house is. */
export const documentsInUse = (store: DocumentStore): readonly DocumentSummary[] => {
  const aside = new Set(store.listAside().map(({ id }) => id));
  return store.list().filter(({ id }) => !id.startsWith('state:') || !aside.has(houseOfState(id)));
};

const houseOfState = (id: string): string => `house:${id.slice('state:'.length)}`;

export type Aside = DocumentAside & { readonly name: string };

export const documentsAside = (store: DocumentStore): readonly Aside[] =>
  store.listAside().map((each) => ({ ...each, name: fieldOf(store, each.id, 'name') ?? each.id }));

const fieldOf = (store: DocumentStore, id: string, name: string): string | undefined => {
  const raw = JSON.parse(store.current(id)?.text ?? '{}') as Readonly<Record<string, unknown>>;
  const value = raw[name];
  return typeof value === 'string' ? value : undefined;
};

/** What stands against setting a document aside; nothing where it may go. */
export const againstAside = (
  store: DocumentStore,
  { id, kind }: DocumentSummary,
): readonly Refusal[] => {
  if (kind === 'state') {
    return [
      refusal('recordStays', { found: id, accepted: 'a house, with which its record goes aside' }),
    ];
  }
  if (kind === 'show') return [];
  const shows = store
    .list()
    .filter((each) => each.kind === 'show' && `house:${fieldOf(store, each.id, 'house')}` === id);
  const inUse = shows.map((each) => {
    const found = `${fieldOf(store, each.id, 'name') ?? each.id}, a show in this house`;
    return refusal('houseInUse', {
      path: each.id,
      found,
      accepted: 'a house without shows in use',
    });
  });
  const houses = store.list().filter((each) => each.kind === 'house');
  const last = { found: 'the last house in use', accepted: 'a house beside another' };
  return [...inUse, ...(houses.length > 1 ? [] : [refusal('lastHouse', last)])];
};

/** What stands against taking it back. */
export const againstReturn = (
  store: DocumentStore,
  { id, kind }: DocumentSummary,
): readonly Refusal[] => {
  if (kind !== 'show') return [];
  const house = fieldOf(store, id, 'house');
  if (store.list().some((each) => each.id === `house:${house}`)) return [];
  const found = `a show in ${house}, which is not in use`;
  return [refusal('houseAside', { path: 'house', found, accepted: 'take the house back first' })];
};
