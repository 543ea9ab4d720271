import { measure } from '#findings';
import { purchaseOf } from '#house';
import { byKnown, lack } from '../known-values.ts';
import { isAbove, NEAR_LOAD } from '../limits.ts';
import { raise } from '../raise.ts';
import { type StructuredCase, whenStructured } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';

/**
 * LFT-006: with the batten held down, the lines carry the arbor and not the batten (C37). Shared
 * equally that is within the limit of a line; near it a person looks, since some line always
 * carries more than the equal share.
 */
export const heldDown = whenStructured((the) => {
  const { lineSet } = the.set;
  const { restrained, lines } = the.structure;
  if (purchaseOf(lineSet.suspension) === null || lines.length === 0) return [];
  if (!restrained.known) return restrained.needs.map((need) => lack(need, BLOCKS));
  const { arborSide, battenSide } = restrained.value;
  // Where flying carries more, LFT-001 judges it line by line.
  if (!isAbove(arborSide, battenSide)) return [];
  return byKnown(lineSet.lineLimit, 'limit of a lift line', BLOCKS, (limitN, source) =>
    judgeShare(the, { arborN: arborSide, battenN: battenSide, limitN, source }),
  );
});

const BLOCKS = 'tension of the lines with the batten held down';

type HeldDown = {
  readonly arborN: number;
  readonly battenN: number;
  readonly limitN: number;
  readonly source: string;
};

const judgeShare = (the: StructuredCase, { arborN, battenN, limitN, source }: HeldDown) => {
  const count = the.structure.lines.length;
  const shareN = arborN / count;
  if (!isAbove(shareN, NEAR_LOAD * limitN)) return [];
  const limit = measure(limitN, 'force');
  return [
    raise('LFT-006', {
      at: { set: the.set.lineSet.id },
      level: isAbove(shareN, limitN) ? 'stop' : 'caution',
      measured: measure(shareN, 'force'),
      limit,
      limitSource: source,
      facts: {
        lines: measure(count, 'count'),
        arbor: measure(arborN, 'force'),
        batten: measure(battenN, 'force'),
      },
      working: workedOut(
        'equal share of a line with the batten held down',
        'P / n',
        [
          term('P', 'pull of the arbor on all lines together', arborN, 'force'),
          term('n', 'lift lines', count, 'count'),
        ],
        term('T', 'equal share', shareN, 'force'),
        {
          source: 'trade formula C37',
          limit: { value: limit, source },
          omits: 'how the batten shares it out: some line always carries more',
        },
      ),
    }),
  ];
};
