import { measure } from '#findings';
import type { Hang, Item } from '#show';
import { raise } from '../raise.ts';
import type { AmongRule } from '../rule.ts';

/** Built pieces stand where they land; a cloth on the deck is pulled aside. */
const STANDS: ReadonlySet<Item['kind']> = new Set(['tipping', 'standing']);

/** Height of the batten at which a built piece stands on the deck, m; null where unknown. */
const landsAtM = ({ drop, pick }: Item): number | null =>
  drop.known && pick.known ? drop.value + pick.value : null;

/**
 * DCK-001: a tipping piece is laid out and raised upstage of its set, over as much deck as it is
 * tall; built pieces of other sets that stand there are in its way, and must be out.
 *
 * Omits  pieces laid downstage or aside, cloths, what stands on the deck by itself: look
 */
export const deckToLay: AmongRule = ({ house, show, set: { hang, lineSet } }) => {
  if (hang === null || !lineSet.y.known) return [];
  const fromM = lineSet.y.value;
  return hang.items.flatMap((item) => {
    if (item.kind !== 'tipping' || !item.drop.known) return [];
    const toM = fromM + item.drop.value;
    return (show?.hangs ?? []).flatMap((other) => {
      const y = house.lineSets.find(({ id }) => id === other.set)?.y;
      if (other.set === lineSet.id || y?.known !== true) return [];
      if (y.value < fromM || y.value > toM) return [];
      const standing = other.items.find((each) => STANDS.has(each.kind) && lands(each, other));
      if (standing === undefined) return [];
      return [
        raise('DCK-001', {
          at: { set: lineSet.id, item: item.id },
          facts: {
            piece: item.name,
            from: measure(fromM, 'length'),
            to: measure(toM, 'length'),
            other: standing.name,
            otherSet: other.set,
          },
        }),
      ];
    });
  });
};

/** A hand: a mark at the rail is no finer. */
const NEAR_M = 0.1;

const lands = (item: Item, { trims }: Hang): boolean => {
  const contactM = landsAtM(item);
  return trims.some(
    ({ height, reference }) =>
      contactM !== null &&
      reference === 'batten' &&
      height.known &&
      height.value <= contactM + NEAR_M,
  );
};
