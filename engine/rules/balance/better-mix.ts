import { measure } from '#findings';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { type PlannedCase, whenFlown } from '../rule.ts';
import { furthest, readingsBetween } from './curve-reading.ts';
import { foundChoice, mixText } from './mixes.ts';

/**
 * BAL-005: bricks that a person fixed balance as well as the program's choice, within half of
 * what the smallest brick shifts. A person may know better (a mix that cannot be loaded is no
 * mix), so this is a note beside the reason that the person gave.
 */
export const betterMix = whenFlown((the) => {
  const { stack } = the.plan;
  const choice = foundChoice(the.set);
  if (stack.chosenBy !== 'person' || choice === null) return [];
  const worstN = worstOf(the);
  const limitN = choice.chosen.worstN + choice.bandN;
  if (!isAbove(worstN, limitN)) return [];
  const counts = Object.fromEntries(stack.show.map(({ kind, count }) => [kind, count]));
  return [
    raise('BAL-005', {
      at: { set: the.set.lineSet.id },
      measured: measure(worstN, 'force'),
      limit: measure(limitN, 'force'),
      limitSource: 'the program’s choice, and half of what the smallest brick shifts',
      facts: {
        bricks: mixText(counts),
        best: mixText(choice.chosen.counts),
        least: measure(choice.chosen.worstN, 'force'),
        reason: stack.reason,
      },
    }),
  ];
});

/** The worst imbalance either way on the free travel, before and after each release. */
const worstOf = ({ plan: { curve, after, freeRange } }: PlannedCase): number =>
  Math.max(
    ...[curve, ...after.map((then) => then.curve)].map((one) =>
      Math.abs(furthest(readingsBetween(one, freeRange.from, freeRange.to))?.imbalanceN ?? 0),
    ),
  );
