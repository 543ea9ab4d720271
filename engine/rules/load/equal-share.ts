import { measure } from '#findings';
import { known, unknownValue } from '#house';
import { GRAVITY } from '#quantities';
import { byAllKnown, sourceOf } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { battenLoad, loadTerms } from './batten-load.ts';

/**
 * LOD-003: where batten and lines cannot be worked out, the batten and all on it are within the
 * limit of one lift line at least when they are shared equally. Some line always carries the equal
 * share or more, so past it no way of hanging helps. Within it nothing is proved. Where they can
 * be worked out, LFT-001 judges what each line carries.
 */
export const equalShareTooMuch: SetRule = (the) => {
  const { lineSet, hang, structure } = the.set;
  const isWorkedOut = structure.known && structure.value.hungNeeds.length === 0;
  if (hang === null || isWorkedOut) return [];
  const { load } = battenLoad(the);
  const lines = lineSet.lineXs === null ? unknownValue() : known(lineSet.lineXs.length, SURVEYED);
  return byAllKnown(
    {
      lines: [lines, 'lift lines'],
      limitN: [lineSet.lineLimit, 'limit of a lift line'],
      battenKg: [lineSet.batten.mass, 'mass of the batten with its fittings'],
    },
    'equal share of the lift lines',
    ({ lines: count, limitN, battenKg }) => {
      if (load === null || count === 0) return [];
      const shareN = (GRAVITY * (battenKg + load.worstKg)) / count;
      if (!isAbove(shareN, limitN)) return [];
      const limit = measure(limitN, 'force');
      const source = lineSet.lineLimit.known ? sourceOf(lineSet.lineLimit) : '';
      return [
        raise('LOD-003', {
          at: { set: lineSet.id, ...(load.heightM === null ? {} : { heightM: load.heightM }) },
          measured: measure(shareN, 'force'),
          limit,
          limitSource: source,
          facts: { lines: measure(count, 'count') },
          working: workedOut(
            'equal share of a lift line',
            'g · ( B + m + l + t ) / n',
            [
              term('B', 'batten with its fittings', battenKg, 'mass'),
              ...loadTerms(load),
              term('n', 'lift lines', count, 'count'),
            ],
            term('T', 'equal share', shareN, 'force'),
            {
              source: 'sum of the forces on the batten',
              limit: { value: limit, source },
              omits: 'the stiffness of batten and lines: some line always carries more',
            },
          ),
        }),
      ];
    },
  );
};

const SURVEYED = { basis: 'measured' } as const;
