import { measure } from '#findings';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { arborFacts, arborMasses, arborWorking } from './arbor-mass.ts';

/** ARB-002: the arbor is within its limit and above nine tenths of it. */
export const arborNearLimit: SetRule = (the) => {
  const { lineSet } = the.set;
  const massLimit = lineSet.arbor?.massLimit;
  // A limit that nobody has given is missed by ARB-001.
  if (massLimit === undefined || !massLimit.known) return [];
  const nearKg = NEAR_LOAD * massLimit.value;
  const limit = measure(nearKg, 'mass');
  const source = '90 % of the limit of the arbor: common practice, no source';
  return arborMasses(the)
    .filter(({ worstKg }) => isAbove(worstKg, nearKg) && !isAbove(worstKg, massLimit.value))
    .map((mass) =>
      raise('ARB-002', {
        at: { set: lineSet.id },
        measured: measure(mass.worstKg, 'mass'),
        limit,
        limitSource: source,
        facts: arborFacts(mass, massLimit.value),
        working: arborWorking(mass, { value: limit, source }),
      }),
    );
};
