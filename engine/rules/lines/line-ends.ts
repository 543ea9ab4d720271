import { measure } from '#findings';
import { sourceOf } from '../known-values.ts';
import { raise } from '../raise.ts';
import type { HouseRule } from '../rule.ts';
import { setList } from '../set-list.ts';

/**
 * LFT-007: ends of lift lines made with wire-rope clips are always said, never passed over: a
 * caution where the house forbids them or has not said, a note where it allows them. Once for all
 * sets that have them.
 */
export const clippedEnds: HouseRule = ({ house }) => {
  const clipped = house.lineSets.filter(({ lift }) => lift.cable.termination === 'clips');
  if (clipped.length === 0) return [];
  const { clipsForbidden } = house.rules;
  const isAllowed = clipsForbidden.known && !clipsForbidden.value;
  return [
    raise('LFT-007', {
      at: {},
      level: isAllowed ? 'note' : 'caution',
      measured: measure(clipped.length, 'count'),
      ...(clipsForbidden.known ? { limitSource: sourceOf(clipsForbidden) } : {}),
      facts: {
        sets: setList(house, clipped),
        what: clipsForbidden.known
          ? `The house ${clipsForbidden.value ? 'forbids' : 'allows'} them`
          : 'Whether the house allows them is not said',
      },
    }),
  ];
};
