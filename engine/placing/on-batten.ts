/** Whether a batten is long enough for where the items of a piece pull. */
import type { Batten } from '#house';
import type { Metres } from '#quantities';
import type { Item } from '#show';

export type PastBatten = { readonly item: string; readonly byM: number };

/** Places of items typed in feet end on a batten typed in feet. */
const SAME_PLACE_M = 1e-6;

const placesOf = ({ placement, takeoff }: Item): readonly Metres[] => {
  const units = takeoff.by === 'units' ? takeoff.units.flatMap(({ xs }) => xs ?? []) : [];
  if (placement === null) return units;
  return placement.at === 'points'
    ? [...placement.xs, ...units]
    : [placement.from, placement.to, ...units];
};

/** How far each item reaches past an end; an end that nobody measured is missed by the rules. */
export const pastBatten = (items: readonly Item[], batten: Batten): readonly PastBatten[] =>
  items.flatMap((item) => {
    const { left, right } = batten;
    const byM = placesOf(item).reduce(
      (most, x) =>
        Math.max(most, left.known ? left.value - x : 0, right.known ? x - right.value : 0),
      0,
    );
    return byM > SAME_PLACE_M ? [{ item: item.name, byM }] : [];
  });

/** The item with nothing said of where it pulls, since it cannot pull there on this batten. */
export const withoutPlaces = (item: Item): Item => {
  const bare: Item = { ...item, placement: null };
  const { takeoff } = item;
  if (takeoff.by !== 'units') return bare;
  const units = takeoff.units.map((unit) => ({ ...unit, xs: null }));
  return { ...bare, takeoff: { ...takeoff, units } };
};
