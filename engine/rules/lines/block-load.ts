import { type Finding, measure } from '#findings';
import { type Known, purchaseOf } from '#house';
import { lack, sourceOf } from '../known-values.ts';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import { type Lack, type StructuredCase, whenStructured } from '../rule.ts';
import { worstBy } from '../worst.ts';
import { loadedLines } from './loaded-lines.ts';

/**
 * BLK-001 and BLK-002: lines pull on no loft block and on no head block by more than it is rated
 * for, as the resultant of both sides; above nine tenths of that a person looks. Loft blocks and
 * head block of a set are judged apart, and the worst of each is named.
 */
export const blockLoad = whenStructured((the) => {
  const { suspension, lift } = the.set.lineSet;
  const loft = loftBlocks(the);
  const head = purchaseOf(suspension) === null ? NO_BLOCKS : headBlocks(the);
  return [
    ...loft.lacks,
    ...againstRating(the, loft.blocks, lift.loftBlock.rated),
    ...head.lacks,
    ...againstRating(the, head.blocks, lift.headBlock.rated),
  ];
});

const BLOCKS = 'what the blocks carry';

type LoadedBlock = {
  readonly block: string;
  readonly state: string;
  readonly heightM: number | null;
  readonly resultantN: number;
};
type Loaded = { readonly blocks: readonly LoadedBlock[]; readonly lacks: readonly Lack[] };

const NO_BLOCKS: Loaded = { blocks: [], lacks: [] };

/** The tolerance of a tension raises the resultant in the same proportion. */
const loftBlocks = (the: StructuredCase): Loaded => {
  const needs = new Set<string>();
  const blocks = loadedLines(the).flatMap(({ state, line, number, toleranceN, worstN }) => {
    if (!line.loftBlock.known) {
      for (const need of line.loftBlock.needs) needs.add(need);
      return [];
    }
    const { resultant } = line.loftBlock.value;
    const topN = worstN - toleranceN;
    return [
      {
        block: `loft block of line ${number}`,
        state: state.name,
        heightM: state.height,
        resultantN: topN > 0 ? (resultant * worstN) / topN : resultant,
      },
    ];
  });
  return { blocks, lacks: [...needs].map((need) => lack(need, BLOCKS)) };
};

const headBlocks = ({ structure: { headBlock } }: StructuredCase): Loaded =>
  headBlock.known
    ? {
        blocks: [
          {
            block: 'head block',
            state: 'at its worst',
            heightM: null,
            resultantN: headBlock.value.resultant,
          },
        ],
        lacks: [],
      }
    : { blocks: [], lacks: headBlock.needs.map((need) => lack(need, BLOCKS)) };

const againstRating = (
  the: StructuredCase,
  blocks: readonly LoadedBlock[],
  rated: Known<number>,
): readonly Finding[] => {
  const worst = worstBy(blocks, ({ resultantN }) => resultantN);
  // A rating that nobody has given is missed for the house.
  if (worst === undefined || !rated.known) return [];
  const ratedN = rated.value;
  if (!isAbove(worst.resultantN, NEAR_LOAD * ratedN)) return [];
  const isOver = isAbove(worst.resultantN, ratedN);
  const { block, state, heightM, resultantN } = worst;
  const others = blocks.filter((one) => isAbove(one.resultantN, ratedN) && one.block !== block);
  return [
    raise(isOver ? 'BLK-001' : 'BLK-002', {
      at: { set: the.set.lineSet.id, ...(heightM === null ? {} : { heightM }) },
      measured: measure(resultantN, 'force'),
      limit: measure(isOver ? ratedN : NEAR_LOAD * ratedN, 'force'),
      limitSource: isOver ? sourceOf(rated) : NEAR_SOURCE,
      facts: {
        block,
        state,
        full: measure(ratedN, 'force'),
        others:
          others.length === 0
            ? 'none'
            : measure(new Set(others.map((one) => one.block)).size, 'count'),
      },
    }),
  ];
};

const NEAR_SOURCE = '90 % of the rating of a block: common practice, no source';
