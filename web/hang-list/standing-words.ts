/** What a set is for in this show, and what keeps it from being used, in words. */

import { tradeWord } from '#drawings';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { phrase } from '#texts';
import type { SetReckoning } from '../reckoning/reckon.ts';

export type Standing = 'hung' | 'keptEmpty' | 'spare';

export const standingOf = ({ set, keptEmpty }: SetReckoning): Standing => {
  if (set.hang !== null) return 'hung';
  return keptEmpty === null ? 'spare' : 'keptEmpty';
};

/** A short word for the column of kinds, where nothing hangs that has one. */
export const emptyWord = (each: SetReckoning, house: House): string =>
  standingOf(each) === 'keptEmpty' ? phrase(house, 'kept empty') : phrase(house, 'spare');

const suspensionWords = ({ set }: SetReckoning, house: House): readonly string[] => {
  const { suspension } = set.lineSet;
  switch (suspension) {
    case 'motor':
      return [phrase(house, 'on a motor')];
    case 'hemp':
      return [phrase(house, 'on hemp')];
    case 'deadHung':
      return [tradeWord(house, 'deadHung')];
    case 'singlePurchase':
    case 'doublePurchase':
      return [];
    default:
      return unreachable(suspension);
  }
};

const lockOutWords = ({ set }: SetReckoning, house: House): readonly string[] => {
  const { service, tag } = set.recorded.state;
  if (service !== 'lockedOut') return [];
  return [
    tag === null
      ? phrase(house, 'locked out')
      : phrase(house, 'locked out: {reason}', { reason: tag.reason }),
  ];
};

const deadHungWords = ({ set }: SetReckoning, house: House): readonly string[] =>
  set.recorded.state.service === 'deadHung' || (set.hang?.deadHungAt ?? null) !== null
    ? [tradeWord(house, 'deadHung')]
    : [];

/** Why the set cannot be flown by hand as the others are; empty where nothing stands against it. */
export const blockedWords = (each: SetReckoning, house: House): readonly string[] => [
  ...new Set([
    ...lockOutWords(each, house),
    ...deadHungWords(each, house),
    ...suspensionWords(each, house),
  ]),
];
