/** Which of the database's documents are in view, by the address, and names to choose among. */
import type { Address } from '../address/address.ts';
import type { Kept, Open } from '../keeping/kept.ts';

export type InView = {
  readonly house: Kept;
  readonly show: Kept;
  readonly state: Kept | null;
};

export type Choice = { readonly id: string; readonly name: string };

const named = (kept: Kept): Choice => ({
  id: String(kept.document['id']),
  name: String(kept.document['name'] ?? kept.document['id']),
});

const ofKind = ({ documents }: Open, kind: Kept['kind']): readonly Kept[] =>
  Object.values(documents).filter((kept) => kept.kind === kind);

export const housesOf = (open: Open): readonly Choice[] => ofKind(open, 'house').map(named);

const isIn =
  (house: string) =>
  ({ document }: Kept): boolean =>
    document['house'] === house;

export const showsOf = (open: Open, house: string): readonly Choice[] =>
  ofKind(open, 'show').filter(isIn(house)).map(named);

const idOf = ({ document }: Kept): string => String(document['id']);

/**
 * The house and show that the address names. Where it names none, the first are meant; a name
 * that is not there is an answer of its own, so that nobody reads another house for the one asked.
 */
export const inView = (open: Open, { house, show }: Address): InView | { missing: string } => {
  const houses = ofKind(open, 'house');
  const aHouse = house === null ? houses[0] : houses.find((each) => idOf(each) === house);
  if (aHouse === undefined) return { missing: house === null ? 'any house' : `house ${house}` };
  const shows = ofKind(open, 'show').filter(isIn(idOf(aHouse)));
  const aShow = show === null ? shows[0] : shows.find((each) => idOf(each) === show);
  if (aShow === undefined) return { missing: show === null ? 'any show' : `show ${show}` };
  const state = ofKind(open, 'state').find(isIn(idOf(aHouse))) ?? null;
  return { house: aHouse, show: aShow, state };
};
