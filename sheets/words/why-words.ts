import type { House } from '#house';
import { afterName } from './say-finding.ts';
import { inHouseWords } from './trade-translation.ts';

/** `whether the batten bears it is not known: Border 1: mass`: only what is ours is turned. */
export const whyWords = (why: string, house: Pick<House, 'words'>): string => {
  const colon = why.indexOf(': ');
  return colon === -1
    ? inHouseWords(why, house)
    : `${inHouseWords(why.slice(0, colon), house)}: ${afterName(why.slice(colon + 2), house)}`;
};
