import { told, type Voice } from '#texts';
import { afterName } from './say-finding.ts';
import { inHouseWords } from './trade-translation.ts';

/** `whether the batten bears it is not known: Border 1: mass`: only what is ours is turned. */
export const whyWords = (why: string, house: Voice): string => {
  const said = told(house, why);
  if (said !== why) return said;
  const colon = why.indexOf(': ');
  return colon === -1
    ? inHouseWords(why, house)
    : `${inHouseWords(why.slice(0, colon), house)}: ${afterName(why.slice(colon + 2), house)}`;
};
