import { measure } from '#findings';
import { isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { loomsOf, lowPointM } from './looms.ts';

/**
 * LOM-002: the loop of a loom hangs clear of the deck at the working height. What lies there is
 * underfoot, and does not hang: twice as much as its low point would be under the deck.
 */
export const loomOnDeck: SetRule = ({ set: { hang, lineSet } }) => {
  const { workingHeight } = lineSet;
  if (!workingHeight.known) return [];
  const heightM = workingHeight.value;
  return loomsOf(hang?.items ?? [])
    .looms.filter((loom) => isBelow(lowPointM(loom, heightM), 0))
    .map((loom) =>
      raise('LOM-002', {
        at: { set: lineSet.id, item: loom.item.id, heightM },
        measured: measure(-2 * lowPointM(loom, heightM), 'length'),
        facts: { piece: loom.item.name, height: measure(heightM, 'length') },
      }),
    );
};
