import { measure } from '#findings';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { battenLoad, loadFacts, loadWorking } from './batten-load.ts';

/** LOD-002: what hangs is within the live limit and above nine tenths of it. */
export const nearLiveLimit: SetRule = (the) => {
  const { liveLimit, id } = the.set.lineSet;
  // What is not known is missed by LOD-001.
  const { load } = battenLoad(the);
  if (load === null || !liveLimit.known) return [];
  const nearKg = NEAR_LOAD * liveLimit.value;
  if (!isAbove(load.worstKg, nearKg) || isAbove(load.worstKg, liveLimit.value)) return [];
  const source = '90 % of the live limit: common practice, no source';
  const limit = measure(nearKg, 'mass');
  return [
    raise('LOD-002', {
      at: { set: id, ...(load.heightM === null ? {} : { heightM: load.heightM }) },
      measured: measure(load.worstKg, 'mass'),
      limit,
      limitSource: source,
      facts: loadFacts(load, liveLimit.value),
      working: loadWorking(load, { value: limit, source }),
    }),
  ];
};
