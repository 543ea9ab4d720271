import { measure } from '#findings';
import { byAllKnown } from '../known-values.ts';
import { isAbove, isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import { trimHeights } from '../rest-heights.ts';
import type { SetRule } from '../rule.ts';

/**
 * TRV-003: every trim, and the height at which a set is dead-hung, lies on the travel of the
 * batten. Any kind of set: a motor stops at its ends too.
 */
export const trimOutsideTravel: SetRule = (the) => {
  const { lineSet, hang } = the.set;
  if (hang === null) return [];
  const { heights, lacks } = trimHeights(the);
  const stops = {
    lowM: [lineSet.lowStop.height, 'height of the low stop'],
    highM: [lineSet.highStop.height, 'height of the high stop'],
  } as const;
  const found = byAllKnown(stops, 'trims against the travel', ({ lowM, highM }) =>
    heights
      .filter(({ heightM }) => isBelow(heightM, lowM) || isAbove(heightM, highM))
      .map(({ name, heightM }) =>
        raise('TRV-003', {
          at: { set: lineSet.id, heightM },
          measured: measure(heightM, 'length'),
          limit: measure(isBelow(heightM, lowM) ? lowM : highM, 'length'),
          limitSource: 'travel of the batten, from the house',
          facts: {
            trim: name,
            lowStop: measure(lowM, 'length'),
            highStop: measure(highM, 'length'),
          },
        }),
      ),
  );
  return [...lacks, ...found];
};
