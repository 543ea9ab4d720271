/** Sets without an arbor take no bricks, and every drawing and sheet of one says so plainly. */
import type { House, LineSet } from '#house';
import { unreachable } from '#outcome';
import { tradeWord } from './trade-words.ts';

export const suspensionSentence = (lineSet: LineSet, house: House): string => {
  const bricks = tradeWord(house, 'bricks');
  switch (lineSet.suspension) {
    case 'motor':
      return `A motor carries this set. It takes no ${bricks}.`;
    case 'hemp':
      return `Hands and a pin carry this hemp set. It takes no ${bricks}.`;
    case 'deadHung':
      return `Steel holds this set. It takes no ${bricks}.`;
    case 'singlePurchase':
    case 'doublePurchase':
      return `Its ${tradeWord(house, 'arbor')} is not described, so its ${bricks} are not known.`;
    default:
      return unreachable(lineSet.suspension);
  }
};
