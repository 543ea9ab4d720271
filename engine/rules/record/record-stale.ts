import { measure } from '#findings';
import { isStale } from '#state';
import { byKnown } from '../known-values.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { momentMs } from './moment.ts';

/**
 * STA-002: how a set stands was confirmed no longer ago than the house allows (C84). Without a
 * moment given to judge at, nothing is judged; a record without a time, or with one that cannot
 * be read, is out of date.
 */
export const recordStale: SetRule = ({ house, state, nowMs, set: { lineSet, recorded } }) => {
  if (nowMs === null || state?.sets[lineSet.id] === undefined) return [];
  const { at, by } = recorded.state.knowledge;
  return byKnown(
    house.rules.staleAfterSeconds,
    'how long a record of a set holds good',
    'age of the records',
    (staleAfterSeconds, source) => {
      const recordedAtMs = at === null ? null : momentMs(at);
      if (!isStale({ recordedAtMs, nowMs, staleAfterSeconds })) return [];
      const age = recordedAtMs === null ? null : measure((nowMs - recordedAtMs) / 1000, 'duration');
      return [
        raise('STA-002', {
          at: { set: lineSet.id },
          ...(age === null ? {} : { measured: age }),
          limit: measure(staleAfterSeconds, 'duration'),
          limitSource: source,
          facts: {
            confirmed: at ?? 'at no recorded time',
            by: by ?? 'nobody recorded',
            age: age ?? 'not known',
          },
        }),
      ];
    },
    'house',
  );
};
