/** The documents of the database as a person thinks of them: houses, each with its shows. */
import { unreachable } from '#outcome';
import { message, phrase, type Voice } from '#texts';
import type { Place } from '../address/address.ts';
import type { Kept, Open } from '../keeping/kept.ts';

export type DocumentsPlace = Extract<Place, { readonly kind: 'documents' }>;

export type HouseShelf = {
  readonly house: Kept;
  readonly shows: readonly Kept[];
  /** How the sets stand; null where nobody has recorded anything. */
  readonly record: Kept | null;
};

export const nameOf = ({ document, id }: Pick<Kept, 'document' | 'id'>): string =>
  String(document['name'] ?? document['id'] ?? id);

const KINDS = {
  house: message('house'),
  show: message('show'),
  state: message('record of how the sets stand'),
} as const;

export const kindWords = (kind: Kept['kind'], voice: Voice): string => phrase(voice, KINDS[kind]);

/** The title of the page of its revisions. */
export const revisionsOf = (kept: Kept, voice: Voice): string => {
  const name = nameOf(kept);
  switch (kept.kind) {
    case 'house':
      return phrase(voice, 'Revisions of house {name}', { name });
    case 'show':
      return phrase(voice, 'Revisions of show {name}', { name });
    case 'state':
      return phrase(voice, 'Revisions of the record of how the sets stand');
    default:
      return unreachable(kept.kind);
  }
};

/** By name, and by id where two share one. */
const inOrder = (documents: readonly Kept[]): readonly Kept[] =>
  documents.toSorted(
    (one, other) => nameOf(one).localeCompare(nameOf(other)) || one.id.localeCompare(other.id),
  );

export const shelvesOf = ({ documents }: Open): readonly HouseShelf[] => {
  const all = Object.values(documents);
  const isIn = (house: Kept) => (kept: Kept) => kept.document['house'] === house.document['id'];
  return inOrder(all.filter(({ kind }) => kind === 'house')).map((house) => ({
    house,
    shows: inOrder(all.filter(({ kind }) => kind === 'show').filter(isIn(house))),
    record: all.filter(({ kind }) => kind === 'state').find(isIn(house)) ?? null,
  }));
};

/** Shows of a house that is not in this database: they are there, and cannot be opened. */
export const withoutHouse = (open: Open): readonly Kept[] => {
  const shelved = new Set(shelvesOf(open).flatMap(({ shows }) => shows.map(({ id }) => id)));
  return inOrder(
    Object.values(open.documents).filter(({ kind, id }) => kind === 'show' && !shelved.has(id)),
  );
};

const ID_MAX = 32;

/**
 * An id from a name, `The Long Drop` as `the-long-drop`, with a number where it is taken. A name
 * without letters of an id still gets one.
 */
export const newId = (name: string, fallback: string, taken: ReadonlySet<string>): string => {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[\u0300-\u036f]/g, '')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  const base = plain === '' ? fallback : plain;
  const numbered = (number: number): string => {
    const tail = number === 1 ? '' : `-${number}`;
    return `${base.slice(0, ID_MAX - tail.length).replace(/-+$/, '')}${tail}`;
  };
  let number = 1;
  while (taken.has(numbered(number))) number += 1;
  return numbered(number);
};
