/** What a set can be laid beside: every hang of this show, and of the other shows kept here. */
import { phrase } from '#texts';
import { at, isList, isObject, type JsonObject } from '../keeping/json.ts';
import type { Open } from '../keeping/kept.ts';
import type { Reckoning } from '../reckoning/reckon.ts';

export type OtherSet = {
  readonly other: string;
  readonly name: string;
  /** Null is this show in this house. */
  readonly show: string | null;
  readonly house: string | null;
};

export type OtherShow = { readonly title: string; readonly sets: readonly OtherSet[] };

type Named = Pick<OtherSet, 'show' | 'house'> & { readonly other: string | null };

export const otherKey = ({ other, show, house }: Named): string =>
  other === null ? '' : JSON.stringify([other, show, house]);

const hungIn = (show: JsonObject): readonly { readonly set: string; readonly name: string }[] => {
  const hangs = show['hangs'];
  return (isList(hangs) ? hangs : [])
    .filter(isObject)
    .map((hang) => ({ set: String(hang['set']), name: String(hang['name']) }));
};

export const othersToCompare = (
  { documents }: Open,
  { documents: here, show: shown, house: spoken }: Pick<Reckoning, 'documents' | 'show' | 'house'>,
): readonly OtherShow[] => {
  const all = Object.values(documents);
  const houseNames = new Map(
    all
      .filter(({ kind }) => kind === 'house')
      .map(({ document }) => [String(document['id']), String(document['name'])]),
  );
  const shows = all.filter(
    ({ kind, document }) =>
      kind === 'show' && !(document['id'] === shown.id && document['house'] === shown.houseId),
  );
  const own = { title: phrase(spoken, 'this show'), sets: setsOf(here.show, null, null) };
  return [
    own,
    ...shows.map(({ document }) => {
      const house = String(at(document, ['house']));
      return {
        title: `${String(document['name'])}, ${houseNames.get(house) ?? house}`,
        sets: setsOf(document, String(document['id']), house),
      };
    }),
  ].filter(({ sets }) => sets.length > 0);
};

const setsOf = (
  document: JsonObject,
  show: string | null,
  house: string | null,
): readonly OtherSet[] =>
  hungIn(document).map(({ set, name }) => ({ other: set, name, show, house }));
