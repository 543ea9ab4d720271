import { measure } from '#findings';
import { byKnown } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { arborFacts, arborMasses, arborWorking } from './arbor-mass.ts';

/** ARB-001: the arbor, its tolerance at its worst, is not heavier than its limit. */
export const arborOverLimit: SetRule = (the) => {
  const { lineSet } = the.set;
  const masses = arborMasses(the);
  if (lineSet.arbor === null || masses.length === 0) return [];
  return byKnown(lineSet.arbor.massLimit, 'mass limit of the arbor', BLOCKS, (limitKg, source) =>
    masses
      .filter(({ worstKg }) => isAbove(worstKg, limitKg))
      .map((mass) => {
        const limit = measure(limitKg, 'mass');
        return raise('ARB-001', {
          at: { set: lineSet.id },
          measured: measure(mass.worstKg, 'mass'),
          limit,
          limitSource: source,
          facts: arborFacts(mass, limitKg),
          working: arborWorking(mass, { value: limit, source }),
        });
      }),
  );
};

const BLOCKS = 'mass of the arbor against its limit';
