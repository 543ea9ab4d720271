/** Loose bricks that an order may take: those that are kept for other work stay where they lie. */
import type { House } from '#house';
import type { GalleryState, HouseState, OrderPhysics } from '#state';
import type { Assumption } from './assumption.ts';

/**
 * The set that a purpose names, as `releasing D3` names D3; null where it names none of the house,
 * or more than one: then nobody may take them.
 */
const setNamed = (purpose: string, { lineSets }: Pick<House, 'lineSets'>): string | null => {
  const words = purpose.split(/[^\p{L}\p{N}]+/u);
  const [first, ...others] = lineSets.filter(({ id }) => words.includes(id));
  return first === undefined || others.length > 0 ? null : first.id;
};

type Kept = GalleryState['reserved'][number];

/** What is kept at a gallery for other work than on this set. */
const keptFrom = (
  gallery: GalleryState | undefined,
  set: string,
  house: Pick<House, 'lineSets'>,
): readonly Kept[] =>
  (gallery?.reserved ?? []).filter(
    ({ count, for: purpose }) => count > 0 && setNamed(purpose, house) !== set,
  );

const lessKept = (
  stock: GalleryState['stock'],
  kept: readonly Kept[],
): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(stock).map(([kind, count]) => {
      const held = kept.filter((each) => each.kind === kind);
      return [kind, Math.max(0, count - held.reduce((sum, each) => sum + each.count, 0))];
    }),
  );

/** The state with only those bricks loose that work on this set may take. */
export const freeFor = (
  set: string,
  house: Pick<House, 'lineSets'>,
  state: HouseState,
): HouseState => ({
  ...state,
  galleries: Object.fromEntries(
    Object.entries(state.galleries).map(([id, gallery]) => [
      id,
      { ...gallery, stock: lessKept(gallery.stock, keptFrom(gallery, set, house)) },
    ]),
  ),
});

export const stockAssumptions = (
  set: string,
  house: Pick<House, 'galleries' | 'lineSets'>,
  state: HouseState,
): readonly Assumption[] =>
  house.galleries.flatMap(({ id }): readonly Assumption[] => {
    const gallery = state.galleries[id];
    if (gallery === undefined) return [{ is: 'stockNotCounted', gallery: id }];
    const kept = keptFrom(gallery, set, house);
    return kept.length === 0 ? [] : [{ is: 'stockKept', gallery: id, kept }];
  });

/**
 * The physics with the bricks that are taken to lie loose again, at whichever gallery takes them.
 *
 * Omits   that one brick lies at one gallery only: more may be taken than there are, where the
 *         order wants more than the record has; a loading sheet counts them
 */
export const withBricksBack = (
  physics: OrderPhysics,
  assumed: readonly Assumption[],
): OrderPhysics => {
  const back = assumed.flatMap((each) => (each.is === 'bricksBack' ? each.bricks : []));
  if (back.length === 0) return physics;
  return {
    ...physics,
    galleries: physics.galleries.map((gallery) => {
      const stock: Record<string, number> = { ...gallery.stock };
      for (const { kind, count } of back) stock[kind] = (stock[kind] ?? 0) + count;
      return { ...gallery, stock };
    }),
  };
};
