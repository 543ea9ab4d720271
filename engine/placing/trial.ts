/** The show as it would be: without the piece, and with it on one set. Nothing is recorded. */
import type { Hang, Show } from '#show';
import { pastBatten, withoutPlaces } from './on-batten.ts';
import type { PlacingAsked } from './types.ts';

/** All other hangs stay where they are. */
export const showWithout = ({ show, piece }: PlacingAsked): Show => ({
  ...show,
  hangs: show.hangs.filter(({ set }) => set !== piece.from),
});

/** Places past the end of a batten are told apart; the engine takes none that is not on it. */
const hungOn = ({ house, piece: { hang } }: PlacingAsked, set: string): Hang => {
  const batten = house.lineSets.find(({ id }) => id === set)?.batten;
  const items = hang.items.map((item) =>
    batten !== undefined && pastBatten([item], batten).length > 0 ? withoutPlaces(item) : item,
  );
  return { ...hang, items, set, bricks: null };
};

/** In rail order of the house, and the set no longer kept empty. */
export const showWith = (asked: PlacingAsked, set: string): Show => {
  const rest = showWithout(asked);
  const order = new Map(asked.house.lineSets.map(({ id }, index) => [id, index]));
  const placeOf = (hang: Hang): number => order.get(hang.set) ?? order.size;
  const hangs = [...rest.hangs, hungOn(asked, set)];
  const keptEmpty = Object.entries(rest.keptEmpty).filter(([kept]) => kept !== set);
  return {
    ...rest,
    hangs: hangs.toSorted((one, other) => placeOf(one) - placeOf(other)),
    keptEmpty: Object.fromEntries(keptEmpty),
  };
};
