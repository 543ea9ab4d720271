import { BASES } from '#house';
import { unreachable } from '#outcome';
import { basisWords } from '#sheets';
import type { ItemKind } from '#show';
import { ENGLISH, phrase, type Voice } from '#texts';

/** How an item loads its batten, in words a deck crew would use. */
export const kindWords = (kind: ItemKind, voice: Voice = ENGLISH): string => {
  switch (kind) {
    case 'clear':
      return phrase(voice, 'hangs clear');
    case 'cloth':
      return phrase(voice, 'cloth, piles on the deck');
    case 'tipping':
      return phrase(voice, 'tips up from its foot');
    case 'standing':
      return phrase(voice, 'stands on the deck');
    case 'loom':
      return phrase(voice, 'cable, far end fixed');
    case 'deckLoom':
      return phrase(voice, 'cable, to the deck');
    default:
      return unreachable(kind);
  }
};

export const basisOptions = (voice: Voice) =>
  BASES.map((value) => ({ value, words: basisWords(value, voice) }));
