import { BASES } from '#house';
import { unreachable } from '#outcome';
import { basisWords } from '#sheets';
import type { ItemKind } from '#show';

/** How an item loads its batten, in words a deck crew would use. */
export const kindWords = (kind: ItemKind): string => {
  switch (kind) {
    case 'clear':
      return 'hangs clear';
    case 'cloth':
      return 'cloth, piles on the deck';
    case 'tipping':
      return 'tips up from its foot';
    case 'standing':
      return 'stands on the deck';
    case 'loom':
      return 'cable, far end fixed';
    case 'deckLoom':
      return 'cable, to the deck';
    default:
      return unreachable(kind);
  }
};

export const BASIS_OPTIONS = BASES.map((value) => ({ value, words: basisWords(value) }));
