/** What a set is called in a call: what hangs there as it stands, and never what is planned. */
import type { CallDocuments } from '#call';
import type { HouseNow, SetNow } from '#state';
import { phrase } from '#texts';

const isOn = (phase: string): boolean => phase !== 'away' && phase !== 'beside';

const hangOf = ({ show }: CallDocuments, set: string) =>
  show.hangs.find((hang) => hang.set === set);

export const itemName =
  (documents: CallDocuments, set: string) =>
  (item: string): string =>
    hangOf(documents, set)?.items.find(({ id }) => id === item)?.name ?? item;

/** The piece that this set is for, which may still lie on the deck; null where there is none. */
export const pieceOf = (documents: CallDocuments, set: string): string | null =>
  hangOf(documents, set)?.name ?? null;

export const whatHangs = (
  documents: CallDocuments,
  id: string,
  set: SetNow | undefined,
): string => {
  const { house } = documents;
  const items = set?.standing?.items;
  if (items === undefined) return phrase(house, 'not known');
  if (!Object.values(items).some(isOn)) return phrase(house, 'empty');
  return pieceOf(documents, id) ?? phrase(house, 'not in the show');
};

/** The sets on both sides, so that who slipped by a row sees it. */
export const neighboursOf = (
  documents: CallDocuments,
  { sets }: Pick<HouseNow, 'sets'>,
  id: string,
): readonly string[] => {
  const order = documents.house.lineSets;
  const at = order.findIndex((each) => each.id === id);
  return [order[at - 1], order[at + 1]].flatMap((each) =>
    each === undefined ? [] : [`${each.id} ${whatHangs(documents, each.id, sets[each.id])}`],
  );
};
