/** What a jump of the curve says, on long lines or on short ones. */

import type { Jump } from '#balance';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { phrase } from '#texts';
import type { BalanceSubject } from './balance-subject.ts';
import { loadWords } from './printed.ts';
import type { BlockLine } from './text-block.ts';
import { tradeWord } from './trade-words.ts';

/** What arrives or leaves at a jump, by the kinds of the pieces that meet the deck there. */
const whyOf = ({ items, height }: Jump, { set }: BalanceSubject, house: House): string => {
  const deck = tradeWord(house, 'deck');
  const kinds = items.flatMap((index) => {
    const item = set.items[index];
    if (item === undefined) return [];
    switch (item.kind) {
      case 'cloth':
        return [phrase(house, 'hem meets or leaves the {deck}', { deck })];
      case 'tipping':
        return height < item.pick + item.drop / 2
          ? [phrase(house, 'picks come slack')]
          : [phrase(house, 'foot meets or leaves the {deck}', { deck })];
      case 'standing':
        return [phrase(house, 'stands on or leaves the {deck}', { deck })];
      case 'clear':
        return [phrase(house, 'meets or leaves the {deck}', { deck })];
      case 'loom':
      case 'deckLoom':
        return [phrase(house, 'cable comes to its end')];
      default:
        return unreachable(item);
    }
  });
  return [...new Set(kinds)].join('; ');
};

/** Two lines of about the same length, broken between words. */
const halves = (words: string): readonly string[] => {
  const breaks = [...words.matchAll(/ /g)].map(({ index }) => index);
  const middle = words.length / 2;
  const at = breaks.toSorted((one, other) => Math.abs(one - middle) - Math.abs(other - middle))[0];
  return at === undefined ? [words] : [words.slice(0, at), words.slice(at + 1)];
};

/** The same words three times, the widest first. */
export const jumpWords = (
  jump: Jump,
  subject: BalanceSubject,
  house: House,
): readonly (readonly BlockLine[])[] => {
  const load = loadWords(house, jump.above - jump.below);
  const within =
    house.units === 'customary' ? phrase(house, 'within an inch') : phrase(house, 'within 25 mm');
  const why = whyOf(jump, subject, house);
  const plain = halves(why).map((text) => ({ text }));
  return [
    [{ text: `${load} ${within}`, strong: true }, { text: why }],
    [{ text: `${load} ${within}`, strong: true }, ...plain],
    [{ text: load, strong: true }, { text: within, strong: true }, ...plain],
  ];
};
