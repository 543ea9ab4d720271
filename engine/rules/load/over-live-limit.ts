import { measure } from '#findings';
import { byKnown } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { battenLoad, loadFacts, loadWorking } from './batten-load.ts';

/** LOD-001: what hangs, with its loom and its tolerance, is within the live limit. */
export const overLiveLimit: SetRule = (the) => {
  const { lineSet, hang } = the.set;
  if (hang === null) return [];
  const { load, lacks } = battenLoad(the);
  const found = byKnown(
    lineSet.liveLimit,
    'live limit of the batten',
    'load of the batten against its limit',
    (limitKg, source) => {
      if (load === null || !isAbove(load.worstKg, limitKg)) return [];
      const limit = measure(limitKg, 'mass');
      return [
        raise('LOD-001', {
          at: { set: lineSet.id, ...(load.heightM === null ? {} : { heightM: load.heightM }) },
          measured: measure(load.worstKg, 'mass'),
          limit,
          limitSource: source,
          facts: loadFacts(load, limitKg),
          working: loadWorking(load, { value: limit, source }),
        }),
      ];
    },
  );
  return [...lacks, ...found];
};
