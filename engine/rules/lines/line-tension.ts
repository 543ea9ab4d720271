import { type Finding, type Measure, measure, type Working } from '#findings';
import { byKnown } from '../known-values.ts';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenStructured } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { worstBy } from '../worst.ts';
import {
  type LoadedLine,
  lineFacts,
  lineLacks,
  loadedLines,
  otherLines,
  toleranceFact,
} from './loaded-lines.ts';

/**
 * LFT-001 and LFT-002: no line carries more than it may in any state, its own weight and all
 * tolerances counted in at the loft block; above nine tenths of that a person looks.
 */
export const lineTension = whenStructured((the) => {
  const { lineSet } = the.set;
  const all = loadedLines(the);
  const found = byKnown(lineSet.lineLimit, 'limit of a lift line', BLOCKS, (limitN, source) => {
    const over = all.filter(({ worstN }) => isAbove(worstN, limitN));
    if (over.length > 0) return worstOf(lineSet.id, 'LFT-001', over, limitN, { limitN, source });
    const nearN = NEAR_LOAD * limitN;
    const near = all.filter(({ worstN }) => isAbove(worstN, nearN));
    const limit = { limitN: nearN, source: NEAR_SOURCE };
    return worstOf(lineSet.id, 'LFT-002', near, limitN, limit);
  });
  return [...lineLacks(the), ...found];
});

const BLOCKS = 'tension of the lines against their limit';
const NEAR_SOURCE = '90 % of the limit of a line: common practice, no source';

const worstOf = (
  set: string,
  code: 'LFT-001' | 'LFT-002',
  all: readonly LoadedLine[],
  fullN: number,
  { limitN, source }: { readonly limitN: number; readonly source: string },
): readonly Finding[] => {
  const worst = worstBy(all, ({ worstN }) => worstN);
  if (worst === undefined) return [];
  const limit = measure(limitN, 'force');
  return [
    raise(code, {
      at: { set, heightM: worst.state.height },
      measured: measure(worst.worstN, 'force'),
      limit,
      limitSource: source,
      facts: {
        ...lineFacts(worst),
        tolerance: toleranceFact(worst),
        full: measure(fullN, 'force'),
        others: otherLines(all, worst),
      },
      working: tensionWorking(worst, { value: limit, source }),
    }),
  ];
};

const tensionWorking = (
  loaded: LoadedLine,
  limit: { readonly value: Measure; readonly source: string },
): Working =>
  workedOut(
    `tension of line ${loaded.number}`,
    'T + w + t',
    [
      term('T', 'at the batten, from the beam on its lines', loaded.line.tension, 'force'),
      term('w', 'the line itself, below its loft block', loaded.wireN, 'force'),
      term('t', 'tolerances, all at their worst for this line', loaded.toleranceN, 'force'),
    ],
    term('T_L', 'tension at the loft block', loaded.worstN, 'force'),
    {
      source: 'trade formulas C30, C31, C86',
      limit,
      omits: 'starts and stops, which add to it',
    },
  );
