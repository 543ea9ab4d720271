/** How a document that is brought in stands to those that are here. */
import { differenceOf, readHouseValue, readShowValue, readStateValue } from '#documents';
import { unreachable } from '#outcome';
import { phrase, type Voice } from '#texts';
import { isSame } from '../keeping/json.ts';
import type { Kept } from '../keeping/kept.ts';
import type { ReadDocument } from './file-reading.ts';

export type Standing =
  | { readonly is: 'same' }
  | { readonly is: 'new' }
  | { readonly is: 'differs'; readonly changes: ReturnType<typeof differenceOf> };

type Documents = Readonly<Record<string, Kept>>;

export const standingOf = ({ id, raw }: ReadDocument, here: Documents): Standing => {
  const kept = here[id];
  if (kept === undefined) return { is: 'new' };
  if (isSame(kept.document, raw)) return { is: 'same' };
  return { is: 'differs', changes: differenceOf(kept.document, raw) };
};

/** The same with the id of one that is here, so that it becomes the next revision of that one. */
export const inPlaceOf = (one: ReadDocument, { id, document }: Kept): ReadDocument => ({
  ...one,
  id,
  raw: { ...one.raw, id: document['id'] ?? null },
});

/** A show of the same house under another id may be meant as that show. */
export const mayReplace = (one: ReadDocument, show: Kept, here: Documents): boolean =>
  one.kind === 'show' && here[one.id] === undefined && one.raw['house'] === show.document['house'];

export const behindWords = ({ kind, document, id }: Kept, voice: Voice): string => {
  const name = String(document['name'] ?? id);
  switch (kind) {
    case 'state':
      return phrase(voice, 'how the sets stand');
    case 'house':
      return phrase(voice, 'the house {name}', { name });
    case 'show':
      return phrase(voice, 'the show {name}', { name });
    default:
      return unreachable(kind);
  }
};

/**
 * Documents here that would no longer be understood beside the houses that are taken: a person is
 * told before, and takes those too, or none.
 */
export const leftBehind = (taken: readonly ReadDocument[], here: Documents): readonly Kept[] => {
  const ids = new Set(taken.map(({ id }) => id));
  return taken.flatMap(({ kind, raw }) => {
    const house = kind === 'house' ? readHouseValue(raw) : null;
    if (house === null || !house.ok) return [];
    const plant = house.value.house;
    return Object.values(here)
      .filter((kept) => !ids.has(kept.id) && kept.document['house'] === plant.id)
      .filter(({ kind: other, document }) => {
        const read =
          other === 'show' ? readShowValue(document, plant) : readStateValue(document, plant);
        return !read.ok;
      });
  });
};
