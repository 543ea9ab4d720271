import { measure } from '#findings';
import type { Known } from '#house';
import type { Metres } from '#quantities';
import { byAllKnown } from '../known-values.ts';
import { isAbove, isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetCase, SetRule } from '../rule.ts';

/** TRV-004: the low stop is below the high stop, and the working height is between them. */
export const stopOrder: SetRule = (the) => [
  ...stopsOf(the),
  ...workingBelow(the, 'low stop', the.set.lineSet.lowStop.height, 'under'),
  ...workingBelow(the, 'high stop', the.set.lineSet.highStop.height, 'over'),
];

const stopsOf: SetRule = ({ set: { lineSet } }) =>
  byAllKnown(
    {
      lowM: [lineSet.lowStop.height, 'height of the low stop'],
      highM: [lineSet.highStop.height, 'height of the high stop'],
    },
    'order of the stops',
    ({ lowM, highM }) =>
      isAbove(highM, lowM)
        ? []
        : [
            raise('TRV-004', {
              at: { set: lineSet.id },
              measured: measure(highM, 'length'),
              limit: measure(lowM, 'length'),
              limitSource: 'the other height of the same set',
              facts: { upper: 'high stop', lower: 'low stop' },
            }),
          ],
  );

/** A working height on a stop is in order; past it, not. What is unknown is missed elsewhere. */
const workingBelow = (
  { set: { lineSet } }: SetCase,
  stop: string,
  height: Known<Metres>,
  side: 'under' | 'over',
): ReturnType<SetRule> => {
  const { workingHeight } = lineSet;
  if (!workingHeight.known || !height.known) return [];
  const isPast =
    side === 'under'
      ? isBelow(workingHeight.value, height.value)
      : isAbove(workingHeight.value, height.value);
  if (!isPast) return [];
  const [upper, lower] =
    side === 'under'
      ? [
          { name: 'working height', value: workingHeight.value },
          { name: stop, value: height.value },
        ]
      : [
          { name: stop, value: height.value },
          { name: 'working height', value: workingHeight.value },
        ];
  return [
    raise('TRV-004', {
      at: { set: lineSet.id },
      measured: measure(upper.value, 'length'),
      limit: measure(lower.value, 'length'),
      limitSource: 'the other height of the same set',
      facts: { upper: upper.name, lower: lower.name },
    }),
  ];
};
