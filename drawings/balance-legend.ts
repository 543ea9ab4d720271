/** What the bands and fine lines of a balance drawing are, in words under its low stop. */

import type { House } from '#house';
import { phrase } from '#texts';
import type { BalanceSubject } from './balance-subject.ts';
import { textWidth } from './lettering.ts';
import { heightWords, limitWords } from './printed.ts';

const sentencesOf = (
  { lockN, handsN, stretches, set }: BalanceSubject,
  house: House,
): readonly string[] => {
  const people = house.rules.peoplePerHandLine;
  const count = people.known ? phrase(house, ' of {value}', { value: people.value }) : '';
  const isDoubtful = stretches.some(({ from, to }) => from.doubtN > 0 || to.doubtN > 0);
  return [
    phrase(house, 'low stop {at}', { at: heightWords(house, set.lowStop) }),
    lockN === null
      ? phrase(house, 'the house gives no limit for the lock')
      : phrase(house, 'hatched: lock, {at} each way', { at: limitWords(house, lockN) }),
    handsN === null
      ? phrase(house, 'reach of hands not given')
      : // The force first: "2, 100 lbf" would read as two thousand.
        phrase(house, 'dots: {at}, hands{count}; they do not hold', {
          at: limitWords(house, handsN),
          count,
        }),
    ...(isDoubtful ? [phrase(house, 'fine lines: given tolerances at their worst')] : []),
  ];
};

/** Spaces alone would run together in print, and two sentences with them. */
const BETWEEN = '; ';
/** Room that the heights at the left take from the width. */
const AXIS_LETTERS = 2.2;

/** As many sentences on one line as fit. */
export const legendLines = (
  subject: BalanceSubject,
  house: House,
  { letter, width }: { readonly letter: number; readonly width: number },
): readonly string[] =>
  sentencesOf(subject, house).reduce<readonly string[]>((lines, words) => {
    const last = lines.at(-1);
    const joined = `${last ?? ''}${BETWEEN}${words}`;
    return last !== undefined && textWidth(joined, letter) <= width - AXIS_LETTERS * letter
      ? [...lines.slice(0, -1), joined]
      : [...lines, words];
  }, []);
