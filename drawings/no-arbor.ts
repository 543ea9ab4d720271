/** Sets without an arbor take no bricks, and every drawing and sheet of one says so plainly. */

import type { House, LineSet } from '#house';
import { unreachable } from '#outcome';
import { phrase } from '#texts';
import { tradeWord } from './trade-words.ts';

export const suspensionSentence = (lineSet: LineSet, house: House): string => {
  const bricks = tradeWord(house, 'bricks');
  switch (lineSet.suspension) {
    case 'motor':
      return phrase(house, 'A motor carries this set. It takes no {bricks}.', { bricks });
    case 'hemp':
      return phrase(house, 'Hands and a pin carry this hemp set. It takes no {bricks}.', {
        bricks,
      });
    case 'deadHung':
      return phrase(house, 'Steel holds this set. It takes no {bricks}.', { bricks });
    case 'singlePurchase':
    case 'doublePurchase':
      return phrase(house, 'Its arbor is not described, so its {bricks} are not known.', {
        bricks,
      });
    default:
      return unreachable(lineSet.suspension);
  }
};
